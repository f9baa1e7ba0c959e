package edgewright.booklet.own;

import edgewright.chart.Photo;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The files that belong to a chart, ready for print.
 *
 * @param photos in the order of the chart
 */
public record PrintedMatter(List<PrintedPhoto> photos, Optional<PrintedImprint> imprint) {
    /** No files. */
    public static final PrintedMatter NONE = new PrintedMatter(List.of(), Optional.empty());

    public PrintedMatter {
        photos = List.copyOf(photos);
        Objects.requireNonNull(imprint);
    }

    /** The photograph of the first page: the first of those that are meant for it. */
    public Optional<PrintedPhoto> cover() {
        return at(Photo.At.COVER).stream().findFirst();
    }

    /** The photographs of the gallery: those that found no place on the first page, then those that are meant for it. */
    public List<PrintedPhoto> gallery() {
        return photos.stream()
                .filter(photo -> photo.photo().at() == Photo.At.GALLERY
                        || (photo.photo().at() == Photo.At.COVER
                                && !Optional.of(photo).equals(cover())))
                .toList();
    }

    /** The photographs of this place, in their order. */
    public List<PrintedPhoto> at(Photo.At place) {
        return photos.stream().filter(photo -> photo.photo().at() == place).toList();
    }
}
