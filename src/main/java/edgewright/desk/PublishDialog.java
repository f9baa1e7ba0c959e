package edgewright.desk;

import edgewright.booklet.Appearance;
import edgewright.booklet.BookletOptions;
import edgewright.booklet.ChartPaper;
import edgewright.booklet.Edition;
import edgewright.booklet.Imprint;
import edgewright.booklet.Paper;
import edgewright.booklet.PrintedTerms;
import edgewright.booklet.Supplements;
import edgewright.booklet.Telling;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.Hand;
import edgewright.chart.Terms;
import java.awt.Window;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;

/** How the printable pattern is to be. A chart that cannot be worked is published as a draft only. */
final class PublishDialog extends FormDialog {
    private final boolean unworkable;
    private final JComboBox<Paper> paper = new JComboBox<>(Paper.values());
    private final JComboBox<Terms> terms = new JComboBox<>(Terms.values());
    private final JComboBox<Counting> counting = new JComboBox<>(Counting.values());
    private final JCheckBox fit = Forms.caption(new JCheckBox(), "publish.fit");
    private final JSpinner cell =
            new JSpinner(new SpinnerNumberModel(5.0, Appearance.SMALLEST_CELL_MM, Appearance.LARGEST_CELL_MM, 0.5));
    private final SizeFields size;
    private final JCheckBox guide = Forms.caption(new JCheckBox(), "publish.guide");
    private final JCheckBox worksheet = Forms.caption(new JCheckBox(), "publish.worksheet");
    private final JCheckBox draft = Forms.caption(new JCheckBox(), "publish.draft");

    /**
     * The dialog for a chart.
     *
     * @param errors how many error findings it has
     */
    PublishDialog(Window owner, Chart chart, View view, int errors) {
        super(owner, "publish");
        unworkable = errors > 0;
        paper.setRenderer(Forms.renderer((Paper each) -> Texts.of("paper." + each.name())));
        field("publish.paper", paper).setSelectedItem(usualPaper());
        terms.setRenderer(Forms.renderer((Terms each) -> Texts.of("terms." + each.name())));
        field("publish.terms", terms).setSelectedItem(chart.terms());
        counting.setRenderer(Forms.renderer((Counting each) -> Texts.of("counting." + each.name())));
        field("publish.counting", counting).setSelectedItem(view.counting());
        fit.setName("publish.fit");
        fit.setSelected(true);
        fit.addActionListener(event -> cell.setEnabled(!fit.isSelected()));
        form().add(fit, "span, gaptop 4");
        cell.setName("publish.cell");
        cell.setEnabled(false);
        form().add(Forms.label("publish.cell", cell), "gapleft 22");
        form().add(cell, "growx 0, wmin 90");
        size = new SizeFields(chart, this, counting);
        for (JCheckBox supplement : List.of(guide, worksheet)) {
            supplement.setName(supplement == guide ? "publish.guide" : "publish.worksheet");
            supplement.setSelected(true);
            form().add(supplement, "span");
        }
        draft.setName("publish.draft");
        if (unworkable) {
            draft.addActionListener(event -> look());
            form().add(draft, "span, gaptop 6");
            explain(Texts.of("publish.unworkable", errors));
        }
    }

    BookletOptions options() {
        return new BookletOptions(
                new Appearance(
                        Edition.STANDARD,
                        (Paper) paper.getSelectedItem(),
                        ChartPaper.SAME,
                        fit.isSelected() ? OptionalDouble.empty() : OptionalDouble.of((Double) cell.getValue())),
                new Telling(
                        PrintedTerms.of((Terms) terms.getSelectedItem()),
                        (Counting) counting.getSelectedItem(),
                        Hand.RIGHT,
                        size.repeats()),
                Imprint.NONE,
                new Supplements(guide.isSelected(), worksheet.isSelected(), true),
                draft.isSelected());
    }

    @Override
    Optional<String> objection() {
        return unworkable && !draft.isSelected() ? Optional.of(Texts.of("publish.objection")) : Optional.empty();
    }

    /** What is sold in the shops where this machine is. */
    private static Paper usualPaper() {
        return Locale.getDefault().getCountry().matches("US|CA") ? Paper.LETTER : Paper.A4;
    }
}
