package edgewright.draw.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.draw.paint.Shape.Weight;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;
import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LetteringTest {

    @ParameterizedTest
    @EnumSource
    void a_text_is_as_wide_as_the_jdk_measures_it_in_the_same_font_file(Weight weight) throws Exception {
        try (InputStream file = Lettering.open(weight)) {
            Font font = Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(1000f);
            FontRenderContext exact = new FontRenderContext(null, true, true);
            for (String text : new String[] {"repeat, 12 stitches", "0", "AVATAR", "Wäschetrockner", "Łódź", "¡día!"}) {
                assertThat(Lettering.widthMm(text, weight, 1000))
                        .isCloseTo(font.getStringBounds(text, exact).getWidth(), within(0.5));
            }
        }
    }

    @Test
    void the_width_grows_with_the_size() {
        assertThat(Lettering.widthMm("base", Weight.REGULAR, 3))
                .isCloseTo(3 * Lettering.widthMm("base", Weight.REGULAR, 1), within(1e-9));
        assertThat(Lettering.widthMm("", Weight.BOLD, 3)).isZero();
    }

    @Test
    void the_face_has_every_character_of_the_words_in_pictures() {
        ResourceBundle labels = ResourceBundle.getBundle("edgewright.draw.labels", Locale.ROOT);
        assertThat(labels.keySet())
                .allSatisfy(
                        key -> assertThat(Lettering.has(labels.getString(key))).isTrue());
    }

    @Test
    void a_character_that_the_face_lacks_takes_some_room() {
        assertThat(Lettering.has("\u4e00")).isFalse();
        assertThat(Lettering.widthMm("\u4e00", Weight.REGULAR, 1)).isPositive();
    }
}
