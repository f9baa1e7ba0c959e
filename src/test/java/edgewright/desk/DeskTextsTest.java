package edgewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Section;
import edgewright.desk.parts.DeskAction;
import edgewright.desk.work.ChartCommands;
import edgewright.desk.work.DeskTexts;
import edgewright.testing.Sources;
import java.io.IOException;
import java.io.InputStream;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every text that the desk asks for is there, and every text that is there is asked for. */
class DeskTextsTest {
    private static final Pattern LITERAL = Pattern.compile("\"([A-Za-z][A-Za-z0-9]*(?:\\.[A-Za-z0-9]*)*)\"");

    @Test
    void noTextIsMissing() throws IOException {
        Set<String> keys = texts().stringPropertyNames();
        Pattern asked = Pattern.compile("(?:Texts\\.of|Forms\\.caption|Forms\\.label|field|number|explain|group)\\("
                + "(?:new \\w+\\(\\), )?\\s*\"([a-zA-Z0-9.]*[a-zA-Z0-9])\"(?! *\\+)");
        Set<String> missing = new TreeSet<>();
        for (String source : Sources.of("desk")) {
            Matcher matcher = asked.matcher(source);
            while (matcher.find()) {
                if (!keys.contains(matcher.group(1))) {
                    missing.add(matcher.group(1));
                }
            }
        }

        assertThat(missing).isEmpty();
    }

    @Test
    void noTextIsUnused() throws IOException {
        Set<String> literals = new TreeSet<>();
        for (String source : Sources.of("desk")) {
            Matcher matcher = LITERAL.matcher(source);
            while (matcher.find()) {
                literals.add(matcher.group(1));
            }
        }
        Set<String> unused = new TreeSet<>(texts().stringPropertyNames());
        unused.removeIf(key -> isAskedFor(key, literals));

        assertThat(unused).isEmpty();
    }

    @Test
    void everyActionOfTheDeskHasItsTexts() throws IOException {
        Set<String> keys = texts().stringPropertyNames();
        Pattern added = Pattern.compile("actions\\.add\\(\\s*\"([a-zA-Z]+)\"");
        Set<String> ids = new TreeSet<>();
        for (String source : Sources.of("desk")) {
            Matcher matcher = added.matcher(source);
            while (matcher.find()) {
                ids.add("action." + matcher.group(1));
            }
        }

        assertThat(ids).hasSizeGreaterThan(30);
        assertThat(keys).containsAll(ids);
    }

    @Test
    void noTwoActionsHaveTheSameKey() throws IOException {
        List<String> keys = texts().entrySet().stream()
                .filter(text -> text.getKey().toString().matches("action\\..*\\.(key|alsoKey)"))
                .map(text -> DeskAction.key(text.getValue().toString()).toString())
                .toList();

        assertThat(keys).doesNotHaveDuplicates();
    }

    @Test
    void noTextIsWrittenTwice() throws IOException {
        Set<String> twice = new TreeSet<>();
        Properties texts = new Properties() {
            @Override
            public synchronized Object put(Object key, Object text) {
                Object before = super.put(key, text);
                if (before != null) {
                    twice.add(key.toString());
                }
                return before;
            }
        };
        try (InputStream in = DeskTexts.class.getResourceAsStream("/edgewright/desk/texts.properties")) {
            texts.load(in);
        }

        assertThat(twice).isEmpty();
    }

    @Test
    void everyTextIsAPatternWithItsApostrophesDoubled() throws IOException {
        Properties texts = texts();
        assertThat(texts.stringPropertyNames()).allSatisfy(key -> {
            String text = texts.getProperty(key);
            assertThat(text.replace("''", "")).as(key).doesNotContain("'");
            assertThat(new MessageFormat(text, Locale.ROOT).format(new Object[] {2, 2, 2, 2}))
                    .as(key)
                    .isNotBlank();
        });
    }

    @Test
    void theSectionsHaveNames() {
        assertThat(Stream.of(Section.values()).map(ChartCommands::sectionName))
                .containsExactly("from the corner", "repeat", "to the corner");
    }

    /** A key is asked for as it stands, or by its beginning or end where the rest is put together from an id. */
    private static boolean isAskedFor(String key, Set<String> literals) {
        if (literals.contains(key) || key.matches("action\\..*|canvas\\.key\\..*") || key.endsWith(".tip")) {
            return true;
        }
        for (int dot = key.indexOf('.'); dot >= 0; dot = key.indexOf('.', dot + 1)) {
            String head = key.substring(0, dot + 1);
            String owner = key.substring(0, dot);
            if (literals.contains(head) || (literals.contains(owner) && key.matches(".*\\.(title|accept|text|head)"))) {
                return true;
            }
        }
        return key.matches("help\\.drawing\\.\\d(\\.head)?");
    }

    private static Properties texts() throws IOException {
        Properties texts = new Properties();
        try (InputStream in = DeskTexts.class.getResourceAsStream("/edgewright/desk/texts.properties")) {
            texts.load(in);
        }
        return texts;
    }
}
