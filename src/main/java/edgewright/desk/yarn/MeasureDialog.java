package edgewright.desk.yarn;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.YarnUse;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.work.Lengths;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Window;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JTextField;

/** Asks how much yarn twenty of the designer's own stitches take, kind by kind; what was not measured stays empty. */
public final class MeasureDialog extends FormDialog {
    private final transient Messages says;
    private final YarnUse before;
    private final Map<String, JTextField> fields = new LinkedHashMap<>();

    public MeasureDialog(Window owner, YarnUse use, Language language) {
        super(owner, "measure", language);
        says = language.messages("desk/yarn");
        titled(says.text("measure-title"), says.text("measure-accept"));
        before = use;
        add("measure.backLoop", says.text("measure-backLoop"), use.backLoop());
        add("measure.plain", says.text("measure-plain"), use.plain());
        add("measure.long", says.text("measure-long"), use.longStitch());
        add("measure.chain", says.text("measure-chain"), use.chain());
        add("measure.tall", says.text("measure-tall"), use.tall());
        add("measure.slip", says.text("measure-slip"), use.slip());
        explain(says.text("measure-explain", count("stitches", YarnUse.STITCHES)));
    }

    /** What was measured; empty if nothing was. */
    Optional<YarnUse> use() {
        YarnUse use = new YarnUse(
                value("measure.backLoop"),
                value("measure.plain"),
                value("measure.long"),
                value("measure.chain"),
                value("measure.tall"),
                value("measure.slip"),
                before.extras());
        return use.isEmpty() ? Optional.empty() : Optional.of(use);
    }

    private void add(String key, String label, OptionalDouble cm) {
        JTextField field = field(key, label, new JTextField(8));
        field.setText(Lengths.text(cm));
        fields.put(key, field);
    }

    private OptionalDouble value(String key) {
        return Lengths.parse(fields.get(key).getText()).orElseThrow();
    }

    @Override
    protected Optional<String> objection() {
        return fields.values().stream()
                .map(JTextField::getText)
                .filter(text -> Lengths.parse(text)
                        .filter(cm -> cm.isEmpty() || cm.getAsDouble() > 0)
                        .isEmpty())
                .findFirst()
                .map(text -> says.text("measure-objection", arg("typed", text.strip())));
    }
}
