package edgewright.booklet.own;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.InflaterInputStream;

/** Walks through the chunks of a PNG to its end: https://www.w3.org/TR/png-3/#5DataRep */
final class PngHeader {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

    /** Length, name and checksum of a chunk. */
    private static final int FRAME_BYTES = 12;

    /** Profiles are of some kilobytes; packed ones could be of any size. */
    private static final int MOST_PROFILE_BYTES = 4 * 1024 * 1024;

    private final ByteBuffer file;
    private int width;
    private int height;
    private boolean ended;
    private Orientation orientation = Orientation.UPRIGHT;
    private Optional<byte[]> profile = Optional.empty();

    private PngHeader(byte[] file) {
        this.file = ByteBuffer.wrap(file);
    }

    static boolean begins(byte[] file) {
        return file.length > SIGNATURE.length
                && Arrays.equals(file, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length);
    }

    static PictureHeader read(byte[] file) throws UnprintableException {
        PngHeader header = new PngHeader(file);
        header.walk();
        if (header.width <= 0 || header.height <= 0 || !header.ended) {
            throw new UnprintableException(PhotoFault.Reason.BROKEN);
        }
        return new PictureHeader(PictureHeader.PNG, header.width, header.height, header.orientation, header.profile);
    }

    private void walk() throws UnprintableException {
        int at = SIGNATURE.length;
        while (!ended && at <= file.limit() - FRAME_BYTES) {
            int length = file.getInt(at);
            if (length < 0 || length > file.limit() - FRAME_BYTES - at || !isSound(at, length)) {
                throw new UnprintableException(PhotoFault.Reason.BROKEN);
            }
            chunk(new String(file.array(), at + 4, 4, StandardCharsets.ISO_8859_1), at + 8, length);
            at += FRAME_BYTES + length;
        }
    }

    private boolean isSound(int at, int length) {
        CRC32 sum = new CRC32();
        sum.update(file.array(), at + 4, length + 4);
        return (int) sum.getValue() == file.getInt(at + 8 + length);
    }

    private void chunk(String name, int start, int length) {
        switch (name) {
            case "IHDR" -> {
                if (length >= 8) {
                    width = file.getInt(start);
                    height = file.getInt(start + 4);
                }
            }
            case "eXIf" ->
                orientation =
                        Orientation.ofExif(file.duplicate().position(start).limit(start + length));
            case "iCCP" -> profile = profile(start, start + length);
            case "IEND" -> ended = true;
            default -> {}
        }
    }

    /** A name, a nought, the way of packing, and the packed profile. One that cannot be unpacked counts as none. */
    private Optional<byte[]> profile(int start, int end) {
        int name = start;
        while (name < end && file.get(name) != 0) {
            name++;
        }
        int packed = Math.min(name + 2, end);
        try (InputStream in = new InflaterInputStream(new ByteArrayInputStream(file.array(), packed, end - packed))) {
            byte[] bytes = in.readNBytes(MOST_PROFILE_BYTES + 1);
            return bytes.length > MOST_PROFILE_BYTES ? Optional.empty() : Optional.of(bytes);
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
