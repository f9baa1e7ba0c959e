package edgewright.booklet.own;

import java.util.Objects;

/**
 * What is wrong with a picture in a file.
 *
 * @param number what goes with the reason: the bytes or the pixels of what is too large; else 0
 */
record PhotoFault(Reason reason, long number) {
    /** Why a picture is not printed. */
    enum Reason {
        /** The name leads out of the folder, by itself or by a symbolic link. */
        OUTSIDE,
        /** There is no such file. */
        NOT_FOUND,
        /** A folder, or something else that is no file. */
        NO_FILE,
        /** The system does not let it be read. */
        NOT_READABLE,
        /** Too many bytes. */
        LARGE_FILE,
        /** Neither JPEG nor PNG. */
        ANOTHER_KIND,
        /** Too many pixels; none of them was looked at. */
        MANY_PIXELS,
        /** A JPEG in the four inks of a press. */
        FOUR_INKS,
        /** Cut off, damaged, or of a kind that is not read. */
        BROKEN
    }

    PhotoFault {
        Objects.requireNonNull(reason);
    }

    static PhotoFault of(Reason reason) {
        return new PhotoFault(reason, 0);
    }
}
