package edgewright.check;

import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import java.util.Optional;
import java.util.OptionalInt;

/** What a finding is about: one stitch, a section of a round, a whole round, or a side of the piece in every round. */
public sealed interface FindingPlace {
    /** One stitch of the chart. */
    record OfStitch(Place stitch) implements FindingPlace {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.stitch(stitch);
        }
    }

    /**
     * A section of a round, as a whole.
     *
     * @param round counted outwards from 1
     */
    record OfSection(int round, Section section) implements FindingPlace {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.section(round, section);
        }
    }

    /**
     * A round as a whole.
     *
     * @param round counted outwards from 1
     */
    record OfRound(int round) implements FindingPlace {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.round(round);
        }
    }

    /** A side of the piece, in every round. */
    record OfSide(Side side) implements FindingPlace {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.side(side);
        }
    }

    /** What is to be done with each kind of place; whoever forgets one does not compile. */
    interface Visitor<R> {
        /** For one stitch. */
        R stitch(Place stitch);

        /** For a section of a round. */
        R section(int round, Section section);

        /** For a whole round. */
        R round(int round);

        /** For a side. */
        R side(Side side);
    }

    /** Has the visitor do what it does with this kind of place. */
    <R> R accept(Visitor<R> visitor);

    /** The stitch that is meant; empty if it is more than one stitch. */
    default Optional<Place> oneStitch() {
        return this instanceof OfStitch of ? Optional.of(of.stitch()) : Optional.empty();
    }

    /** The round that is meant or that holds what is meant, counted outwards from 1; empty for a side. */
    default OptionalInt inRound() {
        return accept(new Visitor<>() {
            @Override
            public OptionalInt stitch(Place stitch) {
                return OptionalInt.of(stitch.round());
            }

            @Override
            public OptionalInt section(int round, Section section) {
                return OptionalInt.of(round);
            }

            @Override
            public OptionalInt round(int round) {
                return OptionalInt.of(round);
            }

            @Override
            public OptionalInt side(Side side) {
                return OptionalInt.empty();
            }
        });
    }
}
