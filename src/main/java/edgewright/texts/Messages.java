package edgewright.texts;

import fluent.bundle.FluentResource;
import fluent.syntax.AST.Message;
import fluent.syntax.AST.Pattern;
import fluent.syntax.AST.Term;
import fluent.syntax.parser.FTLParser;
import fluent.syntax.parser.FTLStream;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The messages of one bundle in one language, written in Fluent. A tilde in the file is a blank at which no line is broken.
 *
 * <p>A message without values costs a look into a map. Any other is parsed by the library when it is first wanted, since a
 * command says few of the messages that there are. Immutable to those who use it, and safe for any thread.
 *
 * @see <a href="https://projectfluent.org/fluent/guide/">how messages are written</a>
 */
public final class Messages {
    /** Stand for the two values of a message that joins; no text has them. */
    private static final String FIRST = "\u0001";

    private static final String NEXT = "\u0002";

    private final Language language;
    private final String file;
    private final MessageSources sources;
    private final Map<String, Pattern> parsed = new ConcurrentHashMap<>();

    private Messages(Language language, String file, MessageSources sources) {
        this.language = language;
        this.file = file;
        this.sources = sources;
    }

    static Messages read(Language language, String bundle) {
        String file = file(language, bundle);
        return new Messages(language, file, MessageSources.read(file, language.respelling()));
    }

    /** Whether the language has a file of that name. */
    static boolean exists(Language language, String bundle) {
        return Messages.class.getClassLoader().getResource(file(language, bundle)) != null;
    }

    private static String file(Language language, String bundle) {
        return "edgewright/language/" + language.tag() + "/" + bundle + ".ftl";
    }

    /**
     * The text of a message.
     *
     * @param key a literal, one of two literals, or a literal with the name of a case behind it; so tests can read from the
     *     source which messages are used, and with which values
     * @param values each value that the message names; one more does no harm here, but no test lets it pass
     * @throws IllegalArgumentException if there is no such message, a value that it names is missing, or it has a mistake
     */
    public String text(String key, Arg... values) {
        String plain = sources.plain().get(key);
        return plain == null ? new MessageFilling(this, key, values).text() : plain;
    }

    /**
     * The parts as a list, each joined to those before it by the message of this key, which names {@code $list} and {@code $next};
     * empty for none.
     */
    public String list(String key, List<String> parts) {
        if (parts.size() < 2) {
            return parts.isEmpty() ? "" : parts.get(0);
        }
        String between = between(key);
        if (between != null) {
            return String.join(between, parts);
        }
        String list = parts.get(0);
        for (String next : parts.subList(1, parts.size())) {
            list = text(key, Arg.arg("list", list), Arg.arg("next", next));
        }
        return list;
    }

    /** What stands between the list and what comes next, if the message says nothing before or after them; else null. */
    private String between(String key) {
        String joined = text(key, Arg.arg("list", FIRST), Arg.arg("next", NEXT));
        boolean around = joined.startsWith(FIRST) && joined.endsWith(NEXT) && joined.length() >= 2;
        String between = around ? joined.substring(1, joined.length() - 1) : FIRST;
        return between.contains(FIRST) || between.contains(NEXT) ? null : between;
    }

    /**
     * The ways in which a message can come out, one for each of its variants: what a reader holds a text against.
     *
     * @throws IllegalArgumentException if there is no such message, or it has a mistake
     */
    public List<MessageForm> forms(String key) {
        return MessageForm.of(this, key);
    }

    /** Whether there is a message with this key. */
    public boolean has(String key) {
        return sources.plain().containsKey(key) || sources.others().containsKey(key);
    }

    /** The keys of all messages, without the terms that only other messages use. */
    public Set<String> keys() {
        return sources.keys();
    }

    Language language() {
        return language;
    }

    String file() {
        return file;
    }

    /** What stands in a message, or in a term whose key begins with a hyphen. */
    Pattern pattern(String key) {
        Pattern known = parsed.get(key);
        return known == null ? parsed.computeIfAbsent(key, this::parse) : known;
    }

    private Pattern parse(String key) {
        String source = sources.others().get(key);
        if (source == null && sources.plain().containsKey(key)) {
            source = key + " = " + sources.plain().get(key);
        }
        if (source == null) {
            throw new IllegalArgumentException(file + " has no message " + key);
        }
        FluentResource resource = FTLParser.parse(FTLStream.of(source), true);
        if (!resource.errors().isEmpty()) {
            throw new IllegalArgumentException(
                    file + ", message " + key + ": " + resource.errors().get(0).getMessage());
        }
        return resource.entries().get(0) instanceof Term term
                ? term.value()
                : ((Message) resource.entries().get(0)).pattern().orElseThrow();
    }
}
