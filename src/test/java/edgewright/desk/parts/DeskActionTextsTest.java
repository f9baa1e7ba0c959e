package edgewright.desk.parts;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.testing.Sources;
import edgewright.texts.English;
import edgewright.texts.Messages;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What each action of the desk is called, and the keys that do it. The keys of its texts are put together from its id. */
class DeskActionTextsTest {
    private static final Messages SAYS = English.LANGUAGE.messages("desk/parts");

    @Test
    void everyActionOfTheDeskHasItsName() throws IOException {
        assertThat(added()).hasSizeGreaterThan(30);
        assertThat(ids("action-")).containsAll(added());
    }

    /** What the desk adds under an id that it puts together: a stitch, a layer, a way of counting, a tool, a mirror. */
    @Test
    void noTextIsOfAnActionThatTheDeskDoesNotAdd() throws IOException {
        Set<String> more = ids("action-");
        more.removeAll(added());

        assertThat(more).allMatch(id -> id.matches("(choose|layers|counting|tool|mirror)-\\w+"));
    }

    @Test
    void everyKeyAndEveryTipIsOfAnAction() {
        Set<String> actions = ids("action-");

        assertThat(actions)
                .containsAll(ids("key-"))
                .containsAll(ids("also-key-"))
                .containsAll(ids("tip-"));
    }

    @Test
    void noTwoActionsHaveTheSameKey() {
        List<String> keys = SAYS.keys().stream()
                .filter(key -> key.matches("(also-)?key-.*"))
                .map(key -> DeskAction.key(SAYS.text(key)).toString())
                .toList();

        assertThat(keys).hasSizeGreaterThan(30).doesNotHaveDuplicates();
    }

    /** The ids that stand in the sources as they are. */
    private static Set<String> added() throws IOException {
        Pattern added = Pattern.compile("actions\\.add\\(\\s*\"([a-zA-Z]+)\"");
        Set<String> ids = new TreeSet<>();
        for (String source : Sources.of("desk")) {
            Matcher matcher = added.matcher(source);
            while (matcher.find()) {
                ids.add(matcher.group(1));
            }
        }
        return ids;
    }

    private static Set<String> ids(String beginning) {
        return SAYS.keys().stream()
                .filter(key -> key.startsWith(beginning))
                .map(key -> key.substring(beginning.length()))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
