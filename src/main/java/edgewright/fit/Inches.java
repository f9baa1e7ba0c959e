package edgewright.fit;

/** A length in inches as makers say it: to the nearest quarter, such as 3\u00be. */
public final class Inches {
    /** Exact since 1959: https://www.nist.gov/pml/owm/si-units-length */
    private static final double MM = 25.4;

    private static final int QUARTERS = 4;
    private static final String[] FRACTIONS = {"", "\u00bc", "\u00bd", "\u00be"};

    private Inches() {}

    /** The number alone, without a unit; a length that is less than an eighth of an inch is 0. */
    public static String ofMm(double mm) {
        long quarters = Math.round(QUARTERS * mm / MM);
        String fraction = FRACTIONS[(int) (quarters % QUARTERS)];
        long whole = quarters / QUARTERS;
        return whole == 0 && !fraction.isEmpty() ? fraction : whole + fraction;
    }
}
