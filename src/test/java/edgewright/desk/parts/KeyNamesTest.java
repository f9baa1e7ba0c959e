package edgewright.desk.parts;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.texts.English;
import edgewright.texts.Messages;
import java.util.stream.Stream;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyNamesTest {
    @ParameterizedTest
    @CsvSource({"ctrl EQUALS, Ctrl+=", "ctrl MINUS, Ctrl+-", "ctrl shift S, Ctrl+Shift+S", "F4, F4"})
    void aKeyIsCalledWhatStandsOnIt(String key, String name) {
        assertThat(new KeyNames(English.LANGUAGE).of(KeyStroke.getKeyStroke(key)))
                .isEqualTo(name);
    }

    @Test
    void everyKeyOfTheDeskHasANameUnlessItIsCalledWhatItIs() {
        Messages says = English.LANGUAGE.messages("desk/parts");
        assertThat(says.keys().stream()
                        .filter(key -> key.startsWith("key-"))
                        .flatMap(key -> Stream.of(says.text(key).split(", ?")))
                        .map(key -> KeyNames.code(CommandTexts.key(key)))
                        .filter(code -> !code.startsWith("KP_"))
                        .filter(code -> !code.matches("[A-Z0-9]|F[0-9]+") && !says.has("keyName-" + code)))
                .isEmpty();
    }
}
