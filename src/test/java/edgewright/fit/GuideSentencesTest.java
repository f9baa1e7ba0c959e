package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Swatch;
import edgewright.texts.English;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a maker reads, in full; the texts below were read by a person. */
class GuideSentencesTest {
    private static final Swatch SWATCH = new Swatch(20, 25);
    private final GuideSentences sentences = new GuideSentences(English.LANGUAGE);

    @Test
    void every_relation_of_long_stitches_has_its_sentence() {
        assertThat(sentences.landmarks(Stream.of(LandmarkRelation.values())
                        .<Landmark>map(Landmark.EachLong::new)
                        .toList()))
                .containsExactly(
                        "Each long stitch sits between two long stitches of the round below.",
                        "Each long stitch comes directly after a long stitch of the round below.",
                        "Each long stitch comes directly before a long stitch of the round below.",
                        "Each long stitch comes directly before or after a long stitch of the round below.",
                        "Each long stitch stands midway between two long stitches of the round below.",
                        "Each long stitch stands over a long stitch two rounds below.");
    }

    @Test
    void the_other_landmarks_are_said_with_their_numbers() {
        assertThat(sentences.landmarks(List.of(
                        new Landmark.InGroups(2),
                        new Landmark.FirstLong(4),
                        new Landmark.FirstLong(2),
                        new Landmark.LongsOnSide(4, 2),
                        new Landmark.LongsOnSide(0, 1),
                        new Landmark.LongsOnSide(1, 0))))
                .containsExactly(
                        "The long stitches stand in groups of 2.",
                        "The first long stitch after a corner is stitch 4 (the one in the corner chain is 1).",
                        "The first long stitch after a corner is stitch 2 (the one in the corner chain is 1): it goes into"
                                + " the corner chain two rounds below.",
                        "Each side has 4 long stitches near its corners, and 2 more in each repeat of the chart.",
                        "Each repeat of the chart has 1 long stitch, and the corners have none.",
                        "Each side has 1 long stitch.");
    }

    @Test
    void the_long_stitches_of_a_piece_are_counted_on_its_sides() {
        assertThat(sentences.landmarks(List.of(new Landmark.LongsOnSide(4, 2)), PerSide.of(10, 7, 10, 0)))
                .containsExactly("Long stitches: top 24, left 18, bottom 24, right 4.");
    }

    @Test
    void a_multiple_says_how_it_was_counted() {
        SideShape shape = new SideShape(2, 5, 1);
        assertThat(List.of(
                        sentences.of(SideMultiple.of(shape, 3, Counting.STITCHES)),
                        sentences.of(SideMultiple.of(shape, 3, Counting.WITH_CHAINS)),
                        sentences.of(SideMultiple.of(new SideShape(2, 4, 2), 0, Counting.STITCHES)),
                        sentences.of(SideMultiple.of(new SideShape(1, 1, 2), 0, Counting.STITCHES))))
                .containsExactly(
                        "multiple of 5 plus 4, at least 9, stitches only",
                        "multiple of 5 plus 1, at least 11, with one corner chain at each end",
                        "multiple of 4, at least 4, stitches only",
                        "any number from 3, stitches only");
    }

    @Test
    void picking_up_is_told_with_its_ratio_and_marks() {
        Ratio threeInFour = new Ratio(3, 4);
        assertThat(Stream.of(
                                new PickUp(Side.TOP, new Edge.OfLength(1200, SWATCH), 239),
                                new PickUp(Side.LEFT, new Edge.OfRows(200, threeInFour), 150),
                                new PickUp(Side.LEFT, new Edge.OfRows(198, threeInFour), 149),
                                new PickUp(Side.LEFT, new Edge.OfRows(60, new Ratio(2, 1)), 120),
                                new PickUp(Side.BOTTOM, new Edge.OfStitches(120), 120),
                                new PickUp(Side.BOTTOM, new Edge.OfStitches(120), 119),
                                new PickUp(Side.BOTTOM, new Edge.OfStitches(120), 125))
                        .flatMap(pickUp -> sentences.of(pickUp).stream()))
                .containsExactly(
                        "Top: pick up 239.",
                        "Marks at the quarters: 60 by 30.0 cm, 120 by 60.0 cm, 179 by 90.0 cm.",
                        "Left: pick up 150, 3 in every 4 rows.",
                        "Marks at the quarters: 38 by row 50, 75 by row 100, 113 by row 150.",
                        "Left: pick up 149, about 3 in every 4 rows.",
                        "Marks at the quarters: 38 by row 50, 75 by row 99, 112 by row 149.",
                        "Left: pick up 120, 2 in every row.",
                        "Marks at the quarters: 30 by row 15, 60 by row 30, 90 by row 45.",
                        "Bottom: pick up 120, one in every stitch.",
                        "Marks at the quarters: 30 by stitch 30, 60 by stitch 60, 90 by stitch 90.",
                        "Bottom: pick up 119, one in every stitch but for 1, spread evenly.",
                        "Marks at the quarters: 30 by stitch 30, 60 by stitch 60, 89 by stitch 90.",
                        "Bottom: pick up 125, one in every stitch and 5 more, spread evenly.",
                        "Marks at the quarters: 31 by stitch 30, 63 by stitch 60, 94 by stitch 90.");
    }

    @Test
    void a_size_is_told_in_centimetres_with_what_the_edge_will_do() {
        assertThat(sentences.of(FinishedSize.around(1000, 1200, 20, SWATCH)))
                .containsExactly(
                        "The border is 8.0 cm (3¼ in) wide. With it the piece measures 116.0 by 136.0 cm (45¾ by 53½ in).",
                        "The last round is 4.0 cm too long for each side of the piece: the edge may ruffle.");
        assertThat(sentences.of(FinishedSize.around(1000, 1200, 20, new Swatch(25, 20))))
                .containsExactly(
                        "The border is 10.0 cm (4 in) wide. With it the piece measures 120.0 by 140.0 cm (47¼ by 55 in).",
                        "The last round is 4.0 cm too short for each side of the piece: the corners may cup.");
        assertThat(sentences.of(FinishedSize.around(1000, 1200, 4, SWATCH))).hasSize(1);
    }
}
