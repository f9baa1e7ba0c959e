package edgewright.desk.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.texts.English;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A chart that was never saved is offered a file with the name of its title. */
class FileNamesTest {
    @ParameterizedTest
    @CsvSource({
        "Reed Bank, reed-bank",
        "'First Try, Unfinished', first-try-unfinished",
        "Bäke & Priel, bäke-priel",
        "../../etc, etc",
        "'   ', border",
        "???, border",
    })
    void theFileIsNamedAfterTheTitle(String title, String name) {
        assertThat(FileCommands.fileName(title, English.LANGUAGE)).isEqualTo(name);
    }
}
