package edgewright.desk.panes;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.check.Finding;
import edgewright.check.FindingCount;
import edgewright.check.FindingSentences;
import edgewright.check.Verdict;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.TextColumn;
import edgewright.desk.work.PlaceTexts;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.WorkbenchChange;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** The findings in working order; the chosen one is explained below, with what can be done about it. */
public final class FindingsPane extends JPanel {
    /** So many remedies of the chosen finding have keys of their own. */
    public static final int REMEDIES_WITH_KEYS = 3;

    private static final String SOME = "some";
    private static final String NONE = "none";

    private final transient Workbench bench;
    private final transient Messages says;
    private final transient HelpLook look;
    private final FindingRows rows = new FindingRows();
    private final JList<Finding> list = new JList<>(rows);
    private final JTextArea summary = Forms.prose("");
    private final FindingFilter filter;
    private final FindingPage page;
    private final CardLayout card = new CardLayout();
    private final JPanel cards = new JPanel(card);
    private final JTextArea noneProse;
    /** Set while the list follows the chart, so that it does not lead the cursor about. */
    private boolean following;
    /** Of which chart the findings are listed. */
    private transient Verdict listed;

    public FindingsPane(Workbench bench, FindingSentences sentences, Language language) {
        super(new MigLayout("insets 10 12 12 12, gap 4, fill, hidemode 3", "[grow, fill]", "[][][][grow, fill]"));
        this.bench = bench;
        says = language.messages("desk/panes");
        look = new HelpLook(bench);
        page = new FindingPage(sentences, language, look, this::help);
        filter = new FindingFilter(sentences, says, this::fill);
        noneProse = Forms.prose(says.text("findings-none-text"));
        noneProse.setName("noFindingsText");
        setUpList(sentences);
        list.addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting() && !following) {
                explain();
                jump();
            }
        });
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseReleased(MouseEvent event) {
                // Also where it was chosen already and the cursor has gone elsewhere.
                jump();
            }
        });
        summary.setName("findingsSummary");
        Look.write(summary, "quiet");
        JScrollPane scroll = new JScrollPane(list);
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, scroll, page);
        split.setName("findingsSplit");
        split.setBorder(BorderFactory.createEmptyBorder());
        split.setResizeWeight(0.35);
        split.setDividerLocation(236);
        add(Look.heading(says.text("findings-heading")), "wrap");
        add(summary, "wrap, gapbottom 4, wmin 0");
        add(filter, "wrap, gapbottom 4, wmin 0");
        cards.add(split, SOME);
        cards.add(noneCard(), NONE);
        add(cards);
        bench.listen(this::changed);
        fill();
    }

    private void setUpList(FindingSentences sentences) {
        list.setName("findings");
        list.getAccessibleContext().setAccessibleName(says.text("findings-heading"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new FindingRow(rows, sentences, says));
        list.setFixedCellHeight(FindingRow.HEIGHT_PX);
        // As wide as its window; else every finding would be laid out at every edit to find the widest.
        list.setFixedCellWidth(1);
        list.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "toRemedy");
        list.getActionMap().put("toRemedy", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                page.toFirstRemedy();
            }
        });
    }

    /** The finding that is explained. */
    Optional<Finding> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    /** Chooses the finding that many further on in the list, around its ends, and goes to its stitch. */
    public void step(int by) {
        if (rows.getSize() == 0) {
            filter.chooseAll();
            fill();
        }
        if (rows.getSize() == 0) {
            return;
        }
        int now = list.getSelectedIndex();
        int next = now < 0 ? by > 0 ? 0 : rows.getSize() - 1 : Math.floorMod(now + by, rows.getSize());
        list.setSelectedIndex(next);
        list.ensureIndexIsVisible(next);
        jump();
    }

    /** What has the keys first when somebody comes to this pane. */
    public Component firstPart() {
        return rows.getSize() == 0 ? noneProse : list;
    }

    /** Whether that many remedies, or more, are known for the finding that is explained. */
    public boolean canMend(int remedy) {
        return page.offered().size() >= remedy;
    }

    /** Does what the remedy of that number does, counted from 1; the keys stay where they are. */
    public void mend(int remedy) {
        if (canMend(remedy)) {
            apply(page.help(page.offered().get(remedy - 1)));
        }
    }

    /** Whether a finding is explained of which rule there are others. */
    public boolean canMendAll() {
        return page.ofKind() > 1;
    }

    /** Mends all findings of the rule of the one that is explained, as soon as it is known how; the keys stay where they are. */
    public void mendAll() {
        page.mendAll(this::apply);
    }

    /** Does what helps, and has the keys choose the next finding. */
    private void help(Help help) {
        apply(help);
        if (rows.getSize() > 0) {
            list.requestFocusInWindow();
        }
    }

    /** Does what helps, and goes on to the finding that now stands in the place of the one that it was for. */
    private void apply(Help help) {
        int at = list.getSelectedIndex();
        bench.edit(help.name(), help.edit());
        if (rows.getSize() > 0) {
            int next = Math.min(Math.max(0, at), rows.getSize() - 1);
            list.setSelectedIndex(next);
            list.ensureIndexIsVisible(next);
        }
    }

    /** Chooses a finding of the stitch at the cursor, if there is one and none of its findings is chosen. */
    private void followCursor() {
        List<Finding> here = bench.verdict().at(bench.cursor());
        if (!here.isEmpty() && chosen().filter(here::contains).isEmpty()) {
            here.stream()
                    .mapToInt(rows::indexOf)
                    .filter(row -> row >= 0)
                    .findFirst()
                    .ifPresent(row -> {
                        following = true;
                        list.setSelectedIndex(row);
                        list.ensureIndexIsVisible(row);
                        following = false;
                        explain();
                    });
        }
    }

    private void jump() {
        chosen().flatMap(finding -> PlaceTexts.of(finding, bench.chart())).ifPresent(bench::moveCursor);
    }

    private void changed(WorkbenchChange change) {
        if (look.isShown() && change.kind() == WorkbenchChange.Kind.EDITED) {
            // What helps is only looked at: the list is of the chart as it is.
            return;
        }
        look.leave();
        if (change.kind() == WorkbenchChange.Kind.OPENED) {
            filter.chooseAll();
        }
        if (change.ofChart() && !isListed()) {
            fill();
        }
        if (change.ofChart() || change.kind() == WorkbenchChange.Kind.CURSOR) {
            followCursor();
        }
    }

    /** Whether the chart was listed already, as after a look at something else. */
    @SuppressWarnings("ReferenceEquality") // it is that very chart again
    private boolean isListed() {
        return listed != null && listed.chart() == bench.chart();
    }

    private void fill() {
        bench.stopLooking();
        Optional<Finding> before = chosen();
        Verdict verdict = bench.verdict();
        listed = verdict;
        following = true;
        filter.offer(verdict.findings());
        rows.show(filter.choice().of(verdict.findings()));
        int again = before.map(rows::indexOf).orElse(-1);
        if (again >= 0) {
            list.setSelectedIndex(again);
        } else {
            list.clearSelection();
        }
        following = false;
        summary.setText(summary(verdict));
        explain();
    }

    private String summary(Verdict verdict) {
        if (!verdict.judged()) {
            return says.text("findings-notJudged");
        }
        FindingCount found = verdict.count();
        String said = says.text(
                "findings-summary",
                count("errors", found.errors()),
                count("warnings", found.warnings()),
                count("stitches", verdict.longStitchesJudged()));
        return verdict.untold() == 0
                ? said
                : says.text(
                        "findings-more",
                        arg("summary", said),
                        count("listed", verdict.findings().size()),
                        count("more", verdict.untold()));
    }

    private void explain() {
        int findings = listed.findings().size();
        card.show(cards, findings == 0 ? NONE : SOME);
        if (findings > 0 && rows.getSize() == 0) {
            page.filtered(findings);
        } else {
            chosen().ifPresentOrElse(finding -> page.explain(finding, listed), page::empty);
        }
    }

    /** What stands here when there is nothing to say against the chart. */
    private JPanel noneCard() {
        TextColumn none = new TextColumn(12, 0, 0);
        none.setName("noFindings");
        none.heading(says.text("findings-none"));
        none.add(noneProse);
        return none;
    }
}
