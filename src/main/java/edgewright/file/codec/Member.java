package edgewright.file.codec;

import java.util.Optional;
import java.util.function.Function;

/**
 * One member of the objects that a record is kept in.
 *
 * @param name as it stands in the file
 * @param ifAbsent what its absence stands for; empty for a member that every such object must have
 * @param alwaysWritten whether it is written even when it says no more than its absence would
 * @param of the member of a record that is to be written
 * @param <R> the record
 * @param <T> what the member stands for
 */
record Member<R, T>(String name, Codec<T> codec, Optional<T> ifAbsent, boolean alwaysWritten, Function<R, T> of) {

    boolean isRequired() {
        return ifAbsent.isEmpty();
    }

    /** The member of this record as JSON text; empty if it is left out. */
    Optional<String> written(R record) {
        T value = of.apply(record);
        boolean saysNothing = !alwaysWritten && ifAbsent.equals(Optional.of(value));
        return saysNothing ? Optional.empty() : Optional.of(codec.write(value));
    }
}
