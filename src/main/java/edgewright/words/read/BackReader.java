package edgewright.words.read;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookSize;
import edgewright.words.terms.TradeWord;
import edgewright.words.tree.BackRound;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenBack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads a back layer, paragraph by paragraph. Paragraphs that begin otherwise than its rounds and joins are for people. */
final class BackReader {
    private Optional<HookSize> hook = Optional.empty();
    private SideSize base = SideSize.unstated();
    private Optional<Counting> counting = Optional.empty();
    private final List<BackRound> rounds = new ArrayList<>();
    private boolean joined;

    /** What was read; empty if there was no back round. */
    Optional<WrittenBack> back() {
        return rounds.isEmpty() ? Optional.empty() : Optional.of(new WrittenBack(hook, base, rounds, joined));
    }

    /** The way of counting, if a back round says how many stitches a side has. */
    Optional<Counting> counting() {
        return counting;
    }

    /** Takes the next paragraph. */
    void read(TokenCursor cursor) {
        if (readHook(cursor)) {
            return;
        }
        if (cursor.take("back-base")) {
            base = size(cursor);
            end(cursor);
        } else if (readJoining(cursor)) {
            joined = true;
            end(cursor);
        } else {
            readRounds(cursor);
        }
    }

    private void end(TokenCursor cursor) {
        cursor.skipPartings();
        if (!cursor.atEnd()) {
            cursor.miss("backEnd");
            throw cursor.stopped();
        }
    }

    private boolean readHook(TokenCursor cursor) {
        Token[] start = new Token[1];
        long[] hundredths = new long[1];
        boolean taken = cursor.take("back-hook", gap -> {
            if (!gap.equals("mm")) {
                throw Phrase.unknown(gap);
            }
            start[0] = cursor.peek();
            hundredths[0] = takeHundredths(cursor);
            return hundredths[0] >= 0;
        });
        if (!taken && cursor.opens("back-hook")) {
            throw cursor.stopped();
        }
        if (taken) {
            if (hundredths[0] < 1 || hundredths[0] > HookSize.MOST_HUNDREDTHS_MM) {
                throw cursor.stopAt(start[0], Expectation.of("hook"));
            }
            hook = Optional.of(new HookSize((int) hundredths[0]));
        }
        return taken;
    }

    /** Takes a thickness with no more than two digits after its decimal sign; negative if none stands here. */
    private static long takeHundredths(TokenCursor cursor) {
        if (!cursor.takeNumber(0, "hook")) {
            return -1;
        }
        long hundredths = 100L * cursor.number();
        int mark = cursor.mark();
        if (cursor.isSign(List.of(cursor.grammar().decimalSign()))) {
            cursor.next();
            String digits = cursor.peek().text();
            if (cursor.takeNumber(0, "hook") && digits.length() > 2) {
                throw cursor.stop("hook");
            }
            if (mark + 2 == cursor.mark()) {
                hundredths += digits.length() == 1 ? 10L * cursor.number() : cursor.number();
            }
        }
        return hundredths;
    }

    /** Reads a back round, or some that are worked alike, if such are said here. */
    private void readRounds(TokenCursor cursor) {
        int number = rounds.size() + 1;
        Title title = new Title(cursor, number);
        if (!title.take()) {
            return;
        }
        cursor.skipPartings();
        RoundsSizeReader sizes = new RoundsSizeReader(cursor, number, title.rounds());
        sizes.read();
        counting = counting.or(sizes::counting);
        cursor.skipPartings();
        BackRound first = worked(cursor, number, title.front(0), sizes.sizes().get(0));
        for (int i = 0; i < title.rounds(); i++) {
            rounds.add(new BackRound(
                    number + i,
                    title.front(i),
                    sizes.sizes().get(i),
                    first.height(),
                    first.atEachArm(),
                    first.cornerChains()));
        }
        end(cursor);
    }

    private BackRound worked(TokenCursor cursor, int number, OptionalInt front, SideSize side) {
        BackRound[] same = new BackRound[1];
        boolean asBefore = cursor.take("back-as-before", gap -> {
            if (!gap.equals("round")) {
                throw Phrase.unknown(gap);
            }
            same[0] = before(cursor, number);
            return true;
        });
        if (asBefore) {
            return new BackRound(number, front, side, same[0].height(), same[0].atEachArm(), same[0].cornerChains());
        }
        BackEvery every = new BackEvery(cursor);
        if (!every.take()) {
            throw cursor.stopped();
        }
        cursor.skipPartings();
        cursor.take("all-sides");
        return new BackRound(number, front, side, every.height(), every.atEachArm(), every.chains());
    }

    /** The back round that is named here, one before the round of this number. */
    private BackRound before(TokenCursor cursor, int number) {
        Token said = cursor.peek();
        if (!cursor.takeNumber(1, "number")) {
            throw cursor.stop("number");
        }
        if (cursor.number() >= number) {
            throw cursor.stopAt(said, Expectation.of("backBefore", number));
        }
        return rounds.get(cursor.number() - 1);
    }

    private SideSize size(TokenCursor cursor) {
        Optional<SizeReader.Said> said = new SizeReader(cursor, false).read();
        counting = counting.or(() -> said.map(SizeReader.Said::counting));
        return said.map(SizeReader.Said::size).orElse(SideSize.unstated());
    }

    private static boolean readJoining(TokenCursor cursor) {
        boolean taken = cursor.take("back-joining", gap -> {
            if (!gap.equals("stitch")) {
                throw Phrase.unknown(gap);
            }
            return cursor.take(cursor.words().of(TradeWord.SLIP))
                    || cursor.miss(Expectation.of("slip", cursor.words().name(TradeWord.SLIP)));
        });
        if (!taken && cursor.opens("back-joining")) {
            throw cursor.stopped();
        }
        return taken;
    }

    /** Reads how a back round is worked: the same stitch in every stitch, and some into each corner below. */
    private static final class BackEvery {
        private final TokenCursor cursor;
        private final Vocabulary words;
        private final WorkReader work;

        /** That of the sides; none until it is read. */
        private BackRound.Height height;

        private int atEachArm;

        BackEvery(TokenCursor cursor) {
            this.cursor = cursor;
            this.words = cursor.words();
            this.work = new WorkReader(cursor);
        }

        BackRound.Height height() {
            return height;
        }

        int atEachArm() {
            return atEachArm;
        }

        int chains() {
            return work.chains();
        }

        boolean take() {
            return cursor.take("back-every", gap -> switch (gap) {
                case "stitch" -> takeHeight();
                case "before", "after" -> takeArm();
                case "chains" -> work.takeCornerChains();
                default -> throw Phrase.unknown(gap);
            });
        }

        private boolean takeArm() {
            return cursor.take("run", gap -> switch (gap) {
                case "count" -> takeCount();
                case "stitch" -> takeHeight();
                default -> throw Phrase.unknown(gap);
            });
        }

        /** As many stitches at the second arm as at the first. */
        private boolean takeCount() {
            Token start = cursor.peek();
            boolean taken = cursor.takeNumber(1, "number");
            if (atEachArm > 0 && (!taken || cursor.number() != atEachArm)) {
                throw cursor.stopAt(start, Expectation.of("sameArms", atEachArm));
            }
            atEachArm = cursor.number();
            return taken;
        }

        /** The stitch of the sides, or the same again. */
        private boolean takeHeight() {
            Token start = cursor.peek();
            BackRound.Height taken;
            if (cursor.take(words.of(TradeWord.TALL))) {
                taken = BackRound.Height.TALL;
            } else if (cursor.take(words.of(TradeWord.PLAIN))) {
                taken = BackRound.Height.LOW;
            } else {
                return cursor.miss(
                        new Expectation("backStitch", words.name(TradeWord.TALL), words.name(TradeWord.PLAIN)));
            }
            if (height != null && height != taken) {
                TradeWord said = height == BackRound.Height.TALL ? TradeWord.TALL : TradeWord.PLAIN;
                throw cursor.stopAt(start, Expectation.of("sameStitch", words.name(said)));
            }
            height = taken;
            return true;
        }
    }

    /** Reads the title of a back round, or of some that are worked alike, with the rounds of the front that they match. */
    private static final class Title {
        private final TokenCursor cursor;
        private final int number;
        private final List<Integer> fronts = new ArrayList<>();
        private int last;

        /** @param number the number that the first round must have */
        Title(TokenCursor cursor, int number) {
            this.cursor = cursor;
            this.number = number;
            this.last = number;
        }

        /** How many rounds have this title. */
        int rounds() {
            return last - number + 1;
        }

        /** The round of the front that one of these rounds matches, counted from 0; empty if the title says none. */
        OptionalInt front(int index) {
            return fronts.isEmpty() ? OptionalInt.empty() : OptionalInt.of(fronts.get(index));
        }

        /** Takes the title; false if none stands here. */
        boolean take() {
            if (taken("back-title-as") || taken("back-title") || taken("back-titles-as") || taken("back-titles")) {
                return true;
            }
            if (cursor.opens("back-title") || cursor.opens("back-titles")) {
                throw cursor.stopped();
            }
            return false;
        }

        private boolean taken(String phrase) {
            fronts.clear();
            last = number;
            return cursor.take(phrase, this::gap);
        }

        private boolean gap(String gap) {
            return switch (gap) {
                case "round", "first" -> isThisRound();
                case "last" -> {
                    Token said = cursor.peek();
                    boolean taken = cursor.takeNumber(0, "number");
                    if (taken && (cursor.number() <= number || cursor.number() > Chart.MOST_ROUNDS)) {
                        throw cursor.stopAt(said, Expectation.of("lastRound", number + 1));
                    }
                    last = cursor.number();
                    yield taken;
                }
                case "front" -> takeFront();
                case "fronts" -> takeFronts();
                default -> throw Phrase.unknown(gap);
            };
        }

        private boolean isThisRound() {
            Token said = cursor.peek();
            if (!cursor.takeNumber(0, "number")) {
                return cursor.miss(Expectation.of("backNumber", number));
            }
            if (cursor.number() != number) {
                throw cursor.stopAt(said, Expectation.of("backNumber", number));
            }
            return true;
        }

        private boolean takeFront() {
            boolean taken = cursor.takeNumber(1, "number");
            if (taken) {
                fronts.add(cursor.number());
            }
            return taken;
        }

        private boolean takeFronts() {
            if (!takeFront()) {
                return false;
            }
            while (fronts.size() < rounds()) {
                if (!cursor.between("back-fronts-next") || !takeFront()) {
                    throw cursor.stopAt(cursor.peek(), Expectation.of("frontOfEach", rounds()));
                }
            }
            return true;
        }
    }
}
