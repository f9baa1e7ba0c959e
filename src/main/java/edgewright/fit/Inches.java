package edgewright.fit;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.texts.Language;
import edgewright.texts.Messages;

/** Lengths in inches as makers say them: to the nearest quarter, such as 3\u00be. */
public final class Inches {
    /** Exact since 1959: https://www.nist.gov/pml/owm/si-units-length */
    private static final double MM = 25.4;

    private static final int QUARTERS = 4;

    private final Language language;
    private final Messages says;

    /** Lengths as that language writes them. */
    public Inches(Language language) {
        this.language = language;
        this.says = language.messages("fit");
    }

    /** The number alone, without a unit; a length that is less than an eighth of an inch is 0. */
    public String ofMm(double mm) {
        long quarters = quarters(mm);
        long whole = quarters / QUARTERS;
        long rest = quarters % QUARTERS;
        return whole == 0 && rest > 0
                ? says.text("inches-belowOne", count("quarters", rest))
                : says.text("inches", arg("whole", language.decimal((double) whole, 0)), count("quarters", rest));
    }

    /** The length in quarters of an inch, to the nearest one. */
    public static long quarters(double mm) {
        return Math.round(QUARTERS * mm / MM);
    }
}
