package edgewright.assist.picture;

/**
 * A picture in pixels, as it was read from a file. It is handed on, never compared or changed.
 *
 * @param width pixels across
 * @param height pixels down
 * @param argb row by row from the top left: alpha in bits 24 to 31, red, green, blue; {@code width * height} of them
 */
@SuppressWarnings("ArrayRecordComponent") // millions of pixels, handed on as they are
public record Pixels(int width, int height, int[] argb) {
    /** @throws IllegalArgumentException if there are not as many pixels as it says */
    public Pixels {
        if (width < 1 || height < 1 || (long) width * height != argb.length) {
            throw new IllegalArgumentException(argb.length + " pixels for " + width + " by " + height);
        }
    }
}
