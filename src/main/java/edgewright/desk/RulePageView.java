package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.check.RulePage;

/** A page of the rule book: the law, why hands cannot do it, the smallest chart that breaks it and the nearest that does not. */
final class RulePageView {
    private RulePageView() {}

    /** Adds the page at the end of a column. */
    static void addTo(Column column, RulePage page) {
        column.heading(page.title());
        column.prose(page.law());
        column.heading(Texts.of("page.why"));
        column.prose(page.why());
        addPicture(column, "page.failing." + page.severity(), page.failing());
        addPicture(column, "page.passing." + page.severity(), page.passing());
        column.heading(Texts.of("page.source"));
        column.prose(page.source());
    }

    private static void addPicture(Column column, String caption, Chart chart) {
        column.heading(Texts.of(caption));
        column.add(new LittlePicture(chart, Texts.of(caption)));
    }
}
