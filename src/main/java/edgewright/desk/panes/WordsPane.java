package edgewright.desk.panes;

import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.TextClipboard;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.ViewChange;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.WorkbenchChange;
import edgewright.texts.Messages;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.awt.Insets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** The words of the round in which the cursor stands, as the written pattern will have them. */
public final class WordsPane extends JPanel {
    private final transient Workbench bench;
    private final transient ChartView view;
    private final transient Messages says;
    private final transient Messages common;
    private final JLabel heading = Look.heading("");
    private final JTextArea words = new JTextArea() {
        @Override
        public void updateUI() {
            super.updateUI();
            setFont(Look.font(14.5f));
            setBackground(UIManager.getColor("TextArea.background"));
        }
    };
    private final Map<Terms, JToggleButton> choice = new EnumMap<>(Terms.class);
    private Terms terms;
    private int shownRound;

    /** @param news is told when the words could not be copied */
    public WordsPane(Workbench bench, ChartView view, Consumer<String> news) {
        super(new MigLayout("insets 8 14 12 14, gap 6, fill", "[grow, fill][][]", "[][grow, fill]"));
        this.bench = bench;
        this.view = view;
        says = view.language().messages("desk/panes");
        common = view.language().messages("desk/common");
        terms = bench.chart().terms();
        words.setName("words");
        words.setEditable(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.setMargin(new Insets(8, 10, 8, 10));
        Forms.tabLeaves(words);
        add(heading, "wmin 0");
        add(termsChoice());
        JButton copy = Forms.caption(new JButton(), says.text("words-copy"), says.text("words-copy-tip"));
        copy.setName("copyWords");
        copy.addActionListener(event -> {
            try {
                TextClipboard.ofMachine().copy(words.getText());
            } catch (TextClipboard.BusyException e) {
                news.accept(common.text("clipboard-busy"));
            }
        });
        add(copy, "wrap");
        JScrollPane scroll = new JScrollPane(words);
        scroll.setName("wordsScroll");
        add(scroll, "span, hmin 40");
        bench.listen(this::changed);
        view.listen(change -> {
            if (change == ViewChange.COUNTING) {
                write();
            }
        });
        write();
    }

    private JPanel termsChoice() {
        JPanel panel = new JPanel(new MigLayout("insets 0, gap 0"));
        panel.setOpaque(false);
        for (Terms each : Terms.values()) {
            JToggleButton button = Forms.caption(
                    new JToggleButton(),
                    says.text("words-terms-" + each.name()),
                    says.text("words-tip-" + each.name()));
            button.setName("terms" + each.name());
            button.setSelected(each == terms);
            button.addActionListener(event -> {
                terms = each;
                write();
            });
            choice.put(each, button);
            panel.add(button);
        }
        Forms.oneOf(List.copyOf(choice.values()));
        return panel;
    }

    private void changed(WorkbenchChange change) {
        // Another chart, or this one in other terms, is shown in its own; until then in those that somebody has asked
        // for.
        if (change.kind() == WorkbenchChange.Kind.OPENED
                || change.before().terms() != change.after().terms()) {
            terms = change.after().terms();
            choice.get(terms).setSelected(true);
        }
        int round = bench.cursor().round();
        if (change.ofChart() || round != shownRound) {
            write();
        }
    }

    private String said(Chart chart) {
        return String.join(
                "\n",
                PatternWriter.round(
                                chart,
                                shownRound,
                                WordingOptions.of(chart, view.language())
                                        .withTerms(terms)
                                        .withCounting(view.counting()))
                        .lines());
    }

    /** What stands before words that nobody should follow, and is copied with them. */
    private String objection() {
        int errors = bench.verdict().countByRound().get(shownRound - 1).errors();
        return errors == 0 ? "" : says.text("words-unworkable", count("errors", errors)) + "\n";
    }

    private void write() {
        Chart chart = bench.chart();
        shownRound = bench.cursor().round();
        heading.setText(says.text("words-heading", number("round", shownRound)));
        words.getAccessibleContext().setAccessibleName(heading.getText());
        String text = bench.verdict().judged() ? objection() + said(chart) : common.text("words-ragged");
        if (!text.equals(words.getText())) {
            words.setText(text);
            words.setCaretPosition(0);
        }
    }
}
