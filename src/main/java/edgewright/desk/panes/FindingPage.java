package edgewright.desk.panes;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.check.Finding;
import edgewright.check.FindingSentences;
import edgewright.check.MendedKind;
import edgewright.check.Remedy;
import edgewright.check.RuleBook;
import edgewright.check.Verdict;
import edgewright.desk.parts.ColumnScroll;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.RulePageView;
import edgewright.desk.parts.TextColumn;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JTextArea;

/** One finding explained: the sentence, what can be done about it, and the page of its rule. */
final class FindingPage extends ColumnScroll {
    private final transient RemedySearch search = new RemedySearch();
    private final transient HelpLook look;
    private final transient Consumer<Help> onHelp;
    private final transient FindingSentences sentences;
    private final transient Language language;
    private final transient Messages says;

    /** What stands here while no finding is explained; empty while one is. */
    private String emptyText = "";

    private transient Optional<Finding> explained = Optional.empty();
    private transient List<Remedy> offered = List.of();
    private transient List<JButton> buttons = List.of();
    private transient Optional<Kind> kind = Optional.empty();
    private TextColumn remedies = new TextColumn(0, 0, 0);
    private JTextArea note = note();

    /** The findings of a rule, to be mended together; what comes of that is worked out when somebody asks. */
    private static final class Kind {
        private final Finding finding;
        private final Verdict verdict;
        private Optional<MendedKind> mended = Optional.empty();
        private boolean isAsked;
        private boolean isPointedAt;
        private Optional<Consumer<Help>> deed = Optional.empty();

        Kind(Finding finding, Verdict verdict) {
            this.finding = finding;
            this.verdict = verdict;
        }

        int findings() {
            return (int) verdict.findings().stream()
                    .filter(other -> other.rule().equals(finding.rule()))
                    .count();
        }
    }

    FindingPage(FindingSentences sentences, Language language, HelpLook look, Consumer<Help> onHelp) {
        super("findingPage");
        this.language = language;
        says = language.messages("desk/panes");
        this.look = look;
        this.onHelp = onHelp;
        this.sentences = sentences;
    }

    private static JTextArea note() {
        JTextArea note = Forms.prose("");
        note.setName("remedySeen");
        // What it says changes while the mouse goes from one to the next, which must not move.
        note.setRows(3);
        return note;
    }

    /** Nothing is chosen: says what to do next. */
    void empty() {
        empty(says.text("findings-choose"), says.text("findings-choose-text"));
    }

    /** Nothing is listed, though there are findings: says how they are seen again. */
    void filtered(int findings) {
        empty(says.text("findings-filtered"), says.text("findings-filtered-text", count("findings", findings)));
    }

    private void empty(String heading, String text) {
        search.forget();
        look.leave();
        offered = List.of();
        buttons = List.of();
        kind = Optional.empty();
        if (!emptyText.equals(text)) {
            emptyText = text;
            explained = Optional.empty();
            TextColumn column = new TextColumn(10, 12, 12);
            column.heading(heading);
            column.prose(text);
            show(column);
        }
    }

    /** Explains a finding of the chart as it is now. What helps against it follows when it is found. */
    void explain(Finding finding, Verdict verdict) {
        look.leave();
        kind = Optional.of(new Kind(finding, verdict));
        if (explained.filter(finding::equals).isEmpty()) {
            emptyText = "";
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

    /** How many findings of its rule there are, with the one that is explained; 0 if none is. */
    int ofKind() {
        return kind.map(Kind::findings).orElse(0);
    }

    /** What a remedy does, as it is done. */
    Help help(Remedy remedy) {
        return new Help(
                says.text("edit-remedy", arg("remedy", sentences.action(remedy))),
                remedy::applyTo,
                remedy.changedCells());
    }

    /** Has this done for all findings of the rule of the one that is explained, when it is known how. */
    void mendAll(Consumer<Help> deed) {
        kind.ifPresent(of -> {
            of.deed = Optional.of(deed);
            ask(of);
        });
    }

    private void pointAtAll() {
        kind.ifPresent(of -> {
            of.isPointedAt = true;
            ask(of);
        });
    }

    private void ask(Kind of) {
        if (of.mended.isPresent()) {
            answer(of, of.mended.get());
        } else if (!of.isAsked) {
            of.isAsked = true;
            search.mendAll(
                    of.verdict,
                    of.finding,
                    known -> {
                        of.mended = Optional.of(known);
                        answer(of, known);
                    },
                    () -> note.setText(says.text("findings-searching")));
        }
    }

    private void answer(Kind of, MendedKind mended) {
        if (mended.mended() == 0) {
            note.setText(says.text("findings-all-none"));
        } else if (of.deed.isPresent()) {
            of.deed.get().accept(help(mended));
        } else if (of.isPointedAt) {
            note.setText(says.text(
                    "findings-seen-all",
                    count("mended", mended.mended()),
                    count("left", mended.left()),
                    arg("seen", seen(help(mended)))));
        }
        of.deed = Optional.empty();
    }

    /** What mending all of them does, as it is done. */
    private Help help(MendedKind mended) {
        return new Help(
                says.text(
                        "edit-remedy-all",
                        arg("title", sentences.title(mended.rule())),
                        count("mended", mended.mended()),
                        count("left", mended.left())),
                chart -> mended.chart(),
                mended.changedCells());
    }

    /** Takes the keys to the first remedy, if there is one. */
    void toFirstRemedy() {
        if (!buttons.isEmpty()) {
            buttons.get(0).requestFocusInWindow();
        }
    }

    private void searching() {
        offered = List.of();
        buttons = List.of();
        remedies.removeAll();
        remedies.heading(says.text("findings-remedies"));
        remedies.prose(says.text("findings-searching"));
        remedies.revalidate();
        remedies.repaint();
    }

    private void offer(List<Remedy> found) {
        look.leave();
        offered = List.copyOf(found);
        buttons = new ArrayList<>();
        remedies.removeAll();
        boolean several = ofKind() > 1;
        if (!found.isEmpty() || several) {
            remedies.heading(says.text("findings-remedies"));
            note = note();
            note.setText(says.text("findings-point"));
            remedies.add(note);
        }
        for (int number = 1; number <= found.size(); number++) {
            Remedy remedy = found.get(number - 1);
            Help help = help(remedy);
            add("remedy" + number, sentences.of(remedy), () -> note.setText(seen(help)), () -> onHelp.accept(help));
        }
        if (several) {
            add(
                    "remedyForAll",
                    says.text("findings-all", count("findings", ofKind())),
                    this::pointAtAll,
                    () -> mendAll(onHelp));
        }
        HelpLine.walk(buttons);
        remedies.revalidate();
        remedies.repaint();
    }

    private void add(String name, String text, Runnable look, Runnable deed) {
        HelpLine line = new HelpLine(name, text, says.text("findings-apply"), look, this::leave, deed);
        buttons.add(line.button());
        remedies.add(line);
    }

    private void leave() {
        kind.ifPresent(of -> of.isPointedAt = false);
        look.leave();
        note.setText(says.text("findings-point"));
    }

    /** Shows it in the chart and says what it does. */
    private String seen(Help help) {
        HelpLook.Seen seen = look.show(help);
        return says.text(
                "findings-seen",
                count("stitches", seen.stitches()),
                count("squares", seen.cells()),
                count("findings", seen.findings()));
    }
}
