package edgewright.desk.parts;

import edgewright.chart.Chart;
import edgewright.check.RulePage;
import edgewright.desk.work.DeskTexts;
import edgewright.texts.Language;

/** A page of the rule book: the law, why hands cannot do it, the smallest chart that breaks it and the nearest that does not. */
public final class RulePageView {
    private RulePageView() {}

    /** Adds the page at the end of a column. */
    public static void addTo(TextColumn column, RulePage page, Language language) {
        column.heading(page.title());
        column.prose(page.law());
        column.heading(DeskTexts.of("page.why"));
        column.prose(page.why());
        addPicture(column, "page.failing." + page.severity(), page.failing(), language);
        addPicture(column, "page.passing." + page.severity(), page.passing(), language);
        column.heading(DeskTexts.of("page.source"));
        column.prose(page.source());
    }

    private static void addPicture(TextColumn column, String caption, Chart chart, Language language) {
        column.heading(DeskTexts.of(caption));
        column.add(new LittlePicture(chart, DeskTexts.of(caption), language));
    }
}
