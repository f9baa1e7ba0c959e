package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.check.RulePage;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** A page of the rule book: the law, why hands cannot do it, the smallest chart that breaks it and the nearest that does not. */
final class RulePageView extends JPanel {
    RulePageView(RulePage page) {
        super(new MigLayout("insets 0, gap 4, fillx", "[grow, fill]"));
        setOpaque(false);
        add(Look.heading(page.title()), "wrap");
        add(Forms.prose(page.law()), "wmin 0, wrap, gapbottom 4");
        add(Look.heading(Texts.of("page.why")), "wrap");
        add(Forms.prose(page.why()), "wmin 0, wrap, gapbottom 4");
        picture("page.failing", page.failing());
        picture("page.passing", page.passing());
        add(Look.heading(Texts.of("page.source")), "wrap");
        JTextArea source = Forms.prose(page.source());
        add(source, "wmin 0");
    }

    private void picture(String caption, Chart chart) {
        add(Look.heading(Texts.of(caption)), "wrap");
        add(new LittlePicture(chart, Texts.of(caption)), "wrap, gapbottom 6, growx, wmin 0");
    }
}
