package edgewright.file;

import edgewright.chart.Back;
import edgewright.chart.Ball;
import edgewright.chart.Chart;
import edgewright.chart.Corner;
import edgewright.chart.Extras;
import edgewright.chart.PatternDetails;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.Start;
import edgewright.chart.Swatch;
import edgewright.chart.Yarn;
import edgewright.chart.YarnUse;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Writes one chart as text. The layout is this project's own, so that one changed round is one changed line. */
final class ChartWriter {
    private final StringBuilder text = new StringBuilder();

    String text(Chart chart) {
        text.append("{\n  ").append(member("format", quoted(ChartText.FORMAT)));
        text.append(", ").append(member("version", String.valueOf(ChartText.VERSION)));
        text.append(",\n  ").append(member("title", quoted(chart.title())));
        text.append(", ").append(member("designer", quoted(chart.designer())));
        // Notes can be long. Then they have a line of their own.
        text.append(chart.notes().isEmpty() ? ", " : ",\n  ").append(member("notes", quoted(chart.notes())));
        text.append(",\n  ").append(member("terms", quoted(chart.terms().name())));
        text.append(", ").append(member("corner", corner(chart.corner())));
        text.append(",\n  ").append(member("rules", rules(chart.rules())));
        making(chart.making());
        lines("yarns", chart.yarns(), ChartWriter::yarn);
        lines("rounds", chart.rounds(), ChartWriter::round);
        chart.extras().json().forEach((name, raw) -> text.append(",\n  ").append(member(name, raw)));
        return text.append("\n}\n").toString();
    }

    /** What is said of the making, each in a line of its own; nothing where nothing is said. */
    private void making(PatternDetails making) {
        making.hook().ifPresent(hook -> line("hook", hook.toString()));
        making.yarnWeight().ifPresent(weight -> line("yarnWeight", String.valueOf(weight)));
        making.swatch().ifPresent(swatch -> line("swatch", swatch(swatch)));
        making.start().ifPresent(start -> line("start", start(start)));
        making.back().ifPresent(back -> line("back", back(back)));
        making.use().ifPresent(use -> line("yarnUse", use(use)));
        if (!making.skill().isEmpty()) {
            line("skill", quoted(making.skill()));
        }
    }

    private void line(String name, String json) {
        text.append(",\n  ").append(member(name, json));
    }

    private static String swatch(Swatch swatch) {
        return object(
                List.of(
                        member("stitches", measure(swatch.stitchesIn10Cm())),
                        member("rounds", measure(swatch.roundsIn10Cm()))),
                swatch.extras());
    }

    private static String start(Start start) {
        List<String> members = new ArrayList<>();
        start.column().ifPresent(column -> members.add(member("column", String.valueOf(column))));
        members.add(member("odd", quoted(written(start.odd()))));
        members.add(member("even", quoted(written(start.even()))));
        return object(members, start.extras());
    }

    private static String back(Back back) {
        return object(
                back.hook().map(hook -> member("hook", hook.toString())).stream()
                        .toList(),
                back.extras());
    }

    private static String use(YarnUse use) {
        List<String> members = new ArrayList<>();
        measured(members, "backLoop", use.backLoop());
        measured(members, "plain", use.plain());
        measured(members, "long", use.longStitch());
        measured(members, "chain", use.chain());
        measured(members, "tall", use.tall());
        measured(members, "slip", use.slip());
        return object(members, use.extras());
    }

    private static String ball(Ball ball) {
        return object(
                List.of(member("metres", measure(ball.metres())), member("grams", measure(ball.grams()))),
                ball.extras());
    }

    private static void measured(List<String> members, String name, OptionalDouble number) {
        number.ifPresent(value -> members.add(member(name, measure(value))));
    }

    /** A number without an exponent and without digits that say nothing. */
    private static String measure(double number) {
        return new BigDecimal(String.valueOf(number)).stripTrailingZeros().toPlainString();
    }

    /** How a side is named in a chart file. */
    static String written(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    private <T> void lines(String name, List<T> values, Function<T, String> line) {
        List<String> lines = values.stream().map(line).toList();
        text.append(",\n  ").append(quoted(name)).append(": [\n    ");
        text.append(String.join(",\n    ", lines)).append("\n  ]");
    }

    private static String corner(Corner corner) {
        return object(List.of(member("chains", String.valueOf(corner.chains()))), corner.extras());
    }

    private static String rules(Rules rules) {
        return object(
                List.of(
                        member("landOnCornerChain", String.valueOf(rules.landOnCornerChain())),
                        member("stackLongStitches", String.valueOf(rules.stackLongStitches())),
                        member("looseRun", String.valueOf(rules.looseRun()))),
                rules.extras());
    }

    private static String yarn(Yarn yarn) {
        List<String> members = new ArrayList<>();
        members.add(member("id", quoted(yarn.id())));
        members.add(member("name", quoted(yarn.name())));
        members.add(member("colour", quoted(yarn.colour().toString())));
        yarn.ball().ifPresent(ball -> members.add(member("ball", ball(ball))));
        measured(members, "inHand", yarn.metresInHand());
        return object(members, yarn.extras());
    }

    private static String round(Round round) {
        List<String> members = new ArrayList<>();
        members.add(member("yarn", quoted(round.yarn())));
        for (Section section : Section.values()) {
            members.add(member(section.member(), quoted(round.section(section).letters())));
        }
        return object(members, round.extras());
    }

    private static String object(List<String> known, Extras extras) {
        List<String> members = new ArrayList<>(known);
        extras.json().forEach((name, raw) -> members.add(member(name, raw)));
        return members.isEmpty() ? "{}" : "{ " + String.join(", ", members) + " }";
    }

    private static String member(String name, String json) {
        return quoted(name) + ": " + json;
    }

    /**
     * The text in quotes. Besides what JSON asks for, characters are escaped that would be lost in UTF-8 (half a surrogate
     * pair) or be taken for the end of a line.
     */
    private static String quoted(String plain) {
        StringBuilder json = new StringBuilder("\"");
        plain.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> json.append("\\\"");
                case '\\' -> json.append("\\\\");
                case '\n' -> json.append("\\n");
                case '\r' -> json.append("\\r");
                case '\t' -> json.append("\\t");
                default -> {
                    if (isEscaped(c)) {
                        json.append(String.format(Locale.ROOT, "\\u%04x", c));
                    } else {
                        json.appendCodePoint(c);
                    }
                }
            }
        });
        return json.append('"').toString();
    }

    private static boolean isEscaped(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE ->
                true;
            default -> c == '\ufeff';
        };
    }
}
