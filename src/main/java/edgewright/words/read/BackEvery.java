package edgewright.words.read;

import edgewright.words.terms.TradeWord;
import edgewright.words.tree.BackRound;

/** Reads how a back round is worked: the same stitch in every stitch, and some into each corner below. */
final class BackEvery {
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
            return cursor.miss(new Expectation("backStitch", words.name(TradeWord.TALL), words.name(TradeWord.PLAIN)));
        }
        if (height != null && height != taken) {
            TradeWord said = height == BackRound.Height.TALL ? TradeWord.TALL : TradeWord.PLAIN;
            throw cursor.stopAt(start, Expectation.of("sameStitch", words.name(said)));
        }
        height = taken;
        return true;
    }
}
