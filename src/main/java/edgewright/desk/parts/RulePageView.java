package edgewright.desk.parts;

import edgewright.chart.Chart;
import edgewright.check.RulePage;
import edgewright.texts.Language;
import edgewright.texts.Messages;

/** A page of the rule book: the law, why hands cannot do it, the smallest chart that breaks it and the nearest that does not. */
public final class RulePageView {
    private RulePageView() {}

    /** Adds the page at the end of a column. */
    public static void addTo(TextColumn column, RulePage page, Language language) {
        Messages says = language.messages("desk/parts");
        column.heading(page.title());
        column.prose(page.law());
        column.heading(says.text("page-why"));
        column.prose(page.why());
        addPicture(column, says.text("page-failing-" + page.severity()), page.failing(), language);
        addPicture(column, says.text("page-passing-" + page.severity()), page.passing(), language);
        column.heading(says.text("page-source"));
        column.prose(page.source());
    }

    private static void addPicture(TextColumn column, String caption, Chart chart, Language language) {
        column.heading(caption);
        column.add(new LittlePicture(chart, caption, language));
    }
}
