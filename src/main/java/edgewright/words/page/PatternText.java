package edgewright.words.page;

import java.util.List;

/** A pattern in words, in the order in which it is printed. How it lies on a page is somebody else's concern. */
public record PatternText(List<PatternPart> parts) {
    public PatternText {
        parts = List.copyOf(parts);
    }
}
