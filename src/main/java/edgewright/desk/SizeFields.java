package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;

/** Whether a pattern is for any size or for one, and for that one how often the repeat is worked on each pair of sides. */
final class SizeFields {
    private final Chart chart;
    private final JCheckBox oneSize = Forms.caption(new JCheckBox(), "size.one");
    private final JSpinner level = new JSpinner(new SpinnerNumberModel(6, 0, 9_999, 1));
    private final JSpinner upright = new JSpinner(new SpinnerNumberModel(6, 0, 9_999, 1));
    private final JLabel counts = Look.quiet(" ");

    /** Adds its fields to the form of a dialog. */
    SizeFields(Chart chart, FormDialog dialog) {
        this.chart = chart;
        oneSize.setName("size.one");
        level.setName("size.level");
        upright.setName("size.upright");
        counts.setName("size.counts");
        dialog.form().add(oneSize, "span, gaptop 4");
        dialog.form().add(Forms.label("size.level", level), "gapleft 22");
        dialog.form().add(level, "growx 0, wmin 90");
        dialog.form().add(Forms.label("size.upright", upright), "gapleft 22");
        dialog.form().add(upright, "growx 0, wmin 90");
        dialog.form().add(counts, "span, gapleft 22, wmin 0");
        oneSize.addActionListener(event -> follow());
        level.addChangeListener(event -> follow());
        upright.addChangeListener(event -> follow());
        follow();
    }

    /** How often the repeat is worked on each side; empty for any size. */
    Optional<PerSide> repeats() {
        int across = FormDialog.value(level);
        int down = FormDialog.value(upright);
        return oneSize.isSelected() ? Optional.of(new PerSide(across, down, across, down)) : Optional.empty();
    }

    private void follow() {
        level.setEnabled(oneSize.isSelected());
        upright.setEnabled(oneSize.isSelected());
        SideShape shape = chart.shape();
        counts.setText(repeats()
                .map(sides -> Texts.of(
                        "size.counts",
                        shape.stitches(0, sides.top()),
                        shape.stitches(0, sides.left()),
                        Counting.WITH_CHAINS.shown(shape.stitches(0, sides.top())),
                        Counting.WITH_CHAINS.shown(shape.stitches(0, sides.left()))))
                .orElseGet(() -> Texts.of("size.any")));
    }
}
