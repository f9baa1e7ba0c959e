package edgewright.testing;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Extras;
import edgewright.chart.Heading;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Start;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import edgewright.check.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

/** Charts by chance, the same for the same seed. They are not pretty, but nothing is too odd for them. */
public final class RandomCharts {
    private static final List<Yarn> YARNS = List.of(
            new Yarn("A", "Peat", Colour.parse("#2b2a33")),
            new Yarn("B", "Chalk", Colour.parse("#f2ead8")),
            new Yarn("C", "Fog", Colour.parse("#e4dccb")),
            new Yarn("D4", "Rust", Colour.parse("#a9502f")),
            new Yarn("E", "Mud", Colour.parse("#3f3d46")));

    /** Lengths around the edges of a word of 64 stitches, and small ones. */
    private static final int[] LENGTHS = {0, 0, 1, 1, 2, 3, 4, 5, 7, 12, 61, 62, 63, 64, 65, 127, 128, 130};

    private final Random random;

    public RandomCharts(long seed) {
        random = new Random(seed);
    }

    /** Any chart that is not ragged: every size of section, every stitch, every rule on or off. */
    public Chart any() {
        return chart(new SideShape(length(), Math.max(1, length()), length()), 1 + random.nextInt(7));
    }

    /** A small chart that is not ragged, with sections of no more than about ten stitches. */
    public Chart small() {
        return chart(new SideShape(random.nextInt(5), 1 + random.nextInt(6), random.nextInt(5)), 1 + random.nextInt(6));
    }

    /** A chart without error findings: what could not be worked is back-loop. */
    public Chart workable() {
        return workable(any());
    }

    /** The chart with back-loop stitches where others could not be worked. */
    public static Chart workable(Chart unworkable) {
        Chart chart = unworkable;
        List<Finding> errors = Checker.check(chart).errors();
        while (!errors.isEmpty()) {
            for (Finding error : errors) {
                var place = error.place().oneStitch().orElseThrow();
                Round round = chart.round(place.round());
                Stitches row = round.section(place.section()).with(place.place(), Stitch.BACK_LOOP);
                chart = chart.withRound(place.round(), round.with(place.section(), row));
            }
            errors = Checker.check(chart).errors();
        }
        return chart;
    }

    /** The same chart with starts: a column that is to be found, or any that it has; any two sides. */
    public Chart started(Chart chart) {
        int column = random.nextInt(chart.border().lastStart() + 1);
        Start start = new Start(
                column == 0 ? OptionalInt.empty() : OptionalInt.of(column),
                Side.values()[random.nextInt(4)],
                Side.values()[random.nextInt(4)]);
        return chart.withMaking(chart.making().withStart(Optional.of(start)));
    }

    /** A chart of this shape. */
    public Chart chart(SideShape shape, int rounds) {
        List<Yarn> yarns = YARNS.subList(0, 1 + random.nextInt(YARNS.size()));
        boolean inTurn = random.nextBoolean();
        List<Round> worked = new ArrayList<>();
        for (int r = 1; r <= rounds; r++) {
            int yarn = inTurn ? r % Math.min(2, yarns.size()) : random.nextInt(yarns.size());
            int[] weights = weights();
            worked.add(new Round(
                    yarns.get(yarn).id(),
                    row(shape.length(Section.FROM_CORNER, r), weights),
                    row(shape.length(Section.REPEAT, r), weights),
                    row(shape.length(Section.TO_CORNER, r), weights)));
        }
        return new Chart(Heading.of("By chance"), yarns, worked).withRules(rules());
    }

    /** A chart with one section or more of the wrong length, which round 1 never has. */
    public Chart ragged() {
        Chart chart = small();
        while (chart.raggedSections().isEmpty()) {
            chart = chart(chart.shape(Side.FIRST), 2 + random.nextInt(4));
            for (int times = 1 + random.nextInt(3); times > 0; times--) {
                int r = 2 + random.nextInt(chart.rounds().size() - 1);
                Section section = Section.values()[random.nextInt(3)];
                chart = chart.withRound(r, chart.round(r).with(section, row(random.nextInt(12), weights())));
            }
        }
        return chart;
    }

    /** The same chance as the charts, for a test that has to choose. */
    public Random random() {
        return random;
    }

    private Rules rules() {
        return new Rules(
                random.nextBoolean(),
                random.nextBoolean(),
                1 + random.nextInt(random.nextBoolean() ? 9 : 90),
                Extras.NONE);
    }

    private int length() {
        return LENGTHS[random.nextInt(LENGTHS.length)];
    }

    /** How often each stitch comes; some rounds are nearly all of one. */
    private int[] weights() {
        int[] weights = new int[Stitch.values().length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = 1 + random.nextInt(6);
        }
        int rare = random.nextInt(8);
        if (rare < weights.length) {
            weights[rare] *= 60;
        }
        return weights;
    }

    private Stitches row(int length, int[] weights) {
        int sum = weights[0] + weights[1] + weights[2] + weights[3];
        StringBuilder letters = new StringBuilder(length);
        for (int i = 0; i < length; i++) {
            int chance = random.nextInt(sum);
            int stitch = 0;
            while (chance >= weights[stitch]) {
                chance -= weights[stitch++];
            }
            letters.append(Stitch.values()[stitch].letter());
        }
        return Stitches.of(letters);
    }
}
