package edgewright.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Footing;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.check.Finding;
import edgewright.check.FindingPlace;
import edgewright.check.FindingSentences;
import edgewright.desk.parts.Look;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Seeing;
import edgewright.desk.work.Theme;
import edgewright.desk.work.Workbench;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.texts.English;
import java.beans.PropertyChangeEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleSelection;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleTable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whoever hears the chart hears all of it: what is asked here is asked of the accessibility API alone. */
class SpokenTableTest {
    private static final FindingSentences SENTENCES = new FindingSentences(English.LANGUAGE);
    private static final Map<Character, String> STITCHES =
            Map.of('b', "back-loop stitch", 'p', "plain stitch", 'l', "long stitch", 'c', "chain");
    private static final Map<Section, String> SECTIONS = Map.of(
            Section.FROM_CORNER, "from the corner", Section.REPEAT, "repeat", Section.TO_CORNER, "to the corner");

    private final ChartView view = new ChartView(English.LANGUAGE);

    @BeforeAll
    static void light() {
        Look.setUp(Theme.LIGHT);
    }

    static List<Path> samples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("sample-charts"))) {
            return files.filter(file -> file.toString().endsWith(ChartFiles.ENDING))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everyRoundIsReadStitchByStitchInWorkingOrderRoundTheCorner(Path sample) {
        Workbench bench = bench(sample);
        ChartCanvas canvas = new ChartCanvas(bench, view);
        List<List<String>> expected = new ArrayList<>();
        for (int r = 1; r <= bench.chart().rounds().size(); r++) {
            List<String> round = new ArrayList<>();
            for (int time = 1; time <= canvas.repeats(); time++) {
                round.addAll(names(bench, r, Section.REPEAT));
            }
            round.addAll(names(bench, r, Section.TO_CORNER));
            round.add("Round " + r + ", corner chains.");
            round.addAll(names(bench, r, Section.FROM_CORNER));
            for (int time = 1; time <= canvas.repeats(); time++) {
                round.addAll(names(bench, r, Section.REPEAT));
            }
            expected.add(round);
        }
        assertThat(read(canvas)).isEqualTo(expected);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everyRoundOfALevelSideIsReadFromCornerToCorner(Path sample) {
        Workbench bench = bench(sample);
        ChartCanvas canvas = new ChartCanvas(bench, view);
        view.see(Seeing.USUAL.withDrawn(Seeing.Drawn.SIDE));
        Side shown = Side.values()[view.turn().ordinal()];
        int repeats = canvas.cells().grid().repeats().get(shown);
        List<List<String>> expected = new ArrayList<>();
        for (int r = 1; r <= bench.chart().rounds().size(); r++) {
            List<String> round = new ArrayList<>(List.of("Round " + r + ", corner chains."));
            round.addAll(names(bench, r, Section.FROM_CORNER));
            for (int time = 1; time <= repeats; time++) {
                round.addAll(names(bench, r, Section.REPEAT));
            }
            round.addAll(names(bench, r, Section.TO_CORNER));
            round.add("Round " + r + ", corner chains.");
            expected.add(round);
        }
        assertThat(read(canvas)).isEqualTo(expected);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void whatAStitchStandsOnIsInItsColumnOneRowBefore(Path sample) {
        Workbench bench = bench(sample);
        Chart chart = bench.chart();
        if (!chart.raggedSections().isEmpty()) {
            // What stands on what is not known there.
            return;
        }
        AccessibleTable table = table(new ChartCanvas(bench, view));
        Map<String, Place> places = new HashMap<>();
        for (int r = 1; r <= chart.rounds().size(); r++) {
            for (Section section : Section.values()) {
                for (int p = 1; p <= chart.round(r).section(section).length(); p++) {
                    Place place = new Place(r, section, p);
                    places.put(name(bench, place), place);
                }
            }
        }
        for (int row = 1; row < table.getAccessibleRowCount(); row++) {
            for (int column = 0; column < table.getAccessibleColumnCount(); column++) {
                Place place = places.get(nameAt(table, row, column));
                if (place != null && chart.border().footing(place) instanceof Footing.OnStitch on) {
                    assertThat(places.get(nameAt(table, row - 1, column))).isEqualTo(on.place());
                }
            }
        }
    }

    @Test
    void theCellUnderTheCursorIsTheActiveOneAndItsMovesAreTold() {
        Workbench bench = bench(Path.of("sample-charts", "reed-bank.border.json"));
        ChartCanvas canvas = new ChartCanvas(bench, view);
        AccessibleContext heard = canvas.getAccessibleContext();
        List<PropertyChangeEvent> events = new ArrayList<>();
        heard.addPropertyChangeListener(events::add);
        Place place = new Place(3, Section.TO_CORNER, 2);

        canvas.standAndShow(canvas.cells().cellsOf(place).get(0));

        Accessible active = active(events);
        assertThat(active.getAccessibleContext().getAccessibleName()).isEqualTo(name(bench, place));
        assertThat(active.getAccessibleContext().getAccessibleStateSet().toArray())
                .contains(AccessibleState.SELECTED, AccessibleState.ACTIVE);
        assertThat(heard.getAccessibleChild(active.getAccessibleContext().getAccessibleIndexInParent()))
                .isEqualTo(active);
        assertThat(events.stream().map(PropertyChangeEvent::getPropertyName))
                .contains(
                        AccessibleContext.ACCESSIBLE_SELECTION_PROPERTY,
                        AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY);
    }

    @Test
    void aStitchThatIsWorkedIsReadOutAnew() {
        Workbench bench = bench(Path.of("sample-charts", "reed-bank.border.json"));
        ChartCanvas canvas = new ChartCanvas(bench, view);
        canvas.standAndShow(
                canvas.cells().cellsOf(new Place(3, Section.TO_CORNER, 2)).get(0));
        List<PropertyChangeEvent> events = new ArrayList<>();
        canvas.getAccessibleContext().addPropertyChangeListener(events::add);

        bench.work(List.of(bench.cursor()), Stitch.CHAIN);

        assertThat(active(events).getAccessibleContext().getAccessibleName()).contains("stitch 2: chain, yarn");
    }

    @Test
    void aCellThatIsChosenByEarGetsTheCursor() {
        Workbench bench = bench(Path.of("sample-charts", "reed-bank.border.json"));
        ChartCanvas canvas = new ChartCanvas(bench, view);
        AccessibleContext heard = canvas.getAccessibleContext();
        AccessibleSelection selection = heard.getAccessibleSelection();
        int index = IntStream.range(0, heard.getAccessibleChildrenCount())
                .filter(i -> heard.getAccessibleChild(i)
                        .getAccessibleContext()
                        .getAccessibleName()
                        .startsWith("Round 5, from the corner, stitch 3:"))
                .findFirst()
                .orElseThrow();

        selection.addAccessibleSelection(index);

        assertThat(bench.cursor()).isEqualTo(new Place(5, Section.FROM_CORNER, 3));
        assertThat(selection.getAccessibleSelectionCount()).isEqualTo(1);
        assertThat(selection.getAccessibleSelection(0)).isEqualTo(heard.getAccessibleChild(index));
    }

    @Test
    void whatIsMarkedIsChosen() {
        Workbench bench = bench(Path.of("sample-charts", "reed-bank.border.json"));
        ChartCanvas canvas = new ChartCanvas(bench, view);
        canvas.marking()
                .extend(
                        canvas.cells().cellOf(Side.FIRST, new Place(4, Section.TO_CORNER, 2), 1),
                        canvas.cells().cellOf(Side.FIRST, new Place(5, Section.TO_CORNER, 3), 1));
        AccessibleSelection selection = canvas.getAccessibleContext().getAccessibleSelection();

        assertThat(IntStream.range(0, selection.getAccessibleSelectionCount())
                        .mapToObj(i -> selection
                                .getAccessibleSelection(i)
                                .getAccessibleContext()
                                .getAccessibleName()))
                .containsExactly(
                        name(bench, new Place(4, Section.TO_CORNER, 2)),
                        name(bench, new Place(4, Section.TO_CORNER, 3)),
                        name(bench, new Place(5, Section.TO_CORNER, 2)),
                        name(bench, new Place(5, Section.TO_CORNER, 3)));
    }

    private static Accessible active(List<PropertyChangeEvent> events) {
        return (Accessible) events.stream()
                .filter(event ->
                        event.getPropertyName().equals(AccessibleContext.ACCESSIBLE_ACTIVE_DESCENDANT_PROPERTY))
                .reduce((first, last) -> last)
                .orElseThrow()
                .getNewValue();
    }

    private static Workbench bench(Path sample) {
        return new Workbench(((ReadResult.Read) ChartFiles.read(sample)).chart(), Optional.empty(), English.LANGUAGE);
    }

    private static AccessibleTable table(ChartCanvas canvas) {
        assertThat(canvas.getAccessibleContext().getAccessibleRole()).isEqualTo(AccessibleRole.TABLE);
        return canvas.getAccessibleContext().getAccessibleTable();
    }

    /** Each row as it is read, without the cells beyond a corner. */
    private static List<List<String>> read(ChartCanvas canvas) {
        AccessibleTable table = table(canvas);
        List<List<String>> rows = new ArrayList<>();
        for (int row = 0; row < table.getAccessibleRowCount(); row++) {
            List<String> cells = new ArrayList<>();
            for (int column = 0; column < table.getAccessibleColumnCount(); column++) {
                String name = nameAt(table, row, column);
                if (!name.equals("Round " + (row + 1) + ", beyond the corner: nothing is worked.")) {
                    cells.add(name);
                }
            }
            rows.add(cells);
        }
        return rows;
    }

    private static String nameAt(AccessibleTable table, int row, int column) {
        return table.getAccessibleAt(row, column).getAccessibleContext().getAccessibleName();
    }

    /** The stitches of a section as the chart has them, and those that it lacks. */
    private static List<String> names(Workbench bench, int r, Section section) {
        Chart chart = bench.chart();
        List<String> names = new ArrayList<>();
        for (int p = 1; p <= chart.border().length(section, r); p++) {
            Place place = new Place(r, section, p);
            names.add(chart.has(place) ? name(bench, place) : where(place) + ": no stitch in the chart.");
        }
        return names;
    }

    private static String name(Workbench bench, Place place) {
        Round round = bench.chart().round(place.round());
        StringBuilder name = new StringBuilder(where(place));
        name.append(": ").append(STITCHES.get(bench.chart().stitch(place).letter()));
        name.append(", yarn ").append(round.yarn()).append(", ");
        name.append(bench.chart().yarnOf(place.round()).name()).append('.');
        for (Finding finding : bench.verdict().findings()) {
            if (finding.place().equals(new FindingPlace.OfStitch(place))) {
                name.append(' ').append(SENTENCES.of(finding));
            }
        }
        return name.toString();
    }

    private static String where(Place place) {
        return "Round " + place.round() + ", " + SECTIONS.get(place.section()) + ", stitch " + place.place();
    }
}
