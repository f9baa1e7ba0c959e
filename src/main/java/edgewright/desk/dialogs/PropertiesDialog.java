package edgewright.desk.dialogs;

import edgewright.chart.Chart;
import edgewright.chart.Corner;
import edgewright.chart.Rules;
import edgewright.chart.Terms;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.texts.Language;
import edgewright.texts.Messages;
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
    private final transient Messages says;
    private final transient Messages common;
    private final Chart before;
    private final JTextField title = new JTextField(28);
    private final JTextField designer = new JTextField(28);
    private final JTextArea notes = new JTextArea(4, 28);
    private final JComboBox<Terms> terms = new JComboBox<>(Terms.values());
    private final JSpinner chains;
    private final JCheckBox landOnCorner = new JCheckBox();
    private final JCheckBox stack = new JCheckBox();
    private final JSpinner looseRun;

    public PropertiesDialog(Window owner, Chart before, Language language) {
        super(owner, "properties", language);
        says = language.messages("desk/dialogs");
        common = language.messages("desk/common");
        titled(says.text("properties-title"), says.text("properties-accept"));
        this.before = before;
        field("properties.chartTitle", says.text("properties-chartTitle"), title)
                .setText(before.title());
        field("properties.designer", says.text("properties-designer"), designer).setText(before.designer());
        notes();
        terms.setRenderer(Forms.renderer((Terms each) -> common.text("terms-" + each.name())));
        field("properties.terms", says.text("properties-terms"), terms).setSelectedItem(before.terms());
        chains = number(
                "properties.chains",
                says.text("properties-chains"),
                before.corner().chains(),
                1,
                Corner.MOST_CHAINS);
        form().add(Look.heading(says.text("properties-rules")), "span, gaptop 6");
        Forms.caption(landOnCorner, says.text("properties-landOnCornerChain")).setName("properties.landOnCornerChain");
        landOnCorner.setSelected(before.rules().landOnCornerChain());
        form().add(landOnCorner, "span");
        Forms.caption(stack, says.text("properties-stackLongStitches")).setName("properties.stackLongStitches");
        stack.setSelected(before.rules().stackLongStitches());
        form().add(stack, "span");
        looseRun = number(
                "properties.looseRun",
                says.text("properties-looseRun"),
                before.rules().looseRun(),
                1,
                9_999);
    }

    private void notes() {
        notes.setText(before.notes());
        notes.setName("properties.notes");
        notes.setLineWrap(true);
        notes.setWrapStyleWord(true);
        Forms.tabLeaves(notes);
        form().add(Forms.label(says.text("properties-notes"), notes), "top");
        form().add(new JScrollPane(notes), "growy, pushy, hmin 84");
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
        return title.getText().isBlank() ? Optional.of(says.text("newChart-objection-title")) : Optional.empty();
    }
}
