package edgewright.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.testing.SampleFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SamplesTest {
    @Test
    void everySampleChartComesWithTheProgram() {
        List<String> files = SampleFiles.all().stream()
                .map(file -> file.getFileName().toString().replace(ChartFiles.ENDING, ""))
                .toList();
        assertThat(Samples.NAMES).containsExactlyInAnyOrderElementsOf(files);
    }

    /** Without what lies beside its file, which a copy has nothing beside it to read from. */
    @Test
    void aSampleIsTheChartOfItsFileWithoutPhotographsAndImprint() {
        for (Path file : SampleFiles.all()) {
            Chart chart = ((ReadResult.Read) ChartFiles.read(file)).chart();
            assertThat(Samples.chart(file.getFileName().toString().replace(ChartFiles.ENDING, "")))
                    .isEqualTo(chart.withOwn(chart.own().withPhotos(List.of()).withImprint(Optional.empty())));
        }
    }
}
