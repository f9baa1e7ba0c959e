package edgewright.words.read;

import edgewright.chart.Counting;
import edgewright.chart.Stitch;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.StartMarkers;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Reads the words of one round, or of some that are worked alike. */
final class RoundReader {
    private final TokenCursor cursor;
    private final Known known;
    private final WorkReader work;
    private final StretchReader side;

    private SideInstructions stretch = SideInstructions.of(List.of());
    private int chains;
    /** How many stitches after its marker the round starts, and where that is said. */
    private int movedOn;

    private Token beginning;
    private boolean isAtCorner;

    RoundReader(TokenCursor cursor, Known known) {
        this.cursor = cursor;
        this.known = known;
        this.work = new WorkReader(cursor, known.chains());
        this.side = new StretchReader(cursor, work);
    }

    /**
     * What a pattern has said before a round.
     *
     * @param chains those of a corner, where the base round says them
     * @param markers above which rounds start
     * @param rounds those that could be read, by their numbers
     */
    record Known(OptionalInt chains, Optional<StartMarkers> markers, Map<Integer, WrittenRound> rounds) {
        static final Known NOTHING = new Known(OptionalInt.empty(), Optional.empty(), Map.of());
    }

    /**
     * The rounds of one title, and the way of counting if they say how many stitches a side has.
     *
     * @param rounds one after the other; none where they are as a round that could not be read
     */
    record ReadRounds(List<WrittenRound> rounds, Optional<Counting> counting) {
        ReadRounds {
            rounds = List.copyOf(rounds);
        }
    }

    /** The base round, likewise. */
    record ReadBase(BaseRound round, Optional<Counting> counting) {}

    /**
     * The words of a round, or of some that are worked alike, after their title.
     *
     * @param counted what has been said of its stitches elsewhere
     */
    ReadRounds worked(TitleReader.Title title, Optional<SizeReader.Said> counted) {
        RoundsSizeReader sizes = new RoundsSizeReader(cursor, title, counted);
        takeBeginning();
        sizes.read();
        if (title.rounds() == 1 && SidesReader.opens(cursor)) {
            boolean changes = ChangesReader.isMeant(cursor);
            return read(title, sizes, List.of(changes ? puttingRight(title, sizes) : eachSide(title, sizes)));
        }
        takeBeginning();
        requireMarkers(title);
        Optional<List<WrittenRound>> told = told(title, sizes);
        return read(title, sizes, told.isPresent() ? told.get() : inFull(title, sizes));
    }

    private ReadRounds read(TitleReader.Title title, RoundsSizeReader sizes, List<WrittenRound> rounds) {
        if (!cursor.atEnd()) {
            cursor.miss(Expectation.of("roundOrEnd", title.last() + 1));
            throw cursor.stopped();
        }
        return new ReadRounds(rounds, sizes.counting());
    }

    /** All rounds of a title start above markers, or all at a corner. */
    private void requireMarkers(TitleReader.Title title) {
        if (movedOn > 0 && above(title.first()).isEmpty()) {
            throw cursor.stopAt(beginning, Expectation.of("markerBefore"));
        }
        if (above(title.first()).isPresent() != above(title.last()).isPresent()) {
            throw cursor.stop("oneBeginning");
        }
    }

    /** The markers, if this round starts above one. */
    private Optional<StartMarkers> above(int number) {
        return known.markers().filter(each -> !isAtCorner && each.round() < number);
    }

    /** Rounds that are worked as one before them; empty if these are told in full. */
    private Optional<List<WrittenRound>> told(TitleReader.Title title, RoundsSizeReader sizes) {
        Token[] named = new Token[1];
        boolean as = cursor.take("as-told", gap -> {
            if (!gap.equals("round")) {
                throw Phrase.unknown(gap);
            }
            named[0] = cursor.peek();
            return cursor.takeNumber(1, "number");
        });
        if (!as && cursor.opens("as-told")) {
            throw cursor.stopped();
        }
        return as ? Optional.of(as(cursor.number(), named[0], title, sizes)) : Optional.empty();
    }

    /**
     * The rounds of a title, worked as this one.
     *
     * @param told the number of the round that is told
     * @param named where it stands
     */
    private List<WrittenRound> as(int told, Token named, TitleReader.Title title, RoundsSizeReader sizes) {
        Optional<WrittenRound> before = Optional.ofNullable(known.rounds().get(told));
        Optional<WrittenRound.InFull> model = before.flatMap(RoundReader::told)
                .filter(one -> one.start().isPresent() == above(title.first()).isPresent());
        if (told >= title.first() || (before.isPresent() && model.isEmpty())) {
            throw cursor.stopAt(named, Expectation.of("asTold", title.first()));
        }
        cursor.skipPartings();
        sizes.read();
        // Of a round that could not be read the reader has said so already.
        return model.map(one -> as(one, title, sizes, 0)).orElse(List.of());
    }

    /** The words of a round that others can be worked as; empty if it has others for each side. */
    private static Optional<WrittenRound.InFull> told(WrittenRound round) {
        if (round instanceof WrittenRound.AsRound again) {
            return Optional.of(again.as());
        }
        return round instanceof WrittenRound.InFull here ? Optional.of(here) : Optional.empty();
    }

    /** The rounds of a title from one of them on, all worked as the same round. */
    private List<WrittenRound> as(WrittenRound.InFull one, TitleReader.Title title, RoundsSizeReader sizes, int from) {
        return IntStream.range(from, title.rounds())
                .<WrittenRound>mapToObj(i -> new WrittenRound.AsRound(
                        title.first() + i,
                        title.yarns().get(i),
                        sizes.sizes().get(i),
                        one,
                        one.start().flatMap(start -> start(title.first() + i, start.mark()))))
                .toList();
    }

    /** Where a round of this number starts, if it starts above a marker. */
    private Optional<WrittenStart> start(int number, StartMark mark) {
        return above(number)
                .map(markers -> new WrittenStart(markers.of(number).side(), markers.joins(number) + movedOn, mark));
    }

    private List<WrittenRound> inFull(TitleReader.Title title, RoundsSizeReader sizes) {
        Token words = cursor.peek();
        if (!cursor.take("alike", this::takeAlike)) {
            throw cursor.stopped();
        }
        cursor.skipPartings();
        cursor.take("all-sides");
        cursor.skipPartings();
        sizes.read();
        boolean atCorner = above(title.first()).isEmpty();
        WrittenRound.InFull first = atCorner ? atCorner(title, sizes) : alongSide(title, sizes, words);
        return Stream.concat(Stream.of(first), as(first, title, sizes, 1).stream())
                .toList();
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

    private WrittenRound.InFull atCorner(TitleReader.Title title, RoundsSizeReader sizes) {
        if (side.mark().isPresent()) {
            throw cursor.stopAt(side.markStart(), Expectation.of("noMark"));
        }
        return new WrittenRound.AtCorner(
                title.first(), title.yarns().get(0), sizes.sizes().get(0), stretch, chains);
    }

    /** @param words where the words of the side begin */
    private WrittenRound.InFull alongSide(TitleReader.Title title, RoundsSizeReader sizes, Token words) {
        boolean isAlikeAllAlong = stretch.before().isEmpty()
                && stretch.after().isEmpty()
                && stretch.group()
                        .filter(group -> group.stitches() == 1 && group.lastStitches() == 0)
                        .isPresent();
        if (side.mark().isEmpty() && !isAlikeAllAlong) {
            throw cursor.stopAt(words, Expectation.of("mark"));
        }
        StartMark mark = side.mark().orElse(new StartMark(StartMark.Part.GROUP, 0));
        return new WrittenRound.AlongSide(
                title.first(),
                title.yarns().get(0),
                sizes.sizes().get(0),
                stretch,
                chains,
                start(title.first(), mark).orElseThrow());
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

    private WrittenRound eachSide(TitleReader.Title title, RoundsSizeReader sizes) {
        SidesReader.Read<SideInstructions> sides = new SidesReader<>(cursor, work, this::takeAlong, "item").read();
        sizes.read();
        return new WrittenRound.EachSide(
                title.first(), title.yarns().get(0), sizes.sizes().get(0), sides.sides(), sides.cornerChains());
    }

    private WrittenRound puttingRight(TitleReader.Title title, RoundsSizeReader sizes) {
        SidesReader.Read<List<ChangingStep>> changes = new ChangesReader(cursor, work).read();
        sizes.read();
        return new WrittenRound.PuttingRight(
                title.first(), title.yarns().get(0), sizes.sizes().get(0), changes.sides(), changes.cornerChains());
    }

    private Optional<SideInstructions> takeAlong() {
        boolean taken = side.takeStretch();
        if (side.mark().isPresent()) {
            throw cursor.stopAt(side.markStart(), Expectation.of("noMark"));
        }
        return taken ? Optional.of(side.stretch()) : Optional.empty();
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

    /** Whether a stitch is the chain. */
    static boolean isChain(Optional<Stitch> stitch) {
        return stitch.filter(each -> each == Stitch.CHAIN).isPresent();
    }
}
