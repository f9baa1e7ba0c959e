package edgewright.check;

import edgewright.chart.CornerEnd;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import java.util.OptionalInt;

/**
 * How a chart breaks a rule somewhere, as data: for each rule one record that holds what is to be known about it. It does not
 * name its chart, so verdicts on two charts can share it. Sentences are made from it by {@link FindingSentences}.
 */
public sealed interface Violation {
    /** What is broken there: a stitch, a section, a round or a side. */
    FindingPlace place();

    /** Has the visitor do what it does with this kind of violation. */
    <R> R accept(Visitor<R> visitor);

    /** One that is about a single stitch. */
    sealed interface OfStitch extends Violation {
        /** The stitch that breaks the rule. */
        Place stitch();

        @Override
        default FindingPlace place() {
            return new FindingPlace.OfStitch(stitch());
        }

        /** The corner that is nearer in working order: the one that the section of the stitch runs to. */
        default CornerEnd corner() {
            return stitch().section().corner().orElse(CornerEnd.NEXT);
        }
    }

    /** A long stitch in round 1, under which there is the base round alone. */
    record NoRoundBelow(Place stitch) implements OfStitch {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.noRoundBelow(this);
        }
    }

    /** A long stitch as the first or last of a side. */
    record PastCorner(Place stitch) implements OfStitch {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.pastCorner(this);
        }
    }

    /** A long stitch above a long stitch that lies in front of the loop wanted. */
    record CoveredLoop(Place stitch) implements OfStitch {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.coveredLoop(this);
        }
    }

    /**
     * A long stitch above a plain stitch that is worked into the loop wanted.
     *
     * @param landingRound the number of the round that it lands on, 0 for the base round
     */
    record UsedLoop(Place stitch, int landingRound) implements OfStitch {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.usedLoop(this);
        }
    }

    /**
     * A long stitch that lands on a long stitch, where that is not allowed.
     *
     * @param landingRound the number of the round that it lands on, 0 for the base round
     */
    record LandsOnLong(Place stitch, int landingRound) implements OfStitch {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.landsOnLong(this);
        }
    }

    /**
     * A long stitch that lands on a chain inside the side.
     *
     * @param landingRound the number of the round that it lands on, 0 for the base round
     */
    record LandsOnChain(Place stitch, int landingRound) implements OfStitch {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.landsOnChain(this);
        }
    }

    /**
     * A long stitch that lands in a corner chain, where that is not allowed.
     *
     * @param landingRound the number of the round that it lands on, 0 for the base round
     */
    record LandsOnCornerChain(Place stitch, int landingRound) implements OfStitch {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.landsOnCornerChain(this);
        }
    }

    /** A chain as the first or last stitch of a side. */
    record ChainAtCorner(Place stitch) implements OfStitch {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.chainAtCorner(this);
        }
    }

    /**
     * A long stitch that lands on a round worked in another yarn.
     *
     * @param own the yarn of its round
     * @param landingRound the number of the round that it lands on
     * @param landing the yarn of that round
     */
    record OtherYarn(Place stitch, Yarn own, int landingRound, Yarn landing) implements OfStitch {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.otherYarn(this);
        }
    }

    /** A chain directly above a chain inside the side. */
    record DeepGap(Place stitch) implements OfStitch {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.deepGap(this);
        }
    }

    /**
     * A long stitch in front of a stitch of its own yarn.
     *
     * @param yarn the yarn of its round and of the round below
     */
    record UnseenLong(Place stitch, Yarn yarn) implements OfStitch {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.unseenLong(this);
        }
    }

    /**
     * More long stitches side by side than the chart allows.
     *
     * @param stitch where the run starts
     * @param length the stitches of the run; empty if it is as long as the repeat is worked
     * @param allowed so many the chart lets pass
     */
    record LooseRun(Place stitch, OptionalInt length, int allowed) implements OfStitch {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.looseRun(this);
        }
    }

    /**
     * A section whose length does not go with its round.
     *
     * @param length the stitches it has
     * @param expected the stitches its round asks for
     */
    record RaggedSection(int round, Section section, int length, int expected) implements Violation {
        @Override
        public FindingPlace place() {
            return new FindingPlace.OfSection(round, section);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.raggedSection(this);
        }
    }

    /**
     * A side on which the repeat does not come out even.
     *
     * @param stitches the stitches of the side in the base round, corner chains not counted
     * @param shape how the sides of the chart are put together
     */
    record UnclosedSide(Side side, int stitches, SideShape shape) implements Violation {
        @Override
        public FindingPlace place() {
            return new FindingPlace.OfSide(side);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.unclosedSide(this);
        }
    }

    /**
     * Two yarns that meet and are hard to tell apart.
     *
     * @param round the outer of the first two rounds in which they meet
     */
    record LowContrast(int round, Yarn inner, Yarn outer) implements Violation {
        @Override
        public FindingPlace place() {
            return new FindingPlace.OfRound(round);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.lowContrast(this);
        }
    }

    /**
     * What is to be done with each kind of violation; whoever forgets one does not compile. The names of the methods are those of
     * the rules.
     */
    @SuppressWarnings("MissingSummary") // each would say its name again
    interface Visitor<R> {
        R noRoundBelow(NoRoundBelow violation);

        R pastCorner(PastCorner violation);

        R coveredLoop(CoveredLoop violation);

        R usedLoop(UsedLoop violation);

        R landsOnLong(LandsOnLong violation);

        R landsOnChain(LandsOnChain violation);

        R landsOnCornerChain(LandsOnCornerChain violation);

        R chainAtCorner(ChainAtCorner violation);

        R otherYarn(OtherYarn violation);

        R deepGap(DeepGap violation);

        R unseenLong(UnseenLong violation);

        R looseRun(LooseRun violation);

        R raggedSection(RaggedSection violation);

        R unclosedSide(UnclosedSide violation);

        R lowContrast(LowContrast violation);
    }
}
