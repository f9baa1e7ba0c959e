package edgewright.words.read;

import edgewright.chart.Corner;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.words.terms.TradeWord;
import edgewright.words.tree.Bracket;
import edgewright.words.tree.Group;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads what is worked along a side: runs, a group, and the corner at its end. */
final class WorkReader {
    /** Brackets stand in brackets once. */
    private static final int DEEPEST = 2;

    private final TokenCursor cursor;
    private final OptionalInt told;
    private final Vocabulary words;

    private final List<SideStep> before = new ArrayList<>();
    private Optional<Group> group = Optional.empty();
    private final List<SideStep> after = new ArrayList<>();

    private int count;
    private Stitch stitch = Stitch.BACK_LOOP;
    private int last;
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

    /** What was worked along the side that was taken last. */
    SideInstructions stretch() {
        return group.map(each -> SideInstructions.of(before, each, after)).orElseGet(() -> SideInstructions.of(before));
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
     * Takes what is worked up to the corner.
     *
     * @param gap must be that for the work
     * @param mayBeEmpty whether the corner may come at once
     */
    boolean takeStretch(String gap, boolean mayBeEmpty) {
        if (!gap.equals("work")) {
            throw Phrase.unknown(gap);
        }
        before.clear();
        after.clear();
        group = Optional.empty();
        int mark = cursor.mark();
        while (takeItem()) {
            mark = cursor.mark();
            if (!cursor.between("clauses-next")) {
                cursor.between("runs-next");
            }
        }
        cursor.reset(mark);
        if (mayBeEmpty || group.isPresent() || !before.isEmpty()) {
            return true;
        }
        if (takeCorner()) {
            cursor.reset(mark);
            throw cursor.stop("work");
        }
        return false;
    }

    private boolean takeItem() {
        Token start = cursor.peek();
        if (group.isPresent() && cursor.opens("group")) {
            throw cursor.stop("oneGroup");
        }
        Optional<Group> next = takeGroup();
        Optional<SideStep> step = next.isEmpty() ? takeStep(DEEPEST) : Optional.empty();
        if (step.isPresent()) {
            (group.isEmpty() ? before : after).add(step.get());
            return true;
        }
        next = next.isEmpty() ? takeEvery() : next;
        if (next.isPresent() && group.isPresent()) {
            throw cursor.stopAt(start, Expectation.of("oneGroup"));
        }
        group = next.isPresent() ? next : group;
        return next.isPresent();
    }

    private Optional<Group> takeGroup() {
        List<SideStep> steps = new ArrayList<>();
        boolean taken = cursor.take("group", gap -> switch (gap) {
            case "steps" -> takeSteps(steps, DEEPEST);
            case "upTo" -> takeUpTo();
            default -> throw Phrase.unknown(gap);
        });
        return taken ? Optional.of(new Group(steps, last)) : Optional.empty();
    }

    private Optional<Group> takeEvery() {
        boolean to = cursor.take("every-to", this::takeEvery);
        last = to ? last : 0;
        boolean taken = to || cursor.take("every", this::takeEvery);
        return taken ? Optional.of(new Group(List.of(new Run(1, stitch)), last)) : Optional.empty();
    }

    private boolean takeEvery(String gap) {
        return switch (gap) {
            case "stitch" -> takeStitch(true);
            case "upTo" -> takeUpTo();
            default -> throw Phrase.unknown(gap);
        };
    }

    /**
     * Takes one step or more; those that were there before are given up.
     *
     * @param depth how many brackets may stand in one another
     */
    private boolean takeSteps(List<SideStep> steps, int depth) {
        steps.clear();
        int mark = cursor.mark();
        for (Optional<SideStep> step = takeStep(depth); step.isPresent(); step = takeStep(depth)) {
            steps.add(step.get());
            mark = cursor.mark();
            if (!cursor.between("runs-next")) {
                break;
            }
        }
        cursor.reset(mark);
        return !steps.isEmpty();
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

    /** Takes one run or more; those that were there before are given up. */
    boolean takeRuns(List<Run> runs) {
        runs.clear();
        int mark = cursor.mark();
        while (takeRun()) {
            runs.add(run());
            mark = cursor.mark();
            if (!cursor.between("runs-next")) {
                break;
            }
        }
        cursor.reset(mark);
        return !runs.isEmpty();
    }

    private boolean takeUpTo() {
        last = 0;
        if (cursor.take("to-corner")) {
            return true;
        }
        last = 1;
        boolean taken = cursor.take("to-last", gap -> {
            if (!gap.equals("last")) {
                throw Phrase.unknown(gap);
            }
            boolean number = cursor.takeNumber(1, "number");
            last = number ? cursor.number() : 1;
            return number;
        });
        return taken || cursor.miss("upTo");
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

    private boolean takeStitch(boolean orChain) {
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

    /** Takes the corner at the end of a side; told by {@link #chains}. */
    boolean takeCorner() {
        return takeCornerAlone() || missItem();
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

    /** Notes that neither work nor a corner stands here. */
    private boolean missItem() {
        if (group.isEmpty() && cursor.is("repeat-word")) {
            throw cursor.stop("asteriskBefore");
        }
        if (cursor.atEnd() || cursor.peek().kind() != Token.Kind.WORD) {
            return cursor.miss("item");
        }
        int mark = cursor.mark();
        boolean isStitch = cursor.takeStitch().isPresent();
        cursor.reset(mark);
        return !isStitch && cursor.missStitch();
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
