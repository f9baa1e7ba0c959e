package edgewright.booklet.own;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera was held, as the tag {@code Orientation} of EXIF says it: where the first row and the first column of the stored
 * picture belong. Source: CIPA DC-008-2012, 4.6.4 A.
 */
enum Orientation {
    /** Row 0 is the top, column 0 the left. */
    UPRIGHT,
    /** Row 0 is the top, column 0 the right. */
    MIRRORED,
    /** Row 0 is the foot, column 0 the right. */
    HALF_TURN,
    /** Row 0 is the foot, column 0 the left. */
    UPSIDE_DOWN_MIRRORED,
    /** Row 0 is the left, column 0 the top. */
    TRANSPOSED,
    /** Row 0 is the right, column 0 the top: to be turned a quarter clockwise. */
    QUARTER_TURN,
    /** Row 0 is the right, column 0 the foot. */
    TRANSVERSED,
    /** Row 0 is the left, column 0 the foot: to be turned a quarter anticlockwise. */
    THREE_QUARTER_TURN;

    private static final int TAG = 0x0112;
    private static final int SHORT = 3;
    private static final int ENTRY_BYTES = 12;

    /** Whether width and height change places. */
    boolean isOnItsSide() {
        return ordinal() >= TRANSPOSED.ordinal();
    }

    /** The place, row by row, of what is shown at {@code x} and {@code y} in a stored picture of this size. */
    int stored(int x, int y, int width, int height) {
        int right = width - 1;
        int foot = height - 1;
        return switch (this) {
            case UPRIGHT -> y * width + x;
            case MIRRORED -> y * width + right - x;
            case HALF_TURN -> (foot - y) * width + right - x;
            case UPSIDE_DOWN_MIRRORED -> (foot - y) * width + x;
            case TRANSPOSED -> x * width + y;
            case QUARTER_TURN -> (foot - x) * width + y;
            case TRANSVERSED -> (foot - x) * width + right - y;
            case THREE_QUARTER_TURN -> x * width + right - y;
        };
    }

    /**
     * What the first directory of a block of EXIF says; upright if it says nothing, or nothing that makes sense.
     *
     * @param tiff the block, from its mark for the order of bytes on (TIFF 6.0, section 2)
     */
    static Orientation ofExif(ByteBuffer tiff) {
        ByteBuffer block = tiff.slice();
        if (block.remaining() < 8) {
            return UPRIGHT;
        }
        int mark = block.getShort(0);
        if (mark != 0x4949 && mark != 0x4d4d) {
            return UPRIGHT;
        }
        block.order(mark == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = block.getInt(4);
        if (block.getShort(2) != 42 || directory < 8 || directory > block.limit() - 2) {
            return UPRIGHT;
        }
        int entries = Short.toUnsignedInt(block.getShort(directory));
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + i * ENTRY_BYTES;
            if (entry > block.limit() - ENTRY_BYTES) {
                return UPRIGHT;
            }
            if (Short.toUnsignedInt(block.getShort(entry)) == TAG && block.getShort(entry + 2) == SHORT) {
                int value = block.getShort(entry + 8);
                return value >= 1 && value <= values().length ? values()[value - 1] : UPRIGHT;
            }
        }
        return UPRIGHT;
    }
}
