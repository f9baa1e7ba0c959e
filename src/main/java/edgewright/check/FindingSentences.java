package edgewright.check;

import edgewright.chart.Colour;
import edgewright.chart.CornerEnd;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.Yarn;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
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

    /** One sentence: what is wrong and why hands cannot do it. It does not say where; see {@link #of(Where)}. */
    public String of(Finding finding) {
        return sentence("rule." + finding.rule(), finding.values());
    }

    /** What the remedy does, as on a button, without a full stop. */
    public String of(Remedy remedy) {
        return sentence("remedy." + remedy.id(), remedy.values());
    }

    /** Where a finding is, with a capital letter and without a full stop. */
    public String of(FindingPlace where) {
        if (where.stitch().isPresent()) {
            Place place = where.stitch().get();
            return sentence("where.stitch", List.of(place.round(), place.section(), place.place()));
        }
        if (where.section().isPresent()) {
            return sentence(
                    "where.section",
                    List.of(where.round().orElseThrow(), where.section().get()));
        }
        if (where.round().isPresent()) {
            return sentence("where.round", List.of(where.round().getAsInt()));
        }
        return where.side()
                .map(side -> sentence("where.side", List.of(side)))
                .orElseGet(() -> sentence("where.chart", List.of()));
    }

    /** The name of a rule, as a heading. */
    public String title(String rule) {
        return sentence("title." + rule, List.of());
    }

    private String sentence(String key, List<Object> values) {
        Object[] said = values.stream().map(this::said).toArray();
        return new MessageFormat(bundle.getString(key), locale).format(said);
    }

    /** A value as the sentences take it: a number, or the words for anything else. */
    private Object said(Object value) {
        if (value instanceof Integer) {
            return value;
        }
        if (value instanceof OptionalInt number) {
            return number.orElse(0);
        }
        if (value instanceof CornerEnd corner) {
            return bundle.getString("corner." + corner);
        }
        if (value instanceof Section section) {
            return bundle.getString("section." + section);
        }
        if (value instanceof Side side) {
            return bundle.getString("side." + side);
        }
        if (value instanceof Yarn yarn) {
            return sentence("yarn", List.of(yarn.name(), yarn.id()));
        }
        if (value instanceof String || value instanceof Colour) {
            return value.toString();
        }
        throw new IllegalArgumentException("no words for " + value);
    }
}
