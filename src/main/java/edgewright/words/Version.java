package edgewright.words;

import edgewright.chart.Terms;
import java.util.List;
import java.util.Locale;

/**
 * A pattern in one of the terms. Printed together with another version of the same chart, the title and what else heads the
 * first one head both; each is complete below its own heading.
 *
 * @param terms those that the words are in
 */
public record Version(Terms terms, WrittenPattern words) {
    /** Its heading where there are several. */
    String name() {
        return Texts.of(terms).text("terms");
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
    Part heading() {
        return words.parts().get(0);
    }

    /** All that follows the heading. */
    List<Part> body() {
        return words.parts().subList(1, words.parts().size());
    }
}
