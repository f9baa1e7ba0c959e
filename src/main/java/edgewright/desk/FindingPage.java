package edgewright.desk;

import edgewright.check.Finding;
import edgewright.check.Remedy;
import edgewright.check.RuleBook;
import edgewright.check.Sentences;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** One finding explained: the sentence, what can be done about it, and the page of its rule. */
final class FindingPage extends ColumnScroll {
    private final transient Workbench bench;
    private final transient Sentences sentences;

    FindingPage(Workbench bench, Sentences sentences) {
        super("findingPage");
        this.bench = bench;
        this.sentences = sentences;
    }

    /** Nothing is chosen: says what to do next. */
    void empty() {
        JPanel column = column();
        column.add(Look.heading(Texts.of("findings.choose")), "wrap");
        column.add(Forms.prose(Texts.of("findings.choose.text")), "wmin 0");
        show(column);
    }

    /** Explains a finding of the chart as it is now. */
    void explain(Finding finding) {
        JPanel column = column();
        JTextArea sentence = Forms.prose(sentences.of(finding));
        sentence.setName("findingSentence");
        column.add(sentence, "wmin 0, wrap, gapbottom 6");
        if (!finding.remedies().isEmpty()) {
            column.add(Look.heading(Texts.of("findings.remedies")), "wrap");
            int number = 1;
            for (Remedy remedy : finding.remedies()) {
                column.add(remedyLine(remedy, number), "wrap, wmin 0");
                number++;
            }
        }
        column.add(new RulePageView(RuleBook.page(finding.rule())), "gaptop 10, wmin 0");
        show(column);
    }

    /** What a remedy does, and the button that does it. */
    private JPanel remedyLine(Remedy remedy, int number) {
        String text = sentences.of(remedy);
        JButton button = Forms.caption(new JButton(), "findings.apply");
        button.setName("remedy" + number);
        button.getAccessibleContext().setAccessibleName(text);
        button.setToolTipText(text);
        button.addActionListener(event -> bench.edit(Texts.of("edit.remedy", text), remedy::applyTo));
        JPanel line = new JPanel(new MigLayout("insets 0, gap 8, fillx", "[grow, fill][]", "[top]"));
        line.setOpaque(false);
        line.add(Forms.prose(text), "wmin 0, gaptop 4");
        line.add(button);
        return line;
    }

    private static JPanel column() {
        return new JPanel(new MigLayout("insets 10 12 12 12, gap 4, fillx", "[grow, fill]"));
    }
}
