package edgewright.booklet.own;

/**
 * A picture as the bytes of a file that holds nothing but its pixels: no place, no camera, no date.
 *
 * @param mediaType {@code image/jpeg} or {@code image/png}
 * @param width in pixels
 * @param height in pixels
 */
@SuppressWarnings("ArrayRecordComponent") // handed on as it is, to a page or a document
public record EncodedPicture(byte[] bytes, String mediaType, int width, int height) {}
