package edgewright.desk.panes;

import edgewright.check.Finding;
import edgewright.check.FindingSentences;
import edgewright.check.Remedy;
import edgewright.check.RuleBook;
import edgewright.desk.parts.ColumnScroll;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.RulePageView;
import edgewright.desk.parts.TextColumn;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;

/** One finding explained: the sentence, what can be done about it, and the page of its rule. */
final class FindingPage extends ColumnScroll {
    private final transient RemedySearch search = new RemedySearch();
    private final transient Consumer<Remedy> onRemedy;
    private final transient FindingSentences sentences;
    private final transient Language language;
    private final transient Messages says;

    private boolean empty;
    private transient Optional<Finding> explained = Optional.empty();
    private transient List<Remedy> offered = List.of();
    private TextColumn remedies = new TextColumn(0, 0, 0);

    FindingPage(FindingSentences sentences, Language language, Consumer<Remedy> onRemedy) {
        super("findingPage");
        this.language = language;
        says = language.messages("desk/panes");
        this.onRemedy = onRemedy;
        this.sentences = sentences;
    }

    /** Nothing is chosen: says what to do next. */
    void empty() {
        search.forget();
        offered = List.of();
        if (!empty) {
            empty = true;
            explained = Optional.empty();
            TextColumn column = new TextColumn(10, 12, 12);
            column.heading(says.text("findings-choose"));
            column.prose(says.text("findings-choose-text"));
            show(column);
        }
    }

    /** Explains a finding of the chart as it is now. What helps against it follows when it is found. */
    void explain(Finding finding) {
        if (explained.filter(finding::equals).isEmpty()) {
            empty = false;
            explained = Optional.of(finding);
            TextColumn column = new TextColumn(10, 12, 12);
            JTextArea sentence = Forms.prose(sentences.of(finding));
            sentence.setName("findingSentence");
            column.add(sentence);
            remedies = new TextColumn(0, 0, 0);
            column.add(remedies);
            RulePageView.addTo(column, new RuleBook(language).page(finding.rule()), language);
            show(column);
        }
        search.find(finding, this::offer, this::searching);
    }

    /** What is known to help against the finding that is explained, the best first; nothing while that is searched for. */
    List<Remedy> offered() {
        return offered;
    }

    private void searching() {
        offered = List.of();
        remedies.removeAll();
        remedies.heading(says.text("findings-remedies"));
        remedies.prose(says.text("findings-searching"));
        remedies.revalidate();
        remedies.repaint();
    }

    private void offer(List<Remedy> found) {
        offered = List.copyOf(found);
        remedies.removeAll();
        if (!found.isEmpty()) {
            remedies.heading(says.text("findings-remedies"));
            int number = 1;
            for (Remedy remedy : found) {
                remedies.add(remedyLine(remedy, number));
                number++;
            }
        }
        remedies.revalidate();
        remedies.repaint();
    }

    /** What a remedy does, and the button that does it. */
    private JPanel remedyLine(Remedy remedy, int number) {
        String text = sentences.of(remedy);
        JButton button = Forms.caption(new JButton(), says.text("findings-apply"));
        button.setName("remedy" + number);
        button.getAccessibleContext().setAccessibleName(text);
        button.setToolTipText(text);
        button.addActionListener(event -> onRemedy.accept(remedy));
        JPanel side = new JPanel(new BorderLayout());
        side.setOpaque(false);
        side.add(button, BorderLayout.NORTH);
        JTextArea what = Forms.prose(text);
        what.setBorder(BorderFactory.createEmptyBorder(4, 0, 0, 0));
        JPanel line = new JPanel(new BorderLayout(10, 0));
        line.setOpaque(false);
        line.add(what, BorderLayout.CENTER);
        line.add(side, BorderLayout.LINE_END);
        return line;
    }
}
