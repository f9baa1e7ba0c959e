package edgewright.texts;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * A language in which the program speaks: its messages, its numbers, its plurals and how it joins a list. It is made once, by
 * whoever starts the program, and handed down; nothing asks the machine for a language.
 *
 * <p>A language is a folder of resources, {@code edgewright/language/<tag>}. Its file {@code language.ftl} says what holds
 * everywhere; each other file is a bundle of messages, by the name of the package that speaks them. What differs between
 * dialects stands in a folder of the dialect, so the bundle {@code uk/terms} is the terms of the United Kingdom.
 *
 * <p>Immutable to those who use it, and safe for any thread.
 */
public final class Language {
    /** A blank at which no line is broken; a tilde in the files of messages. */
    public static final char NO_BREAK = '\u00a0';

    private static final Pattern TAG = Pattern.compile("[A-Za-z0-9]+(-[A-Za-z0-9]+)*");

    private final String tag;
    private final Respelling respelling;
    private final Messages own;
    private final NumberRule numbers;
    private final PluralRule plurals;
    private final Map<String, Messages> bundles = new ConcurrentHashMap<>();
    private final Map<Class<?>, Object> made = new ConcurrentHashMap<>();
    private final Language plain;
    private final Map<String, Language> dialects = new ConcurrentHashMap<>();

    /** The language as its files spell it. */
    private Language(String tag) {
        this(tag, Respelling.NONE, null);
    }

    private Language(String tag, Respelling respelling, Language plain) {
        this.tag = tag;
        this.respelling = respelling;
        this.plain = plain == null ? this : plain;
        this.own = Messages.read(this, "language");
        this.numbers = new NumberRule(
                own.text("decimal-sign"), own.text("group-sign"), Integer.parseInt(own.text("group-from-digits")));
        this.plurals = PluralRule.of(own);
    }

    /**
     * The language of that folder.
     *
     * @param tag as in BCP 47, such as {@code en}
     * @throws IllegalArgumentException if the program has no such language, or its own file has a mistake
     */
    public static Language of(String tag) {
        if (!TAG.matcher(tag).matches()) {
            throw new IllegalArgumentException("no tag of a language: " + tag);
        }
        return new Language(tag);
    }

    /**
     * This language with its everyday words spelled as they are where a dialect of its trade is spoken: {@code color} beside US
     * terms. The same language where the dialect has no spelling of its own.
     *
     * @param dialect as its file of the language calls it, such as {@code US}
     */
    public Language spelledAs(String dialect) {
        return plain.dialects.computeIfAbsent(dialect, plain::spelled);
    }

    private Language spelled(String dialect) {
        String bundle = dialect.toLowerCase(Locale.ROOT) + "/spelling";
        return Messages.exists(this, bundle)
                ? new Language(tag, Respelling.of(messages(bundle).text("respelled")), this)
                : this;
    }

    Respelling respelling() {
        return respelling;
    }

    /** The tag of BCP 47. */
    public String tag() {
        return tag;
    }

    /**
     * The tag of BCP 47 of words in one of the dialects of this language.
     *
     * @param dialect as its file of the language calls it, such as {@code UK}
     * @throws IllegalArgumentException if the language has no such dialect
     */
    public String dialectTag(String dialect) {
        return own.text("dialect-" + dialect);
    }

    /**
     * The messages of one bundle. The file is read when it is first asked for, and kept.
     *
     * @param bundle such as {@code yarn}, or with the folder of a dialect {@code uk/terms}
     * @throws IllegalArgumentException if there is no such file, or it has a mistake
     */
    public Messages messages(String bundle) {
        return bundles.computeIfAbsent(bundle, name -> Messages.read(this, name));
    }

    /**
     * What somebody makes of this language once and uses ever after, such as messages taken apart for a reader.
     *
     * @param kind its class, of which a language keeps one
     * @param make called when it is first asked for
     */
    public <T> T kept(Class<T> kind, Function<Language, T> make) {
        Object known = made.get(kind);
        if (known == null) {
            made.putIfAbsent(kind, make.apply(this));
            known = made.get(kind);
        }
        return kind.cast(known);
    }

    /** An amount, grouped as this language groups digits. What only names a thing, such as a round, is not grouped. */
    public String count(long amount) {
        return numbers.count(amount);
    }

    /** A number with that many digits after its decimal sign, rounded half up; its whole part is not grouped. */
    public String decimal(double number, int digits) {
        return numbers.decimal(number, digits);
    }

    /** A number with no more digits after its decimal sign than it needs, and with that many at most. */
    public String shortest(double number, int mostDigits) {
        return numbers.shortest(number, mostDigits);
    }

    /** What stands before the fraction of a number. */
    public String decimalSign() {
        return own.text("decimal-sign");
    }

    /** The plural category of an amount, as CLDR names it: {@code one}, {@code few}, {@code other} and so on. */
    String plural(long amount) {
        return plurals.of(amount);
    }

    /** 'a, b and c'; empty for none. */
    public String and(List<?> parts) {
        return joined(parts, "list-and");
    }

    /** 'a, b or c'; empty for none. */
    public String or(List<?> parts) {
        return joined(parts, "list-or");
    }

    /** 'a, b, c'; empty for none. */
    public String commas(List<?> parts) {
        return joined(parts, "list-next");
    }

    /** The parts as a list whose last one is joined by that message. */
    String joined(List<?> parts, String lastJoin) {
        if (parts.isEmpty()) {
            return "";
        }
        String list = String.valueOf(parts.get(0));
        for (int i = 1; i < parts.size(); i++) {
            String join = i == parts.size() - 1 ? lastJoin : "list-next";
            list = own.text(join, Arg.arg("list", list), Arg.arg("next", String.valueOf(parts.get(i))));
        }
        return list;
    }

    /** The text in the marks of a quotation. */
    public String quoted(String text) {
        return own.text("quotation", Arg.arg("text", text));
    }

    /** The text with a capital at its beginning. */
    public String capital(String text) {
        if (text.isEmpty()) {
            return text;
        }
        int first = text.offsetByCodePoints(0, 1);
        return text.substring(0, first).toUpperCase(Locale.forLanguageTag(tag)) + text.substring(first);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Language language && tag.equals(language.tag) && respelling.equals(language.respelling);
    }

    @Override
    public int hashCode() {
        return tag.hashCode();
    }

    @Override
    public String toString() {
        return tag;
    }
}
