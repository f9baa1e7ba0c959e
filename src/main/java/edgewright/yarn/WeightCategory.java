package edgewright.yarn;

import edgewright.chart.HookSize;
import edgewright.chart.PatternDetails;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * How thick a yarn is, in the categories that the Craft Yarn Council numbers from 0 to 7. A guide and no more: what the
 * pattern's own swatch measures goes before it.
 *
 * <p>Two editions of the table are about, and they differ. Sources: for the printed one
 * https://issuhub.com/view/index?id=3342&pageIndex=64; for the one on the web
 * https://cdn.shopify.com/s/files/1/0420/3118/6087/files/Yarn-Guide2.pdf and https://crochetnerd.com/tag/how-to-crochet/
 * (that it is the Council's present one, and its row of lace hooks: from memory).
 *
 * @param number 0 (lace) to 7 (jumbo)
 * @param stitches how many stitches there usually are in 10 cm: of the tall ones for category 0, of plain ones for all others
 * @param hookMm the hooks that it is usually worked with, in millimetres
 */
public record WeightCategory(int number, Span stitches, Span hookMm) {
    /** The editions of the table. */
    public enum Edition {
        /** As printed in magazines in 2018. */
        PRINT,
        /** As it stands on the web. */
        WEB
    }

    /** From one number to another, both included; an end that is not there is open. */
    public record Span(OptionalDouble from, OptionalDouble to) {
        static Span of(double from, double to) {
            return new Span(OptionalDouble.of(from), OptionalDouble.of(to));
        }

        static Span from(double from) {
            return new Span(OptionalDouble.of(from), OptionalDouble.empty());
        }

        static Span upTo(double to) {
            return new Span(OptionalDouble.empty(), OptionalDouble.of(to));
        }

        /** Whether the number lies within, or at an end. */
        public boolean has(double number) {
            return number >= from.orElse(Double.NEGATIVE_INFINITY) && number <= to.orElse(Double.POSITIVE_INFINITY);
        }
    }

    private static final List<WeightCategory> SAME = List.of(
            new WeightCategory(1, Span.of(21, 32), Span.of(2.25, 3.5)),
            new WeightCategory(2, Span.of(16, 20), Span.of(3.5, 4.5)),
            new WeightCategory(3, Span.of(12, 17), Span.of(4.5, 5.5)),
            new WeightCategory(4, Span.of(11, 14), Span.of(5.5, 6.5)),
            new WeightCategory(5, Span.of(8, 11), Span.of(6.5, 9)));

    /**
     * The category of that number.
     *
     * @throws IllegalArgumentException unless the number is 0 to 7
     */
    public static WeightCategory of(int number, Edition edition) {
        boolean print = edition == Edition.PRINT;
        return switch (number) {
            case 0 -> new WeightCategory(0, Span.of(32, 42), print ? Span.of(1.5, 2.25) : Span.of(1.4, 1.6));
            case 1, 2, 3, 4, 5 -> SAME.get(number - 1);
            case 6 -> new WeightCategory(6, Span.of(print ? 6 : 7, 9), Span.of(9, print ? 16 : 15));
            case 7 -> new WeightCategory(7, Span.upTo(print ? 5 : 6), Span.from(print ? 16 : 15));
            default -> throw new IllegalArgumentException("yarn weight " + number + ": expected 0 to 7");
        };
    }

    /** All categories of an edition, the thinnest first. */
    public static List<WeightCategory> all(Edition edition) {
        return IntStream.rangeClosed(0, PatternDetails.MOST_WEIGHT)
                .mapToObj(number -> of(number, edition))
                .toList();
    }

    /** Whether a yarn of this weight is usually worked with this hook, by either edition. */
    public static boolean isUsual(int number, HookSize hook) {
        return of(number, Edition.PRINT).hookMm().has(hook.mm())
                || of(number, Edition.WEB).hookMm().has(hook.mm());
    }
}
