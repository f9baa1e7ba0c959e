package edgewright.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.draw.EnglishStyle;
import edgewright.draw.grid.CellRange;
import edgewright.draw.grid.Rotation;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.LengthText;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What a left-handed maker sees is what a right-handed one sees in a mirror, but for letters and numbers, which nobody can
 * read in one. That such a maker needs a mirrored chart: https://www.gyho.co.uk/mosaiccrochetrules
 */
class LeftHandedPictureTest {
    private static final Chart REEDS = Sketches.chart("""
            4 B bbbbb|bbbblb|bbbbbb
            3 A  bllb|llbbbb|llblb
            2 B   bbb|bbbpcb|bbbb
            1 A    bb|bbbbbb|bbb
            """);

    /** The points of all lines and fills, and all texts, of one mark. */
    private static final class Points implements Surface {
        private final List<String> seen = new ArrayList<>();
        private final List<String> texts = new ArrayList<>();
        private final double mirrorMm;

        /** @param mirrorMm how wide the drawing is that is seen in a mirror; 0 for none */
        Points(double mirrorMm) {
            this.mirrorMm = mirrorMm;
        }

        @Override
        public void fill(Shape.Fill fill) {
            seen.add("fill " + fill.colour() + corners(fill.path()));
        }

        @Override
        public void line(Shape.Line line) {
            seen.add("line " + line.colour() + " " + LengthText.mm(line.widthMm(), 2) + corners(line.path()));
        }

        @Override
        public void text(Shape.Text text) {
            texts.add(text.text() + " " + LengthText.mm(text.sizeMm(), 2) + " turned " + text.quarterTurns());
        }

        /** As a set: a square that is walked round the other way is the same square. */
        private String corners(PenPath path) {
            List<String> points = new ArrayList<>();
            path.trace(new PenPath.Pen() {
                @Override
                public void moveTo(double x, double y) {
                    points.add(point(x, y));
                }

                @Override
                public void lineTo(double x, double y) {
                    points.add(point(x, y));
                }

                @Override
                public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                    points.add(point(x1, y1));
                    points.add(point(x2, y2));
                    points.add(point(x, y));
                }

                @Override
                public void close() {
                    // Nothing is drawn that the points do not say.
                }
            });
            return points.stream().distinct().sorted().toList().toString();
        }

        private String point(double x, double y) {
            double seenX = mirrorMm == 0 ? x : mirrorMm - x;
            // A little off, so that sums that should be the same round alike.
            return LengthText.mm(seenX + 1e-5, 2) + " " + LengthText.mm(y + 1e-5, 2);
        }
    }

    /** What is drawn in a cell, or beside the cells, as it looks in a mirror that wide. */
    private record Seen(MarkKind kind, Optional<GridCell> cell, List<String> shapes, List<String> texts) {
        static Seen of(Mark mark, double mirrorMm) {
            Points points = new Points(mirrorMm);
            mark.drawOn(points);
            if (mark.kind() == MarkKind.CORNER_CHAINS) {
                // Chains side by side, of which none is before the other.
                points.seen.sort(null);
            }
            return new Seen(mark.kind(), mark.cell(), points.seen, points.texts);
        }
    }

    private static List<Seen> seen(Drawing drawing, double mirrorMm) {
        return drawing.marks().stream()
                // The legend is read from left to right for either hand.
                .filter(mark -> mark.kind() != MarkKind.LEGEND && mark.kind() != MarkKind.CAPTION)
                .map(mark -> Seen.of(mark, mirrorMm))
                .toList();
    }

    private static void assertMirrored(Drawing right, Drawing left) {
        assertThat(left.widthMm()).isEqualTo(right.widthMm());
        assertThat(left.heightMm()).isEqualTo(right.heightMm());
        List<String> expected = new ArrayList<>();
        seen(right, right.widthMm()).forEach(mark -> expected.add(mark.toString()));
        List<String> actual = new ArrayList<>();
        seen(left, 0).forEach(mark -> actual.add(mark.toString()));
        expected.sort(null);
        actual.sort(null);
        assertThat(String.join("\n", actual)).isEqualTo(String.join("\n", expected));
    }

    @ParameterizedTest
    @EnumSource
    void every_mark_of_a_corner_lies_where_a_mirror_shows_it(Rotation rotation) {
        PictureStyle style = EnglishStyle.PRINT.withRotation(rotation);
        for (int seed = 0; seed < 10; seed++) {
            Chart chart = seed == 0 ? REEDS : new RandomCharts(seed).small();
            assertMirrored(
                    ChartPicture.corner(chart, style, Emphasis.NONE),
                    ChartPicture.corner(chart, style.withHand(HookHand.LEFT), Emphasis.NONE));
        }
    }

    @Test
    void every_mark_of_a_whole_border_lies_where_a_mirror_shows_it() {
        PictureStyle style = EnglishStyle.PRINT.withLook(FabricFill.WORKED);
        PerSide<Integer> repeats = PerSide.pairs(3, 1);
        assertMirrored(
                ChartPicture.wholeBorder(REEDS, repeats, style),
                ChartPicture.wholeBorder(REEDS, repeats, style.withHand(HookHand.LEFT)));
    }

    @Test
    void a_left_handed_maker_works_the_level_arm_to_the_right_and_the_other_one_down() {
        CornerPicture picture = CornerPicture.of(
                REEDS, EnglishStyle.PRINT.withHand(HookHand.LEFT).withRepeats(1), Emphasis.NONE);
        CornerLayout layout = picture.layout();
        Area corner = layout.areaOf(layout.cornerCell(1));
        List<Area> incoming = new ArrayList<>();
        List<Area> outgoing = new ArrayList<>();
        for (int place = 1; place <= 3; place++) {
            incoming.add(layout.areaOf(layout.cellOf(Arm.INCOMING.side(), new Place(1, Section.TO_CORNER, place), 1)));
        }
        for (int place = 1; place <= 2; place++) {
            outgoing.add(
                    layout.areaOf(layout.cellOf(Arm.OUTGOING.side(), new Place(1, Section.FROM_CORNER, place), 1)));
        }
        assertThat(incoming).containsExactly(corner.moved(-15, 0), corner.moved(-10, 0), corner.moved(-5, 0));
        assertThat(outgoing).containsExactly(corner.moved(0, 5), corner.moved(0, 10));
    }

    @Test
    void a_part_of_a_mirrored_corner_shows_its_columns_as_they_are_drawn() {
        CornerPicture picture = CornerPicture.of(REEDS, EnglishStyle.PRINT.withHand(HookHand.LEFT), Emphasis.NONE);
        int columns = picture.layout().columns();
        CornerPicture right = picture.tile(new CellRange(columns - 3, 0, 3, 2));
        assertThat(right.layout()
                        .cellAt(
                                right.layout().area().rightMm() - 1,
                                right.layout().area().yMm() + 1))
                .contains(picture.layout().cornerCell(4));
    }

    @Test
    void hatches_stand_for_yarns_and_are_not_mirrored() {
        PictureStyle style = EnglishStyle.BLACK_AND_WHITE;
        Drawing right = ChartPicture.corner(REEDS, style, Emphasis.NONE);
        Drawing left = ChartPicture.corner(REEDS, style.withHand(HookHand.LEFT), Emphasis.NONE);
        assertThat(hatched(left)).isEqualTo(hatched(right)).isNotEmpty();
    }

    /** How many cells there are with each hatch, as it lies in its own cell. */
    private static List<String> hatched(Drawing drawing) {
        List<String> hatched = new ArrayList<>();
        for (Mark mark : drawing.marks()) {
            if (mark.kind() == MarkKind.FABRIC_STITCH && mark.shapes().size() > 1) {
                Area cell = mark.shapes().get(0).bounds();
                Shape.Line lines = (Shape.Line) mark.shapes().get(1);
                Frame back = new Frame(-cell.xMm(), -cell.yMm(), 1, 0, 0, 1);
                Points points = new Points(0);
                points.line(new Shape.Line(
                        lines.path().through(back), lines.widthMm(), lines.colour(), lines.ends(), lines.dashMm()));
                hatched.addAll(points.seen);
            }
        }
        hatched.sort(null);
        return hatched;
    }
}
