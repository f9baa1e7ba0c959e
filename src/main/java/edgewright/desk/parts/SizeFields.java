package edgewright.desk.parts;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.NamedSize;
import edgewright.chart.PerSide;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;

/** Whether a pattern is for the sizes that the chart names, or for any if it names none, or else for one, and for that one how often the repeat is worked on each pair of sides. */
public final class SizeFields {
    private final Chart chart;
    private final JComboBox<Counting> counting;
    private final Messages says;
    private final Messages common;
    private final JCheckBox oneSize = new JCheckBox();
    private final JSpinner level = new JSpinner(new SpinnerNumberModel(6, 0, 9_999, 1));
    private final JSpinner upright = new JSpinner(new SpinnerNumberModel(6, 0, 9_999, 1));
    private final JLabel counts = Look.quiet(" ");

    /**
     * Adds its fields to the form of a dialog.
     *
     * @param counting the dialog's choice of a way of counting, which the counts here follow
     */
    public SizeFields(Chart chart, FormDialog dialog, JComboBox<Counting> counting, Language language) {
        says = language.messages("desk/parts");
        common = language.messages("desk/common");
        Forms.caption(oneSize, says.text("size-one"));
        this.chart = chart;
        this.counting = counting;
        oneSize.setName("size.one");
        counts.setName("size.counts");
        dialog.form().add(oneSize, "span, gaptop 4");
        dialog.number("size.level", common.text("size-level"), level, "growx 0, wmin 90", "gapleft 22");
        dialog.number("size.upright", common.text("size-upright"), upright, "growx 0, wmin 90", "gapleft 22");
        dialog.form().add(counts, "span, gapleft 22, wmin 0");
        counting.addActionListener(event -> follow());
        oneSize.addActionListener(event -> {
            follow();
            dialog.look();
        });
        level.addChangeListener(event -> follow());
        upright.addChangeListener(event -> follow());
        follow();
    }

    /** How often the repeat is worked on each side; empty for the sizes of the chart, or any. */
    public Optional<PerSide<Integer>> repeats() {
        int across = FormDialog.value(level);
        int down = FormDialog.value(upright);
        return oneSize.isSelected() ? Optional.of(PerSide.pairs(across, down)) : Optional.empty();
    }

    private String names() {
        return chart.making().sizes().stream().map(NamedSize::name).collect(Collectors.joining(", "));
    }

    private void follow() {
        level.setEnabled(oneSize.isSelected());
        upright.setEnabled(oneSize.isSelected());
        Counting way = (Counting) counting.getSelectedItem();
        counts.setText(repeats()
                .map(sides -> says.text(
                        "size-counts",
                        arg("counting", common.text("counting-" + way.name())),
                        count(
                                "topAndBottom",
                                way.shown(chart.border().stitches(0, sides).top())),
                        count(
                                "leftAndRight",
                                way.shown(chart.border().stitches(0, sides).left()))))
                .orElseGet(() -> chart.making().sizes().isEmpty() ? says.text("size-any") : names()));
    }
}
