package edgewright.yarn;

import static java.util.Map.entry;

import edgewright.chart.HookSize;
import java.util.Map;
import java.util.Optional;

/**
 * What hooks are called beside their thickness. Millimetres come first everywhere: letters and numbers differ between makers
 * and tables, and no body looks after the numbers that are old in the UK.
 */
public final class HookNames {
    /**
     * The US names. Source: the Craft Yarn Council's table, from memory; the sizes of 2.25, 2.75 to 4, 4.5 to 10 and 15 mm also
     * in
     * https://cdn.shopify.com/s/files/1/2284/3931/files/Knitting_Needle_Conversion_Chart_0abb8724-d65e-4ae3-84d1-9a41893c7f1d.pdf
     */
    private static final Map<HookSize, String> US = Map.ofEntries(
            entry(mm(2.25), "B-1"),
            entry(mm(2.75), "C-2"),
            entry(mm(3.25), "D-3"),
            entry(mm(3.5), "E-4"),
            entry(mm(3.75), "F-5"),
            entry(mm(4), "G-6"),
            entry(mm(4.5), "7"),
            entry(mm(5), "H-8"),
            entry(mm(5.5), "I-9"),
            entry(mm(6), "J-10"),
            entry(mm(6.5), "K-10\u00bd"),
            entry(mm(8), "L-11"),
            entry(mm(9), "M/N-13"),
            entry(mm(10), "N/P-15"),
            entry(mm(11.5), "P-16"),
            entry(mm(15), "P/Q"),
            entry(mm(15.75), "Q"),
            entry(mm(16), "Q"),
            entry(mm(19), "S"));

    /**
     * The old UK numbers in which two tables agree; a hook on which they do not has none. Sources:
     * https://matifs.com/crochet-hooks-size-chart
     * https://cdn.shopify.com/s/files/1/2284/3931/files/Knitting_Needle_Conversion_Chart_0abb8724-d65e-4ae3-84d1-9a41893c7f1d.pdf
     */
    private static final Map<HookSize, String> UK = Map.ofEntries(
            entry(mm(2), "14"),
            entry(mm(2.25), "13"),
            entry(mm(2.75), "12"),
            entry(mm(3.25), "10"),
            entry(mm(4), "8"),
            entry(mm(4.5), "7"),
            entry(mm(5), "6"),
            entry(mm(5.5), "5"),
            entry(mm(6), "4"),
            entry(mm(6.5), "3"),
            entry(mm(8), "0"),
            entry(mm(9), "00"),
            entry(mm(10), "000"));

    private HookNames() {}

    /** What the hook is called in the US, such as {@code H-8}; empty where the table has no name. */
    public static Optional<String> us(HookSize hook) {
        return Optional.ofNullable(US.get(hook));
    }

    /** The old UK number of the hook, such as {@code 6}; empty where two tables do not agree in one. */
    public static Optional<String> uk(HookSize hook) {
        return Optional.ofNullable(UK.get(hook));
    }

    private static HookSize mm(double mm) {
        return HookSize.ofMm(mm);
    }
}
