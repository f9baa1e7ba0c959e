package edgewright.words.read;

import edgewright.chart.Counting;
import edgewright.chart.Stitch;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.StartMarkers;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads the words of one round. */
final class RoundReader {
    private final TokenCursor cursor;
    private final WorkReader work;
    private final StretchReader side;

    private String yarn = "";
    private SideInstructions stretch = SideInstructions.of(List.of());
    private int chains;
    /** How many stitches after its marker the round starts, and where that is said. */
    private int movedOn;

    private Token beginning;
    private boolean isAtCorner;

    private final Optional<StartMarkers> markers;

    /** A reader of rounds of a pattern without markers. */
    RoundReader(TokenCursor cursor, OptionalInt told) {
        this(cursor, told, Optional.empty());
    }

    /**
     * A reader of one round.
     *
     * @param told the chains of a corner that a round only names, where they are known
     * @param markers above which rounds start
     */
    RoundReader(TokenCursor cursor, OptionalInt told, Optional<StartMarkers> markers) {
        this.cursor = cursor;
        this.markers = markers;
        this.work = new WorkReader(cursor, told);
        this.side = new StretchReader(cursor, work);
    }

    /** A round, and the way of counting if it says how many stitches a side has. */
    record ReadRound(WrittenRound round, Optional<Counting> counting) {}

    /** The base round, likewise. */
    record ReadBase(BaseRound round, Optional<Counting> counting) {}

    /**
     * Takes the name of a round; answers with the id of its yarn.
     *
     * @param number the number that this round must have
     */
    String title(int number, YarnReader yarns) {
        name(number, yarns);
        return yarn;
    }

    /**
     * The words of a round after its name.
     *
     * @param yarnId its yarn
     * @param counted what has been said of its stitches elsewhere
     */
    ReadRound worked(int number, String yarnId, Optional<SizeReader.Said> counted) {
        yarn = yarnId;
        takeBeginning();
        Optional<SizeReader.Said> size = counted.or(() -> new SizeReader(cursor, false).read());
        cursor.skipPartings();
        Optional<ChangesReader.Read> changes = new ChangesReader(cursor, work).read();
        if (changes.isPresent()) {
            return changed(number, sizeAtTheEnd(size), changes.get());
        }
        takeBeginning();
        Optional<StartMarkers> above = markers.filter(each -> !isAtCorner && each.round() < number);
        if (movedOn > 0 && above.isEmpty()) {
            throw cursor.stopAt(beginning, Expectation.of("markerBefore"));
        }
        Token start = cursor.peek();
        if (!cursor.take("alike", this::takeAlike)) {
            throw cursor.stopped();
        }
        cursor.skipPartings();
        cursor.take("all-sides");
        cursor.skipPartings();
        size = sizeAtTheEnd(size);
        cursor.skipPartings();
        requireEnd(number);
        SideSize said = size.map(SizeReader.Said::size).orElse(SideSize.unstated());
        WrittenRound round = above.isPresent() ? alongSide(number, said, above.get(), start) : atCorner(number, said);
        return new ReadRound(round, size.map(SizeReader.Said::counting));
    }

    /** Takes where the round begins, if something is said of it here. */
    private void takeBeginning() {
        Token start = cursor.peek();
        if (cursor.opens("start-after") ? cursor.take("start-after", this::takeMove) : takesMove()) {
            beginning = start;
        } else if (cursor.opens("start-after") && !cursor.is("at-a-corner-word")) {
            throw cursor.stopped();
        } else {
            isAtCorner |= cursor.takeOptional("at-a-corner", Phrase.NONE);
        }
        cursor.skipPartings();
    }

    /** Where a language has a number first, that could be another number. */
    private boolean takesMove() {
        int before = movedOn;
        boolean taken = cursor.takeOptional("start-after", this::takeMove);
        movedOn = taken ? movedOn : before;
        return taken;
    }

    private boolean takeMove(String gap) {
        if (!gap.equals("sts")) {
            throw Phrase.unknown(gap);
        }
        boolean taken = work.takeStitches(1, "number");
        movedOn = taken ? cursor.number() : movedOn;
        return taken;
    }

    private WrittenRound atCorner(int number, SideSize said) {
        if (side.mark().isPresent()) {
            throw cursor.stopAt(side.markStart(), Expectation.of("noMark"));
        }
        return new WrittenRound.AtCorner(number, yarn, said, stretch, chains);
    }

    /** @param words where the words of the side begin */
    private WrittenRound alongSide(int number, SideSize said, StartMarkers above, Token words) {
        boolean isAlikeAllAlong = stretch.before().isEmpty()
                && stretch.after().isEmpty()
                && stretch.group()
                        .filter(group -> group.stitches() == 1 && group.lastStitches() == 0)
                        .isPresent();
        if (side.mark().isEmpty() && !isAlikeAllAlong) {
            throw cursor.stopAt(words, Expectation.of("mark"));
        }
        StartMark mark = side.mark().orElse(new StartMark(StartMark.Part.GROUP, 0));
        WrittenStart start = new WrittenStart(above.of(number).side(), above.joins(number) + movedOn, mark);
        return new WrittenRound.AlongSide(number, yarn, said, stretch, chains, start);
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

    private boolean takeAlike(String gap) {
        return switch (gap) {
            case "work" -> takeWork();
            case "corner" -> {
                boolean taken = side.takeCorner();
                chains = work.chains();
                yield taken;
            }
            default -> throw Phrase.unknown(gap);
        };
    }

    private boolean takeWork() {
        Phrase.Gaps gaps = gap -> {
            if (!gap.equals("work")) {
                throw Phrase.unknown(gap);
            }
            return side.takeStretch();
        };
        boolean taken = cursor.take("from-corner", gaps) || side.takeStretch();
        stretch = side.stretch();
        return taken;
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
        OptionalInt corner = work.takeCornerAlone() ? OptionalInt.of(work.chains()) : OptionalInt.empty();
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

    /** Whether a stitch is the chain. */
    static boolean isChain(Optional<Stitch> stitch) {
        return stitch.filter(each -> each == Stitch.CHAIN).isPresent();
    }
}
