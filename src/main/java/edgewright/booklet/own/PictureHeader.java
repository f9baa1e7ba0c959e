package edgewright.booklet.own;

import java.util.Optional;

/**
 * What the file of a picture says before its pixels.
 *
 * @param format as the library calls it
 * @param width of the picture as it is stored, in pixels
 * @param height of the same
 * @param profile the colour profile (ICC) by which its colours are still to be read
 */
@SuppressWarnings("ArrayRecordComponent") // handed on as it is, from the file to the library
record PictureHeader(String format, int width, int height, Orientation orientation, Optional<byte[]> profile) {
    static final String JPEG = "jpeg";
    static final String PNG = "png";

    long pixels() {
        return (long) width * height;
    }

    /** The header of a whole file. */
    static PictureHeader of(byte[] file) throws UnprintableException {
        if (JpegHeader.begins(file)) {
            return JpegHeader.read(file);
        }
        if (PngHeader.begins(file)) {
            return PngHeader.read(file);
        }
        throw new UnprintableException(PhotoFault.Reason.ANOTHER_KIND);
    }
}
