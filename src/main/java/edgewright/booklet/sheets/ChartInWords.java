package edgewright.booklet.sheets;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.choice;
import static edgewright.texts.Arg.commas;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.ChartKind;
import edgewright.chart.Chart;
import edgewright.texts.Messages;
import edgewright.words.write.PatternWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is heard of a chart instead of seen. A chart of few rounds is told in one; of one that is too long for that, each sheet
 * tells the rounds that no sheet before it has told, and says which of its rounds were told before.
 */
final class ChartInWords {
    /** Rounds of so many and more are too long to be heard in one. */
    private static final int TOO_LONG_TO_HEAR = 150;

    /** A text in a file of PDF/A-2 has 32,767 bytes at most, two for a character: ISO 19005-2, 6.1.13. */
    private static final int MOST_CHARACTERS = 16_000;

    private final Chart chart;
    private final BookletOptions options;
    private final ChartKind kind;
    private final Messages says;
    private final Set<Integer> told = new TreeSet<>();

    /** @param kind the corner or a side */
    ChartInWords(Chart chart, BookletOptions options, ChartKind kind) {
        this.chart = chart;
        this.options = options;
        this.kind = kind;
        this.says = options.says();
    }

    /** The chart on one sheet. */
    String inOne() {
        return isTold() && !isToldBySheets() && !followsCorner()
                ? named() + allRounds()
                : named() + " " + says.text("chart-alternative-elsewhere");
    }

    /** The picture of the whole, before its sheets. */
    String ofWhole(int sheets) {
        return isToldBySheets()
                ? named() + " " + says.text("chart-alternative-sheets", count("sheets", sheets))
                : inOne();
    }

    /**
     * A sheet; to be asked for in the order in which they are printed.
     *
     * @param number counted from 1
     * @param rounds those of which it shows something, ascending
     */
    String ofSheet(int number, int sheets, List<Integer> rounds) {
        if (!isToldBySheets()) {
            return says.text(
                    "chart-alternative-sheet",
                    choice("kind", kind),
                    number("sheet", number),
                    count("sheets", sheets),
                    arg("title", chart.title()));
        }
        StringBuilder words = new StringBuilder(says.text(
                "chart-alternative-part",
                choice("kind", kind),
                number("sheet", number),
                count("sheets", sheets),
                arg("title", chart.title()),
                commas("shown", ranges(rounds))));
        List<Integer> before = rounds.stream().filter(told::contains).toList();
        if (!before.isEmpty()) {
            words.append(' ').append(says.text("chart-alternative-before", commas("shown", ranges(before))));
        }
        List<Integer> untold = new ArrayList<>();
        for (int round : rounds) {
            String inWords = told.contains(round) ? "" : round(round);
            if (words.length() + inWords.length() > MOST_CHARACTERS) {
                untold.add(round);
            } else {
                words.append(inWords);
                told.add(round);
            }
        }
        if (!untold.isEmpty()) {
            words.append(' ').append(says.text("chart-alternative-rest", commas("shown", ranges(untold))));
        }
        return words.toString();
    }

    /** A side that follows the corner shows nothing that the corner has not shown. */
    private boolean followsCorner() {
        return kind == ChartKind.SIDE && options.appearance().chart().hasCorner();
    }

    /** Sections of other lengths than they should have cannot be told. */
    private boolean isTold() {
        return chart.raggedSections().isEmpty();
    }

    private boolean isToldBySheets() {
        return isTold()
                && !followsCorner()
                && (chart.rounds().size() >= TOO_LONG_TO_HEAR
                        || named().length() + allRounds().length() > MOST_CHARACTERS);
    }

    private String named() {
        return says.text(
                "chart-alternative",
                choice("kind", kind),
                arg("title", chart.title()),
                count("rounds", chart.rounds().size()));
    }

    private String allRounds() {
        StringBuilder words = new StringBuilder();
        for (int round = 1; round <= chart.rounds().size(); round++) {
            words.append(round(round));
        }
        return words.toString();
    }

    private String round(int round) {
        StringBuilder words = new StringBuilder();
        PatternWriter.round(chart, round, options.words(false))
                .lines()
                .forEach(line -> words.append(' ').append(line.replace('\u00a0', ' ')));
        return words.toString();
    }

    /** '1 to 12' and '14', from ascending numbers. */
    private List<String> ranges(List<Integer> rounds) {
        List<String> ranges = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= rounds.size(); i++) {
            if (i == rounds.size() || rounds.get(i) != rounds.get(i - 1) + 1) {
                int from = rounds.get(first);
                int to = rounds.get(i - 1);
                ranges.add(
                        from == to
                                ? Integer.toString(from)
                                : says.text("chart-alternative-range", number("first", from), number("last", to)));
                first = i;
            }
        }
        return ranges;
    }
}
