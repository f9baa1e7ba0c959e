package edgewright.words.read;

import edgewright.chart.Corner;
import edgewright.chart.Counting;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.Group;
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
    /** Signs that may part what a maker does one after the other. */
    private static final String BETWEEN = ",;.";

    private final TokenCursor cursor;
    private final Vocabulary words;

    RoundReader(TokenCursor cursor) {
        this.cursor = cursor;
        this.words = cursor.words();
    }

    /** A round, and the way of counting if it says how many stitches a side has. */
    record ReadRound(WrittenRound round, Optional<Counting> counting) {}

    /** The base round, likewise. */
    record ReadBase(BaseRound round, Optional<Counting> counting) {}

    /** @param number the number that this round must have */
    ReadRound round(int number, YarnReader yarns) {
        cursor.require("round", "round", number);
        if (!cursor.isNumber() || words.number(cursor.peek()) != number) {
            throw cursor.stop("round", number);
        }
        cursor.next();
        String yarn = yarns.take(cursor);
        cursor.skip(BETWEEN + ":)");
        Optional<SizeReader.Said> size = new SizeReader(cursor, false).read();
        cursor.skip(BETWEEN + ":");
        Optional<ChangesReader.Read> changes = new ChangesReader(cursor, this).read();
        if (changes.isPresent()) {
            return changed(number, yarn, size, changes.get());
        }
        Optional<Begun> begun = begun();
        cursor.take("from");
        cursor.skip(":");
        SideInstructions work = work(false);
        int chains = corner();
        begun.ifPresent(start -> requireSameChains(start, chains));
        cursor.skip(BETWEEN);
        Optional<WrittenStart> start = begun.map(this::ended);
        if (start.isEmpty()) {
            cursor.take("allSides");
        }
        cursor.skip(BETWEEN);
        size = sizeAtTheEnd(size);
        cursor.skip(BETWEEN);
        if (!cursor.atEnd()) {
            throw cursor.stop("roundOrEnd", number + 1);
        }
        SideSize said = size.map(SizeReader.Said::size).orElse(SideSize.UNSTATED);
        return new ReadRound(
                WrittenRound.of(number, yarn, said, work, chains, start), size.map(SizeReader.Said::counting));
    }

    private ReadRound changed(int number, String yarn, Optional<SizeReader.Said> size, ChangesReader.Read changes) {
        if (!cursor.atEnd()) {
            throw cursor.stop("roundOrEnd", number + 1);
        }
        SideSize said = size.map(SizeReader.Said::size).orElse(SideSize.UNSTATED);
        return new ReadRound(
                new WrittenRound.PuttingRight(number, yarn, said, changes.sides(), changes.cornerChains()),
                size.map(SizeReader.Said::counting));
    }

    ReadBase base() {
        cursor.require("baseRound", "baseEnd");
        cursor.skip(BETWEEN + ":");
        Optional<SizeReader.Said> size = new SizeReader(cursor, true).read();
        cursor.skip(BETWEEN);
        OptionalInt chains = OptionalInt.empty();
        if (cursor.is("corner")) {
            chains = OptionalInt.of(corner());
        }
        cursor.skip(BETWEEN);
        if (!cursor.atEnd()) {
            throw cursor.stop("baseEnd");
        }
        BaseRound base = new BaseRound(
                size.map(SizeReader.Said::size).orElse(SideSize.UNSTATED),
                size.map(SizeReader.Said::fewest).orElse(OptionalInt.empty()),
                chains);
        return new ReadBase(base, size.map(SizeReader.Said::counting));
    }

    private Optional<SizeReader.Said> sizeAtTheEnd(Optional<SizeReader.Said> before) {
        Token start = cursor.peek();
        Optional<SizeReader.Said> after = new SizeReader(cursor, false).read();
        if (after.isPresent() && before.isPresent()) {
            throw cursor.stopAt(start, "once");
        }
        return before.or(() -> after);
    }

    /** The first words of a round that begins along a side. */
    private record Begun(Side side, int stitch, SideInstructions toCorner, Token corner, int chains) {}

    private Optional<Begun> begun() {
        if (!cursor.take("startOn")) {
            return Optional.empty();
        }
        Side side = edge();
        cursor.skip(BETWEEN + ":");
        cursor.require("joinIn", "joinIn");
        int stitch = cursor.number(1, "number");
        cursor.take("ofBelow");
        cursor.take("cornerIsOne");
        cursor.skip(BETWEEN + ":");
        cursor.take("fromNext");
        cursor.skip(":");
        SideInstructions toCorner = work(true);
        Token corner = cursor.peek();
        int chains = corner();
        cursor.skip(BETWEEN);
        return Optional.of(new Begun(side, stitch, toCorner, corner, chains));
    }

    Side edge() {
        for (Side side : Side.values()) {
            if (cursor.take("edge." + side)) {
                return side;
            }
        }
        throw cursor.stop("startSide");
    }

    private void requireSameChains(Begun begun, int chains) {
        if (begun.chains() != chains) {
            throw cursor.stopAt(begun.corner(), "sameChains", chains);
        }
    }

    /** The last words of a round that begins along a side. */
    private WrittenStart ended(Begun begun) {
        cursor.require("nextSides", "nextSides");
        cursor.skip(BETWEEN);
        cursor.require("backOn", "backOn", words.edge(begun.side()));
        Token named = cursor.peek();
        if (edge() != begun.side()) {
            throw cursor.stopAt(named, "backOn", words.edge(begun.side()));
        }
        cursor.skip(BETWEEN);
        cursor.take("from");
        cursor.skip(":");
        List<Run> runs = new ArrayList<>();
        while (isRun()) {
            runs.add(run());
            cursor.skip(BETWEEN);
        }
        cursor.require("lastAtJoin", "lastAtJoin");
        cursor.skip(BETWEEN);
        return new WrittenStart(begun.side(), begun.stitch(), begun.toCorner(), runs);
    }

    /** What is worked from corner to corner, as it is read. */
    private static final class Work {
        private final List<Run> before = new ArrayList<>();
        private Group group;
        private final List<Run> after = new ArrayList<>();
    }

    /** @param mayBeEmpty whether the corner may come at once */
    private SideInstructions work(boolean mayBeEmpty) {
        Work work = new Work();
        while (true) {
            cursor.skip(BETWEEN);
            if (cursor.is("corner")) {
                if (!mayBeEmpty && work.before.isEmpty() && work.group == null) {
                    throw cursor.stop("work");
                }
                return work.group == null
                        ? SideInstructions.of(work.before)
                        : SideInstructions.of(work.before, work.group, work.after);
            }
            if (cursor.is("repeat")) {
                throw cursor.stop("asteriskBefore");
            }
            boolean asterisk = cursor.isSign("*");
            if (asterisk && work.group != null) {
                throw cursor.stop("oneGroup");
            }
            if (asterisk) {
                work.group = group();
            } else if (isRun()) {
                (work.group == null ? work.before : work.after).add(run());
            } else {
                every(work);
            }
        }
    }

    private void every(Work work) {
        if (cursor.atEnd() || cursor.peek().kind() != Token.Kind.WORD) {
            throw cursor.stop("item");
        }
        Token start = cursor.peek();
        Stitch stitch = cursor.requireStitch();
        cursor.require("every", "every");
        if (work.group != null) {
            throw cursor.stopAt(start, "oneGroup");
        }
        boolean more = cursor.is("toCorner") || cursor.is("toLast");
        work.group = new Group(List.of(new Run(1, stitch)), more ? upTo() : 0);
    }

    private Group group() {
        cursor.requireSign("*", "asterisk");
        List<Run> runs = new ArrayList<>();
        while (true) {
            cursor.skip(BETWEEN);
            if (!runs.isEmpty() && cursor.take("repeat")) {
                break;
            }
            if (!isRun()) {
                throw cursor.stop("itemInGroup");
            }
            runs.add(run());
        }
        cursor.requireSign("*", "asterisk");
        return new Group(runs, upTo());
    }

    private int upTo() {
        if (cursor.take("toCorner")) {
            return 0;
        }
        cursor.require("toLast", "upTo");
        int last = cursor.isNumber() ? cursor.number(1, "number") : 1;
        cursor.require("stitches", "sts");
        return last;
    }

    boolean isRun() {
        return cursor.isNumber() || isChainThenNumber();
    }

    /** 'ch 2' instead of '2 ch'. */
    private boolean isChainThenNumber() {
        int mark = cursor.mark();
        boolean is = cursor.take(words.stitch(Stitch.CHAIN)) && cursor.isNumber();
        cursor.reset(mark);
        return is;
    }

    Run run() {
        boolean chainFirst = isChainThenNumber() && cursor.take(words.stitch(Stitch.CHAIN));
        int count = cursor.number(1, "number");
        Stitch stitch = chainFirst ? Stitch.CHAIN : cursor.requireStitch();
        if (stitch == Stitch.CHAIN) {
            cursor.skip(",");
            if (!cursor.take(words.miss())) {
                throw cursor.stop("miss", words.missed());
            }
            if (!cursor.isNumber() || words.number(cursor.peek()) != count) {
                throw cursor.stop("missed", count);
            }
            cursor.next();
            cursor.take("stitches");
        }
        return new Run(count, stitch);
    }

    int corner() {
        cursor.require("corner", "item");
        cursor.skip(":,");
        boolean chainFirst = cursor.take(words.stitch(Stitch.CHAIN));
        if (!cursor.isNumber() || !Corner.isTurnedWith(words.number(cursor.peek()))) {
            throw cursor.stop("cornerChains");
        }
        int chains = cursor.number(1, "cornerChains");
        if (!chainFirst && !cursor.take(words.stitch(Stitch.CHAIN))) {
            throw cursor.stop("chain", words.name(Stitch.CHAIN));
        }
        return chains;
    }
}
