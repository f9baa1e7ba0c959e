package edgewright.words.read;

import edgewright.chart.Corner;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.words.terms.TradeWord;
import edgewright.words.tree.Bracket;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads the single things that are worked along a side: steps, and the corner at its end. */
final class WorkReader {
    /** Brackets stand in brackets once. */
    private static final int DEEPEST = 2;

    private final TokenCursor cursor;
    private final OptionalInt told;
    private final Vocabulary words;

    private int count;
    private Stitch stitch = Stitch.BACK_LOOP;
    private int chains;

    WorkReader(TokenCursor cursor) {
        this(cursor, OptionalInt.empty());
    }

    /** @param told the chains of a corner that is only named, where the pattern has told them */
    WorkReader(TokenCursor cursor, OptionalInt told) {
        this.cursor = cursor;
        this.told = told;
        this.words = cursor.words();
    }

    /** The chains of the corner that was taken last. */
    int chains() {
        return chains;
    }

    /** The run that was taken last. */
    Run run() {
        return new Run(count, stitch);
    }

    /**
     * Takes what stands in brackets: one step or more; those that were there before are given up.
     *
     * @param depth how many brackets may stand in one another
     */
    private boolean takeSteps(List<SideStep> steps, int depth) {
        steps.clear();
        int end = cursor.mark();
        for (Optional<SideStep> step = takeStep(depth); step.isPresent(); step = takeStep(depth)) {
            steps.add(step.get());
            end = cursor.mark();
            if (!cursor.between("runs-next")) {
                break;
            }
        }
        if (cursor.is("start-mark-word")) {
            throw cursor.stop("noMarkInBrackets");
        }
        cursor.reset(end);
        return !steps.isEmpty();
    }

    /** Takes one step or more, with brackets in brackets once; those that were there before are given up. */
    boolean takeSteps(List<SideStep> steps) {
        return takeSteps(steps, DEEPEST);
    }

    /** Takes one step with all that stands in its brackets. */
    Optional<SideStep> takeStep() {
        return takeStep(DEEPEST);
    }

    private Optional<SideStep> takeStep(int depth) {
        if (takeRun()) {
            return Optional.of(run());
        }
        for (String bracket : List.of("bracket", "bracket-outer")) {
            if (depth == 0 && cursor.opens(bracket)) {
                throw cursor.stop("noBracket");
            }
            List<SideStep> steps = new ArrayList<>();
            int[] times = new int[1];
            boolean taken = depth > 0
                    && cursor.take(bracket, gap -> switch (gap) {
                        case "steps" -> takeSteps(steps, depth - 1);
                        case "times" -> {
                            times[0] = takeTimes();
                            yield times[0] > 0;
                        }
                        default -> throw Phrase.unknown(gap);
                    });
            if (taken) {
                return Optional.of(new Bracket(steps, times[0]));
            }
        }
        return Optional.empty();
    }

    /** Takes how often what stands in brackets is worked: 2 or more, or 0 if that does not stand here. */
    int takeTimes() {
        // 'Twice' has no number.
        int[] times = {2};
        boolean taken = cursor.take("times", gap -> {
            if (!gap.equals("count")) {
                throw Phrase.unknown(gap);
            }
            boolean number = cursor.takeNumber(2, "timesNumber");
            times[0] = number ? cursor.number() : 2;
            return number;
        });
        return taken ? times[0] : 0;
    }

    /** Takes a run of stitches, or of chains with the stitches that they miss. */
    boolean takeRun() {
        return cursor.take("run", this::takeRun) || cursor.take("chains", this::takeChains);
    }

    private boolean takeRun(String gap) {
        return switch (gap) {
            case "count" -> takeCount();
            case "stitch" -> takeStitch(false);
            default -> throw Phrase.unknown(gap);
        };
    }

    private boolean takeCount() {
        boolean taken = cursor.takeNumber(1, "number");
        count = cursor.number();
        return taken;
    }

    /** The stitch that was taken last. */
    Stitch stitch() {
        return stitch;
    }

    /** Takes a stitch; a chain only where it may stand. */
    boolean takeStitch(boolean orChain) {
        int mark = cursor.mark();
        Optional<Stitch> taken = cursor.takeStitch();
        if (taken.isEmpty()) {
            return cursor.missStitch();
        }
        if (!orChain && RoundReader.isChain(taken)) {
            cursor.reset(mark);
            return false;
        }
        stitch = taken.get();
        return true;
    }

    private boolean takeChains(String gap) {
        return switch (gap) {
            case "count" -> takeCount();
            case "stitch" -> {
                stitch = Stitch.CHAIN;
                yield cursor.take(words.of(TradeWord.CHAIN));
            }
            case "miss" ->
                cursor.take(words.of(TradeWord.MISS))
                        || cursor.miss(Expectation.of("miss", words.name(TradeWord.MISS)));
            case "missed" -> takeMissed();
            default -> throw Phrase.unknown(gap);
        };
    }

    /** As many stitches as there are chains. */
    private boolean takeMissed() {
        Token start = cursor.peek();
        boolean taken = takeStitches(1, "number");
        if (taken && cursor.number() != count) {
            throw cursor.stopAt(start, Expectation.of("missed", count));
        }
        return taken;
    }

    /** Takes so many stitches, told by {@link TokenCursor#number}. */
    boolean takeStitches(int least, String expected) {
        return cursor.take("sts", gap -> {
            if (!gap.equals("sts")) {
                throw Phrase.unknown(gap);
            }
            return cursor.takeNumber(least, expected);
        });
    }

    /** Takes the corner; what is missing otherwise is somebody else's to say. */
    boolean takeCornerAlone() {
        boolean withChains = cursor.take("corner", gap -> {
            if (!gap.equals("chains")) {
                throw Phrase.unknown(gap);
            }
            return takeCornerChains();
        });
        if (withChains || told.isEmpty() || !cursor.take("corner-as-told")) {
            return withChains;
        }
        chains = told.getAsInt();
        return true;
    }

    boolean takeCornerChains() {
        Token[] count = new Token[1];
        boolean taken = cursor.take("corner-chains", gap -> switch (gap) {
            case "count" -> {
                count[0] = cursor.peek();
                yield cursor.takeNumber(0, "cornerChains");
            }
            case "stitch" ->
                cursor.take(words.of(TradeWord.CHAIN))
                        || cursor.miss(Expectation.of("chain", words.name(TradeWord.CHAIN)));
            default -> throw Phrase.unknown(gap);
        });
        // Only with the chain behind it is it their number: it could be that of the stitches of a side.
        if (taken && !Corner.isTurnedWith(cursor.grammar().number(count[0]))) {
            throw cursor.stopAt(count[0], Expectation.of("cornerChains"));
        }
        chains = taken ? cursor.grammar().number(count[0]) : chains;
        return taken || (!cursor.isNumber() && cursor.miss("cornerChains"));
    }

    /** Takes an edge. */
    Optional<Side> takeEdge() {
        for (Side side : Side.values()) {
            if (cursor.takeWord("edge-" + side)) {
                return Optional.of(side);
            }
        }
        cursor.miss("edge");
        return Optional.empty();
    }
}
