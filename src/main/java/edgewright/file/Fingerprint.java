package edgewright.file;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Tells whether a file still has the bytes that it had: equal fingerprints, equal bytes. It knows nothing of times, which
 * change when a file is copied and may not change when it is written twice in a second.
 *
 * @param sha256 the SHA-256 of the bytes in hexadecimal
 */
public record Fingerprint(String sha256) {

    /** The fingerprint of these bytes. */
    public static Fingerprint of(byte[] bytes) {
        try {
            return new Fingerprint(HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
        } catch (NoSuchAlgorithmException e) {
            // Every Java has it; see the class documentation of MessageDigest.
            throw new IllegalStateException(e);
        }
    }
}
