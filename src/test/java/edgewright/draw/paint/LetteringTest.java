package edgewright.draw.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.draw.paint.Shape.Weight;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class LetteringTest {

    @Test
    void the_width_grows_with_the_size() {
        assertThat(Lettering.widthMm("base", Weight.REGULAR, 3))
                .isCloseTo(3 * Lettering.widthMm("base", Weight.REGULAR, 1), within(1e-9));
        assertThat(Lettering.widthMm("", Weight.BOLD, 3)).isZero();
    }

    @Test
    void the_first_face_has_every_character_of_the_words_in_pictures() throws IOException {
        List<String> words = Files.readAllLines(Path.of("src/main/resources/edgewright/language/en/draw.ftl"));
        assertThat(words)
                .hasSizeGreaterThan(20)
                .allSatisfy(line -> assertThat(FontStack.runs(line))
                        .allSatisfy(run -> assertThat(run.typeface()).isEqualTo(Typeface.HYPERLEGIBLE)));
    }
}
