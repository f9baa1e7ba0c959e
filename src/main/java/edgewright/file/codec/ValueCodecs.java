package edgewright.file.codec;

import edgewright.chart.CleanText;
import edgewright.chart.HookSize;
import edgewright.chart.OwnSection;
import edgewright.file.fault.ChartFault;
import edgewright.file.fault.Problem.Shape;
import edgewright.file.json.JsonText;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Codecs of single values. */
final class ValueCodecs {
    /** The largest measure that a file may state, whatever its unit; far more than any border needs. */
    static final int LARGEST_MEASURE = 1_000_000;

    /** The smallest measure above 0, as fine as any is written back. */
    static final BigDecimal SMALLEST_MEASURE = new BigDecimal("0.01");

    /** Any text. */
    static final Codec<String> TEXT = text(0, Integer.MAX_VALUE, (text, in) -> Optional.of(text));

    /** A text that says something, of {@value OwnSection#LONGEST} characters at most. */
    static final Codec<String> WORDS = text(0, Integer.MAX_VALUE, (text, in) -> {
        if (CleanText.oneLine(text).isEmpty() || text.length() > OwnSection.LONGEST) {
            in.note(new ChartFault.NoWords(OwnSection.LONGEST));
            return Optional.empty();
        }
        return Optional.of(text);
    });

    /** True or false. */
    static final Codec<Boolean> TRUTH = of(
            new ValueSchema.Truth(),
            in -> in.standsOn(Shape.TRUE_OR_FALSE)
                    ? Optional.of(Boolean.valueOf(in.json().text()))
                    : Optional.empty(),
            String::valueOf);

    /** A measure: a number above 0 and up to {@value #LARGEST_MEASURE}, whole or not. */
    static final Codec<Double> MEASURE = measure(SMALLEST_MEASURE);

    /** A measure that may be 0. */
    static final Codec<Double> MEASURE_OR_NONE = measure(BigDecimal.ZERO);

    /** A measure that may be left out. */
    static final Codec<OptionalDouble> MAYBE_A_MEASURE = MEASURE.as(OptionalDouble::of, OptionalDouble::getAsDouble);

    /** The thickness of a hook in millimetres, to the hundredth. */
    static final Codec<Optional<HookSize>> HOOK =
            MEASURE.as(HookSize::ofMm, HookSize::mm).orNone();

    private ValueCodecs() {}

    /**
     * Texts under a law of their own.
     *
     * @param least the fewest characters
     * @param most the most characters
     * @param law takes the text, or notes why not and gives nothing
     */
    static Codec<String> text(int least, int most, BiFunction<String, Reading, Optional<String>> law) {
        return of(
                new ValueSchema.Text(least, most),
                in -> in.standsOn(Shape.TEXT) ? law.apply(in.json().text(), in) : Optional.empty(),
                JsonText::quoted);
    }

    /** A whole number in this range, however it is written: 2, 2.0 and 0.2e1 are one number, as they are to a JSON Schema. */
    static Codec<Integer> whole(int least, int most) {
        return of(
                new ValueSchema.Whole(least, most),
                in -> number(in, Shape.WHOLE_NUMBER).flatMap(number -> {
                    // Only a number in range is small enough to be looked at digit by digit: 1e999999999 is not.
                    if (!isBetween(number, BigDecimal.valueOf(least), most) || !isWhole(number)) {
                        in.note(new ChartFault.NotInRange(in.json().text(), least, most));
                        return Optional.empty();
                    }
                    return Optional.of(number.intValueExact());
                }),
                String::valueOf);
    }

    private static Codec<Double> measure(BigDecimal least) {
        return of(
                new ValueSchema.Measure(least, LARGEST_MEASURE),
                in -> number(in, Shape.NUMBER).flatMap(number -> {
                    if (!isBetween(number, least, LARGEST_MEASURE)) {
                        in.note(new ChartFault.NotAMeasure(in.json().text(), least.toPlainString(), LARGEST_MEASURE));
                        return Optional.empty();
                    }
                    return Optional.of(number.doubleValue());
                }),
                // Without an exponent and without digits that say nothing.
                number -> new BigDecimal(String.valueOf(number))
                        .stripTrailingZeros()
                        .toPlainString());
    }

    /** One of these constants, by its name in small letters. */
    static <E extends Enum<E>> Codec<E> choice(E[] constants) {
        return choice(constants, constant -> constant.name().toLowerCase(Locale.ROOT));
    }

    /** One of these constants, by the text that stands for each in the file. */
    static <E extends Enum<E>> Codec<E> choice(E[] constants, Function<E, String> written) {
        List<String> texts = Arrays.stream(constants).map(written).toList();
        Map<String, E> byText = Arrays.stream(constants).collect(Collectors.toMap(written, constant -> constant));
        return of(
                new ValueSchema.Choice(texts),
                in -> {
                    Optional<String> text = TEXT.read(in);
                    text.filter(name -> !byText.containsKey(name))
                            .ifPresent(name -> in.note(new ChartFault.NoSuchChoice(name, texts)));
                    return text.map(byText::get);
                },
                constant -> JsonText.quoted(written.apply(constant)));
    }

    /** A number, of which a sentence says that another shape was expected if it is none. */
    static Optional<BigDecimal> number(Reading in, Shape expected) {
        if (!in.standsOn(Shape.NUMBER, expected)) {
            return Optional.empty();
        }
        String text = in.json().text();
        try {
            return Optional.of(new BigDecimal(text));
        } catch (NumberFormatException e) {
            // More than ten digits in the exponent. Either far too large or next to nothing, and not whole in the
            // second case.
            return Optional.of(new BigDecimal(text.contains("e-") || text.contains("E-") ? "0.5" : "1e99"));
        }
    }

    private static boolean isBetween(BigDecimal number, BigDecimal least, int most) {
        return number.compareTo(least) >= 0 && number.compareTo(BigDecimal.valueOf(most)) <= 0;
    }

    /** Whether there is nothing after the decimal point. Only for numbers of a sensible size. */
    private static boolean isWhole(BigDecimal number) {
        return number.signum() == 0 || number.stripTrailingZeros().scale() <= 0;
    }

    /** A codec of these three parts. */
    static <T> Codec<T> of(ValueSchema form, Function<Reading, Optional<T>> reader, Function<T, String> writer) {
        return new Codec<>() {
            @Override
            public Optional<T> read(Reading in) {
                return reader.apply(in);
            }

            @Override
            public String write(T value) {
                return writer.apply(value);
            }

            @Override
            public ValueSchema form() {
                return form;
            }
        };
    }
}
