package edgewright.desk.pattern;

import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.Terms;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.TextClipboard;
import edgewright.desk.parts.WhileShown;
import edgewright.desk.parts.WrappingRow;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.WorkbenchChange;
import edgewright.texts.Messages;
import edgewright.words.said.SaidRounds;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.RoundsLayout;
import edgewright.words.write.WordingOptions;
import java.awt.Component;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * The words of all rounds, as the written pattern has them: in the layout and for the hand that were published for last, and in the
 * chart's terms unless somebody asks for the others. Written anew beside the event thread after every edit, while they are seen.
 */
public final class PatternPane extends JPanel {
    /** In the settings: whether each round is told by itself. */
    private static final String EACH_ROUND = "words.eachRound";

    private final transient Workbench bench;
    private final transient ChartView view;
    private final transient Settings settings;
    private final transient Messages says;
    private final transient Messages common;
    private final transient Consumer<String> news;
    private final transient PatternWriting writing = new PatternWriting();
    private final transient PatternReading reading;
    private final transient Runnable write = new WhileShown(this, this::write);
    private final WordsText words = new WordsText();
    private final JToggleButton eachRound = new JToggleButton();
    private final Map<Terms, JToggleButton> choice = new EnumMap<>(Terms.class);
    private Terms terms;
    private String told = "";
    private transient Optional<Window> window = Optional.empty();
    /** For whom and how is published may have been chosen anew while another window was in front. */
    private final transient WindowAdapter back = new WindowAdapter() {
        @Override
        public void windowActivated(WindowEvent event) {
            write.run();
        }
    };
    /** What was written last, or is being written. */
    private transient Optional<Written> written = Optional.empty();

    /** A chart and how it is written down. */
    private record Written(Chart chart, WordingOptions options) {}

    /**
     * The words of the chart on the bench.
     *
     * @param news is told what is read, and when the words could not be copied
     * @param toChart gives the chart the focus
     */
    public PatternPane(Workbench bench, ChartView view, Settings settings, Consumer<String> news, Runnable toChart) {
        super(new MigLayout("insets 8 0 12 0, gap 6, fill", "[grow, fill]", "[][grow, fill]"));
        this.bench = bench;
        this.view = view;
        this.settings = settings;
        this.news = news;
        says = view.language().messages("desk/pattern");
        common = view.language().messages("desk/common");
        terms = bench.chart().terms();
        words.getAccessibleContext().setAccessibleName(says.text("words-name"));
        add(head(), "wmin 0, wrap");
        JScrollPane scroll = new JScrollPane(words);
        scroll.setName("wordsScroll");
        add(scroll, "gapx 14 14, hmin 40");
        reading = new PatternReading(bench, view, words, this::tell, toChart);
        bench.listen(this::changed);
        view.listen(change -> write.run());
        write.run();
    }

    private JPanel head() {
        WrappingRow head = new WrappingRow(6, 0);
        head.setBorder(BorderFactory.createEmptyBorder(0, 8, 0, 8));
        head.add(Look.heading(says.text("heading")));
        head.add(termsChoice());
        head.add(eachRound());
        head.add(copy());
        return head;
    }

    @Override
    public void addNotify() {
        super.addNotify();
        window = Optional.ofNullable(SwingUtilities.getWindowAncestor(this));
        window.ifPresent(of -> of.addWindowListener(back));
    }

    @Override
    public void removeNotify() {
        window.ifPresent(of -> of.removeWindowListener(back));
        super.removeNotify();
    }

    private JPanel termsChoice() {
        JPanel panel = new JPanel(new MigLayout("insets 0, gap 0"));
        panel.setOpaque(false);
        for (Terms each : Terms.values()) {
            JToggleButton button = Forms.caption(
                    new JToggleButton(), says.text("terms-" + each.name()), says.text("tip-" + each.name()));
            button.setName("terms" + each.name());
            button.setSelected(each == terms);
            button.addActionListener(event -> {
                terms = each;
                write.run();
            });
            choice.put(each, button);
            panel.add(button);
        }
        Forms.oneOf(List.copyOf(choice.values()));
        return panel;
    }

    private JToggleButton eachRound() {
        Forms.caption(eachRound, says.text("eachRound"), says.text("eachRound-tip"));
        eachRound.setName("wordsEachRound");
        eachRound.setSelected(Boolean.parseBoolean(settings.kept(EACH_ROUND)));
        eachRound.addActionListener(event -> {
            settings.keep(EACH_ROUND, Boolean.toString(eachRound.isSelected()));
            write.run();
        });
        return eachRound;
    }

    private JButton copy() {
        JButton copy = Forms.caption(new JButton(), says.text("copy"), says.text("copy-tip"));
        copy.setName("copyWords");
        copy.addActionListener(event -> {
            String chosen = words.getSelectedText();
            try {
                TextClipboard.ofMachine().copy(chosen == null ? words.getText() : chosen);
            } catch (TextClipboard.BusyException e) {
                news.accept(common.text("clipboard-busy"));
            }
        });
        return copy;
    }

    /** Says what is read: to the status line, which has room for it, and to whoever listens to a screen reader. */
    private void tell(String sentence) {
        if (!sentence.equals(told)) {
            told = sentence;
            words.getAccessibleContext().setAccessibleDescription(sentence);
            if (!sentence.isEmpty()) {
                news.accept(sentence);
            }
        }
    }

    private void changed(WorkbenchChange change) {
        // Another chart, or this one in other terms, is shown in its own; until then in those that somebody has asked
        // for.
        if (change.kind() == WorkbenchChange.Kind.OPENED
                || change.before().terms() != change.after().terms()) {
            terms = change.after().terms();
            choice.get(terms).setSelected(true);
        }
        if (change.ofChart()) {
            write.run();
        }
        if (change.kind() == WorkbenchChange.Kind.CURSOR) {
            reading.followCursor();
        }
    }

    private WordingOptions options(Chart chart) {
        return WordingOptions.of(chart, view.language())
                .withTerms(terms)
                .withCounting(view.counting())
                .withHand(settings.choice(HookHand.RIGHT))
                .withLayout(settings.choice(RoundsLayout.SENTENCES))
                .withEachRound(eachRound.isSelected());
    }

    private void write() {
        Chart chart = bench.chart();
        Written wanted = new Written(chart, options(chart));
        if (written.filter(wanted::equals).isPresent()) {
            return;
        }
        written = Optional.of(wanted);
        if (!bench.verdict().judged()) {
            writing.forget();
            reading.showOnly(common.text("words-ragged"));
            return;
        }
        Function<SaidRounds, String> objection = objection();
        writing.write(() -> ShownPattern.of(PatternWriter.said(chart, wanted.options()), objection), reading::show);
    }

    /** What stands before words that nobody should follow, and is copied with them. */
    private Function<SaidRounds, String> objection() {
        List<Integer> errors = bench.verdict().countByRound().stream()
                .map(count -> count.errors())
                .toList();
        return rounds -> {
            int sum = IntStream.rangeClosed(rounds.first(), rounds.last())
                    .map(round -> errors.get(round - 1))
                    .sum();
            return sum == 0
                    ? ""
                    : says.text(
                            "unworkable", count("errors", sum), count("rounds", rounds.last() - rounds.first() + 1));
        };
    }

    /** Where the keys go that are led to it. */
    public Component firstPart() {
        return words;
    }
}
