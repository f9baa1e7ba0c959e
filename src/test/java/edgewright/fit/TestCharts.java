package edgewright.fit;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Heading;
import edgewright.chart.Round;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/** Charts for the tests of this package. */
final class TestCharts {
    private static final List<Yarn> YARNS =
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));

    private TestCharts() {}

    /** A line a round, the outermost first as it lies on the table: from the corner, repeat, to the corner. */
    public static Chart chart(String rounds) {
        List<Round> read = new ArrayList<>();
        for (String line : rounds.strip().split("\n")) {
            String[] sections = line.strip().split(" +");
            read.add(0, Round.of("A", sections[0], sections[1], sections[2]));
        }
        return of(read);
    }

    /** Plain rounds, and from {@code firstLong} on rounds whose repeat begins with a long stitch. */
    public static Chart chart(SideShape shape, int rounds, int firstLong) {
        List<Round> made = new ArrayList<>();
        for (int r = 1; r <= rounds; r++) {
            Stitches repeat = Stitches.backLoops(shape.w());
            made.add(new Round(
                    "A",
                    Stitches.backLoops(shape.a() + r),
                    r >= firstLong && (r - firstLong) % 2 == 0 ? repeat.with(1, Stitch.LONG) : repeat,
                    Stitches.backLoops(shape.b() + r)));
        }
        return of(made);
    }

    /** Rounds with long stitches here and there, more of them where {@code density} is nearer to 1. */
    static Chart random(RandomGenerator random, SideShape shape, int rounds, double density) {
        List<Round> made = new ArrayList<>();
        for (int r = 1; r <= rounds; r++) {
            made.add(new Round(
                    "A",
                    random(random, shape.a() + r, density),
                    random(random, shape.w(), density),
                    random(random, shape.b() + r, density)));
        }
        return of(made);
    }

    private static Stitches random(RandomGenerator random, int length, double density) {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < length; i++) {
            letters.append(random.nextDouble() < density ? 'l' : 'b');
        }
        return Stitches.of(letters);
    }

    private static Chart of(List<Round> rounds) {
        return new Chart(new Heading("Mud Ripple", "Saltmarsh Studio", "", Terms.UK), YARNS, rounds);
    }
}
