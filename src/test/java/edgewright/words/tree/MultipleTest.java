package edgewright.words.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 'Multiple of X plus Y' as published patterns mean it. */
class MultipleTest {

    @ParameterizedTest
    @CsvSource({
        // 48n + 3 stitches for any n. From a published flat piece, its address not kept.
        "48, 3, 51", "48, 3, 99", "48, 3, 147",
        // 'Multiple of 3 plus 2 on each side'.
        // https://www.yarntalecollective.com/crochet/sideways-puff-stitch-single-crochet-borderedging-patterntutorial/
        "3, 2, 5", "3, 2, 8", "3, 2, 101",
        // 'Multiple of 4 plus 1'. http://www.pressreader.com/australia/simply-crochet/20170622/283012579888609
        "4, 1, 5", "4, 1, 41", "4, 1, 101",
    })
    void aNumberFromAPublishedMultipleIsOne(int of, int plus, int stitches) {
        Multiple multiple = new Multiple(of, plus, List.of(stitches));
        assertThat(multiple.has(stitches)).isTrue();
        assertThat(multiple.has(stitches + 1)).isFalse();
        assertThat(Multiple.containing(of, stitches).withExamples(List.of(stitches)))
                .isEqualTo(multiple);
    }

    @Test
    void whatIsAddedIsLessThanTheMultiple() {
        assertThatThrownBy(() -> new Multiple(4, 4, List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThat(Multiple.containing(4, 9)).isEqualTo(new Multiple(4, 1, List.of()));
    }

    @Test
    void anExampleMustBeOne() {
        assertThatThrownBy(() -> new Multiple(4, 1, List.of(42)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("42");
    }
}
