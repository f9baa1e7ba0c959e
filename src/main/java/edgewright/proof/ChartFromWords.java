package edgewright.proof;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Corner;
import edgewright.chart.Extras;
import edgewright.chart.Heading;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.chart.Yarn;
import edgewright.hands.Fabric;
import edgewright.hands.FabricStitch;
import edgewright.words.tree.Bracket;
import edgewright.words.tree.Group;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.PatternYarn;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.core.ArithmeticUtils;

/**
 * Draws the chart of a pattern that exists only as words, from what came off the hook when the words were worked.
 *
 * <p>The repeat is as wide as the shortest stretch that all groups go into, and the corner sections take what is left: as
 * few stitches as fit every round and every side, with the repeat beginning where most groups of the words begin.
 */
public final class ChartFromWords {
    /** What became of the drawing. */
    public sealed interface Answer {
        /** The chart; working it gives the very fabric that the words gave. */
        record Drawn(Chart chart) implements Answer {}

        /** No one chart says what the words say. */
        record NotOneChart(Why why) implements Answer {}

        /**
         * The words go beyond what a chart can hold.
         *
         * @param found the yarn id, or how many there are
         */
        record BeyondLimit(Limit limit, String found) implements Answer {}
    }

    /** What a chart holds only so much of. */
    public enum Limit {
        /** The characters of a yarn id. */
        YARN_ID,
        /** Yarns. */
        YARNS,
        /** Rounds. */
        ROUNDS,
        /** Stitches in a section of round 1. */
        STITCHES
    }

    /** Why there is no chart. */
    public enum Why {
        /** The rounds do not all turn their corners with the same number of chains. */
        CORNERS_DIFFER,
        /** No width of repeat fits every round on every side that was worked. */
        NO_COMMON_REPEAT
    }

    /** Colours for yarns whose words name none, dark and light in turn so that neighbours can be told apart. */
    private static final List<Colour> COLOURS = List.of(
            Colour.parse("#2b2a33"),
            Colour.parse("#f2ead8"),
            Colour.parse("#1f4a2c"),
            Colour.parse("#f4b942"),
            Colour.parse("#16343b"),
            Colour.parse("#cfe6df"),
            Colour.parse("#7a2b1d"),
            Colour.parse("#b9c7cf"));

    private final Instructions pattern;
    private final Fabric fabric;
    private final int rounds;

    private ChartFromWords(Instructions pattern, Fabric fabric) {
        this.pattern = pattern;
        this.fabric = fabric;
        this.rounds = fabric.rounds();
    }

    /**
     * The chart of a pattern.
     *
     * @param fabric what came off the hook when the whole pattern was worked; at least one round
     */
    public static Answer of(Instructions pattern, Fabric fabric) {
        return new ChartFromWords(pattern, fabric).answer();
    }

    private Answer answer() {
        Optional<String> id = pattern.yarns().stream()
                .map(PatternYarn::id)
                .filter(one -> !Yarn.isId(one))
                .findFirst();
        if (id.isPresent()) {
            return new Answer.BeyondLimit(Limit.YARN_ID, id.get());
        }
        if (pattern.yarns().size() > Chart.MOST_YARNS) {
            return beyond(Limit.YARNS, pattern.yarns().size());
        }
        return rounds > Chart.MOST_ROUNDS ? beyond(Limit.ROUNDS, rounds) : drawn();
    }

    private static Answer beyond(Limit limit, int found) {
        return new Answer.BeyondLimit(limit, String.valueOf(found));
    }

    private Answer drawn() {
        int chains = fabric.cornerChains(1);
        for (int r = 1; r <= rounds; r++) {
            if (fabric.cornerChains(r) != chains) {
                return new Answer.NotOneChart(Why.CORNERS_DIFFER);
            }
        }
        return repeatWidth()
                .flatMap(this::sections)
                .map(worked -> drawn(chains, worked))
                .orElseGet(() -> new Answer.NotOneChart(Why.NO_COMMON_REPEAT));
    }

    /** Whether the corner sections of round 1 are such as a chart can have. */
    private static boolean fits(int a, int b) {
        return Math.max(a, b) + 1 <= Chart.MOST_STITCHES;
    }

    private Answer drawn(int chains, List<Round> worked) {
        int longest = Math.max(
                worked.get(0).fromCorner().length(), worked.get(0).toCorner().length());
        return longest > Chart.MOST_STITCHES
                ? beyond(Limit.STITCHES, longest)
                : new Answer.Drawn(chart(chains, worked));
    }

    private Chart chart(int chains, List<Round> worked) {
        List<Yarn> yarns = new ArrayList<>();
        for (PatternYarn yarn : pattern.yarns()) {
            yarns.add(new Yarn(yarn.id(), yarn.name(), COLOURS.get(yarns.size() % COLOURS.size())));
        }
        Chart drawn = new Chart(
                        new Heading(
                                pattern.title(),
                                pattern.designer(),
                                String.join("\n\n", pattern.notes()),
                                pattern.terms()),
                        yarns,
                        worked)
                .withCorner(new Corner(chains, Extras.NONE))
                .withRules(Rules.DEFAULT.withStackLongStitches(stacks()));
        Optional<Back> back = pattern.back().map(layer -> new Back(layer.hook()));
        return drawn.withMaking(
                drawn.making().withBack(back).withStart(StartFromWords.of(pattern, drawn, this::repeats)));
    }

    /** How often the repeat was worked on a side, if the chart is drawn with this shape. */
    private int repeats(SideShape shape, Side side) {
        return shape.repeats(0, fabric.side(0, side).size()).orElseThrow();
    }

    /** Whether a long stitch was dropped onto a long stitch anywhere. */
    private boolean stacks() {
        for (int r = 1; r <= rounds; r++) {
            for (Side side : Side.values()) {
                if (fabric.side(r, side).stream().anyMatch(ChartFromWords::standsOnLong)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean standsOnLong(FabricStitch made) {
        return made.stitch().equals(Optional.of(Stitch.LONG))
                && made.into().flatMap(FabricStitch::stitch).equals(Optional.of(Stitch.LONG));
    }

    /** The least common multiple of all groups; empty if it is wider than any chart may be. */
    private Optional<Integer> repeatWidth() {
        long width = 1;
        for (WrittenRound round : pattern.rounds()) {
            for (Side side : Side.values()) {
                width = ArithmeticUtils.lcm(width, (long) width(round.stretch(side)));
                if (width > Chart.MOST_STITCHES) {
                    return Optional.empty();
                }
            }
        }
        return Optional.of((int) width);
    }

    /** How wide the group of a side is; where none is open, how wide the widest brackets are that are worked some times. */
    private static int width(SideInstructions side) {
        return side.group()
                .map(Group::stitches)
                .orElseGet(() -> side.before().stream()
                        .filter(Bracket.class::isInstance)
                        .mapToInt(bracket -> SideStep.stitches(((Bracket) bracket).steps()))
                        .max()
                        .orElse(1));
    }

    /** The rounds cut into sections, with the fewest stitches in the corner sections; empty if no cut fits. */
    private Optional<List<Round>> sections(int w) {
        List<PerSide<String>> letters = new ArrayList<>();
        for (int r = 1; r <= rounds; r++) {
            int round = r;
            letters.add(PerSide.each(side -> fabric.letters(round, side)));
        }
        int shortest = PerSide.each(side -> fabric.side(0, side).size()).stream()
                .mapToInt(Integer::intValue)
                .min()
                .orElseThrow();
        int[] begins = groupsBeginning(w);
        return RepeatSearch.best(letters, w, shortest, (a, b) -> fits(a, b) ? begins[a % w] : -1)
                .map(cut -> cut(letters, cut.a(), w, cut.b()));
    }

    /** In how many rounds a group of the words begins where the repeat would begin, by what is left of A by whole repeats. */
    private int[] groupsBeginning(int w) {
        int[] begins = new int[w];
        for (WrittenRound round : pattern.rounds()) {
            int before = SideStep.stitches(round.stretch().before());
            boolean isLong = round.stretch().group().map(Group::stitches).orElse(1) > 1;
            if (isLong) {
                begins[Math.floorMod(before - round.number(), w)]++;
            }
        }
        return begins;
    }

    private List<Round> cut(List<PerSide<String>> letters, int a, int w, int b) {
        List<Round> cut = new ArrayList<>();
        for (int r = 1; r <= rounds; r++) {
            String longest = letters.get(r - 1).stream()
                    .max(Comparator.comparingInt(String::length))
                    .orElseThrow();
            cut.add(new Round(
                    fabric.yarn(r),
                    Stitches.of(longest.substring(0, a + r)),
                    Stitches.of(longest.substring(a + r, a + r + w)),
                    Stitches.of(longest.substring(longest.length() - b - r))));
        }
        return cut;
    }
}
