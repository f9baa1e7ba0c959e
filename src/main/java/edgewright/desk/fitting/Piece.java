package edgewright.desk.fitting;

import static edgewright.texts.Arg.shortest;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.KeptPiece;
import edgewright.chart.PerSide;
import edgewright.chart.RoundCounts;
import edgewright.chart.Side;
import edgewright.chart.Swatch;
import edgewright.desk.work.Listeners;
import edgewright.desk.work.Listening;
import edgewright.fit.BackLayer;
import edgewright.fit.ChangeRounds;
import edgewright.fit.Ties;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What somebody says of the piece that the border goes round: what was counted or measured on its four sides, just as it was
 * typed, and what is wanted of the fit. It shows nothing itself; {@link #outcome} is what comes of it.
 *
 * <p>For one thread only, which is the event thread in the window.
 */
public final class Piece {
    /** How the sides are known. */
    public enum Way {
        /** Stitches counted in a round that is on the piece. */
        COUNTED,
        /** The edges of a bare piece in centimetres. */
        MEASURED,
        /** The edges of a bare piece: stitches along top and bottom, rows along left and right. */
        ROWS
    }

    /**
     * The round in which the sides were counted.
     *
     * @param back whether it is a round of the back layer; then 1 or more
     */
    public record CountedIn(boolean back, int round) {}

    /** A swatch for whoever has none: stitches and rounds in ten centimetres. The numbers are a guess of our own. */
    static final Swatch GUESS = new Swatch(16, 18);

    private final Listeners<PieceChange> listeners = new Listeners<>();
    private final Map<Way, Map<Side, String>> typed = new EnumMap<>(Way.class);
    private final Map<Side, Integer> steps = new EnumMap<>(Side.class);
    private final Language language;
    private Chart chart;
    private Counting counting;
    private Way way = Way.COUNTED;
    private CountedIn countedIn;
    private Ties ties = Ties.OPPOSITE;
    private String swatchStitches = "";
    private String swatchRounds = "";
    private int frontRound;
    private String frontCounts = "";
    private String ratioStitches = "3";
    private String ratioRows = "4";
    private HookHand hand = HookHand.RIGHT;
    private PieceOutcome outcome;
    private PieceWords words;

    public Piece(Chart chart, Counting counting, Language language) {
        this.chart = chart;
        this.counting = counting;
        this.language = language;
        for (Way each : Way.values()) {
            typed.put(each, new EnumMap<>(Side.class));
        }
        begin();
        recall();
    }

    /** The same piece under another chart: the sides stay as they were typed, the round is the best one to count in. */
    public void lay(Chart other) {
        Optional<KeptPiece> kept = chart.making().piece();
        // Counts that are kept say nothing of how the border is made.
        boolean sameMaking =
                chart.making().withPiece(Optional.empty()).equals(other.making().withPiece(Optional.empty()))
                        && chart.rounds().size() == other.rounds().size();
        chart = other;
        if (!sameMaking) {
            begin();
        }
        if (!kept.equals(other.making().piece()) && isBlank()) {
            recall();
        }
        changed(PieceChange.CHART);
    }

    private boolean isBlank() {
        return typed.get(Way.COUNTED).values().stream().allMatch(String::isBlank) && frontCounts.isBlank();
    }

    /** Puts in the outermost counts that are kept with the chart, of a round that it has; those of the front rather. */
    private void recall() {
        outermost(false).ifPresent(round -> fillFront(round));
        outermost(false)
                .map(round -> new CountedIn(false, round))
                .or(() -> outermost(true).map(round -> new CountedIn(true, round)))
                .ifPresent(in -> {
                    countedIn = in;
                    fill();
                });
    }

    private Optional<Integer> outermost(boolean back) {
        int rounds = chart.rounds().size();
        if (back && chart.making().back().isEmpty()) {
            return Optional.empty();
        }
        int last = back ? new BackLayer(chart.border(), rounds).rounds().size() : rounds;
        return kept().layer(back).stream()
                .map(RoundCounts::round)
                .filter(round -> round <= last)
                .reduce((inner, outer) -> outer);
    }

    private KeptPiece kept() {
        return chart.making().piece().orElse(KeptPiece.NONE);
    }

    /** Puts in the counts that are kept of the round that is counted in; others stay as they were typed. Says whether it did. */
    private boolean fill() {
        Optional<PerSide<Integer>> counts = kept().in(countedIn.back(), countedIn.round());
        counts.ifPresent(stitches -> {
            for (Side side : Side.values()) {
                typed.get(Way.COUNTED).put(side, String.valueOf(counting.shown(stitches.get(side))));
            }
        });
        return counts.isPresent();
    }

    private boolean fillFront(int round) {
        Optional<PerSide<Integer>> counts = kept().in(false, round);
        counts.ifPresent(stitches -> {
            frontRound = round;
            frontCounts = PerSide.typed(stitches.map(counting::shown));
        });
        return counts.isPresent();
    }

    /** The piece of the chart with what is typed now; empty while that is no whole count of a round. */
    public Optional<KeptPiece> toKeep() {
        PieceNumbers numbers = PieceNumbers.of(this);
        if (way != Way.COUNTED || !numbers.isWhole() || !numbers.mistakes().isEmpty()) {
            return Optional.empty();
        }
        KeptPiece piece = kept().with(
                        countedIn.back(), countedIn.round(), numbers.counts().map(counting::stitches));
        return Optional.of(
                countedIn.back()
                        ? PieceNumbers.front(this)
                                .map(front -> piece.with(false, frontRound, front))
                                .orElse(piece)
                        : piece);
    }

    private void begin() {
        boolean whole = chart.raggedSections().isEmpty();
        countedIn =
                new CountedIn(false, whole ? ChangeRounds.of(chart).counting().orElse(0) : 0);
        Swatch swatch = chart.making().swatch().orElse(GUESS);
        swatchStitches = says().text("piece-decimal", shortest("number", swatch.stitchesIn10Cm(), 1));
        swatchRounds = says().text("piece-decimal", shortest("number", swatch.roundsIn10Cm(), 1));
        frontRound = 0;
        steps.clear();
    }

    public Chart chart() {
        return chart;
    }

    /** In which is said what comes of it. */
    Language language() {
        return language;
    }

    /** What is said of it. */
    Messages says() {
        return language.messages("desk/fitting");
    }

    public Counting counting() {
        return counting;
    }

    /** Counts in another way from now on. The piece stays the same one, so the counts typed so far become two higher or lower. */
    public void count(Counting other) {
        if (counting == other) {
            return;
        }
        Map<Side, String> counts = typed.get(Way.COUNTED);
        for (Map.Entry<Side, String> side : counts.entrySet()) {
            PieceNumbers.whole(side.getValue())
                    .ifPresent(
                            count -> side.setValue(String.valueOf(Math.max(0, other.shown(counting.stitches(count))))));
        }
        PieceNumbers.front(this).ifPresent(stitches -> frontCounts = PerSide.typed(stitches.map(other::shown)));
        counting = other;
        changed(PieceChange.FILLED);
    }

    public Way way() {
        return way;
    }

    /** Takes the sides in another way; what was typed in the others is kept. */
    public void take(Way other) {
        if (way != other) {
            way = other;
            steps.clear();
            changed(PieceChange.FILLED);
        }
    }

    public CountedIn countedIn() {
        return countedIn;
    }

    /** Another round was counted. What is kept of it with the chart is put in; where nothing is, what is typed stays. */
    public void countIn(CountedIn other) {
        if (!countedIn.equals(other)) {
            countedIn = other;
            steps.clear();
            changed(fill() ? PieceChange.FILLED : PieceChange.CHOSEN);
        }
    }

    /** The hand that holds the hook: with the left one sides are come to clockwise. */
    public HookHand hand() {
        return hand;
    }

    /** Has it worked with this hand from now on. */
    public void hold(HookHand other) {
        if (hand != other) {
            hand = other;
            changed(PieceChange.HAND);
        }
    }

    /** What is typed for a side, as it stands; empty at first. */
    public String typed(Side side) {
        return typed.get(way).getOrDefault(side, "");
    }

    /** Another count or length for a side. The sizes go back to the nearest ones. */
    public void type(Side side, String text) {
        if (!text.equals(typed.get(way).put(side, text))) {
            steps.clear();
            changed(PieceChange.TYPED);
        }
    }

    public Ties ties() {
        return ties;
    }

    public void tie(Ties other) {
        if (!ties.equals(other)) {
            ties = other;
            steps.clear();
            changed(PieceChange.CHOSEN);
        }
    }

    /** How many repeats more than in the nearest size are wanted on this side; fewer if below 0. */
    int steps(Side side) {
        return steps.getOrDefault(side, 0);
    }

    /** Wants so many repeats more, or fewer, on a side and on the one that is tied to it. */
    public void step(Side side, int repeats) {
        steps.merge(side, repeats, Integer::sum);
        if (ties.tied(side)) {
            steps.put(side.opposite(), steps(side));
        }
        changed(PieceChange.CHOSEN);
    }

    /** Goes back to the nearest sizes. */
    public void nearest() {
        steps.clear();
        changed(PieceChange.CHOSEN);
    }

    public boolean isNearest() {
        return steps.values().stream().allMatch(step -> step == 0);
    }

    /** The round of the front of a double border in which its sides were counted, 0 for the base round. */
    public int frontRound() {
        return frontRound;
    }

    /** What was counted there, as it was typed: four numbers, or two; empty at first. */
    public String frontCounts() {
        return frontCounts;
    }

    /** What was counted on the front, which a back layer is put right to. If that is kept of another round, it is put in. */
    public void front(int inRound, String counts) {
        if (frontRound != inRound || !frontCounts.equals(counts)) {
            boolean otherRound = frontRound != inRound;
            frontRound = inRound;
            frontCounts = counts;
            changed(otherRound && fillFront(inRound) ? PieceChange.FILLED : PieceChange.TYPED);
        }
    }

    public String swatchStitches() {
        return swatchStitches;
    }

    public String swatchRounds() {
        return swatchRounds;
    }

    public void swatch(String stitches, String rounds) {
        swatchStitches = stitches;
        swatchRounds = rounds;
        changed(PieceChange.TYPED);
    }

    public String ratioStitches() {
        return ratioStitches;
    }

    public String ratioRows() {
        return ratioRows;
    }

    /** So many stitches are picked up in so many rows. */
    public void ratio(String stitches, String rows) {
        ratioStitches = stitches;
        ratioRows = rows;
        changed(PieceChange.TYPED);
    }

    /** What comes of all this. */
    public PieceOutcome outcome() {
        if (outcome == null) {
            outcome = PieceAnswers.of(this);
        }
        return outcome;
    }

    /** For which piece a pattern is that is written for this one. */
    public PieceWords words() {
        if (words == null) {
            words = PieceWords.of(this);
        }
        return words;
    }

    /** Tells the listener of every change from now on, after it has happened. */
    public Listening listen(Consumer<PieceChange> listener) {
        return listeners.add(listener);
    }

    private void changed(PieceChange change) {
        outcome = null;
        words = null;
        listeners.tell(change);
    }
}
