package edgewright.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.desk.Desk;
import edgewright.desk.work.Workbench;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.picture.CornerLayout;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.PictureStyle;
import edgewright.texts.English;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What each tool works, what would land before it is put down, and strokes under mirrors. */
class ToolsTest {
    private static final Chart BLANK = Chart.blank(
            "Reed Bank", new SideShape(1, 6, 1), 4, Desk.blank(English.LANGUAGE).yarns());

    private final Workbench bench = new Workbench(BLANK, Optional.empty(), English.LANGUAGE);
    private final Toolbox toolbox = new Toolbox(bench);

    @Test
    void aLineTakesTheNearestStitchInEachRoundItCrosses() {
        draw(Tools.LINE, cell(2, 1), cell(4, 5));

        assertThat(rows()).containsExactly("bbbllb", "bllbbb", "lbbbbb");
    }

    @Test
    void aLineThatIsDrawnBackIsShorterAgain() {
        draw(Tools.LINE, cell(3, 1), cell(3, 6), cell(3, 2));

        assertThat(rows()).containsExactly("bbbbbb", "llbbbb", "bbbbbb");
        assertThat(bench.undoName()).contains("2 long stitches");
    }

    @Test
    void aRectangleTakesEveryStitchBetweenItsCorners() {
        draw(Tools.RECTANGLE, cell(4, 4), cell(3, 2));

        assertThat(rows()).containsExactly("blllbb", "blllbb", "bbbbbb");
    }

    @Test
    void aBrushTakesWhatItComesOver() {
        draw(Tools.BRUSH, cell(3, 1), cell(3, 2), cell(4, 2));

        assertThat(rows()).containsExactly("blbbbb", "llbbbb", "bbbbbb");
    }

    @Test
    void fillTakesLikeStitchesThatHangTogetherAndStopsAtOthers() {
        draw(Tools.RECTANGLE, cell(2, 2), cell(4, 4));
        toolbox.take(Tools.FILL);
        Stroke fill = toolbox.begin(sheet(), Stitch.PLAIN);
        fill.over(List.of(cell(3, 3)));
        fill.land();

        assertThat(rows()).containsExactly("bpppbb", "bpppbb", "bpppbb");
        assertThat(bench.undoName()).contains("9 plain stitches");
    }

    @Test
    void aStrokeUnderMirrorsWorksAllImagesAsOneEdit() {
        toolbox.turn(Mirror.REPEAT);
        toolbox.turn(Mirror.HALF);
        draw(Tools.BRUSH, cell(4, 1));

        assertThat(rows().get(0)).isEqualTo("lbllbl");
        assertThat(bench.undoName()).contains("4 long stitches");
        bench.undo();
        assertThat(bench.chart()).isSameAs(BLANK);
    }

    @Test
    void whatWouldLandIsKnownBeforeTheToolIsPutDownWithWhatItWouldBreak() {
        toolbox.turn(Mirror.REPEAT);
        Ghost ghost = toolbox.ghostAt(sheet(), cell(1, 2)).orElseThrow();

        Place first = new Place(1, Section.REPEAT, 2);
        Place second = new Place(1, Section.REPEAT, 5);
        assertThat(ghost.lands()).containsExactly(first, second);
        assertThat(ghost.breaks()).as("no round below").containsExactlyInAnyOrder(first, second);
        assertThat(ghost.findings()).isEqualTo(2);
        assertThat(bench.chart()).isSameAs(BLANK);
        toolbox.take(Tools.POINTER);
        assertThat(toolbox.ghostAt(sheet(), cell(1, 2))).isEmpty();
    }

    @Test
    void aStrokeThatIsLeftLeavesNoTrace() {
        Place cursor = bench.cursor();
        toolbox.take(Tools.RECTANGLE);
        Stroke stroke = toolbox.begin(sheet(), Stitch.LONG);
        stroke.over(List.of(cell(2, 1)));
        stroke.over(List.of(cell(4, 4)));
        stroke.leave();
        stroke.over(List.of(cell(4, 6)));

        assertThat(bench.chart()).isSameAs(BLANK);
        assertThat(bench.undoName()).isEmpty();
        assertThat(bench.cursor()).isEqualTo(cursor);
    }

    @Test
    void halfARepeatIsPassedOverWhereTheRepeatIsOdd() {
        toolbox.turn(Mirror.HALF);
        bench.open(Chart.blank("Slack Water", new SideShape(1, 5, 1), 4, BLANK.yarns()), Optional.empty());

        assertThat(List.of(toolbox.isUp(Mirror.HALF), toolbox.isPossible(Mirror.HALF)))
                .containsExactly(true, false);
        assertThat(toolbox.symmetry()).isEqualTo(Symmetry.NONE);
    }

    private List<String> rows() {
        return List.of(
                bench.chart().round(4).repeat().letters(),
                bench.chart().round(3).repeat().letters(),
                bench.chart().round(2).repeat().letters());
    }

    private void draw(Tools tool, GridCell... way) {
        toolbox.take(tool);
        Stroke stroke = toolbox.begin(sheet(), Stitch.LONG);
        for (GridCell cell : way) {
            stroke.over(List.of(cell));
        }
        stroke.land();
    }

    private Sheet sheet() {
        return new Sheet(layout(), bench.chart());
    }

    private CornerLayout layout() {
        return CornerPicture.of(bench.chart(), PictureStyle.screen(English.LANGUAGE), Emphasis.NONE)
                .layout();
    }

    /** The cell of a stitch of the first repeat before the corner. */
    private GridCell cell(int round, int place) {
        return layout().cellOf(Side.FIRST, new Place(round, Section.REPEAT, place), 1);
    }
}
