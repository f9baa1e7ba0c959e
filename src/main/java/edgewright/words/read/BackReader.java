package edgewright.words.read;

import edgewright.chart.Corner;
import edgewright.chart.Counting;
import edgewright.chart.HookSize;
import edgewright.chart.Stitch;
import edgewright.words.tree.BackRound;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenBack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads a back layer, paragraph by paragraph. Paragraphs that begin otherwise than its rounds and joins are for people. */
final class BackReader {
    private static final String BETWEEN = ",;.:";

    private final Vocabulary words;
    private Optional<HookSize> hook = Optional.empty();
    private SideSize base = SideSize.UNSTATED;
    private Optional<Counting> counting = Optional.empty();
    private final List<BackRound> rounds = new ArrayList<>();
    private boolean joined;

    BackReader(Vocabulary words) {
        this.words = words;
    }

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
        if (cursor.take("back.hook")) {
            hook = Optional.of(hook(cursor));
        } else if (cursor.take("back.base")) {
            cursor.skip(BETWEEN);
            base = size(cursor);
            end(cursor);
        } else if (cursor.take("back.round")) {
            rounds.add(round(cursor));
            end(cursor);
        } else if (cursor.take("back.joining")) {
            joining(cursor);
        }
    }

    private void end(TokenCursor cursor) {
        cursor.skip(BETWEEN);
        if (!cursor.atEnd()) {
            throw cursor.stop("back.end");
        }
    }

    private HookSize hook(TokenCursor cursor) {
        cursor.skip(":");
        Token start = cursor.peek();
        long hundredths = 100L * cursor.number(0, "back.hook");
        if (cursor.takeSign(".")) {
            String digits = cursor.peek().text();
            int fraction = cursor.number(0, "back.hook");
            if (digits.length() > 2) {
                throw cursor.stop("back.hook");
            }
            hundredths += digits.length() == 1 ? 10 * fraction : fraction;
        }
        cursor.require("back.mm", "back.hook");
        if (hundredths < 1 || hundredths > HookSize.MOST_HUNDREDTHS_MM) {
            throw cursor.stopAt(start, "back.hook");
        }
        return new HookSize((int) hundredths);
    }

    private BackRound round(TokenCursor cursor) {
        int number = rounds.size() + 1;
        if (!cursor.isNumber() || words.number(cursor.peek()) != number) {
            throw cursor.stop("back.number", number);
        }
        cursor.next();
        cursor.skip(BETWEEN);
        OptionalInt front = OptionalInt.empty();
        if (cursor.take("back.asRound")) {
            front = OptionalInt.of(cursor.number(1, "number"));
            cursor.take("back.ofFront");
        }
        cursor.skip(BETWEEN);
        SideSize side = size(cursor);
        cursor.skip(BETWEEN);
        if (cursor.take("back.asBefore")) {
            BackRound same = before(cursor, number);
            return new BackRound(number, front, side, same.height(), same.atEachArm(), same.cornerChains());
        }
        return worked(cursor, number, front, side);
    }

    /** The back round that is named here, one before the round of this number. */
    private BackRound before(TokenCursor cursor, int number) {
        Token said = cursor.peek();
        int before = cursor.number(1, "number");
        if (before >= number) {
            throw cursor.stopAt(said, "back.before", number);
        }
        return rounds.get(before - 1);
    }

    private BackRound worked(TokenCursor cursor, int number, OptionalInt front, SideSize side) {
        BackRound.Height height = height(cursor);
        cursor.require("back.every", "back.every");
        cursor.skip(BETWEEN);
        cursor.require("corner", "back.corner");
        cursor.skip(":");
        int atEachArm = cursor.number(1, "number");
        requireSame(cursor, height);
        cursor.skip(",");
        if (!cursor.isNumber() || !Corner.isTurnedWith(words.number(cursor.peek()))) {
            throw cursor.stop("cornerChains");
        }
        int chains = cursor.number(1, "cornerChains");
        if (!cursor.take(words.stitch(Stitch.CHAIN))) {
            throw cursor.stop("chain", words.name(Stitch.CHAIN));
        }
        cursor.skip(",");
        if (!cursor.isNumber() || words.number(cursor.peek()) != atEachArm) {
            throw cursor.stop("back.sameArms", atEachArm);
        }
        cursor.next();
        requireSame(cursor, height);
        cursor.skip(BETWEEN);
        cursor.take("allSides");
        return new BackRound(number, front, side, height, atEachArm, chains);
    }

    private SideSize size(TokenCursor cursor) {
        Optional<SizeReader.Said> said = new SizeReader(cursor, false).read();
        counting = counting.or(() -> said.map(SizeReader.Said::counting));
        return said.map(SizeReader.Said::size).orElse(SideSize.UNSTATED);
    }

    private BackRound.Height height(TokenCursor cursor) {
        if (cursor.take(words.tall())) {
            return BackRound.Height.TALL;
        }
        if (cursor.take(words.stitch(Stitch.PLAIN))) {
            return BackRound.Height.LOW;
        }
        throw cursor.stop("back.stitch", words.tallName(), words.name(Stitch.PLAIN));
    }

    /** The stitch of the sides again, into the corner. */
    private void requireSame(TokenCursor cursor, BackRound.Height height) {
        Token start = cursor.peek();
        if (height(cursor) != height) {
            throw cursor.stopAt(
                    start,
                    "back.sameStitch",
                    height == BackRound.Height.TALL ? words.tallName() : words.name(Stitch.PLAIN));
        }
    }

    private void joining(TokenCursor cursor) {
        cursor.skip(BETWEEN);
        if (!cursor.take(words.slip())) {
            throw cursor.stop("back.slip", words.slipName());
        }
        cursor.require("back.through", "back.through");
        cursor.skip(BETWEEN);
        cursor.take("back.noChains");
        end(cursor);
        joined = true;
    }
}
