package edgewright.words.said;

import edgewright.chart.Side;
import edgewright.words.tree.StretchPlace;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A line, or a cell of a table, with its pieces that say stitches.
 *
 * @param spans in the order in which they begin, an outer one before those within it; any two lie within each other or apart
 */
public record SaidText(String text, List<SaidSpan> spans) {
    public SaidText {
        Objects.requireNonNull(text);
        spans = List.copyOf(spans);
    }

    /** The smallest piece in which a character stands, counted from 0; empty where it says no stitch. */
    public Optional<SaidSpan> at(int character) {
        return last(spans.stream().filter(span -> span.holds(character)).toList());
    }

    /** The smallest piece that says a stitch; empty if none does. */
    public Optional<SaidSpan> saying(Side side, StretchPlace place) {
        return last(spans.stream().filter(span -> span.said().says(side, place)).toList());
    }

    /** The words of a piece. */
    public String words(SaidSpan span) {
        return text.substring(span.begin(), span.end());
    }

    private static Optional<SaidSpan> last(List<SaidSpan> within) {
        return within.isEmpty() ? Optional.empty() : Optional.of(within.get(within.size() - 1));
    }
}
