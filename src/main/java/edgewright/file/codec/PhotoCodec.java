package edgewright.file.codec;

import edgewright.chart.Extras;
import edgewright.chart.Photo;

/** A photograph: which file, the words that stand for it, and where it stands. */
final class PhotoCodec extends RecordCodec<Photo> {
    private final Member<Photo, String> file = required("file", ValueCodecs.WORDS, Photo::file);
    private final Member<Photo, String> alternative = required("alt", ValueCodecs.WORDS, Photo::alternative);
    private final Member<Photo, String> caption = usual("caption", ValueCodecs.TEXT, "", Photo::caption);
    private final Member<Photo, Photo.At> at =
            usual("at", ValueCodecs.choice(Photo.At.values()), Photo.At.GALLERY, Photo::at);

    @Override
    Photo make(FoundMembers found) {
        return new Photo(found.get(file), found.get(alternative), found.get(caption), found.get(at), found.extras());
    }

    @Override
    Extras extras(Photo photo) {
        return photo.extras();
    }
}
