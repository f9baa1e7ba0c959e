package edgewright.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.check.Checker;
import edgewright.check.Severity;
import edgewright.draw.EnglishStyle;
import edgewright.draw.grid.CellRange;
import edgewright.draw.grid.Rotation;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import edgewright.texts.English;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CornerPictureTest {
    private static final Chart REEDS = Sketches.chart("""
            4 B bbbbb|bbbblb|bbbbbb
            3 A  bllb|llbbbb|llblb
            2 B   bbb|bbbpcb|bbbb
            1 A    bb|bbbbbb|bbb
            """);

    private static Drawing draw(Chart chart, PictureStyle style) {
        return ChartPicture.corner(chart, style, Emphasis.NONE);
    }

    private static List<Mark> inLayer(Drawing drawing, Layer layer) {
        return drawing.marks().stream()
                .filter(mark -> mark.kind().layer() == layer)
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void every_stitch_and_every_corner_of_the_window_has_exactly_one_mark_of_each_layer(Rotation rotation) {
        for (int seed = 0; seed < 30; seed++) {
            RandomCharts charts = new RandomCharts(seed);
            Chart chart = seed % 3 == 0 ? charts.ragged() : charts.small();
            CornerPicture picture = CornerPicture.of(
                    chart, EnglishStyle.PRINT.withRotation(rotation).withRepeats(2), Emphasis.NONE);
            CornerLayout layout = picture.layout();
            List<GridCell> cells = new ArrayList<>();
            for (int column = 0; column < layout.columns(); column++) {
                for (int row = 0; row < layout.rows(); row++) {
                    GridCell cell = layout.cellAtColumn(column, row);
                    if (layout.isDrawn(cell)) {
                        cells.add(cell);
                    }
                }
            }
            Drawing drawing = picture.drawing();
            for (Layer layer : List.of(Layer.FABRIC, Layer.MARKS)) {
                assertThat(inLayer(drawing, layer).stream()
                                .map(mark -> mark.cell().orElseThrow()))
                        .containsExactlyInAnyOrderElementsOf(cells);
            }
        }
    }

    @Test
    void a_mark_says_which_stitch_is_worked_in_which_yarn_and_the_fabric_which_yarn_shows() {
        Drawing drawing = draw(REEDS, EnglishStyle.PRINT);
        for (Mark mark : inLayer(drawing, Layer.MARKS)) {
            mark.place().ifPresent(place -> {
                assertThat(mark.kind()).isEqualTo(MarkKind.of(REEDS.stitch(place)));
                assertThat(mark.yarn()).contains(REEDS.yarnOf(place.round()).id());
            });
        }
        for (Mark mark : inLayer(drawing, Layer.FABRIC)) {
            mark.place()
                    .ifPresent(place -> assertThat(mark.yarn())
                            .contains(REEDS.yarnOf(REEDS.shownRound(place)).id()));
        }
    }

    @Test
    void a_long_stitch_reaches_from_its_own_cell_over_the_one_below_into_the_one_it_lands_on() {
        for (Rotation rotation : Rotation.values()) {
            CornerPicture picture = CornerPicture.of(REEDS, EnglishStyle.PRINT.withRotation(rotation), Emphasis.NONE);
            List<Mark> longs = inLayer(picture.drawing(), Layer.MARKS).stream()
                    .filter(mark -> mark.kind() == MarkKind.LONG)
                    .toList();
            assertThat(longs).isNotEmpty();
            for (Mark mark : longs) {
                Arm arm = picture.layout().armIn(mark.cell().orElseThrow()).orElseThrow();
                Frame frame = picture.layout().frameOf(mark.cell().orElseThrow(), arm.side());
                Area covered = around(frame, -1);
                Area landing = around(frame, -2);
                assertThat(mark.bounds().touches(covered)).isTrue();
                assertThat(mark.bounds().touches(landing)).isTrue();
                assertThat(mark.bounds().touches(around(frame, -3))).isFalse();
                assertThat(mark.bounds().touches(around(frame, 1))).isFalse();
            }
        }
    }

    /** The inner half of a cell that lies so many cells out from the frame's own. */
    private static Area around(Frame frame, double out) {
        return Area.between(
                frame.xMm(-0.3, out - 0.49),
                frame.yMm(-0.3, out - 0.49),
                frame.xMm(0.3, out + 0.49),
                frame.yMm(0.3, out + 0.49));
    }

    @Test
    void layers_can_be_shown_apart() {
        Drawing both = draw(REEDS, EnglishStyle.PRINT);
        Drawing fabric = draw(REEDS, EnglishStyle.PRINT.withMarks(false));
        Drawing marks = draw(REEDS, EnglishStyle.PRINT.withFabric(false));
        assertThat(inLayer(fabric, Layer.MARKS)).isEmpty();
        assertThat(inLayer(marks, Layer.FABRIC)).isEmpty();
        assertThat(inLayer(fabric, Layer.FABRIC)).isEqualTo(inLayer(both, Layer.FABRIC));
        assertThat(inLayer(marks, Layer.MARKS)).hasSameSizeAs(inLayer(both, Layer.MARKS));
        Drawing bare = draw(REEDS, EnglishStyle.FABRIC);
        assertThat(bare.marks().stream().map(mark -> mark.kind().layer()).collect(Collectors.toSet()))
                .isEqualTo(Set.of(Layer.PAPER, Layer.FABRIC));
    }

    @Test
    void marks_lie_from_the_lowest_layer_to_the_topmost() {
        Emphasis emphasis = new Emphasis(List.of(Emphasis.Flag.at(1, Severity.ERROR, new Place(3, Section.REPEAT, 1))));
        List<Layer> layers = ChartPicture.corner(REEDS, EnglishStyle.PRINT, emphasis).marks().stream()
                .map(mark -> mark.kind().layer())
                .toList();
        assertThat(layers).isSorted().contains(Layer.values());
    }

    @Test
    void each_round_has_its_number_at_the_corner_and_at_the_far_end_of_each_arm_with_its_yarn() {
        Drawing drawing = draw(REEDS, EnglishStyle.PRINT);
        for (int round = 1; round <= 4; round++) {
            String number = Integer.toString(round);
            assertThat(textsOf(drawing, MarkKind.ROUND_NUMBER))
                    .filteredOn(number::equals)
                    .hasSize(3);
        }
        assertThat(textsOf(drawing, MarkKind.ROUND_NUMBER))
                .filteredOn("base"::equals)
                .hasSize(2);
        assertThat(textsOf(drawing, MarkKind.YARN_LETTER))
                .containsExactlyInAnyOrder("A", "A", "A", "A", "B", "B", "B", "B");
        assertThat(textsOf(drawing, MarkKind.REPEAT)).containsExactly("repeat, 6 stitches", "repeat, 6 stitches");
        assertThat(textsOf(drawing, MarkKind.DIRECTION)).containsExactly("direction of work");
    }

    @Test
    void a_short_line_stands_after_every_tenth_stitch_of_each_round_counted_from_the_corner() {
        Chart chart = new RandomCharts(1).chart(new SideShape(3, 5, 4), 21);
        CornerPicture picture = CornerPicture.of(chart, EnglishStyle.SCREEN.withRepeats(3), Emphasis.NONE);
        CornerLayout layout = picture.layout();
        for (int round = 1; round <= 21; round++) {
            Area corner = layout.areaOf(layout.cornerCell(round));
            Area row = new Area(corner.rightMm(), corner.yMm(), picture.widthMm(), layout.cellMm());
            List<Integer> stitches = picture.drawing().marks().stream()
                    .filter(mark -> mark.kind() == MarkKind.TENTH_LINE)
                    .map(Mark::bounds)
                    .filter(line -> line.heightMm() > line.widthMm() && row.holds(line.middleXMm(), line.middleYMm()))
                    .map(line -> (int) Math.round((line.middleXMm() - corner.rightMm()) / layout.cellMm() * 100))
                    .sorted()
                    .toList();
            int length = chart.shape(Side.FIRST).length(Section.TO_CORNER, round) + 15;
            // Common practice, no source: stitches are counted in tens.
            assertThat(stitches)
                    .as("round " + round)
                    .isEqualTo(IntStream.rangeClosed(1, (length - 1) / 10)
                            .map(ten -> ten * 1000)
                            .boxed()
                            .toList());
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_damaged_part_has_the_same_marks_as_the_whole_wherever_they_touch_it(Rotation rotation) {
        Emphasis emphasis = new Emphasis(List.of(
                Emphasis.Flag.at(1, Severity.ERROR, new Place(3, Section.REPEAT, 1)),
                Emphasis.Flag.in(2, Severity.WARNING, 4)));
        for (FabricFill look : FabricFill.values()) {
            CornerPicture picture = CornerPicture.of(
                    REEDS, EnglishStyle.PRINT.withRotation(rotation).withLook(look), emphasis);
            List<Mark> all = picture.drawing().marks();
            for (double x = -20; x < picture.widthMm(); x += 13.7) {
                for (double y = -20; y < picture.heightMm(); y += 17.3) {
                    Area damaged = new Area(x, y, 21, 9);
                    assertThat(picture.marksIn(damaged))
                            .isEqualTo(all.stream()
                                    .filter(mark -> mark.kind() == MarkKind.PAPER || touches(mark, damaged))
                                    .toList());
                }
            }
        }
    }

    private static boolean touches(Mark mark, Area area) {
        return area.touches(mark.bounds());
    }

    @ParameterizedTest
    @EnumSource
    void what_an_edit_of_a_stitch_changes_lies_in_the_areas_of_its_place(Rotation rotation) {
        PictureStyle style = EnglishStyle.SCREEN.withRotation(rotation).withLook(FabricFill.WORKED);
        for (Place place : List.of(
                new Place(3, Section.REPEAT, 2),
                new Place(3, Section.TO_CORNER, 4),
                new Place(2, Section.FROM_CORNER, 1))) {
            for (Stitch stitch : Stitch.values()) {
                Chart edited = Edits.setStitches(REEDS, List.of(place), stitch);
                CornerPicture before = CornerPicture.of(REEDS, style, Emphasis.NONE);
                CornerPicture after = CornerPicture.of(
                        edited, style, new Emphasis(List.of(Emphasis.Flag.at(12, Severity.ERROR, place))));
                Set<Mark> changed = new HashSet<>(before.drawing().marks());
                changed.addAll(after.drawing().marks());
                Set<Mark> same = new HashSet<>(before.drawing().marks());
                same.retainAll(new HashSet<>(after.drawing().marks()));
                changed.removeAll(same);
                assertThat(changed)
                        .isNotEmpty()
                        .allSatisfy(
                                mark -> assertThat(after.areasOf(place)).anyMatch(area -> area.holds(mark.bounds())));
            }
        }
    }

    @Test
    void flagged_stitches_are_ringed_in_every_drawn_repeat_with_the_numbers_of_their_findings() {
        Chart chart = Sketches.chart("""
                2 B bbb|lb|bbb
                1 A  bb|lb|bb
                """);
        CornerPicture picture = CornerPicture.of(
                chart,
                EnglishStyle.SCREEN.withRepeats(2),
                Emphasis.of(Checker.check(chart).findings()));
        List<Mark> flags = inLayer(picture.drawing(), Layer.FLAGS);
        assertThat(flags.stream().map(mark -> mark.place().orElseThrow() + ": " + texts(mark)))
                .containsOnly("round 1, repeat 1: [1]", "round 2, repeat 1: [2]")
                .hasSize(8);
    }

    @Test
    void errors_and_warnings_are_ringed_in_different_ways_not_only_in_different_colours() {
        Place stitch = new Place(3, Section.REPEAT, 1);
        for (Severity severity : Severity.values()) {
            Emphasis emphasis = new Emphasis(List.of(Emphasis.Flag.at(1, severity, stitch)));
            List<Boolean> dashed =
                    inLayer(ChartPicture.corner(REEDS, EnglishStyle.SCREEN, emphasis), Layer.FLAGS).stream()
                            .flatMap(mark -> mark.shapes().stream())
                            .filter(Shape.Line.class::isInstance)
                            .map(line -> !((Shape.Line) line).dashMm().isEmpty())
                            .distinct()
                            .toList();
            assertThat(dashed.contains(true)).isEqualTo(severity == Severity.WARNING);
        }
    }

    @Test
    void a_flag_of_a_round_stands_beside_both_ends_of_the_round() {
        Emphasis emphasis = new Emphasis(List.of(Emphasis.Flag.in(7, Severity.WARNING, 2)));
        List<Mark> flags = inLayer(ChartPicture.corner(REEDS, EnglishStyle.SCREEN, emphasis), Layer.FLAGS);
        assertThat(flags.stream().map(CornerPictureTest::texts)).containsExactly(List.of("7"), List.of("7"));
    }

    @Test
    void many_flags_in_a_row_at_one_stitch_are_numbered_from_the_first_to_the_last() {
        Place stitch = new Place(3, Section.REPEAT, 1);
        Emphasis emphasis = new Emphasis(List.of(
                Emphasis.Flag.at(8, Severity.ERROR, stitch),
                Emphasis.Flag.at(9, Severity.ERROR, stitch),
                Emphasis.Flag.at(10, Severity.WARNING, stitch),
                Emphasis.Flag.in(11, Severity.WARNING, 3),
                Emphasis.Flag.in(13, Severity.WARNING, 3),
                Emphasis.Flag.in(14, Severity.WARNING, 3)));
        assertThat(textsOf(ChartPicture.corner(REEDS, EnglishStyle.SCREEN.withRepeats(1), emphasis), MarkKind.FLAG))
                .containsExactly("8\u201310", "8\u201310", "11,13,14", "11,13,14");
    }

    @Test
    void a_ragged_chart_is_drawn_as_far_as_it_goes_and_what_it_lacks_or_has_too_much_is_marked() {
        Chart ragged = Sketches.chart("""
                2 B bb|bcbbp|bbb
                1 A bb|bbbb|bb
                """);
        Drawing drawing = draw(ragged, EnglishStyle.SCREEN.withRepeats(1));
        assertThat(drawing.marks().stream()
                        .filter(mark -> mark.kind() == MarkKind.MISSING)
                        .map(mark -> mark.place().orElseThrow()))
                .containsExactly(new Place(2, Section.FROM_CORNER, 3));
        assertThat(drawing.marks().stream()
                        .filter(mark -> mark.kind() == MarkKind.SURPLUS)
                        .map(mark -> mark.place().orElseThrow() + " " + texts(mark)))
                .containsExactly("round 2, repeat 4 [+1]", "round 2, repeat 4 [+1]");
    }

    @Test
    void nothing_of_a_drawing_lies_beyond_its_sheet_and_no_two_labels_lie_on_each_other() {
        for (int seed = 0; seed < 25; seed++) {
            RandomCharts charts = new RandomCharts(seed);
            Chart chart = charts.chart(
                    new SideShape(seed % 4, 1 + seed % 7, seed % 3),
                    1 + charts.random().nextInt(30));
            for (Rotation rotation : Rotation.values()) {
                Emphasis emphasis = Emphasis.of(Checker.check(chart).findings());
                for (PictureStyle style : List.of(
                        EnglishStyle.PRINT,
                        PictureStyle.example(chart, English.LANGUAGE),
                        EnglishStyle.SCREEN.withRepeats(1),
                        EnglishStyle.SCREEN.withRepeats(1).withLabels(false))) {
                    Drawing drawing = ChartPicture.corner(chart, style.withRotation(rotation), emphasis);
                    Area sheet = new Area(0, 0, drawing.widthMm(), drawing.heightMm());
                    assertThat(drawing.marks())
                            .allSatisfy(mark ->
                                    assertThat(sheet.holds(mark.bounds())).isTrue());
                    List<Area> labels = new ArrayList<>();
                    for (Mark mark : inLayer(drawing, Layer.LABELS)) {
                        for (Shape shape : mark.shapes()) {
                            if (shape instanceof Shape.Text) {
                                // The room above capitals is for accents that these words do not have.
                                labels.add(shape.bounds().grown(-0.3));
                            }
                        }
                    }
                    for (int i = 0; i < labels.size(); i++) {
                        for (int j = i + 1; j < labels.size(); j++) {
                            assertThat(labels.get(i).touches(labels.get(j)))
                                    .as("labels %d and %d of seed %d, %s", i, j, seed, rotation)
                                    .isFalse();
                        }
                    }
                }
            }
        }
    }

    @Test
    void a_part_of_a_corner_repeats_the_numbers_of_its_rounds_and_yarns_at_both_of_its_edges() {
        CornerPicture whole = CornerPicture.of(REEDS, EnglishStyle.PRINT, Emphasis.NONE);
        int columns = whole.layout().columns();
        Drawing drawing = whole.tile(new CellRange(columns - 6, 0, 6, 3)).drawing();
        assertThat(textsOf(drawing, MarkKind.ROUND_NUMBER)).containsExactlyInAnyOrder("4", "4", "3", "3", "2", "2");
        assertThat(textsOf(drawing, MarkKind.YARN_LETTER)).containsExactlyInAnyOrder("B", "B", "A", "A", "B", "B");
        assertThat(inLayer(drawing, Layer.FABRIC)).hasSize(18);
        assertThat(textsOf(drawing, MarkKind.LEGEND)).isEmpty();
    }

    @Test
    void a_long_stitch_that_lands_beyond_the_edge_of_a_part_is_cut_off_there() {
        CornerPicture whole = CornerPicture.of(REEDS, EnglishStyle.PRINT, Emphasis.NONE);
        for (int rows = 1; rows <= 4; rows++) {
            CornerPicture part = whole.tile(new CellRange(0, 0, whole.layout().columns(), rows));
            Area cells = part.layout().area();
            assertThat(inLayer(part.drawing(), Layer.MARKS))
                    .allSatisfy(mark ->
                            assertThat(cells.grown(1e-6).holds(mark.bounds())).isTrue());
        }
    }

    @Test
    void chains_of_a_corner_are_drawn_one_oval_each() {
        for (int chains = 1; chains <= 3; chains++) {
            Chart chart = REEDS.withCorner(REEDS.corner().withChains(chains));
            List<Mark> corners = inLayer(draw(chart, EnglishStyle.SCREEN), Layer.MARKS).stream()
                    .filter(mark -> mark.kind() == MarkKind.CORNER_CHAINS)
                    .toList();
            assertThat(corners).hasSameSizeAs(REEDS.rounds());
            for (Mark mark : corners) {
                assertThat(mark.shapes()).hasSize(chains);
                assertThat(mark.place()).isEqualTo(Optional.empty());
            }
        }
    }

    private static List<String> textsOf(Drawing drawing, MarkKind kind) {
        return drawing.marks().stream()
                .filter(mark -> mark.kind() == kind)
                .flatMap(mark -> texts(mark).stream())
                .toList();
    }

    private static List<String> texts(Mark mark) {
        List<String> texts = new ArrayList<>();
        mark.drawOn(new Surface() {
            @Override
            public void fill(Shape.Fill fill) {}

            @Override
            public void line(Shape.Line line) {}

            @Override
            public void text(Shape.Text text) {
                texts.add(text.text());
            }
        });
        return texts;
    }
}
