package edgewright.desk.journal;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Chart;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Two states of a chart side by side, each with a heading and a line about it; what differs is framed, and said. */
final class ComparedCharts extends JPanel {
    /** Two lines and a little, so that the pictures stay where they are whatever differs. */
    private static final int DIFFERENCE_PX = 40;

    private final transient DifferenceSentences sentences;
    private final transient Messages says;
    private final ComparedPicture left;
    private final ComparedPicture right;
    private final JLabel leftAbout = Look.quiet(" ");
    private final JLabel rightAbout = Look.quiet(" ");
    private final JTextArea difference;
    private final String leftTitle;
    private final String rightTitle;

    /** @param leftTitle empty if there is a right one alone */
    ComparedCharts(Optional<String> leftTitle, String rightTitle, Language language) {
        super(new MigLayout("insets 0, gap 18 6, fill, hidemode 3", "[grow, fill, sg]", "[][][grow, fill][]"));
        this.leftTitle = leftTitle.orElse("");
        this.rightTitle = rightTitle;
        sentences = new DifferenceSentences(language);
        says = language.messages("desk/journal");
        left = new ComparedPicture("compared.left", language);
        right = new ComparedPicture("compared.right", language);
        difference = Forms.prose("");
        difference.setName("difference");
        difference.setFocusable(false);
        leftTitle.ifPresent(title -> add(Look.heading(title), "wmin 0"));
        add(Look.heading(rightTitle), "wmin 0, wrap");
        addIf(leftTitle.isPresent(), leftAbout);
        add(rightAbout, "wmin 0, wrap");
        addIf(leftTitle.isPresent(), left);
        add(right, "wmin 0, wrap");
        add(difference, "span, growx, wmin 0, hmin " + DIFFERENCE_PX);
        leftAbout.setVisible(false);
        rightAbout.setVisible(false);
    }

    private void addIf(boolean wanted, JComponent part) {
        if (wanted) {
            add(part, "wmin 0");
        }
    }

    /** Says something about each, under its heading. */
    void about(String ofLeft, String ofRight) {
        leftAbout.setText(ofLeft);
        rightAbout.setText(ofRight);
        leftAbout.setVisible(true);
        rightAbout.setVisible(true);
    }

    /** Shows both, or the right one alone. */
    void show(Optional<Chart> onLeft, Chart onRight) {
        onLeft.ifPresent(chart -> left.show(
                chart, ChartDifference.placesIn(chart, onRight), says.text("picture", arg("which", leftTitle))));
        right.show(
                onRight,
                onLeft.map(chart -> ChartDifference.placesIn(onRight, chart)).orElse(List.of()),
                says.text("picture", arg("which", rightTitle)));
        difference.setText(onLeft.map(chart -> sentences.of(ChartDifference.between(chart, onRight)))
                .orElse(""));
    }
}
