package edgewright.assist.stack;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class YarnMergeTest {
    private static final Yarn PEAT = new Yarn("A", "Peat", Colour.parse("#2b2a33"));
    private static final Yarn CHALK = new Yarn("B", "Chalk", Colour.parse("#f2ead8"));

    @Test
    void aYarnOfTheSameNameAndColourIsTheSameUnderWhateverId() {
        Yarn chalkToo = new Yarn("A", "Chalk", Colour.parse("#f2ead8")).withMetresInHand(OptionalDouble.of(80));
        Yarn peatToo = new Yarn("Q7", "Peat", Colour.parse("#2b2a33"));
        assertThat(YarnMerge.of(chart(PEAT, CHALK), chart(chalkToo, peatToo)))
                .isEqualTo(new YarnMerge(List.of(PEAT, CHALK), Map.of("A", "B", "Q7", "A")));
    }

    @Test
    void anotherYarnUnderTheSameIdGetsTheFirstLetterThatNeitherChartHas() {
        Yarn fog = new Yarn("B", "Fog", Colour.parse("#e4dccb"));
        Yarn palerChalk = new Yarn("A", "Chalk", Colour.parse("#ffffff"));
        Yarn mud = new Yarn("C", "Mud", Colour.parse("#3f3d46"));
        YarnMerge merge = YarnMerge.of(chart(PEAT, CHALK), chart(palerChalk, fog, mud));
        assertThat(merge.renamed()).isEqualTo(Map.of("A", "D", "B", "E", "C", "C"));
        assertThat(merge.yarns().stream().map(Yarn::id)).containsExactly("A", "B", "D", "E", "C");
    }

    private static Chart chart(Yarn... yarns) {
        return Chart.blank("Stripes", new SideShape(0, 2, 0), 2, List.of(yarns));
    }
}
