package edgewright.assist.picture;

/** What came of reading a picture. */
public sealed interface PictureReading {

    /** The picture. */
    record Read(WantedPicture picture) implements PictureReading {}

    /** There is none. */
    record Refused(PictureFault fault) implements PictureReading {}
}
