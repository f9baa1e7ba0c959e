package edgewright.booklet;

import edgewright.chart.Chart;
import edgewright.draw.ChartPicture;
import edgewright.draw.Emphasis;
import edgewright.draw.PictureStyle;
import edgewright.draw.SvgPicture;
import edgewright.words.HtmlPage;
import edgewright.words.MarkdownText;
import edgewright.words.Options;
import edgewright.words.PatternWriter;
import edgewright.words.PlainText;
import edgewright.words.WrittenPattern;
import java.util.Arrays;
import java.util.Optional;

/** The formats in which the words of a pattern are written to a file of their own. */
public enum WordsFormat {
    /** Lines of plain text. */
    TEXT(".txt") {
        @Override
        String format(WrittenPattern words, Chart chart, Options options) {
            return PlainText.of(words);
        }
    },
    /** Markdown, with a table of counts. */
    MARKDOWN(".md") {
        @Override
        String format(WrittenPattern words, Chart chart, Options options) {
            return MarkdownText.of(words);
        }
    },
    /** One page of HTML, with the chart before the rounds unless it is very large. */
    HTML(".html") {
        @Override
        String format(WrittenPattern words, Chart chart, Options options) {
            return HtmlPage.of(words, chart, options.terms(), picture(chart, options));
        }
    };

    /** The most stitches of a picture in a page; more make a page that is slow to open, and cells too small to be seen. */
    private static final long MOST_STITCHES = 40_000;

    private final String ending;

    WordsFormat(String ending) {
        this.ending = ending;
    }

    /** What the name of such a file ends in. */
    public String ending() {
        return ending;
    }

    /** The format of a file with this name, by its ending in small or capital letters; empty for any other. */
    public static Optional<WordsFormat> ofName(String name) {
        return Arrays.stream(values())
                .filter(format -> name.regionMatches(
                        true, name.length() - format.ending.length(), format.ending, 0, format.ending.length()))
                .findFirst();
    }

    /** The chart in words; the last line ends with a line feed. */
    public String write(Chart chart, Options options) {
        return format(PatternWriter.write(chart, options), chart, options);
    }

    abstract String format(WrittenPattern words, Chart chart, Options options);

    private static Optional<String> picture(Chart chart, Options options) {
        PictureStyle style = PictureStyle.PRINT.withHand(options.hand());
        int rounds = chart.rounds().size();
        long perRound =
                chart.shape().stitches(rounds, style.repeatsOf(chart.shape().w()));
        if (2 * perRound * rounds > MOST_STITCHES) {
            return Optional.empty();
        }
        return Optional.of(SvgPicture.inPage(ChartPicture.corner(chart, style, Emphasis.NONE), "chart-"));
    }
}
