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
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A chart in work with what belongs to it: whose file it is, whether anybody would miss it, and that it lets go. */
class DocumentTest {
    private static final Place HERE = new Place(3, Section.REPEAT, 1);

    private final Chart chart = Chart.blank(
            "Reed Bank",
            new SideShape(2, 6, 3),
            12,
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8"))));

    private Document document(Optional<Path> file) {
        return new Document(new Workbench(chart, file, English.LANGUAGE), new ChartView(English.LANGUAGE));
    }

    @Test
    void nobodyIsToldAnyMoreOfAChartThatWasPutAway() {
        Document document = document(Optional.empty());
        List<String> heard = new ArrayList<>();
        document.bench().listen(change -> heard.add(change.kind().name()));
        document.view().listen(change -> heard.add(change.name()));
        document.bench().work(List.of(HERE), Stitch.LONG);
        document.view().turnOn();
        assertThat(heard).containsExactly("EDITED", "DRAWN", "TURN");

        document.close();
        document.bench().work(List.of(HERE), Stitch.PLAIN);
        document.view().turnOn();
        assertThat(heard).hasSize(3);
    }

    @Test
    void aChartIsThatOfItsFileHoweverTheFileIsNamed() {
        Document document = document(Optional.of(Path.of("charts", "reed-bank.border.json")));

        assertThat(document.isOf(Path.of("charts", "..", "charts", "reed-bank.border.json")))
                .isTrue();
        assertThat(document.isOf(Path.of("reed-bank.border.json"))).isFalse();
        assertThat(document(Optional.empty()).isOf(Path.of("reed-bank.border.json")))
                .isFalse();
    }

    @Test
    void aChartIsUntouchedUntilSomethingWasDoneToItAlsoIfThatWasUndone() {
        Document document = document(Optional.empty());
        document.bench().moveCursor(HERE);
        assertThat(document.isUntouched()).isTrue();

        document.bench().work(List.of(HERE), Stitch.LONG);
        assertThat(document.isUntouched()).isFalse();
        document.bench().undo();
        assertThat(document.isUntouched()).isFalse();
        assertThat(document(Optional.of(Path.of("reed-bank.border.json"))).isUntouched())
                .isFalse();
    }
}
