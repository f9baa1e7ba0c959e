package edgewright.words.said;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.page.TextBlock;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.StretchPlace;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * A chart in words, and which piece of the words of its rounds says which stitches. Immutable, and safe for any thread.
 *
 * <p>The repeat stands for all its workings; but a stitch of it can be said by several pieces, where the words begin their group
 * after the repeat has begun, or end it earlier. A stitch of a whole side is said by exactly one smallest piece.
 */
public final class SaidPattern {
    private final Chart chart;
    private final Optional<PerSide<Integer>> repeats;
    private final PatternText text;
    private final List<SaidRounds> rounds;

    private SaidPattern(Chart chart, Optional<PerSide<Integer>> repeats, PatternText text, List<SaidRounds> rounds) {
        this.chart = chart;
        this.repeats = repeats;
        this.text = text;
        this.rounds = List.copyOf(rounds);
    }

    /**
     * The pattern that came of marked words.
     *
     * @param repeats how often the repeat is worked in a pattern for one size; empty in any other
     * @param tree of this chart
     * @param marked its words, with marks in those of the rounds
     */
    public static SaidPattern of(
            Chart chart, Optional<PerSide<Integer>> repeats, Instructions tree, PatternText marked, SpanMarks marks) {
        Taking taking = new Taking(tree, marks);
        List<PatternPart> parts = marked.parts().stream()
                .map(part -> part.kind() == PatternPart.Kind.ROUNDS
                        ? new PatternPart(
                                part.kind(),
                                part.heading(),
                                part.blocks().stream().map(taking::block).toList())
                        : part)
                .toList();
        return new SaidPattern(chart, repeats, new PatternText(parts), taking.rounds);
    }

    /** The chart that is told. */
    public Chart chart() {
        return chart;
    }

    /** The words, with no mark in them. */
    public PatternText text() {
        return text;
    }

    /** The words of the rounds in working order, those together that stand under one title. */
    public List<SaidRounds> rounds() {
        return rounds;
    }

    /** Under which title a round stands, counted from 0. */
    public int titleOf(int round) {
        return IntStream.range(0, rounds.size())
                .filter(i -> rounds.get(i).last() >= round)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the pattern has no round " + round));
    }

    /** Under which title the round is told as which this one is worked, counted from 0; its own if it is told itself. */
    public int toldUnder(int round) {
        WrittenRound written = written(round);
        return titleOf(
                written instanceof WrittenRound.AsRound again ? again.as().number() : round);
    }

    /** The places of the chart that a piece of the words of a title says, in all rounds that it is about. */
    public Set<Place> places(SaidRounds words, SaidSpan span) {
        Set<Place> places = new TreeSet<>();
        words.about(span.said()).forEach(written -> {
            for (Side side : sidesToldBy(written)) {
                int times = repeatsToldOf(written, side);
                forEachStitch(written, side, times, (stitch, told) -> {
                    if (span.said().says(side, told)) {
                        places.add(placeOf(written.number(), stitch, times));
                    }
                });
            }
        });
        return places;
    }

    /**
     * The stitches of a side in working order from the corner just turned, each with the words that say it.
     *
     * @param repeats how often the repeat is worked on that side; as often as the words of this round can be worked
     */
    public List<SaidStitch> side(int round, Side side, int repeats) {
        WrittenRound written = written(round);
        int title = titleOf(round);
        List<SaidStitch> stitches = new ArrayList<>();
        forEachStitch(
                written,
                side,
                repeats,
                (stitch, told) -> stitches.add(new SaidStitch(
                        side, stitch, placeOf(round, stitch, repeats), told, saying(title, side, told))));
        return stitches;
    }

    /**
     * The stitches of a side in the order in which a maker works a round: from where it begins, and round to there. The repeat is
     * worked as often as is needed for the group of the words to be worked once, so every place of the round is among them.
     */
    public List<SaidStitch> inWorkingOrder(int round) {
        int times = fewestRepeats(round);
        List<SaidStitch> side = side(round, Side.FIRST, times);
        int before = stitchesBeforeStart(written(round), stitches(round, times));
        List<SaidStitch> ordered = new ArrayList<>(side.subList(before, side.size()));
        ordered.addAll(side.subList(0, before));
        return ordered;
    }

    private static int stitchesBeforeStart(WrittenRound written, int stitches) {
        return written.start()
                .map(start -> {
                    SideInstructions stretch = written.stretch();
                    StartMark mark = start.mark();
                    int inPart = SideStep.stitches(stretch.steps(mark.part()).subList(0, mark.step()));
                    return switch (mark.part()) {
                        case BEFORE -> inPart;
                        case GROUP -> SideStep.stitches(stretch.before()) + inPart;
                        case AFTER -> stitches - SideStep.stitches(stretch.after()) + inPart;
                    };
                })
                .orElse(0);
    }

    /** The smallest piece of the words in which a stitch is told itself: under another title, if its round is worked as another. */
    public SaidRounds.Piece toldIn(SaidStitch stitch) {
        int round = stitch.place().round();
        return titleOf(round) == toldUnder(round)
                ? stitch.piece()
                : saying(toldUnder(round), stitch.side(), stitch.told());
    }

    private SaidRounds.Piece saying(int title, Side side, StretchPlace told) {
        return rounds.get(title).saying(side, told).orElseThrow();
    }

    /**
     * A piece that says a stitch.
     *
     * @param title under which it stands, counted from 0
     */
    public record Saying(int title, SaidRounds.Piece piece) {}

    /**
     * The smallest pieces that say the stitch at a place, those of its own title first. There are several where its round is worked
     * as another, or where not only the group of the words says a stitch of the repeat.
     */
    public Set<Saying> saying(Place place) {
        int round = place.round();
        WrittenRound written = written(round);
        Set<Saying> own = new LinkedHashSet<>();
        Set<Saying> told = new LinkedHashSet<>();
        for (Side side : sidesToldBy(written)) {
            int times = repeatsToldOf(written, side);
            forEachStitch(written, side, times, (stitch, at) -> {
                if (placeOf(round, stitch, times).equals(place)) {
                    own.add(new Saying(titleOf(round), saying(titleOf(round), side, at)));
                    told.add(new Saying(toldUnder(round), saying(toldUnder(round), side, at)));
                }
            });
        }
        own.addAll(told);
        return own;
    }

    /**
     * How often the repeat is worked on the shortest side on which the words of a round have their group once: all that the chart
     * shows of the round, once where that is possible.
     */
    public int fewestRepeats(int round) {
        return repeatsFor(written(round), Side.FIRST, 0);
    }

    private WrittenRound written(int round) {
        SaidRounds words = rounds.get(titleOf(round));
        return words.rounds().get(round - words.first());
    }

    /** One of the sides, if all are told alike. */
    private static List<Side> sidesToldBy(WrittenRound written) {
        return written.stretch().isEmpty() ? List.of(Side.values()) : List.of(Side.FIRST);
    }

    private interface StitchUse {
        void use(int stitch, StretchPlace told);
    }

    private void forEachStitch(WrittenRound written, Side side, int repeats, StitchUse use) {
        int stitches = stitches(written.number(), repeats);
        SideInstructions stretch = written.stretch(side);
        for (int stitch = 1; stitch <= stitches; stitch++) {
            use.use(stitch, stretch.placeOf(stitch, stitches));
        }
    }

    private int stitches(int round, int repeats) {
        Round charted = chart.round(round);
        return charted.fromCorner().length()
                + repeats * charted.repeat().length()
                + charted.toCorner().length();
    }

    private Place placeOf(int round, int stitch, int repeats) {
        int left = stitch;
        for (Section section : Section.values()) {
            int length = chart.round(round).section(section).length();
            if (left <= length * section.times(repeats)) {
                return new Place(round, section, (left - 1) % length + 1);
            }
            left -= length * section.times(repeats);
        }
        throw new IllegalArgumentException("round " + round + " has no stitch " + stitch);
    }

    /** As many repeats as the words of a round need to tell of every place that they can. */
    private int repeatsToldOf(WrittenRound written, Side side) {
        return repeatsFor(written, side, chart.round(written.number()).repeat().length());
    }

    /**
     * How often the repeat is worked, at least once, for the group to be worked once and to go on that far. Words that have no group
     * hold for the one size that they are for.
     */
    private int repeatsFor(WrittenRound written, Side side, int further) {
        SideInstructions stretch = written.stretch(side);
        if (stretch.group().isEmpty()) {
            return repeats.map(size -> size.get(side)).orElse(1);
        }
        int width = chart.round(written.number()).repeat().length();
        int wanted = SideStep.stitches(stretch.before())
                + stretch.group().orElseThrow().stitches()
                + further
                + SideStep.stitches(stretch.after());
        int times = 1;
        while (width > 0 && stitches(written.number(), times) < wanted) {
            times++;
        }
        return times;
    }

    /** Takes the marks out of the blocks of the rounds, and keeps what they said. */
    private static final class Taking {
        private final Instructions tree;
        private final SpanMarks marks;
        private final List<SaidRounds> rounds = new ArrayList<>();
        /** The rounds that are worked as another, by the number of that one. */
        private final Map<Integer, List<WrittenRound>> workedAs = new HashMap<>();

        Taking(Instructions tree, SpanMarks marks) {
            this.tree = tree;
            this.marks = marks;
            for (WrittenRound round : tree.rounds()) {
                if (round instanceof WrittenRound.AsRound again) {
                    workedAs.computeIfAbsent(again.as().number(), number -> new ArrayList<>())
                            .add(round);
                }
            }
        }

        TextBlock block(TextBlock marked) {
            if (marked instanceof TextBlock.RoundWords words) {
                return words(words);
            }
            return marked instanceof TextBlock.RoundsTable table
                    ? new TextBlock.RoundsTable(
                            table.columns(),
                            table.rows().stream().map(this::row).toList())
                    : marked;
        }

        private TextBlock.RoundWords words(TextBlock.RoundWords marked) {
            SaidRounds words = keep(marked.round(), marked.last(), marked.label(), marked.lines(), List.of());
            List<String> steps = new ArrayList<>(texts(words.lines()));
            if (!marked.steps().isEmpty()) {
                steps.set(0, marks.taken(marked.steps().get(0)).text());
            }
            return new TextBlock.RoundWords(
                    marked.round(),
                    marked.last(),
                    marked.name(),
                    marked.label(),
                    marked.counts(),
                    words.lines().get(0).text(),
                    steps);
        }

        private TextBlock.RoundRow row(TextBlock.RoundRow marked) {
            String label = marked.listed().get(0);
            SaidRounds row = keep(marked.round(), marked.round(), label, marked.listed(), marked.cells());
            return new TextBlock.RoundRow(
                    marked.round(), marked.name(), marked.across(), texts(row.cells()), texts(row.lines()));
        }

        private SaidRounds keep(int first, int last, String label, List<String> lines, List<String> cells) {
            List<WrittenRound> told = tree.rounds().subList(first - 1, last);
            SaidRounds kept = new SaidRounds(
                    told,
                    label,
                    workedAs.getOrDefault(first, List.of()).stream()
                            .filter(later -> later.number() > last)
                            .toList(),
                    lines.stream().map(marks::taken).toList(),
                    cells.stream().map(marks::taken).toList());
            rounds.add(kept);
            return kept;
        }

        private static List<String> texts(List<SaidText> said) {
            return said.stream().map(SaidText::text).toList();
        }
    }
}
