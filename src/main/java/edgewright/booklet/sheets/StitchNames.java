package edgewright.booklet.sheets;

import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.words.terms.TradeTerms;
import java.util.List;
import java.util.stream.Collectors;

/** What stitches are called in the key of a chart: as in the words beside it. */
public final class StitchNames {
    private StitchNames() {}

    /** The abbreviation of a stitch, in each of the terms if they differ. */
    public static String of(Stitch stitch, List<Terms> terms, Language language) {
        return terms.stream()
                .map(each -> TradeTerms.of(language, each).abbreviation(stitch))
                .distinct()
                .collect(Collectors.joining(" / "));
    }
}
