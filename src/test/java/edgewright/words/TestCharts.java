package edgewright.words;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Heading;
import edgewright.chart.Round;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.texts.Language;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.List;

/** Small charts that hands can work, drawn in letters: yarn, from the corner, repeat, to the corner. */
public final class TestCharts {
    /** A = 1, w = 8, B = 2. Round 3 is the example of the format. */
    public static final Chart TIDE_LADDER = chart("""
            A bb     bbbbbbbb bbb
            B bbb    bbbbbbbb bbbb
            A bbbb   lblblbbb lblbb
            B bbbbb  bbbbbcbb bbbblb
            A pppppp pppppppp ppppppp
            """);

    /** A = 0, w = 6, B = 0; the repeat has the period 3 in round 3, and the corner sections go on with it. */
    public static final Chart ROPE_WALK = chart("""
            A b    bbbbbb b
            B bb   bbbbbb bb
            A blb  blbblb blb
            B bbbl bbbbbb bbbb
            """);

    private TestCharts() {}

    public static Chart chart(String letters) {
        List<Round> rounds = letters.lines()
                .map(line -> line.split(" +"))
                .map(parts -> Round.of(parts[0], parts[1], parts[2], parts[3]))
                .toList();
        return new Chart(
                new Heading(
                        "Tide Ladder",
                        "Saltmarsh Studio",
                        "The first rung stands on the base round.\nBlock the corners square before you measure.",
                        Terms.UK),
                List.of(
                        new Yarn("A", "Peat", Colour.parse("#2b2a33")),
                        new Yarn("B", "Chalk", Colour.parse("#f2ead8"))),
                rounds);
    }

    /** The rounds and no more, each line without its indentation; a no-break space is a blank. */
    public static List<String> lines(Chart chart, int round, WordingOptions options) {
        return PatternWriter.round(chart, round, options).lines().stream()
                .map(line -> line.replace(Language.NO_BREAK, ' '))
                .toList();
    }
}
