package edgewright.desk.parts;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.KeyStroke;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyNamesTest {
    @ParameterizedTest
    @CsvSource({"ctrl EQUALS, Ctrl+=", "ctrl MINUS, Ctrl+-", "ctrl shift S, Ctrl+Shift+S", "F4, F4"})
    void aKeyIsCalledWhatStandsOnIt(String key, String name) {
        assertThat(KeyNames.of(KeyStroke.getKeyStroke(key))).isEqualTo(name);
    }
}
