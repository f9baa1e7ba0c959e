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
import edgewright.words.tree.StretchPlace;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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
            for (Side side : Side.values()) {
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
        SaidRounds words = rounds.get(titleOf(round));
        List<SaidStitch> stitches = new ArrayList<>();
        forEachStitch(
                written,
                side,
                repeats,
                (stitch, told) -> stitches.add(new SaidStitch(
                        side,
                        stitch,
                        placeOf(round, stitch, repeats),
                        words.saying(side, told).orElseThrow())));
        return stitches;
    }

    /** The smallest piece of the words under another title that says a stitch of a round that is worked as a round there. */
    public Optional<SaidRounds.Piece> toldFor(SaidStitch stitch, int repeats) {
        int round = stitch.place().round();
        WrittenRound written = written(round);
        return titleOf(round) == toldUnder(round)
                ? Optional.empty()
                : rounds.get(toldUnder(round))
                        .saying(
                                stitch.side(),
                                written.stretch(stitch.side()).placeOf(stitch.number(), stitches(round, repeats)));
    }

    /**
     * How often the repeat is worked on the shortest side on which the words of a round have their group once: all that the chart
     * shows of the round, once where that is possible.
     */
    public int fewestRepeats(int round) {
        return Stream.of(Side.values())
                .mapToInt(side -> repeatsFor(written(round), side, 0))
                .max()
                .orElseThrow();
    }

    private WrittenRound written(int round) {
        SaidRounds words = rounds.get(titleOf(round));
        return words.rounds().get(round - words.first());
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

    /** As many repeats as the words of a round need to tell of every place that they can; those that they are for, if they are for one. */
    private int repeatsToldOf(WrittenRound written, Side side) {
        return repeats.filter(size -> written.changes().isPresent())
                .map(size -> size.get(side))
                .orElseGet(() -> repeatsFor(
                        written, side, chart.round(written.number()).repeat().length()));
    }

    /** How often the repeat is worked, at least once, for the group to be worked once and to go on that far. */
    private int repeatsFor(WrittenRound written, Side side, int further) {
        SideInstructions stretch = written.stretch(side);
        int width = chart.round(written.number()).repeat().length();
        int grouped = stretch.group().map(group -> group.stitches() + further).orElse(0);
        int wanted = SideStep.stitches(stretch.before()) + grouped + SideStep.stitches(stretch.after());
        int repeats = 1;
        while (stretch.group().isPresent() && width > 0 && stitches(written.number(), repeats) < wanted) {
            repeats++;
        }
        return repeats;
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
            keep(marked.round(), marked.last(), marked.lines(), List.of());
            return new TextBlock.RoundWords(
                    marked.round(),
                    marked.last(),
                    marked.name(),
                    marked.label(),
                    marked.counts(),
                    text(marked.opening()),
                    marked.steps().stream().map(this::text).toList());
        }

        private TextBlock.RoundRow row(TextBlock.RoundRow marked) {
            SaidRounds row = keep(marked.round(), marked.round(), marked.listed(), marked.cells());
            Function<List<SaidText>, List<String>> texts =
                    said -> said.stream().map(SaidText::text).toList();
            return new TextBlock.RoundRow(
                    marked.round(), marked.name(), marked.across(), texts.apply(row.cells()), texts.apply(row.lines()));
        }

        private SaidRounds keep(int first, int last, List<String> lines, List<String> cells) {
            List<WrittenRound> told = tree.rounds().subList(first - 1, last);
            SaidRounds kept = new SaidRounds(
                    told,
                    workedAs.getOrDefault(first, List.of()).stream()
                            .filter(later -> later.number() > last)
                            .toList(),
                    lines.stream().map(marks::taken).toList(),
                    cells.stream().map(marks::taken).toList());
            rounds.add(kept);
            return kept;
        }

        private String text(String marked) {
            return marks.taken(marked).text();
        }
    }
}
