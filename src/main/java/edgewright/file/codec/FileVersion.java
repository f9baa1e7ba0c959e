package edgewright.file.codec;

import edgewright.file.fault.ChartFault;
import edgewright.file.fault.Problem.Shape;
import edgewright.file.json.JsonText;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What a file says of itself: its kind and its version.
 *
 * @param format what the member {@code format} says
 * @param newest the version that is written, and the only one that is read
 */
record FileVersion(String format, int newest) {

    /** Reads whatever text stands there; whether it is the right one decides whether all else matters. */
    Codec<String> formatCodec() {
        return ValueCodecs.of(new ValueSchema.OneText(format), ValueCodecs.TEXT::read, JsonText::quoted);
    }

    /** A newer version is noted alone: what else is wrong with the file may be right there. */
    Codec<Integer> versionCodec() {
        return ValueCodecs.of(
                new ValueSchema.OneNumber(newest),
                in -> {
                    Optional<BigDecimal> found = ValueCodecs.number(in, Shape.WHOLE_NUMBER);
                    found.ifPresent(version -> judge(version.compareTo(BigDecimal.valueOf(newest)), in));
                    return found.map(version -> newest);
                },
                String::valueOf);
    }

    private void judge(int order, Reading in) {
        String written = in.json().text();
        if (order > 0) {
            in.noteOnly(in.here(new ChartFault.NewerVersion(written, newest)));
        } else if (order < 0) {
            in.note(new ChartFault.NoSuchVersion(written, newest));
        }
    }
}
