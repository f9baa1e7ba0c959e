package edgewright.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.PatternDetails;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.testing.SampleFiles;
import edgewright.yarn.WeightCategory.Edition;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The sample charts show what a pattern should name. Held to the published table of yarn weights:
 * https://issuhub.com/view/index?id=3342&pageIndex=64
 */
class SampleYarnsTest {
    static List<Path> samples() {
        return SampleFiles.all();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everySampleNamesAHookAndATensionThatGoWithItsYarn(Path sample) {
        PatternDetails making =
                ((ReadResult.Read) ChartFiles.read(sample)).chart().making();
        WeightCategory weight = WeightCategory.of(making.yarnWeight().orElseThrow(), Edition.PRINT);
        assertThat(weight.hookMm().has(making.hook().orElseThrow().mm())).isTrue();
        assertThat(weight.stitches().has(making.swatch().orElseThrow().stitchesIn10Cm()))
                .isTrue();
    }
}
