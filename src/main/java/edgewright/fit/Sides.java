package edgewright.fit;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;

/** Asks the four sides in working order. */
final class Sides {
    private Sides() {}

    /** What each side answers. */
    static PerSide each(ToIntFunction<Side> number) {
        return new PerSide(
                number.applyAsInt(Side.TOP),
                number.applyAsInt(Side.LEFT),
                number.applyAsInt(Side.BOTTOM),
                number.applyAsInt(Side.RIGHT));
    }

    /** The sides that say yes, in working order. */
    static List<Side> where(Predicate<Side> said) {
        return Arrays.stream(Side.values()).filter(said).toList();
    }
}
