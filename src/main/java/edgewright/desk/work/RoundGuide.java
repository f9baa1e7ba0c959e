package edgewright.desk.work;

import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.shortest;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Yarn;
import edgewright.fit.BackLayer;
import edgewright.fit.GuideSentences;
import edgewright.fit.Landmarks;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.RoundParts;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * What a maker is told of one round: its yarn, its words part by part, what to see, and its counts.
 *
 * @param rows what there is to say, in working order; nothing is said where nothing is true
 * @param counts the stitches of each side in the way of counting that was asked for
 */
public record RoundGuide(int round, Yarn yarn, List<Row> rows, PerSide<Integer> counts) {
    /**
     * One thing that is said.
     *
     * @param name under which tests find it
     */
    public record Row(String name, String label, String text) {}

    public RoundGuide {
        rows = List.copyOf(rows);
    }

    /**
     * The guide to a round of an even chart.
     *
     * @param options for one size
     */
    public static RoundGuide of(Chart chart, int round, WordingOptions options, Language language) {
        PerSide<Integer> repeats = options.repeats().orElseThrow();
        RoundParts parts = PatternWriter.parts(chart, round, options);
        Messages says = language.messages("desk/work");
        Messages common = language.messages("desk/common");
        List<Row> rows = new ArrayList<>();
        chart.making()
                .hook()
                .ifPresent(hook -> add(
                        rows,
                        "guide.hook",
                        says.text("guide-hook"),
                        common.text("guide-mm", shortest("mm", hook.mm(), 2))));
        if (parts instanceof RoundParts.OfAllSides alike) {
            ofAllSides(rows, alike, says);
        } else {
            add(
                    rows,
                    "guide.eachSide",
                    says.text("guide-eachSide"),
                    String.join(" ", ((RoundParts.OfEachSide) parts).lines()));
        }
        GuideSentences sentences = new GuideSentences(language);
        add(
                rows,
                "guide.seen",
                says.text("guide-seen"),
                String.join(" ", sentences.landmarks(Landmarks.of(chart, round, repeats), repeats)));
        add(rows, "guide.back", says.text("guide-back"), back(chart, round, says));
        PerSide<Integer> counts = chart.border().stitches(round, repeats).map(options.counting()::shown);
        return new RoundGuide(round, chart.yarnOf(round), rows, counts);
    }

    private static void ofAllSides(List<Row> rows, RoundParts.OfAllSides parts, Messages says) {
        add(rows, "guide.start", says.text("guide-start"), parts.start());
        add(rows, "guide.fromCorner", says.text("guide-fromCorner"), parts.fromCorner());
        if (parts.isGroupAlone()) {
            add(rows, "guide.eachSide", says.text("guide-eachSide"), parts.repeat());
        } else {
            add(rows, "guide.repeat", says.text("guide-repeat"), parts.repeat());
        }
        add(rows, "guide.toCorner", says.text("guide-toCorner"), parts.toCorner());
        add(
                rows,
                "guide.corner",
                says.text("guide-corner"),
                parts.corner().replace('\u00a0', ' ') + ". " + parts.sides());
    }

    private static String back(Chart chart, int round, Messages says) {
        if (chart.making().back().isEmpty()) {
            return "";
        }
        OptionalInt matching = new BackLayer(chart.border(), chart.rounds().size()).matching(round);
        return matching.isEmpty() ? "" : says.text("guide-back-matches", number("round", matching.getAsInt()));
    }

    private static void add(List<Row> rows, String name, String label, String text) {
        if (!text.isEmpty()) {
            rows.add(new Row(name, label, text));
        }
    }
}
