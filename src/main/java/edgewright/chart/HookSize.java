package edgewright.chart;

import java.util.List;
import java.util.Optional;

/**
 * A crochet hook by its thickness, the only measure that makers agree on; letters and numbers differ between them.
 *
 * <p>The sizes are the metric ones that two tables name: https://matifs.com/crochet-hooks-size-chart for those up to 10 mm and
 * https://cdn.shopify.com/s/files/1/2284/3931/files/Knitting_Needle_Conversion_Chart_0abb8724-d65e-4ae3-84d1-9a41893c7f1d.pdf
 * for 12 and 15 mm.
 *
 * @param hundredthsMm the thickness in hundredths of a millimetre; above 0. Hooks between the listed sizes exist
 */
public record HookSize(int hundredthsMm) implements Comparable<HookSize> {
    /** The thickest hook that a chart file or a written pattern may name. */
    public static final int MOST_HUNDREDTHS_MM = 100_000_000;

    private static final List<HookSize> LISTED = List.of(
                    200, 225, 250, 275, 300, 325, 350, 375, 400, 450, 500, 550, 600, 650, 700, 800, 900, 1000, 1200,
                    1500)
            .stream()
            .map(HookSize::new)
            .toList();

    public HookSize {
        if (hundredthsMm < 1) {
            throw new IllegalArgumentException("a hook of " + hundredthsMm + " hundredths of a millimetre");
        }
    }

    /** The hook of that thickness, to the nearest hundredth of a millimetre. */
    public static HookSize ofMm(double mm) {
        return new HookSize((int) Math.round(mm * 100));
    }

    /** The listed sizes, the thinnest first. */
    public static List<HookSize> listed() {
        return LISTED;
    }

    /** The next listed size below this one, which need not be listed itself; empty below the thinnest. */
    public Optional<HookSize> smaller() {
        return LISTED.stream().filter(size -> size.compareTo(this) < 0).reduce((thinner, thicker) -> thicker);
    }

    /** The thickness in millimetres. */
    public double mm() {
        return hundredthsMm / 100.0;
    }

    @Override
    public int compareTo(HookSize other) {
        return Integer.compare(hundredthsMm, other.hundredthsMm);
    }

    /** Millimetres with no more digits than are needed and a full stop, such as {@code 4.5}. What people read goes by their language. */
    @Override
    public String toString() {
        int whole = hundredthsMm / 100;
        int rest = hundredthsMm % 100;
        if (rest == 0) {
            return String.valueOf(whole);
        }
        String digits = String.valueOf(100 + rest).substring(1);
        return whole + "." + (rest % 10 == 0 ? digits.substring(0, 1) : digits);
    }
}
