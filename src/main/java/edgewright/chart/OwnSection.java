package edgewright.chart;

import java.util.Objects;

/**
 * A text of the designer's own under a heading: an introduction, how to care for the piece, thanks.
 *
 * @param title the heading, in one line; never blank
 * @param text in the marks of CommonMark, of which emphasis, lists and links are understood; never blank
 */
public record OwnSection(String title, String text, Extras extras) {
    /** The most sections of a chart. */
    public static final int MOST = 24;

    /** The most characters of a text. */
    public static final int LONGEST = 20_000;

    public OwnSection {
        title = CleanText.oneLine(title);
        text = CleanText.lines(text);
        Objects.requireNonNull(extras);
        if (title.isEmpty() || text.isBlank() || text.length() > LONGEST) {
            throw new IllegalArgumentException("a section without a title or a text, or with one that is too long");
        }
    }

    /** A section with no unknown members. */
    public OwnSection(String title, String text) {
        this(title, text, Extras.NONE);
    }
}
