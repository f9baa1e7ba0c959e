package edgewright.words;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All words that can stand in the rounds of a pattern in these terms. */
final class Vocabulary {
    private static final Map<Terms, Vocabulary> ALL = new ConcurrentHashMap<>();

    private final Texts texts = Texts.ofReader();
    private final Texts trade;
    private final Map<Stitch, Phrases> stitches = new EnumMap<>(Stitch.class);
    private final Map<Stitch, Phrases> together = new EnumMap<>(Stitch.class);
    private final Phrases tall;
    private final Phrases slip;
    private final Phrases miss;
    private final Map<String, Phrases> phrases = new ConcurrentHashMap<>();
    private final List<String> numbers = texts.words("number.words");

    private Vocabulary(Terms terms) {
        trade = Texts.of(terms);
        for (Stitch stitch : Stitch.values()) {
            stitches.put(stitch, Phrases.of(trade.words(Texts.stitchKey(stitch) + ".read").stream()));
        }
        for (Stitch stitch : List.of(Stitch.BACK_LOOP, Stitch.PLAIN)) {
            together.put(stitch, Phrases.of(trade.words(Texts.stitchKey(stitch) + ".togetherRead").stream()));
        }
        tall = Phrases.of(trade.words("tall.read").stream());
        slip = Phrases.of(trade.words("slip.read").stream());
        miss = Phrases.of(Stream.of(missed()));
    }

    static Vocabulary of(Terms terms) {
        return ALL.computeIfAbsent(terms, Vocabulary::new);
    }

    /** The spellings under this key in the reader's own words. */
    Phrases phrases(String key) {
        return phrases.computeIfAbsent(key, k -> Phrases.of(texts.words(k).stream()));
    }

    Phrases stitch(Stitch stitch) {
        return stitches.get(stitch);
    }

    /** Two of these stitches worked together; only two that are worked into the stitch below can be. */
    Phrases together(Stitch stitch) {
        return together.getOrDefault(stitch, new Phrases(List.of()));
    }

    /** The tall stitch of a back layer. */
    Phrases tall() {
        return tall;
    }

    String tallName() {
        return trade.text("tall.short");
    }

    /** The slip stitch that joins two layers. */
    Phrases slip() {
        return slip;
    }

    String slipName() {
        return trade.text("slip.short");
    }

    Phrases miss() {
        return miss;
    }

    /** The word for leaving a stitch out. */
    String missed() {
        return trade.text("miss.short");
    }

    /** What this stitch is called. */
    String name(Stitch stitch) {
        return trade.of(stitch, "short");
    }

    /** All stitches by name, for a message. */
    String allStitches() {
        return Stream.of(Stitch.values()).map(this::name).collect(Collectors.joining(", "));
    }

    /** What a side is called. */
    String edge(Side side) {
        return texts.words("edge." + side).get(0);
    }

    String terms() {
        return trade.text("terms");
    }

    /** The number that a token stands for: digits, or a word to twelve. Negative if it is no number, or one too long. */
    int number(Token token) {
        if (token.kind() == Token.Kind.NUMBER) {
            String digits = token.text().replaceFirst("^0+(?=.)", "");
            return digits.length() > 9 ? -1 : Integer.parseInt(digits);
        }
        int place = numbers.indexOf(token.lower());
        return place < 0 ? -1 : place + 1;
    }

    String expected(String what, Object... values) {
        return texts.text("expected." + what, values);
    }
}
