package edgewright.words.terms;

import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.texts.Bundle;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Sentences and words from a resource bundle. A text may hold {0}, {1} and so on, which are filled in as they are: numbers
 * get no separators, and an apostrophe is an apostrophe.
 */
public final class Phrasebook {
    /** A blank at which no line is broken. */
    public static final char NO_BREAK = '\u00a0';

    private static final Map<String, Phrasebook> BUNDLES = new ConcurrentHashMap<>();

    private final Bundle bundle;
    private final Map<String, List<String>> lists = new ConcurrentHashMap<>();

    private Phrasebook(String name) {
        bundle = Bundle.of("edgewright.words." + name);
    }

    /** The sentences of a written pattern. */
    public static Phrasebook ofPattern() {
        return named("pattern");
    }

    /** The words that the reader understands, and what it says about others. */
    public static Phrasebook ofReader() {
        return named("reader");
    }

    /** The words of the trade in these terms. */
    public static Phrasebook of(Terms terms) {
        return named("terms_" + terms);
    }

    private static Phrasebook named(String name) {
        return BUNDLES.computeIfAbsent(name, Phrasebook::new);
    }

    /**
     * The text of this name with its gaps filled. A tilde in the resource is a blank at which no line is broken, in the text
     * a no-break space.
     */
    public String text(String key, Object... values) {
        String text = bundle.raw(key).replace('~', NO_BREAK);
        return values.length == 0 ? text : Bundle.filled(text, values);
    }

    /** The text of this name for one, or the one for more; {0} is the number and is filled first. */
    public String counted(String key, int number) {
        return text(key + (number == 1 ? ".one" : ".more"), number);
    }

    /** What a stitch is called, or what is said of it, where the texts have a word for each stitch. */
    public String of(Stitch stitch, String what) {
        return text(stitchKey(stitch) + "." + what);
    }

    /** A list of words that are parted by bars in the resource. */
    public List<String> words(String key) {
        return lists.computeIfAbsent(key, k -> List.of(bundle.raw(k).split("\\s*\\|\\s*")));
    }

    /** How the resources name a stitch. */
    public static String stitchKey(Stitch stitch) {
        return switch (stitch) {
            case BACK_LOOP -> "backLoop";
            case PLAIN -> "plain";
            case LONG -> "long";
            case CHAIN -> "chain";
        };
    }
}
