package edgewright.desk.yarn;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Ball;
import edgewright.chart.Chart;
import edgewright.chart.Extras;
import edgewright.chart.Yarn;
import edgewright.desk.parts.ColourButton;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.work.Lengths;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JTextField;

/** Adds a yarn or changes one: its letter, name, colour, what the band of a ball says, and what is in hand. */
public final class YarnDialog extends FormDialog {
    private final transient Messages says;
    private final transient Messages common;
    private final Chart chart;
    private final Yarn before;
    private final JTextField letter = new JTextField(8);
    private final JTextField yarnName = new JTextField(20);
    private final ColourButton colour;
    private final JTextField metres = new JTextField(8);
    private final JTextField grams = new JTextField(8);
    private final JTextField inHand = new JTextField(8);

    private YarnDialog(Window owner, boolean isNew, Chart chart, Yarn before, Language language) {
        super(owner, isNew ? "addYarn" : "changeYarn", language);
        says = language.messages("desk/yarn");
        common = language.messages("desk/common");
        titled(
                says.text(isNew ? "addYarn-title" : "changeYarn-title"),
                says.text(isNew ? "addYarn-accept" : "changeYarn-accept"));
        this.chart = chart;
        this.before = before;
        this.colour = new ColourButton("yarn.colour", before.colour(), language);
        field("yarn.name", says.text("yarn-name"), yarnName).setText(before.name());
        field("yarn.colour", says.text("yarn-colour"), colour);
        field("yarn.id", says.text("yarn-id"), letter).setText(before.id());
        OptionalDouble none = OptionalDouble.empty();
        field("yarn.ballMetres", says.text("yarn-ballMetres"), metres)
                .setText(Lengths.text(before.ball()
                        .map(ball -> OptionalDouble.of(ball.metres()))
                        .orElse(none)));
        field("yarn.ballGrams", says.text("yarn-ballGrams"), grams)
                .setText(Lengths.text(before.ball()
                        .map(ball -> OptionalDouble.of(ball.grams()))
                        .orElse(none)));
        field("yarn.inHand", says.text("yarn-inHand"), inHand).setText(Lengths.text(before.metresInHand()));
        explain(says.text("yarn-explain"));
    }

    /** Asks for one more yarn. */
    public static YarnDialog adding(Window owner, Chart chart, Yarn proposal, Language language) {
        return new YarnDialog(owner, true, chart, proposal, language);
    }

    /** Asks for another name, colour or letter of a yarn of the chart. */
    public static YarnDialog changing(Window owner, Chart chart, Yarn yarn, Language language) {
        return new YarnDialog(owner, false, chart, yarn, language);
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
                return Optional.of(says.text(
                        "yarn-objection-number", arg("typed", field.getText().strip())));
            }
        }
        OptionalDouble length = number(metres).orElseThrow();
        OptionalDouble weight = number(grams).orElseThrow();
        boolean bothOrNone = length.isPresent() == weight.isPresent();
        return bothOrNone && length.orElse(1) > 0 && weight.orElse(1) > 0
                ? Optional.empty()
                : Optional.of(says.text("yarn-objection-ball"));
    }

    @Override
    protected Optional<String> objection() {
        String id = letter.getText().strip();
        if (yarnName.getText().isBlank()) {
            return Optional.of(common.text("yarn-objection-name"));
        }
        if (!Yarn.isId(id)) {
            return Optional.of(says.text("yarn-objection-id", count("most", Yarn.LONGEST_ID)));
        }
        boolean own = chart.yarns().contains(before) && id.equals(before.id());
        return !own && chart.yarn(id).isPresent()
                ? Optional.of(says.text("yarn-objection-taken", arg("letter", id)))
                : objectionToAmounts();
    }
}
