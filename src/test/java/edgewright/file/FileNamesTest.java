package edgewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileNamesTest {
    @ParameterizedTest
    @CsvSource({
        "Reed Bank, reed-bank",
        "con, con-chart",
        "NUL, nul-chart",
        "Aux., aux-chart",
        "COM1, com1-chart",
        "Conch, conch",
        "Reed Bank..., reed-bank",
        "-Reed-, reed",
    })
    void aNameIsOneThatAnySystemTakes(String title, String name) {
        assertThat(FileNames.of(title)).contains(name);
    }

    @Test
    void accentsStayOnTheirLetters() {
        assertThat(FileNames.of("Ba\u0308ke & Re\u0301ed")).contains("b\u00e4ke-r\u00e9ed");
        // Vowel signs of Devanagari are marks that go together with no letter.
        assertThat(FileNames.of("\u0915\u093f\u0928\u093e\u0930\u093e"))
                .contains("\u0915\u093f\u0928\u093e\u0930\u093e");
    }

    @Test
    void aLongTitleEndsBehindAWholeWord() {
        assertThat(FileNames.of("reed bank ".repeat(40)))
                .hasValueSatisfying(name -> assertThat(name)
                        .hasSizeBetween(FileNames.MOST_BYTES - 10, FileNames.MOST_BYTES)
                        .matches("(reed-bank-)*reed(-bank)?"));
        assertThat(FileNames.of("\u7de8".repeat(300))).contains("\u7de8".repeat(FileNames.MOST_BYTES / 3));
    }

    @Test
    void aTitleWithoutLettersGivesNoName() {
        assertThat(FileNames.of(" ?*/\u0000. ")).isEmpty();
    }

    @Test
    void anyTitleAtAllGivesANameThatEverySystemTakesOrNone() {
        Random random = new Random(37);
        String odd = "conauxnulprn.. /\\:*?\"<>|\t\n\u0000\u009b\u202e\u0301\u00e4\u0130\u7de8\ud83e\uddf6-_com1lpt9";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder title = new StringBuilder();
            for (int n = random.nextInt(random.nextInt(10) == 0 ? 400 : 8); n > 0; n--) {
                title.append(
                        random.nextInt(8) == 0
                                ? String.valueOf((char) random.nextInt(0x10000))
                                : String.valueOf(odd.charAt(random.nextInt(odd.length()))));
            }
            Optional<String> name = FileNames.of(title.toString());
            name.ifPresent(it -> {
                assertThat(it).matches("[\\p{L}\\p{M}\\p{Nd}]+(-[\\p{L}\\p{M}\\p{Nd}]+)*");
                assertThat(it).doesNotMatch("con|prn|aux|nul|com\\d|lpt\\d");
                assertThat(it.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(FileNames.MOST_BYTES);
                assertThat(FileNames.of(it)).contains(it);
            });
        }
    }
}
