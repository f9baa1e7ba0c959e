package edgewright.draw.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.draw.paint.Shape.Weight;
import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;

class LetteringTest {

    @Test
    void the_width_grows_with_the_size() {
        assertThat(Lettering.widthMm("base", Weight.REGULAR, 3))
                .isCloseTo(3 * Lettering.widthMm("base", Weight.REGULAR, 1), within(1e-9));
        assertThat(Lettering.widthMm("", Weight.BOLD, 3)).isZero();
    }

    @Test
    void the_first_face_has_every_character_of_the_words_in_pictures() {
        ResourceBundle labels = ResourceBundle.getBundle("edgewright.draw.labels", Locale.ROOT);
        assertThat(labels.keySet())
                .allSatisfy(key -> assertThat(FontStack.runs(labels.getString(key)))
                        .allSatisfy(run -> assertThat(run.typeface()).isEqualTo(Typeface.HYPERLEGIBLE)));
    }
}
