package edgewright.desk.fitting;

import static edgewright.texts.Arg.shortest;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.Side;
import edgewright.chart.Swatch;
import edgewright.fit.ChangeRounds;
import edgewright.fit.Ties;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

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

    private final List<Runnable> listeners = new ArrayList<>();
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
    private PieceOutcome outcome;

    public Piece(Chart chart, Counting counting, Language language) {
        this.chart = chart;
        this.counting = counting;
        this.language = language;
        for (Way each : Way.values()) {
            typed.put(each, new EnumMap<>(Side.class));
        }
        begin();
    }

    /** The same piece under another chart: the sides stay as they were typed, the round is the best one to count in. */
    public void lay(Chart other) {
        boolean sameMaking = chart.making().equals(other.making())
                && chart.rounds().size() == other.rounds().size();
        chart = other;
        if (sameMaking) {
            changed();
        } else {
            begin();
            changed();
        }
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
        counting = other;
        changed();
    }

    public Way way() {
        return way;
    }

    /** Takes the sides in another way; what was typed in the others is kept. */
    public void take(Way other) {
        if (way != other) {
            way = other;
            steps.clear();
            changed();
        }
    }

    public CountedIn countedIn() {
        return countedIn;
    }

    public void countIn(CountedIn other) {
        if (!countedIn.equals(other)) {
            countedIn = other;
            steps.clear();
            changed();
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
            changed();
        }
    }

    public Ties ties() {
        return ties;
    }

    public void tie(Ties other) {
        if (!ties.equals(other)) {
            ties = other;
            steps.clear();
            changed();
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
        changed();
    }

    /** Goes back to the nearest sizes. */
    public void nearest() {
        steps.clear();
        changed();
    }

    public boolean isNearest() {
        return steps.values().stream().allMatch(step -> step == 0);
    }

    /** The round of the front of a double border in which its sides were counted, 0 for the base round. */
    public int frontRound() {
        return frontRound;
    }

    /** What was counted there, as it was typed: four numbers, or two; empty at first. */
    String frontCounts() {
        return frontCounts;
    }

    /** What was counted on the front. A back layer is put right to it. */
    public void front(int inRound, String counts) {
        if (frontRound != inRound || !frontCounts.equals(counts)) {
            frontRound = inRound;
            frontCounts = counts;
            changed();
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
        changed();
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
        changed();
    }

    /** What comes of all this. */
    public PieceOutcome outcome() {
        if (outcome == null) {
            outcome = PieceAnswers.of(this);
        }
        return outcome;
    }

    /** Tells the listener of every change from now on, after it has happened. */
    public void listen(Runnable listener) {
        listeners.add(Objects.requireNonNull(listener));
    }

    private void changed() {
        outcome = null;
        listeners.forEach(Runnable::run);
    }
}
