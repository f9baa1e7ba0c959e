package edgewright.desk.yarn;

import edgewright.chart.YarnUse;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.work.DeskTexts;
import edgewright.desk.work.Lengths;
import java.awt.Window;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JTextField;

/** Asks how much yarn twenty of the designer's own stitches take, kind by kind; what was not measured stays empty. */
public final class MeasureDialog extends FormDialog {
    private final YarnUse before;
    private final Map<String, JTextField> fields = new LinkedHashMap<>();

    public MeasureDialog(Window owner, YarnUse use) {
        super(owner, "measure");
        before = use;
        add("measure.backLoop", use.backLoop());
        add("measure.plain", use.plain());
        add("measure.long", use.longStitch());
        add("measure.chain", use.chain());
        add("measure.tall", use.tall());
        add("measure.slip", use.slip());
        explain(DeskTexts.of("measure.explain", YarnUse.STITCHES));
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

    private void add(String key, OptionalDouble cm) {
        JTextField field = field(key, new JTextField(8));
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
                .map(text -> DeskTexts.of("measure.objection", text.strip()));
    }
}
