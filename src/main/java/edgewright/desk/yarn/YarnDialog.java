package edgewright.desk.yarn;

import edgewright.chart.Ball;
import edgewright.chart.Chart;
import edgewright.chart.Extras;
import edgewright.chart.Yarn;
import edgewright.desk.parts.ColourButton;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.work.DeskTexts;
import edgewright.desk.work.Lengths;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JTextField;

/** Adds a yarn or changes one: its letter, name, colour, what the band of a ball says, and what is in hand. */
public final class YarnDialog extends FormDialog {
    private final Chart chart;
    private final Yarn before;
    private final JTextField letter = new JTextField(8);
    private final JTextField yarnName = new JTextField(20);
    private final ColourButton colour;
    private final JTextField metres = new JTextField(8);
    private final JTextField grams = new JTextField(8);
    private final JTextField inHand = new JTextField(8);

    private YarnDialog(Window owner, String key, Chart chart, Yarn before) {
        super(owner, key);
        this.chart = chart;
        this.before = before;
        this.colour = new ColourButton("yarn.colour", before.colour());
        field("yarn.name", yarnName).setText(before.name());
        field("yarn.colour", colour);
        field("yarn.id", letter).setText(before.id());
        OptionalDouble none = OptionalDouble.empty();
        field("yarn.ballMetres", metres)
                .setText(Lengths.text(before.ball()
                        .map(ball -> OptionalDouble.of(ball.metres()))
                        .orElse(none)));
        field("yarn.ballGrams", grams)
                .setText(Lengths.text(before.ball()
                        .map(ball -> OptionalDouble.of(ball.grams()))
                        .orElse(none)));
        field("yarn.inHand", inHand).setText(Lengths.text(before.metresInHand()));
        explain(DeskTexts.of("yarn.explain"));
    }

    /** Asks for one more yarn. */
    public static YarnDialog adding(Window owner, Chart chart, Yarn proposal) {
        return new YarnDialog(owner, "addYarn", chart, proposal);
    }

    /** Asks for another name, colour or letter of a yarn of the chart. */
    public static YarnDialog changing(Window owner, Chart chart, Yarn yarn) {
        return new YarnDialog(owner, "changeYarn", chart, yarn);
    }

    public Yarn yarn() {
        return new Yarn(
                letter.getText().strip(),
                yarnName.getText().strip(),
                colour.colour(),
                ball(),
                number(inHand).orElseThrow(),
                before.extras());
    }

    /** What was typed; empty if it is neither a number nor nothing. */
    private static Optional<OptionalDouble> number(JTextField field) {
        return Lengths.parse(field.getText());
    }

    private Optional<Ball> ball() {
        OptionalDouble length = number(metres).orElseThrow();
        OptionalDouble weight = number(grams).orElseThrow();
        if (length.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Ball(
                length.getAsDouble(),
                weight.getAsDouble(),
                before.ball().map(Ball::extras).orElse(Extras.NONE)));
    }

    private Optional<String> objectionToAmounts() {
        for (JTextField field : List.of(metres, grams, inHand)) {
            if (number(field).isEmpty()) {
                return Optional.of(
                        DeskTexts.of("yarn.objection.number", field.getText().strip()));
            }
        }
        OptionalDouble length = number(metres).orElseThrow();
        OptionalDouble weight = number(grams).orElseThrow();
        boolean bothOrNone = length.isPresent() == weight.isPresent();
        return bothOrNone && length.orElse(1) > 0 && weight.orElse(1) > 0
                ? Optional.empty()
                : Optional.of(DeskTexts.of("yarn.objection.ball"));
    }

    @Override
    protected Optional<String> objection() {
        String id = letter.getText().strip();
        if (yarnName.getText().isBlank()) {
            return Optional.of(DeskTexts.of("yarn.objection.name"));
        }
        if (!Yarn.isId(id)) {
            return Optional.of(DeskTexts.of("yarn.objection.id", Yarn.LONGEST_ID));
        }
        boolean own = chart.yarns().contains(before) && id.equals(before.id());
        return !own && chart.yarn(id).isPresent()
                ? Optional.of(DeskTexts.of("yarn.objection.taken", id))
                : objectionToAmounts();
    }
}
