package edgewright.desk.journal;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.texts.English;
import java.util.List;
import org.junit.jupiter.api.Test;

/** In what two states of a chart differ, and how that is said. */
class ChartDifferenceTest {
    private static final Place THIRD = new Place(3, Section.REPEAT, 2);
    private static final Place FOURTH = new Place(4, Section.TO_CORNER, 1);
    private static final Place SIXTH = new Place(6, Section.FROM_CORNER, 1);

    private final Chart chart = Chart.blank(
            "Reed Bank",
            new SideShape(2, 5, 1),
            6,
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8"))));

    @Test
    void equalChartsDifferInNothing() {
        ChartDifference none = ChartDifference.between(chart, chart.withTitle("Reed Bank"));

        assertThat(none).isEqualTo(new ChartDifference(0, List.of(), 0, false));
        assertThat(said(chart)).isEqualTo("Both are the same.");
    }

    @Test
    void stitchesAreCountedAndTheirRoundsNamed() {
        Chart other = Edits.setStitches(chart, List.of(THIRD, FOURTH, SIXTH), Stitch.LONG);

        assertThat(ChartDifference.between(chart, other)).isEqualTo(new ChartDifference(3, List.of(3, 4, 6), 0, false));
        assertThat(ChartDifference.placesIn(other, chart)).containsExactly(THIRD, FOURTH, SIXTH);
        assertThat(said(other)).isEqualTo("3 stitches differ, in rounds 3–4 and 6.");
        assertThat(said(Edits.setStitches(chart, List.of(THIRD), Stitch.LONG)))
                .isEqualTo("1 stitch differs, in round 3.");
    }

    @Test
    void aRoundInAnotherYarnDiffersInAllItsPlaces() {
        Chart other = chart.withRound(2, chart.round(2).withYarn("A"));

        assertThat(ChartDifference.between(chart, other)).isEqualTo(new ChartDifference(0, List.of(2), 0, false));
        assertThat(ChartDifference.placesIn(other, chart))
                .hasSize(other.round(2).fromCorner().length()
                        + other.round(2).repeat().length()
                        + other.round(2).toCorner().length())
                .allMatch(place -> place.round() == 2);
        assertThat(said(other)).isEqualTo("The yarn differs in round 2.");
    }

    @Test
    void roundsThatOnlyOneOfThemHasAreCounted() {
        Chart fewer = chart.withRounds(chart.rounds().subList(0, 4));

        assertThat(ChartDifference.between(chart, fewer)).isEqualTo(new ChartDifference(0, List.of(), -2, false));
        assertThat(said(fewer)).isEqualTo("The chart on the right has 2 rounds fewer.");
        assertThat(ChartDifference.placesIn(chart, fewer))
                .allMatch(place -> place.round() > 4)
                .isNotEmpty();
        assertThat(ChartDifference.between(fewer, chart)).isEqualTo(new ChartDifference(0, List.of(), 2, false));
    }

    @Test
    void whatIsNotDrawnIsSaidToDiffer() {
        assertThat(said(chart.withTitle("Ebb"))).isEqualTo("Yarns, texts or the making differ.");
        assertThat(said(chart.withYarns(List.of(
                        new Yarn("A", "Peat", Colour.parse("#2b2a33")),
                        new Yarn("B", "Samphire", Colour.parse("#7f9163"))))))
                .isEqualTo("Yarns, texts or the making differ.");
    }

    @Test
    void aLongerRepeatDiffersWhereItIsLonger() {
        Chart longer = Chart.blank("Reed Bank", new SideShape(2, 7, 1), 6, chart.yarns());

        assertThat(ChartDifference.between(chart, longer))
                .isEqualTo(new ChartDifference(12, List.of(1, 2, 3, 4, 5, 6), 0, false));
        assertThat(ChartDifference.placesIn(longer, chart)).hasSize(12).allMatch(place -> place.place() > 5);
    }

    private String said(Chart other) {
        return new DifferenceSentences(English.LANGUAGE).of(ChartDifference.between(chart, other));
    }
}
