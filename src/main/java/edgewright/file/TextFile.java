package edgewright.file;

import edgewright.file.fault.FileFault;
import edgewright.file.fault.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads files of text in UTF-8, of 16 MiB at most. */
public final class TextFile {
    /** The most bytes of a file: 16 MiB. */
    static final int MOST_BYTES = 16 * 1024 * 1024;

    private TextFile() {}

    /**
     * The text of a file.
     *
     * @throws FileProblemException if it is not there, cannot be read, is too large or is not UTF-8
     */
    public static String read(Path file) throws FileProblemException {
        return text(bytes(file));
    }

    /**
     * All bytes of a file, whether it is text or not.
     *
     * @throws FileProblemException if it is not there, cannot be read or is too large
     */
    public static byte[] bytes(Path file) throws FileProblemException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new FileProblemException(Problem.ofFile(new FileFault.TooLarge(MOST_BYTES)), null);
            }
            return bytes;
        } catch (FileProblemException e) {
            throw e;
        } catch (IOException e) {
            throw new FileProblemException(SystemProblems.ofReading(file, e), e);
        }
    }

    /**
     * The text that these bytes are.
     *
     * @throws FileProblemException if they are not UTF-8
     */
    public static String text(byte[] bytes) throws FileProblemException {
        CharBuffer text = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes), text, true);
        text.flip();
        if (result.isError()) {
            int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
            throw new FileProblemException(Problem.atLine(FileFault.Simple.NOT_UTF8, line), null);
        }
        return text.toString();
    }

    /** A text without the byte order mark that some editors put at its start. RFC 8259, 8.1: parsers may ignore it, nobody may write it. */
    static String withoutByteOrderMark(String text) {
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }
}
