package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import java.awt.Window;
import java.util.Optional;
import javax.swing.JTextField;

/** Adds a yarn or changes one: its letter, name and colour. */
final class YarnDialog extends FormDialog {
    private final Chart chart;
    private final Yarn before;
    private final JTextField letter = new JTextField(8);
    private final JTextField yarnName = new JTextField(20);
    private final ColourButton colour;

    private YarnDialog(Window owner, String key, Chart chart, Yarn before) {
        super(owner, key);
        this.chart = chart;
        this.before = before;
        this.colour = new ColourButton("yarn.colour", before.colour());
        field("yarn.name", yarnName).setText(before.name());
        field("yarn.colour", colour);
        field("yarn.id", letter).setText(before.id());
        explain(Texts.of("yarn.explain"));
    }

    /** Asks for one more yarn. */
    static YarnDialog adding(Window owner, Chart chart, Yarn proposal) {
        return new YarnDialog(owner, "addYarn", chart, proposal);
    }

    /** Asks for another name, colour or letter of a yarn of the chart. */
    static YarnDialog changing(Window owner, Chart chart, Yarn yarn) {
        return new YarnDialog(owner, "changeYarn", chart, yarn);
    }

    Yarn yarn() {
        return new Yarn(
                letter.getText().strip(),
                yarnName.getText().strip(),
                colour.colour(),
                before.ball(),
                before.metresInHand(),
                before.extras());
    }

    @Override
    Optional<String> objection() {
        String id = letter.getText().strip();
        if (yarnName.getText().isBlank()) {
            return Optional.of(Texts.of("yarn.objection.name"));
        }
        if (!Yarn.isId(id)) {
            return Optional.of(Texts.of("yarn.objection.id", Yarn.LONGEST_ID));
        }
        boolean own = chart.yarns().contains(before) && id.equals(before.id());
        return !own && chart.yarn(id).isPresent()
                ? Optional.of(Texts.of("yarn.objection.taken", id))
                : Optional.empty();
    }
}
