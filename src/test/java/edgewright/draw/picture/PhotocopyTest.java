package edgewright.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.Published;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.HookHand;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.draw.EnglishStyle;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.YarnSign;
import edgewright.draw.side.SidePicture;
import edgewright.testing.Photocopy;
import edgewright.testing.Sketches;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A chart in one ink, in the smallest squares that are printed, is read back square by square from the copy of a copy. */
class PhotocopyTest {
    /** The smallest squares that are printed: without letters, and with them. */
    private static final double CELL_MM = 5;

    private static final double LETTERED_MM = 6;

    private static final List<Yarn> YARNS = List.of(
            new Yarn("A", "Night", Colour.parse("#1f2440")),
            new Yarn("B", "Dusk", Colour.parse("#b9c7cf")),
            new Yarn("C", "Amber", Colour.parse("#f4b942")),
            new Yarn("D", "Sedge", Colour.parse("#7c8a4a")),
            new Yarn("E", "Clay", Colour.parse("#a4553a")));

    /** All kinds of stitches. */
    private static final Chart REEDS = Sketches.chart("""
            6 A bbbbbbb|bbbbbb|bbbbbbbb
            5 B  blbbbb|llbblb|bbbbbbb
            4 A   bbbbb|bbbblb|bbbbbb
            3 B    bllb|llbbbb|llblb
            2 A     bbb|bbbpcb|bbbb
            1 B      bb|bbbbbb|bbb
            """);

    private static PictureStyle style(HookHand hand) {
        return EnglishStyle.BLACK_AND_WHITE
                .withLegend(false)
                .withMarkStyle(MarkStyle.SQUARES)
                .withHand(hand);
    }

    /** The chart with yarn A as it is and the other rounds in so many other yarns, in turn. */
    private static Chart inYarns(Chart chart, int yarns) {
        Chart changed = chart.withYarns(YARNS.subList(0, yarns));
        int next = 0;
        for (int round = 1; round <= chart.rounds().size(); round++) {
            if (!chart.round(round).yarn().equals("A")) {
                String id = YARNS.get(1 + next++ % (yarns - 1)).id();
                changed = changed.withRound(round, changed.round(round).withYarn(id));
            }
        }
        return changed;
    }

    /** One line for each square of a corner that is read otherwise than it was drawn. */
    private static List<String> misread(Chart chart, PictureStyle style, UnaryOperator<Mark> change) {
        PictureStyle sized = sized(style, chart);
        CornerPicture picture = CornerPicture.of(chart, sized, Emphasis.NONE);
        return misread(chart, sized, picture.layout(), picture.drawing(), change);
    }

    private static PictureStyle sized(PictureStyle style, Chart chart) {
        return style.withCellMm(YarnSign.hasLetters(chart) ? LETTERED_MM : CELL_MM);
    }

    private static List<String> misread(
            Chart chart, PictureStyle style, CellLayout layout, Drawing drawing, UnaryOperator<Mark> change) {
        Drawing printed = new Drawing(
                drawing.widthMm(),
                drawing.heightMm(),
                "chart",
                "chart",
                drawing.marks().stream().map(change).toList());
        return new SquaresOnCopy(chart, style, layout, Photocopy.twice(printed)).misread();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5})
    void every_square_of_a_corner_is_read_from_the_copy_of_a_copy(int yarns) {
        for (HookHand hand : HookHand.values()) {
            assertThat(misread(inYarns(REEDS, yarns), style(hand), UnaryOperator.identity()))
                    .as(hand.name())
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5})
    void every_square_of_a_large_corner_is_read_too(int yarns) {
        Chart chart = inYarns(Published.sample(yarns == 2 ? "reed-bank" : "lantern-posts"), yarns);
        assertThat(misread(chart, style(HookHand.RIGHT).withRepeats(1), UnaryOperator.identity()))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(HookHand.class)
    void every_square_of_a_level_side_is_read_from_the_copy_of_a_copy(HookHand hand) {
        for (int yarns : new int[] {2, 3, 5}) {
            Chart chart = inYarns(REEDS, yarns);
            SidePicture side = SidePicture.of(chart, Side.TOP, sized(style(hand), chart), Emphasis.NONE);
            assertThat(misread(chart, style(hand), side.layout(), side.drawing(), UnaryOperator.identity()))
                    .as("%d yarns", yarns)
                    .isEmpty();
        }
    }

    /**
     * Three yarns and more have their ids in the squares, which are smaller the longer they are. Five ids of two letters, or three of
     * three that begin alike, are no longer told apart on such a copy.
     */
    @Test
    void ids_of_two_letters_are_read_from_the_copy_of_a_copy() {
        Chart chart = named(inYarns(REEDS, 3), List.of("MC", "C1", "C2"));
        assertThat(misread(chart, style(HookHand.RIGHT), UnaryOperator.identity()))
                .isEmpty();
    }

    /** The chart with these ids, none of which it has yet, for its yarns in their order. */
    private static Chart named(Chart chart, List<String> ids) {
        List<Yarn> yarns = new ArrayList<>();
        for (Yarn yarn : chart.yarns()) {
            yarns.add(new Yarn(ids.get(yarns.size()), yarn.name(), yarn.colour()));
        }
        List<Yarn> both = new ArrayList<>(chart.yarns());
        both.addAll(yarns);
        Chart renamed = chart.withYarns(both);
        for (int round = 1; round <= chart.rounds().size(); round++) {
            int yarn = chart.yarns().indexOf(chart.yarnOf(round));
            renamed = renamed.withRound(round, chart.round(round).withYarn(ids.get(yarn)));
        }
        return renamed.withYarns(yarns);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5})
    void stems_are_read_too_where_they_lie_over_the_squares_below(int yarns) {
        PictureStyle stems = style(HookHand.RIGHT).withMarkStyle(MarkStyle.STEMS);
        assertThat(misread(inYarns(REEDS, yarns), stems, UnaryOperator.identity()))
                .isEmpty();
    }

    @Test
    void stems_that_are_too_thin_are_noticed() {
        PictureStyle stems = style(HookHand.RIGHT).withMarkStyle(MarkStyle.STEMS);
        UnaryOperator<Mark> thin = mark -> mark.kind() == MarkKind.of(Stitch.LONG) ? withLines(mark, 0.2) : mark;
        assertThat(misread(REEDS, stems, thin)).isNotEmpty();
    }

    @Test
    void a_mark_that_is_too_thin_is_lost_in_the_copy_and_noticed() {
        UnaryOperator<Mark> thin = mark -> mark.kind() == MarkKind.BACK_LOOP ? withLines(mark, 0.25) : mark;
        assertThat(misread(REEDS, style(HookHand.RIGHT), thin))
                .isNotEmpty()
                .allMatch(line -> line.contains("drawn " + Optional.of(Stitch.BACK_LOOP)));
    }

    @Test
    void a_hatch_that_is_too_dense_fills_in_the_copy_and_is_noticed() {
        UnaryOperator<Mark> dense =
                mark -> mark.kind() == MarkKind.FABRIC_STITCH && mark.shapes().size() > 1 ? denselyHatched(mark) : mark;
        assertThat(misread(inYarns(REEDS, 3), style(HookHand.RIGHT), dense)).isNotEmpty();
    }

    @Test
    void a_letter_that_is_too_small_is_noticed() {
        UnaryOperator<Mark> small = mark -> mark.kind() == MarkKind.FABRIC_STITCH ? withLettersOf(mark, 0.3) : mark;
        assertThat(misread(inYarns(REEDS, 5), style(HookHand.RIGHT), small)).isNotEmpty();
    }

    private static Mark with(Mark mark, List<Shape> shapes) {
        return new Mark(mark.kind(), mark.cell(), mark.place(), mark.yarn(), shapes);
    }

    private static Mark withLines(Mark mark, double times) {
        return with(
                mark,
                mark.shapes().stream()
                        .map(shape -> shape instanceof Shape.Line line
                                ? new Shape.Line(line.path(), line.widthMm() * times, line.colour())
                                : shape)
                        .toList());
    }

    private static Mark withLettersOf(Mark mark, double times) {
        return with(
                mark,
                mark.shapes().stream()
                        .map(shape -> shape instanceof Shape.Text text
                                ? new Shape.Text(
                                        text.text(),
                                        text.xMm(),
                                        text.yMm(),
                                        text.sizeMm() * times,
                                        text.weight(),
                                        text.anchor(),
                                        0,
                                        text.colour())
                                : shape)
                        .toList());
    }

    private static Mark denselyHatched(Mark mark) {
        Area square = mark.shapes().get(0).bounds();
        List<Shape> shapes = new ArrayList<>(List.of(mark.shapes().get(0)));
        for (double y = 0.02; y < 1; y += 0.04) {
            double at = square.yMm() + y * square.heightMm();
            shapes.add(new Shape.Line(
                    PenPath.line(square.xMm(), at, square.rightMm(), at),
                    0.1,
                    Colour.parse("#000000"),
                    Shape.Ends.CUT,
                    List.of()));
        }
        return with(mark, shapes);
    }
}
