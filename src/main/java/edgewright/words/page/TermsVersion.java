package edgewright.words.page;

import edgewright.chart.Terms;
import edgewright.words.terms.Phrasebook;
import java.util.List;
import java.util.Locale;

/**
 * A pattern in one of the terms. Printed together with another version of the same chart, the title and what else heads the
 * first one head both; each is complete below its own heading.
 *
 * @param terms those that the words are in
 */
public record TermsVersion(Terms terms, PatternText words) {
    /** Its heading where there are several. */
    String name() {
        return Phrasebook.of(terms).text("terms");
    }

    /** The language of its words, as in https://www.rfc-editor.org/info/bcp47. */
    String language() {
        return terms == Terms.US ? "en-US" : "en-GB";
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
