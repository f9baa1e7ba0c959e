package edgewright.booklet.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.MovedMarks;
import edgewright.booklet.Published;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.ChartKind;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.Side;
import edgewright.draw.EnglishStyle;
import edgewright.draw.grid.CellRange;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.side.SidePicture;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every mark of a side from corner to corner is read back from the printed pages, as those of a corner are. */
class SideReadBackTest {
    private static final Chart CHART = Published.sample("mooring-rope");
    private static final double CELL_MM = 6;

    private static BookletOptions options(Chart chart, ChartKind kind, MarkStyle marks) {
        BookletOptions plain = BookletOptions.of(chart, English.LANGUAGE).withDraft(true);
        return plain.with(plain.appearance().withChart(kind).withMarks(marks));
    }

    @ParameterizedTest
    @MethodSource("edgewright.booklet.sheets.MarksReadBackTest#samples")
    void everyMarkOfASampleIsOnASheetOfItsSideOnce(String sample) throws IOException {
        Chart chart = Published.sample(sample);
        MarksReadBackTest.assertProved(chart, options(chart, ChartKind.SIDE, MarkStyle.SQUARES));
    }

    @ParameterizedTest
    @EnumSource(Edition.class)
    void soItIsInEveryEditionAndForEitherHand(Edition edition) throws IOException {
        for (HookHand hand : HookHand.values()) {
            for (MarkStyle marks : MarkStyle.values()) {
                BookletOptions options = options(CHART, ChartKind.BOTH, marks)
                        .withEdition(edition)
                        .withPaper(Paper.LETTER)
                        .withHand(hand);
                MarksReadBackTest.assertProved(CHART, options);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void soItIsOfAChartByChanceHoweverManyRoundsAPageHolds(long seed) throws IOException {
        RandomCharts charts = new RandomCharts(seed);
        Chart workable = charts.workable();
        MarksReadBackTest.assertProved(
                workable, options(workable, ChartKind.SIDE, MarkStyle.SQUARES).withCellMm(18));
        Chart flawed = charts.small();
        MarksReadBackTest.assertProved(flawed, options(flawed, ChartKind.SIDE, MarkStyle.SQUARES));
        Chart ragged = charts.ragged();
        MarksReadBackTest.assertProved(ragged, options(ragged, ChartKind.BOTH, MarkStyle.STEMS));
    }

    @ParameterizedTest
    @EnumSource(HookHand.class)
    void soItIsOnAPoster(HookHand hand) throws IOException {
        BookletOptions options =
                options(CHART, ChartKind.BOTH, MarkStyle.SQUARES).withHand(hand);
        MarksReadBackTest.assertProved(CHART, options.with(options.appearance().withChartPaper(ChartPaper.POSTER)));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void everyMarkOfAPartIsReadInBlackAndInAMirrorToo(long seed) throws IOException {
        Chart chart = new RandomCharts(seed).small();
        for (PictureStyle style : List.of(
                EnglishStyle.PRINT,
                EnglishStyle.BLACK_AND_WHITE.withMarkStyle(MarkStyle.SQUARES),
                EnglishStyle.PRINT.withHand(HookHand.LEFT).withMarkStyle(MarkStyle.SQUARES),
                EnglishStyle.BLACK_AND_WHITE.withHand(HookHand.LEFT))) {
            SidePicture whole = SidePicture.of(chart, Side.FIRST, style.withLegend(false), Emphasis.NONE);
            int columns = whole.layout().columns();
            SidePicture part = whole.tile(
                    new CellRange(1, 0, columns - 2, Math.max(1, whole.layout().rows() - 1)));
            for (Drawing drawing : List.of(whole.drawing(), part.drawing())) {
                assertThat(new MarksExpected(chart, drawing, style, true)
                                .differences(MarksReadBackTest.printed(drawing)))
                        .as(style.toString())
                        .isEmpty();
            }
        }
    }

    /** What is read after one mark of this kind, the third, was replaced. */
    private static List<String> differencesWith(MarkKind kind, Function<Mark, List<Mark>> replacement)
            throws IOException {
        PictureStyle style =
                EnglishStyle.PRINT.withLegend(false).withCellMm(CELL_MM).withMarkStyle(MarkStyle.SQUARES);
        Drawing sheet = SidePicture.of(CHART, Side.FIRST, style, Emphasis.NONE).drawing();
        List<Mark> marks = new ArrayList<>(sheet.marks());
        Mark one = marks.stream()
                .filter(mark -> mark.kind() == kind)
                .skip(2)
                .findFirst()
                .orElseThrow();
        int at = marks.indexOf(one);
        marks.remove(at);
        marks.addAll(at, replacement.apply(one));
        Drawing changed = new Drawing(sheet.widthMm(), sheet.heightMm(), sheet.title(), sheet.description(), marks);
        return new MarksExpected(CHART, sheet, style, true).differences(MarksReadBackTest.printed(changed));
    }

    @ParameterizedTest
    @EnumSource(names = {"BACK_LOOP", "LONG", "CORNER_CHAINS", "BASE_STITCH", "FABRIC_STITCH"})
    void aMarkThatIsLeftOutOrMovedOrPrintedTwiceIsSeen(MarkKind kind) throws IOException {
        assertThat(differencesWith(kind, List::of)).isEmpty();
        assertThat(differencesWith(kind, mark -> List.of()))
                .isNotEmpty()
                .allMatch(difference -> difference.startsWith("missing: "));
        assertThat(differencesWith(kind, mark -> List.of(mark, mark)))
                .isNotEmpty()
                .allMatch(difference -> difference.startsWith("too many: "));
        assertThat(differencesWith(kind, mark -> List.of(MovedMarks.toTheRight(mark, CELL_MM))))
                .anyMatch(difference -> difference.startsWith("missing: "))
                .anyMatch(difference -> difference.startsWith("too many: "));
    }

    @ParameterizedTest
    @EnumSource(names = {"ROUND_NUMBER", "YARN_LETTER"})
    void aLabelThatIsLeftOutAtOneEndOfARowIsMissed(MarkKind kind) throws IOException {
        assertThat(differencesWith(kind, mark -> List.of()))
                .singleElement()
                .asString()
                .contains(" is labelled ");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-CELL_MM, CELL_MM})
    void aTenOfTheRulerOverAnotherStitchIsSeen(double moved) throws IOException {
        assertThat(differencesWith(MarkKind.RULER, mark -> List.of(MovedMarks.toTheRight(mark, moved))))
                .hasSize(2)
                .allMatch(difference -> difference.contains(" is numbered "));
    }
}
