package edgewright.desk.guide;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.HookSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.Side;
import edgewright.chart.Start;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.desk.work.DeskTexts;
import edgewright.fit.Starts;
import edgewright.texts.Language;
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

    private final PatternDetails before;
    private final JCheckBox start = check("making.start");
    private final JCheckBox found = check("making.found");
    private final JSpinner column;
    private final JComboBox<Side> odd = new JComboBox<>(Side.values());
    private final JComboBox<Side> even = new JComboBox<>(Side.values());
    private final JComboBox<Optional<HookSize>> hook;
    private final JCheckBox swatch = check("making.swatch");
    private final JSpinner stitches;
    private final JSpinner rounds;
    private final JCheckBox back = check("making.back");
    private final JComboBox<Optional<HookSize>> backHook;
    private final JComboBox<Integer> weight = new JComboBox<>();
    private final JTextField skill = new JTextField(24);

    public PatternDetailsDialog(Window owner, Chart chart, Language language) {
        super(owner, "making");
        before = chart.making();
        int best = chart.raggedSections().isEmpty() ? Starts.bestColumn(chart) : 1;
        Start starts = before.start().orElse(Start.DEFAULT);
        column = new JSpinner(new SpinnerNumberModel(starts.column().orElse(best), 1, Start.last(chart.shape()), 1));
        hook = hooks(before.hook(), "making.hook.none", language);
        backHook = hooks(before.back().flatMap(Back::hook), "making.backHook.smaller", language);
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
        number("making.column", column, WIDE, INDENT);
        for (JComboBox<Side> sides : List.of(odd, even)) {
            sides.setRenderer(Forms.renderer((Side side) -> DeskTexts.of("guide.side." + side.name())));
        }
        odd.setSelectedItem(starts.odd());
        even.setSelectedItem(starts.even());
        indented("making.odd", odd);
        indented("making.even", even);
    }

    private void measures() {
        form().add(Forms.label("making.hook", hook), "gaptop 8");
        form().add(hook, "growx 0, wmin 150");
        hook.setName("making.hook");
        form().add(swatch, "span");
        swatch.setSelected(before.swatch().isPresent());
        number("making.stitches", stitches, WIDE, INDENT);
        number("making.rounds", rounds, WIDE, INDENT);
    }

    private void layers() {
        form().add(back, "span, gaptop 8");
        back.setSelected(before.back().isPresent());
        indented("making.backHook", backHook);
        IntStream.rangeClosed(-1, PatternDetails.MOST_WEIGHT).forEach(weight::addItem);
        weight.setRenderer(Forms.renderer((Integer category) ->
                category < 0 ? DeskTexts.of("making.weight.none") : DeskTexts.of("making.weight." + category)));
        weight.setSelectedItem(before.yarnWeight().orElse(-1));
        weight.setName("making.weight");
        form().add(Forms.label("making.weight", weight), "gaptop 8");
        form().add(weight, "growx 0, wmin 150");
        field("making.skill", skill).setText(before.skill());
    }

    private void indented(String key, JComponent field) {
        field.setName(key);
        form().add(Forms.label(key, field), INDENT);
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

    private static JCheckBox check(String key) {
        JCheckBox box = Forms.caption(new JCheckBox(), key);
        box.setName(key);
        return box;
    }

    private static JSpinner perTenCm(Optional<Double> number) {
        double shown = Math.max(0.1, Math.min(number.orElse(16.0), MOST_IN_10_CM));
        return new JSpinner(new SpinnerNumberModel(shown, 0.1, MOST_IN_10_CM, 0.5));
    }

    /** The listed sizes, the one that is there, and none. */
    private static JComboBox<Optional<HookSize>> hooks(Optional<HookSize> present, String none, Language language) {
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
                        hook -> DeskTexts.of("guide.mm", language.shortest(hook.mm(), 2)))
                .orElseGet(() -> DeskTexts.of(none))));
        box.setSelectedItem(present);
        return box;
    }

    private static Optional<HookSize> chosen(JComboBox<Optional<HookSize>> box) {
        return box.getItemAt(box.getSelectedIndex());
    }
}
