package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a remedy does to the chart that its finding is about, as data: one record for each kind. Whether it helps is tried by
 * {@link RemedyTrial}.
 */
public sealed interface RemedyEdit {
    /** What kind of remedy it is: small letters and hyphens, the same for all charts. */
    String id();

    /**
     * The chart with the remedy done.
     *
     * @param chart the chart that the finding is about
     */
    Chart applyTo(Chart chart);

    /** Has the visitor do what it does with this kind of remedy. */
    <R> R accept(RemedyVisitor<R> visitor);

    /** Whether it leaves the chart as it is and only has a rule say less, in the whole of the chart. */
    default boolean relaxesRule() {
        return false;
    }

    /** Whether it is the very same for whatever finding of a chart it is offered. */
    default boolean isOneForAll() {
        return this instanceof EvenOutAll || this instanceof AllowStacking || this instanceof AllowCornerChains;
    }

    /** The long stitch becomes a back-loop stitch. */
    record TakeOut(Place stitch) implements RemedyEdit {
        @Override
        public String id() {
            return "take-out";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return backLoops(chart, List.of(stitch));
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.takeOut(this);
        }
    }

    /**
     * The long stitch becomes a back-loop stitch, and so do a few of its row, so that what is left of the row is not too
     * long.
     *
     * @param breaks the other stitches of the row that become back-loop stitches
     */
    record TakeOutOfRun(Place stitch, Set<Place> breaks) implements RemedyEdit {
        public TakeOutOfRun {
            breaks = Set.copyOf(breaks);
        }

        @Override
        public String id() {
            return "take-out-of-run";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return backLoops(backLoops(chart, List.of(stitch)), breaks);
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.takeOutOfRun(this);
        }
    }

    /** The chain becomes a back-loop stitch. */
    record FillIn(Place chain) implements RemedyEdit {
        @Override
        public String id() {
            return "fill-in";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return backLoops(chart, List.of(chain));
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.fillIn(this);
        }
    }

    /**
     * The stitch directly below becomes a back-loop stitch.
     *
     * @param below that stitch
     */
    record BackLoopBelow(Place below) implements RemedyEdit {
        @Override
        public String id() {
            return "back-loop-below";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return backLoops(chart, List.of(below));
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.backLoopBelow(this);
        }
    }

    /**
     * The stitch that a long stitch lands on becomes a back-loop stitch.
     *
     * @param landing that stitch
     */
    record BackLoopAtLanding(Place landing) implements RemedyEdit {
        @Override
        public String id() {
            return "back-loop-two-below";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return backLoops(chart, List.of(landing));
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.backLoopAtLanding(this);
        }
    }

    /** The long stitch goes to another round of its fabric column and leaves a back-loop stitch behind. */
    record Move(Place from, Place to) implements RemedyEdit {
        @Override
        public String id() {
            return "move";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return Edits.setStitches(chart, Map.of(from, Stitch.BACK_LOOP, to, chart.stitch(from)));
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.move(this);
        }
    }

    /**
     * Some long stitches of a run become back-loop stitches.
     *
     * @param breaks those stitches
     */
    record BreakRun(Set<Place> breaks) implements RemedyEdit {
        public BreakRun {
            breaks = Set.copyOf(breaks);
        }

        @Override
        public String id() {
            return "break-run";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return backLoops(chart, breaks);
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.breakRun(this);
        }
    }

    /**
     * A round is worked in another yarn.
     *
     * @param round counted outwards from 1
     */
    record ChangeYarn(int round, Yarn yarn) implements RemedyEdit {
        @Override
        public String id() {
            return "change-yarn";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return Edits.changeYarn(chart, round, yarn.id());
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.changeYarn(this);
        }
    }

    /**
     * A yarn gets a lighter colour.
     *
     * @param yarn as it was
     */
    record LightenYarn(Yarn yarn, Colour colour) implements RemedyEdit {
        @Override
        public String id() {
            return "lighten-yarn";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return Edits.replaceYarn(chart, yarn.id(), yarn.withColour(colour));
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.lightenYarn(this);
        }
    }

    /**
     * A yarn gets a darker colour.
     *
     * @param yarn as it was
     */
    record DarkenYarn(Yarn yarn, Colour colour) implements RemedyEdit {
        @Override
        public String id() {
            return "darken-yarn";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return Edits.replaceYarn(chart, yarn.id(), yarn.withColour(colour));
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.darkenYarn(this);
        }
    }

    /**
     * Columns are put in or taken out beside the repeat, so that the corner sections get these lengths in the base round.
     *
     * @param a A
     * @param b B
     */
    record ChangeCorners(int a, int b) implements RemedyEdit {
        @Override
        public String id() {
            return "change-corners";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return Edits.changeToCorner(Edits.changeFromCorner(chart, a), b);
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.changeCorners(this);
        }
    }

    /**
     * A section gets the length of its round, at the corner.
     *
     * @param round counted outwards from 1
     * @param length the stitches that it then has
     */
    record EvenOut(int round, Section section, int length) implements RemedyEdit {
        @Override
        public String id() {
            return "even-out";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return RaggedSection.evenOut(chart, round, section);
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.evenOut(this);
        }
    }

    /**
     * Every ragged section gets the length of its round, at the corner.
     *
     * @param sections how many there are
     */
    record EvenOutAll(int sections) implements RemedyEdit {
        @Override
        public String id() {
            return "even-out-all";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return RaggedSection.evenOutAll(chart);
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.evenOutAll(this);
        }
    }

    /** Long stitches may land on long stitches in this chart. */
    record AllowStacking() implements RemedyEdit {
        @Override
        public String id() {
            return "allow-stacking";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return chart.withRules(chart.rules().withStackLongStitches(true));
        }

        @Override
        public boolean relaxesRule() {
            return true;
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.allowStacking(this);
        }
    }

    /** Long stitches may land in corner chains in this chart. */
    record AllowCornerChains() implements RemedyEdit {
        @Override
        public String id() {
            return "allow-corner-chains";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return chart.withRules(chart.rules().withLandOnCornerChain(true));
        }

        @Override
        public boolean relaxesRule() {
            return true;
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.allowCornerChains(this);
        }
    }

    /** So many long stitches may stand side by side in this chart. */
    record AllowRun(int length) implements RemedyEdit {
        @Override
        public String id() {
            return "allow-run";
        }

        @Override
        public Chart applyTo(Chart chart) {
            return chart.withRules(chart.rules().withLooseRun(length));
        }

        @Override
        public boolean relaxesRule() {
            return true;
        }

        @Override
        public <R> R accept(RemedyVisitor<R> visitor) {
            return visitor.allowRun(this);
        }
    }

    private static Chart backLoops(Chart chart, Collection<Place> stitches) {
        return Edits.setStitches(chart, stitches, Stitch.BACK_LOOP);
    }
}
