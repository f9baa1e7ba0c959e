package edgewright.yarn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.chart.Colour;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContrastTest {

    /** Computed by hand from the formula of https://www.w3.org/WAI/GL/wiki/Contrast_ratio; 21 is the published most. */
    @ParameterizedTest
    @CsvSource({
        "#000000, #ffffff, 21.0",
        "#777777, #ffffff, 4.4781",
        "#767676, #ffffff, 4.5422",
        "#ff0000, #ffffff, 3.9985",
        "#0000ff, #ffffff, 8.5925",
        "#00ff00, #ffffff, 1.3722",
        "#ff0000, #00ff00, 2.9139"
    })
    void the_ratio_is_that_of_wcag_in_either_order(String one, String two, double ratio) {
        Colour first = Colour.parse(one);
        Colour second = Colour.parse(two);
        assertThat(Contrast.between(first, second).ratio()).isCloseTo(ratio, within(0.00005));
        assertThat(Contrast.between(second, first).ratio()).isCloseTo(ratio, within(0.00005));
    }

    /** Computed by hand from the formula of https://www.w3.org/WAI/GL/wiki/Relative_luminance. */
    @ParameterizedTest
    @CsvSource({"#000000, 0", "#777777, 0.184475", "#767676, 0.181164", "#ffffff, 1"})
    void the_luminance_is_that_of_wcag(String colour, double luminance) {
        assertThat(Colour.parse(colour).luminance()).isCloseTo(luminance, within(0.0000005));
    }

    /** L*, a* and b* of the corners of sRGB under D65: from memory. */
    @ParameterizedTest
    @CsvSource({
        "#000000,   0.00,   0.00,    0.00",
        "#ffffff, 100.00,   0.00,    0.00",
        "#ff0000,  53.24,  80.09,   67.20",
        "#00ff00,  87.73, -86.18,   83.18",
        "#0000ff,  32.30,  79.19, -107.86",
        "#777777,  50.03,   0.00,    0.00"
    })
    void screen_colours_have_their_known_place_in_lab(String colour, double lightness, double a, double b) {
        Lab lab = Lab.of(Colour.parse(colour));
        assertThat(lab.lightness()).isCloseTo(lightness, within(0.02));
        assertThat(lab.a()).isCloseTo(a, within(0.02));
        assertThat(lab.b()).isCloseTo(b, within(0.02));
    }

    @Test
    void every_screen_colour_comes_back_from_lab() {
        Random random = new Random(4);
        for (int i = 0; i < 20_000; i++) {
            Colour colour = new Colour(random.nextInt(0x1000000));
            assertThat(Lab.of(colour).toColour()).isEqualTo(colour);
        }
    }

    @Test
    void a_colour_has_no_contrast_to_itself() {
        assertThat(Contrast.between(Colour.parse("#c0ffee"), Colour.parse("#c0ffee")))
                .isEqualTo(new Contrast(1, 0));
    }

    /** What is clear and what is lost: common practice, no source. The limits are ours. */
    @ParameterizedTest
    @CsvSource({
        "peat and chalk,                                   #2b2a33, #f2ead8, false",
        "rust and chalk,                                   #a9502f, #f2ead8, false",
        "rust and peat: middling greys but other colours,  #a9502f, #2b2a33, false",
        "two near whites,                                  #f2ead8, #e4dccb, true",
        "two near blacks,                                  #000000, #2b2a33, true",
        "black and charcoal: middling greys of one colour, #000000, #383838, true",
        "rust and teal: other colours but one grey,        #a9502f, #3b7a78, true"
    })
    void yarns_that_the_trade_keeps_apart_are_kept_apart(String yarns, String one, String two, boolean low) {
        assertThat(Contrast.between(Colour.parse(one), Colour.parse(two)).isLow())
                .as(yarns)
                .isEqualTo(low);
    }

    @Test
    void the_limits_are_exact() {
        assertThat(new Contrast(3.0, 0).isLow()).isFalse();
        assertThat(new Contrast(2.99, 29.9).isLow()).isTrue();
        assertThat(new Contrast(2.99, 30.0).isLow()).isFalse();
        assertThat(new Contrast(1.5, 30.0).isLow()).isFalse();
        assertThat(new Contrast(1.49, 99).isLow()).isTrue();
    }
}
