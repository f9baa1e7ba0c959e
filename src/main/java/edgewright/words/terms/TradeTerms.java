package edgewright.words.terms;

import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.List;
import java.util.Locale;

/**
 * What the trade calls things in the UK or US terms of a language. Each language has a folder for each of them, {@code uk} and
 * {@code us}, with the words in which they differ.
 */
public final class TradeTerms {
    private final Messages says;

    private TradeTerms(Language language, Terms terms) {
        says = language.messages(terms.name().toLowerCase(Locale.ROOT) + "/terms");
    }

    /** The words of these terms. */
    public static TradeTerms of(Language language, Terms terms) {
        return new TradeTerms(language, terms);
    }

    /** The terms named as a pattern names them at its head. */
    public String name() {
        return says.text("terms");
    }

    /** The tag of the language in these terms, as in https://www.rfc-editor.org/info/bcp47. */
    public String tag() {
        return says.text("tag");
    }

    /** The abbreviation of a stitch, as it stands in the rounds. */
    public String abbreviation(Stitch stitch) {
        return abbreviation(TradeWord.of(stitch));
    }

    /** The abbreviation, as it stands in the rounds. */
    public String abbreviation(TradeWord word) {
        return says.text("short-" + word);
    }

    /** The stitch in full words, and how it is worked. */
    public String meaning(Stitch stitch) {
        return meaning(TradeWord.of(stitch));
    }

    /** The word in full, and how it is done. */
    public String meaning(TradeWord word) {
        return says.text("meaning-" + word);
    }

    /** All spellings that a reader understands. */
    public List<String> spellings(TradeWord word) {
        return Bars.parted(says.text("read-" + word));
    }

    /** The abbreviation for two of these stitches worked together; only of those that are worked into the stitch below. */
    public String together(Stitch stitch) {
        return says.text("together-" + stitch);
    }

    /** How two of these stitches are worked together. */
    public String togetherMeaning(Stitch stitch) {
        return says.text("togetherMeaning-" + stitch);
    }

    /** All spellings of two of these stitches worked together that a reader understands. */
    public List<String> togetherSpellings(Stitch stitch) {
        return Bars.parted(says.text("togetherRead-" + stitch));
    }

    /** The word for how tightly somebody works. */
    public String tension() {
        return says.text("tension");
    }

    /** The plain stitch in full, in which a base round is worked. */
    public String baseStitch() {
        return says.text("baseStitch");
    }
}
