package edgewright.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Colour;
import edgewright.yarn.Contrast;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class YarnShelfTest {
    @Test
    void aThirdYarnIsToldFromPeatAndChalk() {
        Colour third = YarnShelf.unlike(List.of(Colour.parse("#2b2a33"), Colour.parse("#f2ead8")));

        assertThat(Contrast.between(third, Colour.parse("#2b2a33")).isLow()).isFalse();
        assertThat(Contrast.between(third, Colour.parse("#f2ead8")).isLow()).isFalse();
    }

    @Test
    void noColourIsLaidReadyTwiceWhileAnotherIsLeft() {
        List<Colour> taken = new ArrayList<>();
        for (int i = 0; i < YarnShelf.COLOURS.size(); i++) {
            taken.add(YarnShelf.unlike(taken));
        }

        assertThat(taken).containsExactlyInAnyOrderElementsOf(YarnShelf.COLOURS);
    }
}
