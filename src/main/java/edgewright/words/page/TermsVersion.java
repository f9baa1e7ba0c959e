package edgewright.words.page;

import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.words.terms.TradeTerms;
import java.util.List;
import java.util.Locale;

/**
 * A pattern in one of the terms. Printed together with another version of the same chart, what has no terms in it stands once,
 * outside both, and the rest of each below its own heading.
 *
 * @param language the language of the words
 * @param terms those that the words are in
 */
public record TermsVersion(Language language, Terms terms, PatternText words) {
    /** Its heading where there are several. */
    String name() {
        return TradeTerms.of(language, terms).name();
    }

    /** The language of its words, as in https://www.rfc-editor.org/info/bcp47. */
    String tag() {
        return TradeTerms.of(language, terms).tag();
    }

    /** What ids begin with that belong to it where there are several. */
    String id() {
        return terms.name().toLowerCase(Locale.ROOT);
    }

    /** What heads it: title, designer, whether it is a draft. */
    PatternPart heading() {
        return words.parts().get(0);
    }

    /** All that follows the heading. */
    List<PatternPart> body() {
        return words.parts().subList(1, words.parts().size());
    }
}
