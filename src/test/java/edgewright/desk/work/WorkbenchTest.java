package edgewright.desk.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import edgewright.check.Finding;
import edgewright.texts.English;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The chart in work: its edits by name, its cursor, and what there is to save. */
class WorkbenchTest {
    private static final Place MIDDLE = new Place(4, Section.REPEAT, 2);

    private final Chart blank = Chart.blank(
            "Reed Bank",
            new SideShape(2, 5, 1),
            6,
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8"))));
    private final Workbench bench = new Workbench(blank, Optional.empty(), English.LANGUAGE);

    @Test
    void stitchesWorkedAtOnceAreOneEditNamedAfterTheirNumber() {
        bench.work(List.of(MIDDLE, new Place(4, Section.REPEAT, 4)), Stitch.LONG);

        assertThat(bench.chart().round(4).repeat().letters()).isEqualTo("blblb");
        assertThat(bench.undoName()).contains("2 long stitches");
    }

    @Test
    void aDragIsOneEditHoweverFarItGoes() {
        Transaction stroke = bench.beginDrawing(Stitch.LONG);
        List<Place> way = new ArrayList<>();
        for (int place = 1; place <= 4; place++) {
            way.add(new Place(4, Section.REPEAT, place));
            draw(stroke, way);
        }
        stroke.commit();

        assertThat(bench.undoName()).contains("4 long stitches");
        bench.undo();
        assertThat(bench.chart()).isSameAs(blank);
        assertThat(bench.undoName()).isEmpty();
    }

    @Test
    void whatIsOnlyLookedAtIsNoWorkAndLeavesNoTrace() {
        Place corner = new Place(2, Section.FROM_CORNER, 1);
        for (int end = 0; end < 4; end++) {
            bench.moveCursor(MIDDLE);
            Transaction look = bench.look((before, after) -> "look");
            look.preview(chart -> Edits.setStitches(chart, List.of(MIDDLE), Stitch.LONG));
            assertThat(bench.chart().stitch(MIDDLE)).isEqualTo(Stitch.LONG);
            assertThat(bench.worked()).isSameAs(blank);
            assertThat(bench.hasUnsavedWork()).isFalse();
            if (end == 0) {
                look.cancel();
            } else if (end == 1) {
                bench.undo();
            } else if (end == 2) {
                bench.stopLooking();
            } else {
                bench.moveCursor(corner);
                look.cancel();
                assertThat(bench.cursor()).as("gone elsewhere meanwhile").isEqualTo(corner);
            }
            assertThat(bench.chart()).isSameAs(blank);
            assertThat(bench.undoName()).isEmpty();
            assertThat(bench.redoName()).isEmpty();
        }
        Transaction look = bench.look((before, after) -> "look");
        look.preview(chart -> Edits.setStitches(chart, List.of(MIDDLE), Stitch.LONG));
        bench.work(List.of(new Place(4, Section.REPEAT, 4)), Stitch.LONG);
        assertThat(bench.chart().round(4).repeat().letters())
                .as("the other edit alone")
                .isEqualTo("bbblb");
    }

    @Test
    void aDragShowsItsStitchesAndFindingsWhileItGoesOn() {
        Transaction stroke = bench.beginDrawing(Stitch.LONG);
        draw(stroke, List.of(new Place(1, Section.REPEAT, 1)));

        assertThat(bench.chart().stitch(new Place(1, Section.REPEAT, 1))).isEqualTo(Stitch.LONG);
        assertThat(bench.verdict().findings()).extracting(Finding::rule).containsExactly("no-round-below");
        stroke.commit();
    }

    @Test
    void aDragOverStitchesThatAreThatAlreadyIsNoEdit() {
        bench.work(List.of(MIDDLE), Stitch.BACK_LOOP);

        assertThat(bench.undoName()).isEmpty();
        assertThat(bench.cursor()).isEqualTo(MIDDLE);
    }

    @Test
    void aDragThatIsCancelledLeavesNoTrace() {
        bench.moveCursor(MIDDLE);
        Transaction stroke = bench.beginDrawing(Stitch.LONG);
        draw(stroke, List.of(new Place(4, Section.REPEAT, 1), new Place(1, Section.REPEAT, 1)));
        stroke.cancel();
        draw(stroke, List.of(MIDDLE));
        stroke.commit();

        assertThat(stroke.isGoing()).isFalse();
        assertThat(bench.chart()).isSameAs(blank);
        assertThat(bench.verdict()).isEqualTo(Checker.check(blank));
        assertThat(bench.cursor()).isEqualTo(MIDDLE);
        assertThat(List.of(bench.undoName(), bench.redoName(), bench.lastDeed()))
                .containsOnly(Optional.empty());
        assertThat(bench.hasUnsavedWork()).isFalse();
    }

    @Test
    void aDragGoesWithItsChartWhenAnotherIsOpened() {
        Transaction stroke = bench.beginDrawing(Stitch.LONG);
        draw(stroke, List.of(MIDDLE));
        Chart other = Edits.insertRounds(blank, 1, List.of("A"));
        bench.open(other, Optional.empty());
        draw(stroke, List.of(new Place(4, Section.REPEAT, 4)));
        stroke.commit();

        assertThat(bench.chart()).isSameAs(other);
        assertThat(bench.undoName()).isEmpty();
    }

    @Test
    void anUndoInTheMiddleOfADragEndsTheDragFirst() {
        Transaction stroke = bench.beginDrawing(Stitch.LONG);
        draw(stroke, List.of(MIDDLE));
        bench.undo();
        draw(stroke, List.of(new Place(4, Section.REPEAT, 3)));
        stroke.commit();

        assertThat(bench.chart()).isEqualTo(blank);
        assertThat(bench.redoName()).contains("1 long stitch");
    }

    @Test
    void anEditInTheMiddleOfADragEndsTheDragFirst() {
        Transaction stroke = bench.beginDrawing(Stitch.LONG);
        draw(stroke, List.of(MIDDLE));
        Chart drawn = bench.chart();
        bench.edit("moved on", chart -> Edits.shiftRepeat(chart, 1));
        Chart edited = bench.chart();
        draw(stroke, List.of(new Place(4, Section.REPEAT, 3)));
        stroke.cancel();

        assertThat(stroke.isGoing()).isFalse();
        assertThat(bench.chart()).isSameAs(edited);
        bench.undo();
        assertThat(bench.chart()).isSameAs(drawn);
        assertThat(bench.undoName()).contains("1 long stitch");
    }

    @Test
    void aSecondDragEndsTheFirst() {
        Transaction first = bench.beginDrawing(Stitch.LONG);
        draw(first, List.of(MIDDLE));
        Transaction second = bench.beginDrawing(Stitch.PLAIN);

        assertThat(List.of(first.isGoing(), second.isGoing())).containsExactly(false, true);
        assertThat(bench.undoName()).contains("1 long stitch");
    }

    @Test
    void everyPreviewIsWorkedOutFromTheChartBeforeSoALineCanBecomeShorterAgain() {
        Transaction line = bench.beginDrawing(Stitch.LONG);
        draw(line, List.of(MIDDLE, new Place(4, Section.REPEAT, 3), new Place(4, Section.REPEAT, 4)));
        draw(line, List.of(MIDDLE));

        assertThat(bench.chart().round(4).repeat().letters()).isEqualTo("blbbb");
        assertThat(bench.chart().round(5)).as("a round that is as before").isSameAs(blank.round(5));
        assertThat(bench.verdict()).isEqualTo(Checker.check(bench.chart()));
        draw(line, List.of(new Place(4, Section.REPEAT, 4)));
        line.commit();
        assertThat(bench.undoName()).contains("1 long stitch");
        bench.undo();
        assertThat(bench.chart()).isSameAs(blank);
    }

    @Test
    void aPreviewThatLeadsBackToTheChartBeforeIsNoEdit() {
        Transaction line = bench.beginDrawing(Stitch.LONG);
        draw(line, List.of(MIDDLE));
        line.preview(chart -> Edits.setStitches(chart, List.of(MIDDLE), Stitch.BACK_LOOP));
        line.commit();

        assertThat(bench.chart()).isSameAs(blank);
        assertThat(bench.undoName()).isEmpty();
    }

    private static void draw(Transaction stroke, List<Place> places) {
        stroke.preview(chart -> Edits.setStitches(chart, places, Stitch.LONG), places.get(places.size() - 1));
    }

    @Test
    void undoAndRedoGiveBackTheVerySameCharts() {
        List<Chart> charts = new ArrayList<>(List.of(bench.chart()));
        for (int round = 2; round <= 6; round++) {
            bench.work(List.of(new Place(round, Section.REPEAT, 1)), Stitch.PLAIN);
            charts.add(bench.chart());
        }

        for (int i = charts.size() - 2; i >= 0; i--) {
            bench.undo();
            assertThat(bench.chart()).isSameAs(charts.get(i));
        }
        bench.undo();
        assertThat(bench.chart()).isSameAs(charts.get(0));
        for (int i = 1; i < charts.size(); i++) {
            bench.redo();
            assertThat(bench.chart()).isSameAs(charts.get(i));
        }
        bench.redo();
        assertThat(bench.chart()).isSameAs(charts.get(charts.size() - 1));
    }

    @Test
    void undoHasNoLimit() {
        for (int i = 0; i < 5_000; i++) {
            bench.work(List.of(MIDDLE), i % 2 == 0 ? Stitch.LONG : Stitch.PLAIN);
        }
        for (int i = 0; i < 5_000; i++) {
            bench.undo();
        }

        assertThat(bench.chart()).isSameAs(blank);
    }

    @Test
    void anEditAfterAnUndoForgetsWhatWasUndone() {
        bench.work(List.of(MIDDLE), Stitch.LONG);
        bench.undo();
        bench.work(List.of(MIDDLE), Stitch.PLAIN);

        assertThat(bench.redoName()).isEmpty();
        assertThat(bench.undoName()).contains("1 plain stitch");
    }

    @Test
    void anEditThatChangesNothingIsNoEdit() {
        bench.edit("nothing", chart -> chart.withTitle("Reed Bank"));

        assertThat(bench.undoName()).isEmpty();
    }

    @Test
    void anEditThatTheChartCannotTakeLeavesEverythingAsItWas() {
        assertThatThrownBy(() -> bench.edit("too many", chart -> Edits.deleteRounds(chart, 1, 6)))
                .isInstanceOf(IllegalArgumentException.class);

        assertThat(bench.chart()).isSameAs(blank);
        assertThat(bench.undoName()).isEmpty();
    }

    @Test
    void undoLeadsBackToWhereTheEditWasMade() {
        bench.work(List.of(MIDDLE), Stitch.LONG);
        bench.moveCursor(new Place(1, Section.REPEAT, 1));
        bench.undo();

        assertThat(bench.cursor()).isEqualTo(MIDDLE);
    }

    @Test
    void aChartIsUnsavedAsLongAsItIsNotWhatWasSaved() {
        assertThat(bench.hasUnsavedWork()).isFalse();
        bench.work(List.of(MIDDLE), Stitch.LONG);
        assertThat(bench.hasUnsavedWork()).isTrue();
        bench.undo();
        assertThat(bench.hasUnsavedWork()).isFalse();
        bench.redo();
        bench.saved(bench.chart(), Path.of("reed-bank.border.json"));
        assertThat(bench.hasUnsavedWork()).isFalse();
        bench.undo();
        assertThat(bench.hasUnsavedWork()).isTrue();
        bench.work(List.of(MIDDLE), Stitch.LONG);
        assertThat(bench.hasUnsavedWork()).as("the same chart, drawn anew").isFalse();
    }

    @Test
    void whatWasEditedWhileItWasBeingSavedIsStillUnsaved() {
        bench.work(List.of(MIDDLE), Stitch.LONG);
        Chart written = bench.chart();
        bench.work(List.of(MIDDLE), Stitch.PLAIN);
        bench.saved(written, Path.of("reed-bank.border.json"));

        assertThat(bench.hasUnsavedWork()).isTrue();
    }

    @Test
    void theVerdictIsThatOfACheckFromTheBeginning() {
        for (int round = 1; round <= 6; round++) {
            bench.work(
                    List.of(new Place(round, Section.FROM_CORNER, 1), new Place(round, Section.REPEAT, 3)),
                    Stitch.LONG);
            assertThat(bench.verdict()).isEqualTo(Checker.check(bench.chart()));
        }
        bench.edit("fewer", chart -> Edits.deleteRounds(chart, 2, 3));
        assertThat(bench.verdict()).isEqualTo(Checker.check(bench.chart()));
    }

    @Test
    void theCursorStaysOnAStitchThatTheChartHas() {
        bench.moveCursor(new Place(6, Section.TO_CORNER, 7));
        bench.edit("fewer", chart -> Edits.deleteRounds(chart, 3, 6));
        assertThat(bench.cursor()).isEqualTo(new Place(2, Section.TO_CORNER, 3));

        bench.moveCursor(new Place(99, Section.REPEAT, 99));
        assertThat(bench.cursor()).isEqualTo(new Place(2, Section.REPEAT, 5));
    }

    @Test
    void listenersHearOfEachChangeAfterItHasHappened() {
        List<String> heard = new ArrayList<>();
        bench.listen(change -> heard.add(change.kind() + " " + change.after().title() + " "
                + bench.chart().equals(change.after())));
        bench.choose(Stitch.PLAIN);
        bench.moveCursor(MIDDLE);
        bench.edit("title", chart -> chart.withTitle("Tide Steps"));
        bench.undo();
        bench.saved(blank, Path.of("reed-bank.border.json"));
        bench.open(blank.withTitle("Lantern Posts"), Optional.empty());

        assertThat(heard)
                .containsExactly(
                        "STITCH Reed Bank true",
                        "CURSOR Reed Bank true",
                        "EDITED Tide Steps true",
                        "EDITED Reed Bank true",
                        "SAVED Reed Bank true",
                        "OPENED Lantern Posts true");
    }

    @Test
    void anotherChartOnTheBenchHasNoneOfTheOldEdits() {
        bench.work(List.of(MIDDLE), Stitch.LONG);
        bench.open(blank.withTitle("Tide Steps"), Optional.of(Path.of("tide-steps.border.json")));

        assertThat(bench.undoName()).isEmpty();
        assertThat(bench.hasUnsavedWork()).isFalse();
        assertThat(bench.cursor()).isEqualTo(new Place(1, Section.REPEAT, 1));
    }
}
