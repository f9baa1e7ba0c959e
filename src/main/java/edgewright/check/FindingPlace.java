package edgewright.check;

import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a finding is about: a stitch, a section of a round, a whole round, a side, or the chart. Whatever is not meant is
 * empty.
 *
 * @param round counted outwards from 1
 * @param place counted from 1 in its section, in working order; only with a section and a round
 */
public record FindingPlace(OptionalInt round, Optional<Section> section, OptionalInt place, Optional<Side> side) {
    private static final FindingPlace CHART =
            new FindingPlace(OptionalInt.empty(), Optional.empty(), OptionalInt.empty(), Optional.empty());

    /** One stitch of the chart. */
    public static FindingPlace at(Place place) {
        return new FindingPlace(
                OptionalInt.of(place.round()),
                Optional.of(place.section()),
                OptionalInt.of(place.place()),
                Optional.empty());
    }

    /** A section of a round, as a whole. */
    public static FindingPlace inSection(int round, Section section) {
        return new FindingPlace(OptionalInt.of(round), Optional.of(section), OptionalInt.empty(), Optional.empty());
    }

    /** A round as a whole. */
    public static FindingPlace inRound(int round) {
        return new FindingPlace(OptionalInt.of(round), Optional.empty(), OptionalInt.empty(), Optional.empty());
    }

    /** A side of the piece, in every round. */
    public static FindingPlace onSide(Side side) {
        return new FindingPlace(OptionalInt.empty(), Optional.empty(), OptionalInt.empty(), Optional.of(side));
    }

    /** The chart as a whole. */
    public static FindingPlace chart() {
        return CHART;
    }

    /** The stitch that is meant; empty if it is more than one stitch. */
    public Optional<Place> stitch() {
        return place.isEmpty()
                ? Optional.empty()
                : Optional.of(new Place(round.orElseThrow(), section.orElseThrow(), place.getAsInt()));
    }
}
