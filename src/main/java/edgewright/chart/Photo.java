package edgewright.chart;

import java.util.Objects;

/**
 * A photograph of the designer's own.
 *
 * @param file its name, relative to the folder of the chart file; never blank
 * @param alternative the words that stand for it to whoever does not see it, in one line; never blank
 * @param caption what is printed under it, in one line; may be empty
 * @param at where in the pattern it stands
 */
public record Photo(String file, String alternative, String caption, At at, Extras extras) {
    /** The most photographs of a chart. */
    public static final int MOST = 16;

    /** Where in a pattern a photograph stands. */
    public enum At {
        /** On the first page, in the place of the drawn picture. Of several the first one; the others begin the gallery. */
        COVER,
        /** On the pages of photographs, after the pattern. */
        GALLERY,
        /** Beside the abbreviations, to show how a stitch is worked. */
        STITCHES,
        /** Beside the base round. */
        START,
        /** Beside the words on how a round is begun and closed. */
        JOINING,
        /** Beside the words on finishing. */
        FINISHING
    }

    public Photo {
        alternative = CleanText.oneLine(alternative);
        caption = CleanText.oneLine(caption);
        Objects.requireNonNull(at);
        Objects.requireNonNull(extras);
        if (file.isBlank() || alternative.isEmpty()) {
            throw new IllegalArgumentException("a photograph without a file or without words for it");
        }
    }

    /** A photograph with no unknown members. */
    public Photo(String file, String alternative, String caption, At at) {
        this(file, alternative, caption, at, Extras.NONE);
    }
}
