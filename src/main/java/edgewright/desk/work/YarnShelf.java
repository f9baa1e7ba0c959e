package edgewright.desk.work;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Yarn;
import edgewright.yarn.Contrast;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The colours that the desk lays ready, as of yarns of the marsh. */
public final class YarnShelf {
    /** All of them, as they lie on the shelf. */
    public static final List<Colour> COLOURS = List.of(
                    "2b2a33", "5a4b41", "8a7a66", "b9a98a", "f2ead8", "ffffff", "4d5f47", "7f9163", "a8392f", "c9772b",
                    "d8b04a", "5b5288", "8d84b5", "2f5a6b", "6c97a0", "b8cdd0")
            .stream()
            .map(hex -> Colour.parse("#" + hex))
            .toList();

    private YarnShelf() {}

    /** The one that is told best from every yarn that is there already, so that a new yarn may lie beside any of them. */
    public static Colour unlike(Collection<Colour> taken) {
        return COLOURS.stream()
                .max(Comparator.comparing((Colour colour) -> told(colour, taken))
                        .thenComparing(colour -> leastDifference(colour, taken)))
                .orElseThrow();
    }

    /** The one that is told best from every yarn of a chart. */
    public static Colour unlike(Chart chart) {
        return unlike(chart.yarns().stream().map(Yarn::colour).toList());
    }

    private static boolean told(Colour colour, Collection<Colour> taken) {
        return taken.stream().noneMatch(other -> Contrast.between(colour, other).isLow());
    }

    private static double leastDifference(Colour colour, Collection<Colour> taken) {
        return taken.stream()
                .mapToDouble(other -> Contrast.between(colour, other).difference())
                .min()
                .orElse(0);
    }
}
