package edgewright.desk.reading;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Terms;
import edgewright.desk.parts.Forms;
import edgewright.texts.Messages;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Asks in which terms a text is that does not say it, with what comes of either answer. */
final class TermsQuestion extends JPanel {
    private final transient Messages says;
    private final Map<Terms, JTextArea> consequences = new EnumMap<>(Terms.class);

    /** @param answered is told the answer */
    TermsQuestion(Messages says, Consumer<Terms> answered) {
        super(new MigLayout("insets 0, gap 8 6, fillx, wrap 2, hidemode 3", "[][grow, fill]"));
        this.says = says;
        setName("reading.question");
        setOpaque(false);
        JTextArea question = Forms.prose(says.text("question-terms"));
        question.setName("reading.question.text");
        add(question, "span, growx, wmin 0");
        for (Terms terms : Terms.values()) {
            JButton button = Forms.caption(new JButton(), says.text("question-answer-" + terms));
            button.setName("reading.terms." + terms);
            button.addActionListener(event -> answered.accept(terms));
            JTextArea consequence = Forms.prose(" ");
            consequence.setName("reading.consequence." + terms);
            consequences.put(terms, consequence);
            add(button, "aligny top");
            add(consequence, "wmin 0");
        }
        setVisible(false);
    }

    /** Shows what comes of either answer; nothing hides the question. */
    void show(Map<Terms, UnderstoodText> readings) {
        readings.forEach((terms, reading) -> {
            String summary = reading.summary(says);
            Optional<String> first = reading.firstRound();
            consequences
                    .get(terms)
                    .setText(
                            first.isEmpty()
                                    ? summary
                                    : says.text(
                                            "question-consequence",
                                            arg("summary", summary),
                                            arg("round", first.get())));
        });
        setVisible(!readings.isEmpty());
        revalidate();
    }
}
