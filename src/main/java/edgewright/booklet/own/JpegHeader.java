package edgewright.booklet.own;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** Walks through the segments of a JPEG to its end: ISO/IEC 10918-1, annex B. */
final class JpegHeader {
    private static final int START_OF_IMAGE = 0xd8;
    private static final int END_OF_IMAGE = 0xd9;
    private static final int START_OF_SCAN = 0xda;
    private static final int EXIF = 0xe1;
    private static final byte[] EXIF_MARK = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    private static final int MOST_COMPONENTS = 3;

    private final byte[] file;
    private int at = 2;
    private int width;
    private int height;
    private Orientation orientation = Orientation.UPRIGHT;

    private JpegHeader(byte[] file) {
        this.file = file;
    }

    static boolean begins(byte[] file) {
        return file.length > 3
                && (file[0] & 0xff) == 0xff
                && (file[1] & 0xff) == START_OF_IMAGE
                && (file[2] & 0xff) == 0xff;
    }

    /** A profile of colours is none of its concern: the library reads it together with the pixels. */
    static PictureHeader read(byte[] file) throws UnprintableException {
        JpegHeader header = new JpegHeader(file);
        header.walk();
        if (header.width == 0 || header.height == 0) {
            throw broken();
        }
        return new PictureHeader(PictureHeader.JPEG, header.width, header.height, header.orientation, Optional.empty());
    }

    private static UnprintableException broken() {
        return new UnprintableException(PhotoFault.Reason.BROKEN);
    }

    /** A file that was cut off has no end of image. */
    private void walk() throws UnprintableException {
        for (int marker = marker(); marker != END_OF_IMAGE; marker = marker()) {
            if (marker == 0x01 || (marker >= 0xd0 && marker <= START_OF_IMAGE)) {
                continue;
            }
            int length = at + 2 <= file.length ? word(at) : 0;
            if (length < 2 || at + length > file.length) {
                throw broken();
            }
            segment(marker, at + 2, at + length);
            at += length;
            if (marker == START_OF_SCAN) {
                passScan();
            }
        }
    }

    private void segment(int marker, int start, int end) throws UnprintableException {
        boolean frame = marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
        if (frame && width == 0) {
            if (end - start < 6) {
                throw broken();
            }
            height = word(start + 1);
            width = word(start + 3);
            if ((file[start + 5] & 0xff) > MOST_COMPONENTS) {
                throw new UnprintableException(PhotoFault.Reason.FOUR_INKS);
            }
        }
        int body = start + EXIF_MARK.length;
        if (marker == EXIF && body <= end && Arrays.equals(file, start, body, EXIF_MARK, 0, EXIF_MARK.length)) {
            orientation = Orientation.ofExif(ByteBuffer.wrap(file, body, end - body));
        }
    }

    /** The marker at the walk's place, past bytes that fill up and bytes that belong to nothing. */
    private int marker() throws UnprintableException {
        while (at < file.length && (file[at] & 0xff) != 0xff) {
            at++;
        }
        while (at < file.length && (file[at] & 0xff) == 0xff) {
            at++;
        }
        if (at >= file.length) {
            throw broken();
        }
        return file[at++] & 0xff;
    }

    /** In the data of a scan a byte of ones is followed by nought, or by the marker of a restart. */
    private void passScan() throws UnprintableException {
        while (at + 1 < file.length) {
            int next = file[at + 1] & 0xff;
            if ((file[at] & 0xff) == 0xff && next != 0 && next != 0xff && !(next >= 0xd0 && next <= 0xd7)) {
                return;
            }
            at++;
        }
        throw broken();
    }

    private int word(int offset) {
        return (file[offset] & 0xff) << 8 | (file[offset + 1] & 0xff);
    }
}
