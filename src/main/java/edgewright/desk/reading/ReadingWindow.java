package edgewright.desk.reading;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Questions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.KeptSplit;
import edgewright.desk.parts.Look;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Workbench;
import edgewright.file.FileProblemException;
import edgewright.file.TextFile;
import edgewright.file.fault.ProblemSentences;
import edgewright.proof.ProofResult;
import edgewright.proof.ProofSentences;
import edgewright.proof.Prover;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.tree.Instructions;
import java.awt.Dimension;
import java.awt.Window;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;

/**
 * The words of others: a text at the left, beside it how each of its lines was understood, and the chart that they make with
 * the rounds of the chosen line framed. All reading and working is done beside the event thread.
 */
final class ReadingWindow extends JDialog {
    private static final int WIDTH_PX = 1180;
    private static final int HEIGHT_PX = 760;
    private static final int USUAL_BASE = 48;

    private final transient Messages says;
    private final transient Language language;
    private final transient Workbench bench;
    private final transient ChartView view;
    private final transient Jobs jobs;
    private final transient Questions asking;
    private final transient Consumer<Chart> begin;
    private final JTextArea text = new JTextArea();
    private final JSpinner level = new JSpinner(new SpinnerNumberModel(USUAL_BASE, 1, 9_999, 1));
    private final JSpinner upright = new JSpinner(new SpinnerNumberModel(USUAL_BASE, 1, 9_999, 1));
    private final JButton open;
    private final JButton read;
    private final JButton draw;
    private final JButton compare;
    private final UnderstoodTable lines;
    private final TermsQuestion question;
    private final RoundPicture picture;
    private final JTextArea outcome = Forms.prose("");
    private transient UnderstoodText understood = UnderstoodText.NOTHING;

    ReadingWindow(Window owner, Workbench bench, ChartView view, Jobs jobs, Questions asking, Consumer<Chart> begin) {
        super(owner, ModalityType.MODELESS);
        this.bench = bench;
        this.view = view;
        this.jobs = jobs;
        this.asking = asking;
        this.begin = begin;
        language = view.language();
        says = language.messages("desk/reading");
        setTitle(says.text("reading-title"));
        setName("readingWindow");
        open = button("open", this::open);
        read = button("read", () -> read(Optional.empty()));
        draw = button("draw", this::draw);
        compare = button("compare", this::compare);
        lines = new UnderstoodTable(says);
        picture = new RoundPicture(language);
        question = new TermsQuestion(says, terms -> read(Optional.of(terms)));
        lines.getSelectionModel().addListSelectionListener(event -> picture.choose(lines.rounds()));
        setContentPane(layOut());
        getRootPane().setDefaultButton(read);
        Forms.onEscape(this, () -> setVisible(false));
        setSize(Look.onScreen(this, WIDTH_PX, HEIGHT_PX));
        setMinimumSize(new Dimension(760, 480));
        setLocationRelativeTo(owner);
        show(UnderstoodText.NOTHING, says.text("reading-empty"));
    }

    private JButton button(String name, Runnable deed) {
        JButton button = Forms.caption(new JButton(), says.text("button-" + name));
        button.setName("reading." + name);
        button.addActionListener(event -> deed.run());
        return button;
    }

    private JPanel layOut() {
        text.setName("reading.text");
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        Forms.tabLeaves(text);
        outcome.setName("reading.outcome");
        outcome.getAccessibleContext().setAccessibleName(says.text("reading-outcome"));
        level.setName("reading.level");
        upright.setName("reading.upright");
        JPanel given = new JPanel(
                new MigLayout("insets 12 12 12 6, gap 8 6, fill, wrap 2", "[][grow]", "[][grow, fill][][][]"));
        given.add(Forms.label(says.text("reading-text"), text), "span");
        given.add(new JScrollPane(text), "span, grow, wmin 0, width 100:100:");
        given.add(Forms.label(says.text("reading-level"), level));
        given.add(level, "wmin 80");
        given.add(Forms.label(says.text("reading-upright"), upright));
        given.add(upright, "wmin 80");
        given.add(open, "span, split 2");
        given.add(read, "");
        JPanel taken = new JPanel(new MigLayout("insets 12 6 12 12, gap 10 6, fillx, hidemode 3", "[grow, fill]"));
        taken.add(outcome, "wrap, wmin 0");
        taken.add(question, "wrap, wmin 0");
        JSplitPane split = new KeptSplit(
                "reading.split",
                JSplitPane.HORIZONTAL_SPLIT,
                new JScrollPane(lines),
                picture,
                KeptSplit.Keeps.SECOND,
                300);
        taken.add(split, "wrap, wmin 0, hmin 0, height 100:100:, grow, pushy");
        taken.add(compare, "split 2, growx 0, gapleft push");
        taken.add(draw, "growx 0");
        given.setMinimumSize(new Dimension(260, 100));
        taken.setMinimumSize(new Dimension(420, 100));
        JPanel content = new JPanel(new MigLayout("insets 0, fill", "[grow, fill]", "[grow, fill]"));
        content.add(
                new KeptSplit("reading.all", JSplitPane.HORIZONTAL_SPLIT, given, taken, KeptSplit.Keeps.FIRST, 380));
        return content;
    }

    private void open() {
        asking.textToOpen(says.text("files-texts")).ifPresent(this::open);
    }

    private void open(Path file) {
        begin(
                () -> TextFile.read(file),
                words -> {
                    text.setText(words);
                    text.setCaretPosition(0);
                    return says.text(
                            "news-opened", arg("file", file.getFileName().toString()));
                },
                problem -> problem instanceof FileProblemException known
                        ? new ProblemSentences(language).of(file, known.problem())
                        : says.text("news-failed"));
    }

    /** What is given in the two fields, for a text that does not tell how many stitches its base round has. */
    private PerSide<Integer> base() {
        return PerSide.pairs((Integer) level.getValue(), (Integer) upright.getValue());
    }

    private void read(Optional<Terms> terms) {
        String words = text.getText();
        PerSide<Integer> base = base();
        begin(
                () -> Read.of(words, language, terms, base),
                done -> {
                    show(
                            done.text(),
                            done.readings().isEmpty() ? done.text().summary(says) : says.text("reading-asks"));
                    question.show(done.readings());
                    return outcome.getText();
                },
                problem -> says.text("news-failed"));
    }

    /**
     * A text as it was understood.
     *
     * @param readings what would come of either answer, if it must be said in which terms the text is
     */
    private record Read(UnderstoodText text, Map<Terms, UnderstoodText> readings) {
        static Read of(String words, Language language, Optional<Terms> terms, PerSide<Integer> base) {
            UnderstoodText text = UnderstoodText.of(words, language, terms, base);
            Map<Terms, UnderstoodText> readings = new EnumMap<>(Terms.class);
            if (text.asksTerms()) {
                for (Terms each : Terms.values()) {
                    readings.put(each, UnderstoodText.of(words, language, Optional.of(each), base));
                }
            }
            return new Read(text, readings);
        }
    }

    private void show(UnderstoodText shown, String summary) {
        understood = shown;
        lines.show(shown.lines());
        picture.show(shown.chart());
        outcome.setText(summary);
        if (shown.saysBase()) {
            level.setValue(shown.base().top());
            upright.setValue(shown.base().left());
        }
        follow();
    }

    private void follow() {
        draw.setEnabled(understood.chart().isPresent());
        compare.setEnabled(understood.pattern().isPresent());
    }

    private void draw() {
        understood.chart().ifPresent(begin);
    }

    private void compare() {
        Chart chart = bench.chart();
        Instructions pattern = understood.pattern().orElseThrow();
        Optional<PerSide<Integer>> repeats =
                understood.saysBase() ? chart.border().repeats(0, understood.base()) : Optional.of(view.repeats());
        if (repeats.isEmpty()) {
            outcome.setText(says.text("compare-otherSides", arg("title", chart.title())));
            return;
        }
        begin(
                () -> new Prover(chart, language).prove(pattern, repeats.get()),
                result -> {
                    outcome.setText(compared(result, chart));
                    return says.text("news-compared");
                },
                problem -> says.text("news-failed"));
    }

    /** The differences, a line each, or that there are none. */
    private String compared(ProofResult result, Chart chart) {
        if (result.agrees()) {
            return says.text("compare-agrees", arg("title", chart.title()));
        }
        List<String> differences = new ProofSentences(language).of(result);
        return says.text(
                "compare-differs", arg("title", chart.title()), arg("differences", String.join("\n", differences)));
    }

    private <T> void begin(Reading<T> work, Jobs.Done<T> done, Jobs.Failed failed) {
        if (jobs.isBusy()) {
            outcome.setText(says.text("news-busy"));
            return;
        }
        jobs.begin(says.text("job-read"), worker -> work.run(), done, problem -> {
            String because = failed.because(problem);
            outcome.setText(because);
            return because;
        });
    }

    /** Work beside the event thread. */
    private interface Reading<T> {
        T run() throws FileProblemException;
    }
}
