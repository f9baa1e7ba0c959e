package edgewright.desk.dialogs;

import edgewright.chart.Chart;
import edgewright.chart.Corner;
import edgewright.chart.Rules;
import edgewright.chart.Terms;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.work.DeskTexts;
import java.awt.Window;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.JTextField;

/** What goes for the whole chart: title, designer, notes, terms, the corner, and what the designer allows. */
public final class PropertiesDialog extends FormDialog {
    private final Chart before;
    private final JTextField title = new JTextField(28);
    private final JTextField designer = new JTextField(28);
    private final JTextArea notes = new JTextArea(4, 28);
    private final JComboBox<Terms> terms = new JComboBox<>(Terms.values());
    private final JSpinner chains;
    private final JCheckBox landOnCorner = Forms.caption(new JCheckBox(), "properties.landOnCornerChain");
    private final JCheckBox stack = Forms.caption(new JCheckBox(), "properties.stackLongStitches");
    private final JSpinner looseRun;

    public PropertiesDialog(Window owner, Chart before) {
        super(owner, "properties");
        this.before = before;
        field("properties.chartTitle", title).setText(before.title());
        field("properties.designer", designer).setText(before.designer());
        notes.setText(before.notes());
        notes.setName("properties.notes");
        notes.setLineWrap(true);
        notes.setWrapStyleWord(true);
        Forms.tabLeaves(notes);
        form().add(Forms.label("properties.notes", notes), "top");
        form().add(new JScrollPane(notes), "growy, pushy, hmin 84");
        terms.setRenderer(Forms.renderer((Terms each) -> DeskTexts.of("terms." + each.name())));
        field("properties.terms", terms).setSelectedItem(before.terms());
        chains = number("properties.chains", before.corner().chains(), 1, Corner.MOST_CHAINS);
        form().add(Look.heading(DeskTexts.of("properties.rules")), "span, gaptop 6");
        landOnCorner.setName("properties.landOnCornerChain");
        landOnCorner.setSelected(before.rules().landOnCornerChain());
        form().add(landOnCorner, "span");
        stack.setName("properties.stackLongStitches");
        stack.setSelected(before.rules().stackLongStitches());
        form().add(stack, "span");
        looseRun = number("properties.looseRun", before.rules().looseRun(), 1, 9_999);
    }

    /** The chart with what the form says. */
    public Chart appliedTo(Chart chart) {
        Rules rules = chart.rules()
                .withLandOnCornerChain(landOnCorner.isSelected())
                .withStackLongStitches(stack.isSelected())
                .withLooseRun(value(looseRun));
        return chart.withTitle(title.getText().strip())
                .withDesigner(designer.getText().strip())
                .withNotes(
                        notes.getText().equals(before.notes())
                                ? before.notes()
                                : notes.getText().strip())
                .withTerms((Terms) terms.getSelectedItem())
                .withCorner(chart.corner().withChains(value(chains)))
                .withRules(rules);
    }

    @Override
    protected Optional<String> objection() {
        return title.getText().isBlank() ? Optional.of(DeskTexts.of("newChart.objection.title")) : Optional.empty();
    }
}
