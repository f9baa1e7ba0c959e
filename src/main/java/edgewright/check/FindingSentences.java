package edgewright.check;

import edgewright.chart.CornerEnd;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.Yarn;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** Says findings, remedies and places in words, from the bundle {@code edgewright/check/sentences}. */
public final class FindingSentences {
    private final Locale locale;
    private final ResourceBundle bundle;

    private FindingSentences(Locale locale, ResourceBundle bundle) {
        this.locale = locale;
        this.bundle = bundle;
    }

    /** The sentences in the language of that locale, or in English if there is none. */
    public static FindingSentences in(Locale locale) {
        return new FindingSentences(
                locale,
                ResourceBundle.getBundle(
                        "edgewright.check.sentences",
                        locale,
                        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)));
    }

    /** The sentences in English. */
    public static FindingSentences english() {
        return in(Locale.ENGLISH);
    }

    /** One sentence: what is wrong and why hands cannot do it. It does not say where; see {@link #of(FindingPlace)}. */
    public String of(Finding finding) {
        return finding.violation().accept(new ViolationSentences(this));
    }

    /** What the remedy does and how much of the fabric then looks otherwise, without a full stop. */
    public String of(Remedy remedy) {
        return text("remedy", action(remedy), remedy.changedCells());
    }

    /** What the remedy does alone, as in the name of an edit, without a full stop. */
    public String action(Remedy remedy) {
        return remedy.edit().accept(new RemedySentences(this));
    }

    /** Where a finding is, with a capital letter and without a full stop. */
    public String of(FindingPlace place) {
        return place.accept(new FindingPlace.Visitor<String>() {
            @Override
            public String stitch(Place stitch) {
                return text("where.stitch", stitch.round(), of(stitch.section()), stitch.place());
            }

            @Override
            public String section(int round, Section section) {
                return text("where.section", round, of(section));
            }

            @Override
            public String round(int round) {
                return text("where.round", round);
            }

            @Override
            public String side(Side side) {
                return text("where.side", bundle.getString("side." + side));
            }
        });
    }

    /** The name of a rule, as a heading. */
    public String title(String rule) {
        return text("title." + rule);
    }

    String of(CornerEnd corner) {
        return bundle.getString("corner." + corner);
    }

    String of(Yarn yarn) {
        return text("yarn", yarn.name(), yarn.id());
    }

    /** A text with numbers and words in its gaps. */
    String text(String key, Object... numbersAndWords) {
        return new MessageFormat(bundle.getString(key), locale).format(numbersAndWords);
    }

    private String of(Section section) {
        return bundle.getString("section." + section);
    }
}
