package edgewright.words.terms;

import edgewright.chart.Stitch;
import edgewright.chart.Terms;

/** What the stitches are called in UK or US terms. */
public final class TradeTerms {
    private final Phrasebook texts;

    private TradeTerms(Terms terms) {
        texts = Phrasebook.of(terms);
    }

    /** The words of these terms. */
    public static TradeTerms of(Terms terms) {
        return new TradeTerms(terms);
    }

    /** The terms named as a pattern names them at its head. */
    public String name() {
        return texts.text("terms");
    }

    /** The abbreviation of a stitch, as it stands in the rounds. */
    public String abbreviation(Stitch stitch) {
        return texts.of(stitch, "short");
    }

    /** The stitch in full words, and how it is worked. */
    public String meaning(Stitch stitch) {
        return texts.of(stitch, "meaning");
    }
}
