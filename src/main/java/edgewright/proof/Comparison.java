package edgewright.proof;

import edgewright.chart.Chart;
import edgewright.chart.CornerEnd;
import edgewright.chart.Landing;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.fit.BackLayer;
import edgewright.hands.BackFabric;
import edgewright.hands.Fabric;
import edgewright.hands.FabricStitch;
import edgewright.words.tree.BackRound;
import edgewright.words.tree.PatternYarn;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Holds what came off the hook to the chart: every round, yarn, corner and count, and for every stitch which it is, where it
 * landed and which yarn shows there.
 */
final class Comparison {
    private final Chart chart;
    private final SideShape shape;
    private final PerSide<Integer> repeats;
    private final Fabric fabric;
    private final List<PatternYarn> yarns;
    private final int first;
    private final List<Difference> differences = new ArrayList<>();

    private Comparison(Chart chart, PerSide<Integer> repeats, Fabric fabric, List<PatternYarn> yarns, int first) {
        this.chart = chart;
        this.shape = chart.shape();
        this.repeats = repeats;
        this.fabric = fabric;
        this.yarns = yarns;
        this.first = first;
    }

    /**
     * All differences in working order; empty if the fabric is what the chart says.
     *
     * @param repeats how often the repeat was to be worked on each side
     * @param yarns the yarns of the pattern that was worked
     */
    static List<Difference> of(Chart chart, PerSide<Integer> repeats, Fabric fabric, List<PatternYarn> yarns) {
        return of(chart, repeats, fabric, yarns, 0);
    }

    /**
     * The same for a piece whose counts are put right on the way: before that the sides have other stitches, and only the
     * yarns and the corners are compared.
     *
     * @param first the first round whose stitches are compared; 0 for all
     */
    static List<Difference> of(
            Chart chart, PerSide<Integer> repeats, Fabric fabric, List<PatternYarn> yarns, int first) {
        Comparison comparison = new Comparison(chart, repeats, fabric, yarns, first);
        comparison.compareRounds();
        comparison.compareBack();
        return List.copyOf(comparison.differences);
    }

    private void compareRounds() {
        int rounds = chart.rounds().size();
        for (int r = 1; r <= Math.min(rounds, fabric.rounds()); r++) {
            compareYarn(r);
            compare(Difference.Kind.CORNER, r, 0, 0, chart.corner().chains(), fabric.cornerChains(r));
            for (Side side : Side.values()) {
                if (r >= first) {
                    compareSide(r, side);
                }
            }
        }
        compare(Difference.Kind.ROUNDS, Math.min(rounds, fabric.rounds()), 0, 0, rounds, fabric.rounds());
    }

    private void compareBack() {
        Optional<BackFabric> back = fabric.back();
        if (chart.making().back().isEmpty() || back.isEmpty()) {
            int expected =
                    chart.making().back().isEmpty() ? 0 : layer().rounds().size();
            compare(
                    Difference.Kind.BACK_ROUNDS,
                    0,
                    0,
                    0,
                    expected,
                    back.map(BackFabric::rounds).orElse(0));
            return;
        }
        BackFabric made = back.get();
        List<BackLayer.Round> rounds = layer().rounds();
        compare(Difference.Kind.BACK_ROUNDS, 0, 0, 0, rounds.size(), made.rounds());
        for (int r = 1; r <= Math.min(rounds.size(), made.rounds()); r++) {
            int high = made.height(r) == BackRound.Height.TALL ? 2 : 1;
            compare(
                    Difference.Kind.BACK_HEIGHT,
                    r,
                    0,
                    0,
                    rounds.get(r - 1).stitch().frontRounds(),
                    high);
            compare(Difference.Kind.CORNER, r, 0, 0, chart.corner().chains(), made.cornerChains(r));
            for (Side side : Side.values()) {
                int expected = layer().stitches(r, repeats).get(side);
                int found = made.side(r, side.ordinal()).size();
                compare(Difference.Kind.BACK_COUNT, r, side.ordinal(), 0, expected, found);
            }
        }
        long joins = layer().joining(repeats, chart.corner().chains()).total();
        compare(Difference.Kind.JOINS, 0, 0, 0, joins, made.joins());
    }

    private BackLayer layer() {
        return new BackLayer(shape, chart.rounds().size());
    }

    private void compareYarn(int round) {
        Yarn expected = chart.yarnOf(round);
        PatternYarn found = yarns.stream()
                .filter(yarn -> yarn.id().equals(fabric.yarn(round)))
                .findFirst()
                .orElseThrow();
        boolean named = !expected.name().isBlank() && !found.name().isBlank();
        long sameName = chart.yarns().stream()
                .filter(yarn -> same(yarn.name(), expected.name()))
                .count();
        boolean agree = (named && sameName == 1)
                ? same(found.name(), expected.name())
                : found.id().equals(expected.id());
        if (!agree) {
            add(
                    Difference.Kind.YARN,
                    round,
                    0,
                    0,
                    label(expected.name(), expected.id()),
                    label(found.name(), found.id()));
        }
    }

    private void compareSide(int round, Side side) {
        int times = repeats.get(side);
        int index = side.ordinal();
        List<FabricStitch> made = fabric.side(round, index);
        int expected = shape.stitches(round, times);
        compare(Difference.Kind.COUNT, round, index, 0, expected, made.size());
        for (int p = 1; p <= Math.min(expected, made.size()); p++) {
            compareStitch(shape.placeOf(new SidePlace(round, p), times), made.get(p - 1), times);
        }
    }

    private void compareStitch(Place place, FabricStitch made, int times) {
        Stitch expected = chart.stitch(place);
        Stitch found = made.stitch().orElseThrow();
        if (expected != found) {
            add(
                    Difference.Kind.STITCH,
                    made.round(),
                    made.side(),
                    made.number(),
                    String.valueOf(expected.letter()),
                    String.valueOf(found.letter()));
            return;
        }
        // What lies below the changed round is numbered otherwise than in the chart.
        if (expected == Stitch.LONG && made.round() - 2 >= first) {
            String landed =
                    made.into().map(into -> into.round() + ":" + into.number()).orElse("nowhere");
            String sideOfLanding =
                    made.into().map(into -> " side " + into.side()).orElse("");
            String meant = landing(place, made, times);
            if (!meant.equals(landed) || !sideOfLanding.equals(" side " + made.side())) {
                add(Difference.Kind.LANDING, made.round(), made.side(), made.number(), meant, landed + sideOfLanding);
            }
        }
        compare(
                Difference.Kind.SHOWN,
                made.round(),
                made.side(),
                made.number(),
                chart.shownRound(place),
                Fabric.shownRound(made));
    }

    /** Where the chart has a long stitch land: round and number on its side. Corners are 0 and one past the last. */
    private String landing(Place place, FabricStitch made, int times) {
        Landing landing = shape.landing(place);
        if (landing instanceof Landing.InStitch in) {
            int inRepeats = made.number() - shape.length(Section.FROM_CORNER, place.round());
            int occurrence = (inRepeats - 1) / shape.w() + 1;
            SidePlace lands = shape.sidePlaceOf(in.place(), times, Math.max(1, occurrence));
            return lands.round() + ":" + lands.stitch();
        }
        if (landing instanceof Landing.InCornerChain in) {
            int number = in.corner() == CornerEnd.START ? 0 : shape.stitches(in.round(), times) + 1;
            return in.round() + ":" + number;
        }
        return "nowhere";
    }

    private void compare(Difference.Kind kind, int round, int side, int stitch, long expected, long found) {
        if (expected != found) {
            add(kind, round, side, stitch, String.valueOf(expected), String.valueOf(found));
        }
    }

    private void add(Difference.Kind kind, int round, int side, int stitch, String expected, String found) {
        differences.add(new Difference(kind, round, side, stitch, expected, found));
    }

    private static String label(String name, String id) {
        return name.isBlank() ? id : name;
    }

    private static boolean same(String one, String other) {
        return one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
    }
}
