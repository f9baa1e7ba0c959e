package edgewright.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.texts.English;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Edits of rounds, columns and yarns as the desk makes and names them. */
class ChartCommandsTest {
    private static final Yarn PEAT = new Yarn("A", "Peat", Colour.parse("#2b2a33"));
    private static final Yarn CHALK = new Yarn("B", "Chalk", Colour.parse("#f2ead8"));

    private final Workbench bench = new Workbench(
            Chart.blank("Tide Steps", new SideShape(1, 5, 1), 6, List.of(PEAT, CHALK)),
            Optional.empty(),
            English.LANGUAGE);

    @Test
    void aNewRoundOutsideTakesTheYarnWhoseTurnItIsAndTheCursor() {
        ChartCommands.insertOutside(bench, RoundRange.of(6));

        assertThat(yarns()).isEqualTo("ABABABA");
        assertThat(bench.cursor().round()).isEqualTo(7);
        assertThat(bench.undoName()).contains("insert round 7");
    }

    @Test
    void roundsMovedOrWorkedAgainKeepTheirYarnAndTheCursorStaysWithThem() {
        bench.moveCursor(new Place(2, Section.REPEAT, 3));
        ChartCommands.move(bench, new RoundRange(2, 3), 1);
        assertThat(yarns()).isEqualTo("ABBAAB");
        assertThat(bench.cursor()).isEqualTo(new Place(3, Section.REPEAT, 3));
        assertThat(bench.undoName()).contains("move rounds 2 to 3, now 3 and on");

        ChartCommands.duplicate(bench, RoundRange.of(3));
        assertThat(yarns()).isEqualTo("ABBBAAB");
        assertThat(bench.undoName()).contains("duplicate round 3");
    }

    @Test
    void roundsCannotBeMovedOffTheChartNorAllBeTakenOut() {
        assertThat(ChartCommands.canMove(bench, new RoundRange(5, 6), 1)).isFalse();
        assertThat(ChartCommands.canMove(bench, new RoundRange(5, 6), -1)).isTrue();
        assertThat(ChartCommands.canMove(bench, RoundRange.of(1), -1)).isFalse();
        assertThat(ChartCommands.canDelete(bench, new RoundRange(1, 6))).isFalse();
        assertThat(ChartCommands.canDelete(bench, new RoundRange(1, 5))).isTrue();
    }

    @Test
    void aColumnTakenOutGoesWithItsStitchesInEveryRound() {
        bench.work(List.of(new Place(3, Section.FROM_CORNER, 2), new Place(4, Section.FROM_CORNER, 3)), Stitch.PLAIN);
        bench.moveCursor(new Place(3, Section.FROM_CORNER, 2));
        ChartCommands.deleteColumn(bench);

        assertThat(bench.chart().shape()).isEqualTo(new SideShape(0, 5, 1));
        assertThat(bench.chart().rounds()).allMatch(round -> round.isAll(Stitch.BACK_LOOP));
        assertThat(bench.undoName()).contains("delete column, from the corner");
        assertThat(ChartCommands.canDeleteColumn(bench))
                .as("one stitch is left of it in round 1")
                .isFalse();
    }

    @Test
    void theSideIsReshapedInOneEdit() {
        ChartCommands.reshape(bench, new SideShape(3, 6, 0));

        assertThat(bench.chart().shape()).isEqualTo(new SideShape(3, 6, 0));
        assertThat(bench.chart().raggedSections()).isEmpty();
        assertThat(bench.undoName()).contains("side with 3 from the corner, repeat of 6, 0 to the corner");
    }

    @Test
    void theRepeatIsShiftedAndTheEditSaysWhichWay() {
        bench.work(List.of(new Place(3, Section.REPEAT, 1)), Stitch.PLAIN);
        ChartCommands.shiftRepeat(bench, 1);
        assertThat(bench.chart().round(3).repeat().letters()).isEqualTo("bpbbb");
        assertThat(bench.undoName()).contains("shift the repeat 1 column on");
        ChartCommands.shiftRepeat(bench, -2);
        assertThat(bench.chart().round(3).repeat().letters()).isEqualTo("bbbbp");
        assertThat(bench.undoName()).contains("shift the repeat 2 columns back");
    }

    @Test
    void aYarnCanBeAddedRenamedAndTakenAwayAgainOnlyWhileNoRoundIsWorkedInIt() {
        String id = ChartCommands.freeYarnId(bench.chart());
        assertThat(id).isEqualTo("C");
        Yarn fog = new Yarn(id, "Fog", Colour.parse("#b8cdd0"));
        ChartCommands.addYarn(bench, fog);
        ChartCommands.changeYarn(bench, RoundRange.of(2), fog);
        assertThat(yarns()).isEqualTo("ACABAB");
        assertThat(ChartCommands.canRemove(bench.chart(), fog)).isFalse();

        Yarn mist = new Yarn("M", "Mist", Colour.parse("#b8cdd0"));
        ChartCommands.changeYarn(bench, fog, mist);
        assertThat(yarns()).isEqualTo("AMABAB");
        ChartCommands.changeYarn(bench, RoundRange.of(2), CHALK);
        assertThat(ChartCommands.canRemove(bench.chart(), mist)).isTrue();
        ChartCommands.removeYarn(bench, mist);
        assertThat(bench.chart().yarns()).containsExactly(PEAT, CHALK);
    }

    @Test
    void everyYarnOfSixtyFourGetsALetterOfItsOwn() {
        while (bench.chart().yarns().size() < Chart.MOST_YARNS) {
            String id = ChartCommands.freeYarnId(bench.chart());
            ChartCommands.addYarn(bench, new Yarn(id, id, Colour.parse("#000000")));
        }

        assertThat(bench.chart().yarns())
                .extracting(Yarn::id)
                .contains("Z", "Y27", "Y64")
                .doesNotHaveDuplicates();
    }

    private String yarns() {
        StringBuilder yarns = new StringBuilder();
        bench.chart().rounds().forEach(round -> yarns.append(round.yarn()));
        return yarns.toString();
    }

    @Test
    void theSectionsHaveNames() {
        assertThat(Stream.of(Section.values()).map(section -> ChartCommands.sectionName(section, English.LANGUAGE)))
                .containsExactly("from the corner", "repeat", "to the corner");
    }
}
