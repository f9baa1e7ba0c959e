package edgewright.desk.parts;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.desk.work.DeskTexts;
import java.util.ResourceBundle;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyNamesTest {
    @ParameterizedTest
    @CsvSource({"ctrl EQUALS, Ctrl+=", "ctrl MINUS, Ctrl+-", "ctrl shift S, Ctrl+Shift+S", "F4, F4"})
    void aKeyIsCalledWhatStandsOnIt(String key, String name) {
        assertThat(KeyNames.of(KeyStroke.getKeyStroke(key))).isEqualTo(name);
    }

    @Test
    void everyKeyOfTheDeskHasANameUnlessItIsCalledWhatItIs() {
        ResourceBundle texts = ResourceBundle.getBundle("edgewright.desk.texts");
        assertThat(texts.keySet().stream()
                        .filter(key -> key.matches("action\\..*\\.key"))
                        .map(key -> KeyNames.code(DeskAction.key(texts.getString(key))))
                        .filter(code -> !code.matches("[A-Z0-9]|F[0-9]+") && !DeskTexts.has("keyName." + code)))
                .isEmpty();
    }
}
