package edgewright.proof;

import edgewright.chart.Chart;
import edgewright.chart.CornerEnd;
import edgewright.chart.Landing;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
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
    private final PerSide<Integer> repeats;
    private final Fabric fabric;
    private final List<PatternYarn> yarns;
    private final int first;
    private final List<Difference> differences = new ArrayList<>();

    private Comparison(Chart chart, PerSide<Integer> repeats, Fabric fabric, List<PatternYarn> yarns, int first) {
        this.chart = chart;
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
            int round = r;
            compare(
                    chart.corner().chains(),
                    fabric.cornerChains(r),
                    (e, f) -> new Difference.CornerChains(round, e, f));
            for (Side side : Side.values()) {
                if (r >= first) {
                    compareSide(r, side);
                }
            }
        }
        compare(rounds, fabric.rounds(), Difference.Rounds::new);
    }

    private void compareBack() {
        Optional<BackFabric> made = fabric.back();
        List<BackLayer.Round> rounds = chart.making().back().isEmpty() ? List.of() : layer().rounds();
        compare(rounds.size(), made.map(BackFabric::rounds).orElse(0), Difference.BackRounds::new);
        if (rounds.isEmpty() || made.isEmpty()) {
            return;
        }
        for (BackLayer.Round round :
                rounds.subList(0, Math.min(rounds.size(), made.get().rounds()))) {
            compareBackRound(round, made.get());
        }
        long expected = layer().joining(repeats, chart.corner().chains()).total();
        long found = made.get().joins();
        if (expected != found) {
            differences.add(new Difference.Joins(expected, found));
        }
    }

    private void compareBackRound(BackLayer.Round round, BackFabric made) {
        int r = round.number();
        int high = made.height(r) == BackRound.Height.TALL ? 2 : 1;
        compare(round.stitch().frontRounds(), high, (e, f) -> new Difference.BackHeight(r, e, f));
        compare(chart.corner().chains(), made.cornerChains(r), (e, f) -> new Difference.BackCornerChains(r, e, f));
        PerSide<Integer> expected = layer().stitches(r, repeats);
        for (Side side : Side.values()) {
            compare(expected.get(side), made.side(r, side).size(), (e, f) -> new Difference.BackCount(r, side, e, f));
        }
    }

    private BackLayer layer() {
        return new BackLayer(chart.border(), chart.rounds().size());
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
            differences.add(new Difference.OtherYarn(
                    round, label(expected.name(), expected.id()), label(found.name(), found.id())));
        }
    }

    private void compareSide(int round, Side side) {
        int times = repeats.get(side);
        List<FabricStitch> made = fabric.side(round, side);
        SideShape shape = chart.shape(side);
        int expected = shape.stitches(round, times);
        compare(expected, made.size(), (e, f) -> new Difference.Count(round, side, e, f));
        for (int p = 1; p <= Math.min(expected, made.size()); p++) {
            compareStitch(shape.placeOf(new SidePlace(round, p), times), made.get(p - 1), times);
        }
    }

    private void compareStitch(Place place, FabricStitch made, int times) {
        Stitch expected = chart.stitch(place);
        Stitch found = made.stitch().orElseThrow();
        if (expected != found) {
            differences.add(new Difference.OtherStitch(FabricPlace.of(made), expected, found));
            return;
        }
        // What lies below the changed round is numbered otherwise than in the chart.
        if (expected.coversStitchBelow() && made.round() - expected.roundsDown() >= first) {
            compareLanding(place, made, times);
        }
        compare(
                chart.shownRound(place),
                Fabric.shownRound(made),
                (e, f) -> new Difference.OtherShown(FabricPlace.of(made), e, f));
    }

    private void compareLanding(Place place, FabricStitch made, int times) {
        Optional<FabricPlace> expected = landing(place, made, times);
        Optional<FabricPlace> found = made.into().map(FabricPlace::of);
        if (!expected.equals(found)) {
            differences.add(new Difference.OtherLanding(FabricPlace.of(made), expected, found));
        }
    }

    /** Where the chart has a long stitch land. */
    private Optional<FabricPlace> landing(Place place, FabricStitch made, int times) {
        SideShape shape = chart.shape(made.side());
        Landing landing = shape.landing(place, chart.stitch(place));
        if (landing instanceof Landing.InStitch in) {
            int occurrence = shape.occurrence(new SidePlace(made.round(), made.number()), place);
            SidePlace lands = shape.sidePlaceOf(in.place(), times, occurrence);
            return Optional.of(new FabricPlace(lands.round(), made.side(), lands.stitch()));
        }
        if (landing instanceof Landing.InCornerChain in) {
            int number = in.corner() == CornerEnd.START ? 0 : shape.stitches(in.round(), times) + 1;
            return Optional.of(new FabricPlace(in.round(), made.side(), number));
        }
        return Optional.empty();
    }

    /** What differs in a number. */
    private interface InNumber {
        Difference of(int expected, int found);
    }

    private void compare(int expected, int found, InNumber difference) {
        if (expected != found) {
            differences.add(difference.of(expected, found));
        }
    }

    private static String label(String name, String id) {
        return name.isBlank() ? id : name;
    }

    private static boolean same(String one, String other) {
        return one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
    }
}
