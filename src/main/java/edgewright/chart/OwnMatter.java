package edgewright.chart;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a designer adds to a pattern that does not follow from its chart. In print the first section stands before the pattern,
 * all others after it.
 *
 * @param photos at most {@value Photo#MOST}, in the order in which they are printed where several stand in one place
 * @param sections at most {@value OwnSection#MOST}, in the order in which they are printed
 * @param imprint the name of the imprint file, relative to the folder of the chart file; never blank
 */
public record OwnMatter(List<Photo> photos, List<OwnSection> sections, Optional<String> imprint) {
    /** Nothing is added. */
    public static final OwnMatter NONE = new OwnMatter(List.of(), List.of(), Optional.empty());

    public OwnMatter {
        photos = List.copyOf(photos);
        sections = List.copyOf(sections);
        Objects.requireNonNull(imprint);
        if (photos.size() > Photo.MOST || sections.size() > OwnSection.MOST) {
            throw new IllegalArgumentException(photos.size() + " photographs, " + sections.size() + " sections");
        }
        if (imprint.filter(String::isBlank).isPresent()) {
            throw new IllegalArgumentException("an imprint without a name");
        }
    }

    /** The same with other photographs. */
    public OwnMatter withPhotos(List<Photo> other) {
        return new OwnMatter(other, sections, imprint);
    }

    /** The same with other sections. */
    public OwnMatter withSections(List<OwnSection> other) {
        return new OwnMatter(photos, other, imprint);
    }

    /** The same with another imprint file, or none. */
    public OwnMatter withImprint(Optional<String> other) {
        return new OwnMatter(photos, sections, other);
    }
}
