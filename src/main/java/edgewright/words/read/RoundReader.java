package edgewright.words.read;

import edgewright.chart.Counting;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads the words of one round. */
final class RoundReader {
    private final TokenCursor cursor;
    private final WorkReader work;

    private String yarn = "";
    private SideInstructions stretch = SideInstructions.of(List.of());
    private int chains;

    /** @param told the chains of a corner that a round only names, where they are known */
    RoundReader(TokenCursor cursor, OptionalInt told) {
        this.cursor = cursor;
        this.work = new WorkReader(cursor, told);
    }

    /** A round, and the way of counting if it says how many stitches a side has. */
    record ReadRound(WrittenRound round, Optional<Counting> counting) {}

    /** The base round, likewise. */
    record ReadBase(BaseRound round, Optional<Counting> counting) {}

    /** @param number the number that this round must have */
    ReadRound round(int number, YarnReader yarns) {
        name(number, yarns);
        Optional<SizeReader.Said> size = new SizeReader(cursor, false).read();
        cursor.skipPartings();
        Optional<ChangesReader.Read> changes = new ChangesReader(cursor, work).read();
        if (changes.isPresent()) {
            return changed(number, sizeAtTheEnd(size), changes.get());
        }
        Optional<Begun> begun = begun();
        Phrase.Gaps gaps = gap -> takeAlike(gap, begun);
        if (!(begun.isPresent() ? cursor.take("alike-next", gaps) : cursor.take("alike", gaps))) {
            throw cursor.stopped();
        }
        cursor.skipPartings();
        if (begun.isEmpty()) {
            cursor.take("all-sides");
            cursor.skipPartings();
        }
        Optional<WrittenStart> start = begun.map(this::ended);
        size = sizeAtTheEnd(size);
        cursor.skipPartings();
        requireEnd(number);
        SideSize said = size.map(SizeReader.Said::size).orElse(SideSize.unstated());
        return new ReadRound(
                WrittenRound.of(number, yarn, said, stretch, chains, start), size.map(SizeReader.Said::counting));
    }

    private void name(int number, YarnReader yarns) {
        boolean named = cursor.take("round-title", gap -> switch (gap) {
            case "round" -> isThisRound(number);
            case "yarn" -> {
                yarn = yarns.take(cursor);
                yield true;
            }
            default -> throw Phrase.unknown(gap);
        });
        if (!named) {
            cursor.miss(Expectation.of("round", number));
            throw cursor.stopped();
        }
        cursor.skipPartings();
        cursor.skip(cursor.grammar().listed("yarn-after"));
        cursor.skipPartings();
    }

    private boolean isThisRound(int number) {
        if (!cursor.isNumber()) {
            return cursor.miss(Expectation.of("round", number));
        }
        if (cursor.grammar().number(cursor.peek()) != number) {
            throw cursor.stopAt(cursor.peek(), Expectation.of("round", number));
        }
        cursor.next();
        return true;
    }

    private boolean takeAlike(String gap, Optional<Begun> begun) {
        return switch (gap) {
            case "work" -> takeWork();
            case "corner" -> {
                boolean taken = work.takeCorner();
                chains = work.chains();
                begun.ifPresent(start -> requireSameChains(start, taken));
                yield taken;
            }
            case "sides" -> cursor.take("next-sides");
            default -> throw Phrase.unknown(gap);
        };
    }

    private boolean takeWork() {
        boolean taken =
                cursor.take("from-corner", gap -> work.takeStretch(gap, false)) || work.takeStretch("work", false);
        stretch = work.stretch();
        return taken;
    }

    private void requireSameChains(Begun begun, boolean taken) {
        if (taken && begun.chains() != chains) {
            throw cursor.stopAt(begun.corner(), Expectation.of("sameChains", chains));
        }
    }

    private void requireEnd(int number) {
        if (!cursor.atEnd()) {
            cursor.miss(Expectation.of("roundOrEnd", number + 1));
            throw cursor.stopped();
        }
    }

    private ReadRound changed(int number, Optional<SizeReader.Said> size, ChangesReader.Read changes) {
        cursor.skipPartings();
        requireEnd(number);
        SideSize said = size.map(SizeReader.Said::size).orElse(SideSize.unstated());
        return new ReadRound(
                new WrittenRound.PuttingRight(number, yarn, said, changes.sides(), changes.cornerChains()),
                size.map(SizeReader.Said::counting));
    }

    ReadBase base() {
        if (!cursor.take("base-title")) {
            throw cursor.stopped();
        }
        cursor.skipPartings();
        Optional<SizeReader.Said> size = new SizeReader(cursor, true).read();
        cursor.skipPartings();
        OptionalInt corner = work.takeCorner() ? OptionalInt.of(work.chains()) : OptionalInt.empty();
        cursor.skipPartings();
        if (!cursor.atEnd()) {
            cursor.miss("baseEnd");
            throw cursor.stopped();
        }
        BaseRound base = new BaseRound(
                size.map(SizeReader.Said::size).orElse(SideSize.unstated()),
                size.map(SizeReader.Said::fewest).orElse(OptionalInt.empty()),
                corner);
        return new ReadBase(base, size.map(SizeReader.Said::counting));
    }

    private Optional<SizeReader.Said> sizeAtTheEnd(Optional<SizeReader.Said> before) {
        Token start = cursor.peek();
        Optional<SizeReader.Said> after = new SizeReader(cursor, false).read();
        if (after.isPresent() && before.isPresent()) {
            throw cursor.stopAt(start, Expectation.of("once"));
        }
        return before.or(() -> after);
    }

    /** The first words of a round that begins along a side. */
    private record Begun(Side side, int stitch, SideInstructions toCorner, Token corner, int chains) {}

    private static final class Start {
        private Side side = Side.FIRST;
        private int stitch;
        private SideInstructions toCorner = SideInstructions.of(List.of());
        private Token corner;
    }

    private Optional<Begun> begun() {
        Start start = new Start();
        Phrase.Gaps gaps = gap -> takeStart(gap, start);
        if (!cursor.take("start", gaps) && !cursor.take("start-next-to-corner", gaps)) {
            if (cursor.opens("start")) {
                throw cursor.stopped();
            }
            return Optional.empty();
        }
        cursor.skipPartings();
        return Optional.of(new Begun(start.side, start.stitch, start.toCorner, start.corner, work.chains()));
    }

    private boolean takeStart(String gap, Start start) {
        switch (gap) {
            case "edge" -> {
                Optional<Side> side = work.takeEdge();
                start.side = side.orElse(start.side);
                return side.isPresent();
            }
            case "number" -> {
                boolean taken = cursor.takeNumber(1, "number");
                start.stitch = cursor.number();
                return taken;
            }
            case "work" -> {
                boolean taken = work.takeStretch(gap, true);
                start.toCorner = work.stretch();
                return taken;
            }
            case "corner" -> {
                start.corner = cursor.peek();
                return work.takeCorner();
            }
            default -> throw Phrase.unknown(gap);
        }
    }

    /** The last words of a round that begins along a side. */
    private WrittenStart ended(Begun begun) {
        List<Run> runs = new ArrayList<>();
        Phrase.Gaps gaps = gap -> switch (gap) {
            case "edge" -> isEdge(begun.side());
            case "runs" -> work.takeRuns(runs);
            default -> throw Phrase.unknown(gap);
        };
        if (!cursor.take("return", gaps)) {
            runs.clear();
            if (!cursor.take("return-at-once", gaps)) {
                if (!cursor.opens("return")) {
                    cursor.miss(returnAlong(begun.side()));
                }
                throw cursor.stopped();
            }
        }
        cursor.skipPartings();
        return new WrittenStart(begun.side(), begun.stitch(), begun.toCorner(), runs);
    }

    private boolean isEdge(Side side) {
        Token named = cursor.peek();
        Optional<Side> edge = work.takeEdge();
        if (edge.isPresent() && edge.get() != side) {
            throw cursor.stopAt(named, returnAlong(side));
        }
        return edge.isPresent();
    }

    private Expectation returnAlong(Side side) {
        return Expectation.of("returnAlong", cursor.grammar().edge(side));
    }

    /** Whether a stitch is the chain. */
    static boolean isChain(Optional<Stitch> stitch) {
        return stitch.filter(each -> each == Stitch.CHAIN).isPresent();
    }
}
