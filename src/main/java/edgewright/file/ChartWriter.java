package edgewright.file;

import edgewright.chart.Chart;
import edgewright.chart.Corner;
import edgewright.chart.Extras;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
        lines("yarns", chart.yarns(), ChartWriter::yarn);
        lines("rounds", chart.rounds(), ChartWriter::round);
        chart.extras().json().forEach((name, raw) -> text.append(",\n  ").append(member(name, raw)));
        return text.append("\n}\n").toString();
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
        return object(
                List.of(
                        member("id", quoted(yarn.id())),
                        member("name", quoted(yarn.name())),
                        member("colour", quoted(yarn.colour().toString()))),
                yarn.extras());
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
        return "{ " + String.join(", ", members) + " }";
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
