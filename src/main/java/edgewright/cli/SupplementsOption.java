package edgewright.cli;

import edgewright.booklet.choice.Supplements;
import java.util.EnumSet;
import java.util.Set;
import picocli.CommandLine.Option;

/** Which supplements are left out of a printed pattern. */
final class SupplementsOption {
    /** A supplement as it is called on the command line. */
    enum Supplement {
        GUIDE,
        WORKSHEET,
        YARN
    }

    @Option(names = "--leave-out", paramLabel = "guide|worksheet|yarn", split = ",")
    private Set<Supplement> leftOut = EnumSet.noneOf(Supplement.class);

    Supplements supplements() {
        return new Supplements(
                !leftOut.contains(Supplement.GUIDE),
                !leftOut.contains(Supplement.WORKSHEET),
                !leftOut.contains(Supplement.YARN));
    }
}
