package edgewright.check;

import edgewright.texts.Language;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.regex.Pattern;

/**
 * Every rule with its page. The pages lie in the resources of their language, one text a rule: parts with a name and a colon, as
 * in {@code edgewright/language/en/check/rules/covered-loop.txt}.
 */
public final class RuleBook {
    private static final Pattern PART = Pattern.compile("(law|why|source|fails|passes|changes):.*");

    private final Language language;

    /** The pages in that language. */
    public RuleBook(Language language) {
        this.language = language;
    }

    /** All rules, sorted by id. */
    public static List<RuleEntry> all() {
        return AllRules.BY_ID.stream()
                .map(rule -> new RuleEntry(rule.id(), rule.severity()))
                .toList();
    }

    /**
     * The page of a rule.
     *
     * @throws NoSuchElementException if there is no rule with that id
     */
    public RulePage page(String id) {
        Rule<?> rule = AllRules.BY_ID.stream()
                .filter(candidate -> candidate.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("no rule is called '" + id + "'"));
        Map<String, String> parts = parts(text(id));
        return new RulePage(
                id,
                rule.severity(),
                new FindingSentences(language).title(id),
                part(parts, "law", id),
                part(parts, "why", id),
                part(parts, "source", id),
                Sketch.read(part(parts, "fails", id)),
                Sketch.read(part(parts, "passes", id)),
                Integer.parseInt(part(parts, "changes", id)));
    }

    private String text(String id) {
        String name = "/edgewright/language/" + language.tag() + "/check/rules/" + id + ".txt";
        try (InputStream page = RuleBook.class.getResourceAsStream(name)) {
            if (page == null) {
                throw new IllegalStateException("the rule book has no page " + name);
            }
            return new String(page.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The parts of a page by name; a sketch keeps its blanks at the left, since its marks hang on them. */
    private static Map<String, String> parts(String page) {
        Map<String, String> parts = new LinkedHashMap<>();
        String name = "";
        StringBuilder text = new StringBuilder();
        for (String line : page.lines().toList()) {
            int colon = line.indexOf(':');
            if (PART.matcher(line).matches()) {
                parts.put(name, text.toString());
                name = line.substring(0, colon);
                text = new StringBuilder(line.substring(colon + 1).strip());
            } else {
                text.append(line).append('\n');
            }
        }
        parts.put(name, text.toString());
        return parts;
    }

    private static String part(Map<String, String> parts, String name, String id) {
        String text = parts.getOrDefault(name, "").stripTrailing();
        if (text.isBlank()) {
            throw new IllegalStateException("the page of " + id + " has no part '" + name + "'");
        }
        return text;
    }
}
