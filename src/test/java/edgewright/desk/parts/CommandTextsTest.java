package edgewright.desk.parts;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.desk.command.Hindrance;
import edgewright.texts.English;
import edgewright.texts.Messages;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;

/** What each command is called, the keys that do it, and why it is not possible. */
class CommandTextsTest {
    private static final Messages SAYS = English.LANGUAGE.messages("desk/parts");

    @Test
    void everyKeyAndEveryTipIsOfACommand() {
        assertThat(ids("action-"))
                .hasSizeGreaterThan(80)
                .containsAll(ids("key-"))
                .containsAll(ids("tip-"));
    }

    @Test
    void noTwoCommandsHaveTheSameKey() {
        List<KeyStroke> keys = SAYS.keys().stream()
                .filter(key -> key.startsWith("key-"))
                .flatMap(key -> Stream.of(SAYS.text(key).split(", ?")))
                .map(CommandTexts::key)
                .toList();

        assertThat(keys).hasSizeGreaterThan(60).doesNotContainNull().doesNotHaveDuplicates();
    }

    @Test
    void theFirstKeyIsShownAndOneThatIsOnlyElsewhereOnTheKeyboardIsNot() {
        CommandTexts texts = new CommandTexts(English.LANGUAGE);

        assertThat(texts.keyNames("redo")).containsExactly("Ctrl+Shift+Z", "Ctrl+Y");
        assertThat(texts.keyNames("go.left")).containsExactly("Left");
        assertThat(texts.keyNames("evenOut")).isEmpty();
    }

    @Test
    void everyHindranceHasItsSentence() {
        CommandTexts texts = new CommandTexts(English.LANGUAGE);
        assertThat(Stream.of(Hindrance.values()).map(texts::why)).allMatch(sentence -> sentence.endsWith("."));
    }

    private static Set<String> ids(String beginning) {
        return SAYS.keys().stream()
                .filter(key -> key.startsWith(beginning))
                .map(key -> key.substring(beginning.length()))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
