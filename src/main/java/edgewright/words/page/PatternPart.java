package edgewright.words.page;

import java.util.List;
import java.util.Objects;

/**
 * One part of a written pattern.
 *
 * @param heading one line; that of the first part is the title, and may be empty
 */
public record PatternPart(Kind kind, String heading, List<TextBlock> blocks) {
    /** The parts in the order in which they are printed. A part with nothing to say is left out. */
    public enum Kind {
        /** Title, designer, and whether it is a draft. */
        HEADING,
        /** UK or US. In every pattern. */
        TERMS,
        /** Yarns. */
        NEEDS,
        /** What the designer has to say, in the designer's own words. */
        DESIGNER_NOTES,
        /** How the words are to be understood. */
        NOTES,
        /** The abbreviations that are used. */
        ABBREVIATIONS,
        /** The base round. */
        SET_UP,
        /** How the yarn of a round is joined, and how its end is closed. */
        JOINING,
        /** The rounds. */
        ROUNDS,
        /** The back layer of a double border, and how the layers are joined. */
        BACK,
        /** The techniques that the pattern uses, with figures. Left out unless asked for. */
        TECHNIQUES,
        /** The ends. */
        FINISHING,
        /** The stitches of each round in a table; looked up rather than read. */
        COUNTS
    }

    public PatternPart {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(heading);
        blocks = List.copyOf(blocks);
    }
}
