package edgewright.desk.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The desk speaks its own language, whatever Java itself speaks on this machine. */
class LocaleWindowTest {
    @ParameterizedTest
    @ValueSource(strings = {"fr", "ja", "de"})
    void keysColoursAndNumbersAreTheSameInEveryLanguageOfJava(String language) throws Exception {
        assertThat(shownIn(language)).isEqualTo(shownIn("en"));
    }

    @Test
    void theChooserOfColoursHasThePanelOfHues() throws Exception {
        assertThat(shownIn("fr").lines().filter(line -> line.startsWith("panel")))
                .containsExactly("panel HSV");
    }

    private static String shownIn(String language) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Duser.language=" + language,
                        "-Dsun.stdout.encoding=UTF-8",
                        "-cp",
                        System.getProperty("java.class.path"),
                        LocaleProbe.class.getName())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }
}
