package edgewright.desk.guide;

import static edgewright.texts.Arg.shortest;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.HookSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.Side;
import edgewright.chart.Start;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.fit.Starts;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;

/** How the border is made, beside the chart itself: where rounds start, hook, swatch, back layer, yarn weight and skill. */
public final class PatternDetailsDialog extends FormDialog {
    private static final double MOST_IN_10_CM = 100;
    private static final String INDENT = "gapleft 22";
    private static final String WIDE = "growx 0, wmin 150";

    private final transient Messages says;
    private final transient Messages common;
    private final PatternDetails before;
    private final JCheckBox start = new JCheckBox();
    private final JCheckBox found = new JCheckBox();
    private final JSpinner column;
    private final JComboBox<Side> odd = new JComboBox<>(Side.values());
    private final JComboBox<Side> even = new JComboBox<>(Side.values());
    private final JComboBox<Optional<HookSize>> hook;
    private final JCheckBox swatch = new JCheckBox();
    private final JSpinner stitches;
    private final JSpinner rounds;
    private final JCheckBox back = new JCheckBox();
    private final JComboBox<Optional<HookSize>> backHook;
    private final JComboBox<Integer> weight = new JComboBox<>();
    private final JTextField skill = new JTextField(24);

    public PatternDetailsDialog(Window owner, Chart chart, Language language) {
        super(owner, "making", language);
        says = language.messages("desk/guide");
        common = language.messages("desk/common");
        titled(says.text("making-title"), says.text("making-accept"));
        check(start, "making.start", says.text("making-start"), says.text("making-start-tip"));
        check(found, "making.found", says.text("making-found"), says.text("making-found-tip"));
        check(swatch, "making.swatch", says.text("making-swatch"), says.text("making-swatch-tip"));
        check(back, "making.back", says.text("making-back"), says.text("making-back-tip"));
        before = chart.making();
        int best = chart.raggedSections().isEmpty() ? Starts.bestColumn(chart) : 1;
        Start starts = before.start().orElse(Start.DEFAULT);
        column = new JSpinner(new SpinnerNumberModel(
                starts.column().orElse(best), 1, chart.border().lastStart(), 1));
        hook = hooks(before.hook(), says.text("making-hook-none"));
        backHook = hooks(before.back().flatMap(Back::hook), says.text("making-backHook-smaller"));
        stitches = perTenCm(before.swatch().map(edgewright.chart.Swatch::stitchesIn10Cm));
        rounds = perTenCm(before.swatch().map(edgewright.chart.Swatch::roundsIn10Cm));
        starts(starts);
        measures();
        layers();
        watchAll();
        follow();
    }

    private void starts(Start starts) {
        form().add(start, "span");
        start.setSelected(before.start().isPresent());
        form().add(found, "span, " + INDENT);
        found.setSelected(starts.column().isEmpty());
        number("making.column", says.text("making-column"), column, WIDE, INDENT);
        for (JComboBox<Side> sides : List.of(odd, even)) {
            sides.setRenderer(Forms.renderer((Side side) -> says.text("guide-side-" + side.name())));
        }
        odd.setSelectedItem(starts.odd());
        even.setSelectedItem(starts.even());
        indented("making.odd", says.text("making-odd"), odd);
        indented("making.even", says.text("making-even"), even);
    }

    private void measures() {
        form().add(Forms.label(says.text("making-hook"), hook), "gaptop 8");
        form().add(hook, "growx 0, wmin 150");
        hook.setName("making.hook");
        form().add(swatch, "span");
        swatch.setSelected(before.swatch().isPresent());
        number("making.stitches", says.text("making-stitches"), stitches, WIDE, INDENT);
        number("making.rounds", says.text("making-rounds"), rounds, WIDE, INDENT);
    }

    private void layers() {
        form().add(back, "span, gaptop 8");
        back.setSelected(before.back().isPresent());
        indented("making.backHook", says.text("making-backHook"), backHook);
        IntStream.rangeClosed(-1, PatternDetails.MOST_WEIGHT).forEach(weight::addItem);
        weight.setRenderer(Forms.renderer((Integer category) ->
                category < 0 ? says.text("making-noWeight") : says.text("making-weight-" + category)));
        weight.setSelectedItem(before.yarnWeight().orElse(-1));
        weight.setName("making.weight");
        form().add(Forms.label(says.text("making-weight"), weight), "gaptop 8");
        form().add(weight, "growx 0, wmin 150");
        field("making.skill", says.text("making-skill"), skill).setText(before.skill());
    }

    private void indented(String name, String text, JComponent field) {
        field.setName(name);
        form().add(Forms.label(text, field), INDENT);
        form().add(field, WIDE);
    }

    private void watchAll() {
        for (JCheckBox box : List.of(start, found, swatch, back)) {
            box.addActionListener(event -> {
                follow();
                look();
            });
        }
    }

    private void follow() {
        for (JComponent part : List.of(found, odd, even)) {
            part.setEnabled(start.isSelected());
        }
        column.setEnabled(start.isSelected() && !found.isSelected());
        stitches.setEnabled(swatch.isSelected());
        rounds.setEnabled(swatch.isSelected());
        backHook.setEnabled(back.isSelected());
    }

    /** What the form says; what it does not ask for stays as it was. */
    PatternDetails appliedTo(PatternDetails making) {
        Optional<Start> started = Optional.of(making.start().orElse(Start.DEFAULT))
                .filter(was -> start.isSelected())
                .map(was -> was.withSides((Side) odd.getSelectedItem(), (Side) even.getSelectedItem())
                        .withColumn(found.isSelected() ? OptionalInt.empty() : OptionalInt.of(value(column))));
        Optional<Back> layered = Optional.of(making.back().orElse(Back.DEFAULT))
                .filter(was -> back.isSelected())
                .map(was -> was.withHook(chosen(backHook)));
        int category = (Integer) weight.getSelectedItem();
        return making.withStart(started)
                .withHook(chosen(hook))
                .withSwatch(measured(making))
                .withBack(layered)
                .withYarnWeight(category < 0 ? OptionalInt.empty() : OptionalInt.of(category))
                .withSkill(skill.getText().strip());
    }

    private Optional<edgewright.chart.Swatch> measured(PatternDetails making) {
        return Optional.of(new edgewright.chart.Swatch((Double) stitches.getValue(), (Double) rounds.getValue()))
                .filter(now -> swatch.isSelected())
                .map(now -> making.swatch()
                        .map(was -> new edgewright.chart.Swatch(now.stitchesIn10Cm(), now.roundsIn10Cm(), was.extras()))
                        .orElse(now));
    }

    @Override
    protected Optional<String> objection() {
        return Optional.empty();
    }

    private static void check(JCheckBox box, String name, String text, String tip) {
        Forms.caption(box, text, tip);
        box.setName(name);
    }

    private static JSpinner perTenCm(Optional<Double> number) {
        double shown = Math.max(0.1, Math.min(number.orElse(16.0), MOST_IN_10_CM));
        return new JSpinner(new SpinnerNumberModel(shown, 0.1, MOST_IN_10_CM, 0.5));
    }

    /** The listed sizes, the one that is there, and none. */
    private JComboBox<Optional<HookSize>> hooks(Optional<HookSize> present, String none) {
        List<Optional<HookSize>> sizes = new ArrayList<>(List.of(Optional.<HookSize>empty()));
        HookSize.listed().forEach(size -> sizes.add(Optional.of(size)));
        if (!sizes.contains(present)) {
            sizes.add(present);
            sizes.sort((one, other) -> Integer.compare(
                    one.map(HookSize::hundredthsMm).orElse(0),
                    other.map(HookSize::hundredthsMm).orElse(0)));
        }
        JComboBox<Optional<HookSize>> box = new JComboBox<>();
        sizes.forEach(box::addItem);
        box.setRenderer(Forms.renderer((Optional<HookSize> size) -> size.map(
                        hook -> common.text("guide-mm", shortest("mm", hook.mm(), 2)))
                .orElse(none)));
        box.setSelectedItem(present);
        return box;
    }

    private static Optional<HookSize> chosen(JComboBox<Optional<HookSize>> box) {
        return box.getItemAt(box.getSelectedIndex());
    }
}
