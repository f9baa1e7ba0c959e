package edgewright.words.read;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.words.terms.Phrasebook;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All words that can stand in the rounds of a pattern in these terms. */
final class Vocabulary {
    private static final Map<Terms, Vocabulary> ALL = new ConcurrentHashMap<>();

    private final Phrasebook texts = Phrasebook.ofReader();
    private final Phrasebook trade;
    private final Map<Stitch, Spellings> stitches = new EnumMap<>(Stitch.class);
    private final Map<Stitch, Spellings> together = new EnumMap<>(Stitch.class);
    private final Spellings tall;
    private final Spellings slip;
    private final Spellings miss;
    private final Map<String, Spellings> phrases = new ConcurrentHashMap<>();
    private final List<String> numbers = texts.words("number.words");

    private Vocabulary(Terms terms) {
        trade = Phrasebook.of(terms);
        for (Stitch stitch : Stitch.values()) {
            stitches.put(stitch, Spellings.of(trade.words(Phrasebook.stitchKey(stitch) + ".read").stream()));
        }
        for (Stitch stitch : Stitch.inStitchBelow()) {
            together.put(stitch, Spellings.of(trade.words(Phrasebook.stitchKey(stitch) + ".togetherRead").stream()));
        }
        tall = Spellings.of(trade.words("tall.read").stream());
        slip = Spellings.of(trade.words("slip.read").stream());
        miss = Spellings.of(Stream.of(missed()));
    }

    static Vocabulary of(Terms terms) {
        return ALL.computeIfAbsent(terms, Vocabulary::new);
    }

    /** The spellings under this key in the reader's own words. */
    Spellings phrases(String key) {
        return phrases.computeIfAbsent(key, k -> Spellings.of(texts.words(k).stream()));
    }

    Spellings stitch(Stitch stitch) {
        return stitches.get(stitch);
    }

    /** Two of these stitches worked together; only two that are worked into the stitch below can be. */
    Spellings together(Stitch stitch) {
        return together.getOrDefault(stitch, new Spellings(List.of()));
    }

    /** The tall stitch of a back layer. */
    Spellings tall() {
        return tall;
    }

    String tallName() {
        return trade.text("tall.short");
    }

    /** The slip stitch that joins two layers. */
    Spellings slip() {
        return slip;
    }

    String slipName() {
        return trade.text("slip.short");
    }

    Spellings miss() {
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
