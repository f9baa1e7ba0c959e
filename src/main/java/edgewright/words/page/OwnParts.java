package edgewright.words.page;

import edgewright.words.own.OwnText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What a designer adds to a written pattern.
 *
 * @param cover the picture of the first page
 * @param opening what stands before the pattern
 * @param beside pictures after parts of the pattern
 * @param closing what stands after it
 * @param pictureTitle what stands over pictures where they are told of, and not shown
 * @param imprint who publishes, a line each
 */
public record OwnParts(
        Optional<Picture> cover,
        List<Part> opening,
        Map<PatternPart.Kind, List<Picture>> beside,
        List<Part> closing,
        String pictureTitle,
        List<Line> imprint) {
    /** Nothing is added. */
    public static final OwnParts NONE = new OwnParts(Optional.empty(), List.of(), Map.of(), List.of(), "", List.of());

    public OwnParts {
        Objects.requireNonNull(cover);
        opening = List.copyOf(opening);
        beside = Map.copyOf(beside);
        closing = List.copyOf(closing);
        Objects.requireNonNull(pictureTitle);
        imprint = List.copyOf(imprint);
    }

    /**
     * A part under a heading.
     *
     * @param pictures after the text
     */
    public record Part(String title, OwnText text, List<Picture> pictures) {
        public Part {
            pictures = List.copyOf(pictures);
        }
    }

    /** A word and what is to be said of it. */
    public record Line(String label, OwnText text) {}

    /**
     * A picture.
     *
     * @param alternative the words that stand for it
     * @param caption may be empty
     * @param source what shows it in a page, as a URL that holds the whole of it
     * @param width of that, in pixels
     * @param height of that, in pixels
     */
    public record Picture(String alternative, String caption, String source, int width, int height) {
        /** What is said of it where it is not shown. */
        String words() {
            return caption.isEmpty() ? alternative : caption + " (" + alternative + ")";
        }
    }

    /** The same without what stands before the pattern, or after it. */
    public OwnParts without(boolean before, boolean after) {
        return new OwnParts(
                cover, before ? List.of() : opening, beside, after ? List.of() : closing, pictureTitle, imprint);
    }

    /** The pictures after a part of the pattern. */
    List<Picture> beside(PatternPart.Kind part) {
        return beside.getOrDefault(part, List.of());
    }

    /** All pictures, in the order in which they stand. */
    List<Picture> pictures() {
        List<Picture> pictures = new ArrayList<>(cover.stream().toList());
        for (PatternPart.Kind part : PatternPart.Kind.values()) {
            pictures.addAll(beside(part));
        }
        closing.forEach(part -> pictures.addAll(part.pictures()));
        return pictures;
    }

    /** What is told in words before or after a pattern whose pages show no pictures. */
    Told told(boolean afterwards) {
        List<Part> parts = (afterwards ? closing : opening)
                .stream().filter(part -> !part.text().blocks().isEmpty()).toList();
        return afterwards ? new Told(parts, pictures(), imprint) : new Told(parts, List.of(), List.of());
    }

    /** Parts that have a text, what pictures show, and who publishes. */
    record Told(List<Part> parts, List<Picture> pictures, List<Line> imprint) {
        boolean isEmpty() {
            return parts.isEmpty() && pictures.isEmpty() && imprint.isEmpty();
        }
    }
}
