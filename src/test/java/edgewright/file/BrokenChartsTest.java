package edgewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.file.BrokenCharts.BrokenChart;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.English;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BrokenChartsTest {
    @TempDir
    private Path folder;

    static List<BrokenChart> brokenCharts() {
        return BrokenCharts.all();
    }

    @ParameterizedTest
    @MethodSource("brokenCharts")
    void aBrokenFileIsAProblemWithOneSentence(BrokenChart broken) throws IOException {
        Path file = broken.in(folder);
        ReadResult result = ChartFiles.read(file);
        assertThat(result).isInstanceOf(ReadResult.Problems.class);
        List<String> sentences = ((ReadResult.Problems) result)
                .problems().stream()
                        .map(problem -> new ProblemSentences(English.LANGUAGE).of(file, problem))
                        .toList();
        assertThat(sentences).containsExactly(file + broken.sentence());
    }

    @Test
    void theChartThatTheBrokenOnesAreMadeFromIsSound() {
        assertThat(ChartText.fromJson(BrokenCharts.sound())).isInstanceOf(ReadResult.Read.class);
    }
}
