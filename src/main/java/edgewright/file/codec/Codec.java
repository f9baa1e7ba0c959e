package edgewright.file.codec;

import java.util.Optional;
import java.util.function.Function;

/**
 * One kind of value of a file, read and written side by side. Codecs hold no state: what a reading finds stands in its {@link
 * Reading}.
 *
 * @param <T> what the value stands for in the program
 */
interface Codec<T> {
    /**
     * The value that the reading stands on, which is then passed.
     *
     * @return empty if it is not what it ought to be; why is noted in the reading
     */
    Optional<T> read(Reading in);

    /** The value as JSON text, as it is read again. */
    String write(T value);

    /** What a schema says of such values. */
    ValueSchema form();

    /** The same values of a file as another type of the program. */
    default <U> Codec<U> as(Function<T, U> to, Function<U, T> from) {
        Codec<T> plain = this;
        return new Codec<>() {
            @Override
            public Optional<U> read(Reading in) {
                return plain.read(in).map(to);
            }

            @Override
            public String write(U value) {
                return plain.write(from.apply(value));
            }

            @Override
            public ValueSchema form() {
                return plain.form();
            }
        };
    }

    /** The same values, each of which may also be left out of its object. */
    default Codec<Optional<T>> orNone() {
        return as(Optional::of, Optional::orElseThrow);
    }
}
