package edgewright.words;

import java.util.List;

/** A pattern in words, in the order in which it is printed. How it lies on a page is somebody else's concern. */
public record WrittenPattern(List<Part> parts) {
    public WrittenPattern {
        parts = List.copyOf(parts);
    }
}
