package edgewright.desk.parts;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.NamedSize;
import edgewright.chart.PerSide;
import edgewright.fit.Fit;
import edgewright.fit.FitAnswer;
import edgewright.fit.FitPlan;
import edgewright.fit.PatternSize;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;

/**
 * For which pieces a pattern is: the sizes that the chart names, if it names any, or any size, or one; and for that one how
 * often the repeat is worked on each pair of sides.
 */
public final class SizeFields {
    private enum Choice {
        PIECE,
        NAMED,
        ANY,
        ONE
    }

    private final Chart chart;
    private final JComboBox<Counting> counting;
    private final Messages says;
    private final Messages common;
    private final JComboBox<Choice> choice;
    private final JSpinner level = new JSpinner(new SpinnerNumberModel(6, 0, 9_999, 1));
    private final JSpinner upright = new JSpinner(new SpinnerNumberModel(6, 0, 9_999, 1));
    private final JLabel counts = Look.quiet(" ");
    private Optional<PatternSize> piece = Optional.empty();

    /**
     * Adds its fields to the form of a dialog.
     *
     * @param counting the dialog's choice of a way of counting, which the counts here follow
     */
    public SizeFields(Chart chart, FormDialog dialog, JComboBox<Counting> counting, Language language) {
        says = language.messages("desk/parts");
        common = language.messages("desk/common");
        this.chart = chart;
        this.counting = counting;
        boolean named = !chart.making().sizes().isEmpty();
        choice = new JComboBox<>(
                named ? new Choice[] {Choice.NAMED, Choice.ANY, Choice.ONE} : new Choice[] {Choice.ANY, Choice.ONE});
        choice.setRenderer(Forms.renderer((Choice each) -> says.text("size-choice-" + each.name())));
        counts.setName("size.counts");
        dialog.field("size.choice", says.text("size-choice"), choice);
        dialog.number("size.level", common.text("size-level"), level, "growx 0, wmin 90", "gapleft 22");
        dialog.number("size.upright", common.text("size-upright"), upright, "growx 0, wmin 90", "gapleft 22");
        dialog.form().add(counts, "span, gapleft 22, wmin 0");
        counting.addActionListener(event -> follow());
        choice.addActionListener(event -> {
            follow();
            dialog.look();
        });
        level.addChangeListener(event -> follow());
        upright.addChangeListener(event -> follow());
        follow();
    }

    /** Offers one piece beside all else, and chooses it. */
    public void offer(PatternSize one) {
        piece = Optional.of(one);
        choice.insertItemAt(Choice.PIECE, 0);
        choice.setSelectedIndex(0);
    }

    /** For which pieces the pattern is to be. */
    public PatternSize size() {
        return switch (chosen()) {
            case PIECE -> ofPiece();
            case NAMED -> PatternSize.named(chart);
            case ANY -> PatternSize.any();
            case ONE -> new PatternSize.OfRepeats(repeats());
        };
    }

    /** The piece, with what was counted on it said in the way of counting that is chosen. */
    private PatternSize ofPiece() {
        PatternSize asked = piece.orElseThrow();
        if (asked instanceof PatternSize.OfPiece of) {
            FitAnswer answer =
                    Fit.inWords(chart, of.plan().question().in(counting.getItemAt(counting.getSelectedIndex())));
            return answer instanceof FitPlan plan ? new PatternSize.OfPiece(plan) : asked;
        }
        return asked;
    }

    private Choice chosen() {
        return choice.getItemAt(choice.getSelectedIndex());
    }

    private PerSide<Integer> repeats() {
        return PerSide.pairs(FormDialog.value(level), FormDialog.value(upright));
    }

    private String names() {
        return chart.making().sizes().stream().map(NamedSize::name).collect(Collectors.joining(", "));
    }

    private void follow() {
        level.setEnabled(chosen() == Choice.ONE);
        upright.setEnabled(chosen() == Choice.ONE);
        counts.setText(
                switch (chosen()) {
                    case PIECE -> countsOfPiece();
                    case NAMED -> names();
                    case ANY -> says.text("size-any");
                    case ONE -> countsOfOne();
                });
    }

    private String countsOfPiece() {
        Counting way = counting.getItemAt(counting.getSelectedIndex());
        return says.text(
                "size-piece",
                arg("counting", common.text("counting-" + way.name())),
                arg(
                        "sides",
                        PerSide.typed(piece.orElseThrow()
                                .stitches(chart.border(), 0)
                                .orElseThrow()
                                .map(way::shown))));
    }

    private String countsOfOne() {
        Counting way = counting.getItemAt(counting.getSelectedIndex());
        PerSide<Integer> stitches = chart.border().stitches(0, repeats());
        return says.text(
                "size-counts",
                arg("counting", common.text("counting-" + way.name())),
                count("topAndBottom", way.shown(stitches.top())),
                count("leftAndRight", way.shown(stitches.left())));
    }
}
