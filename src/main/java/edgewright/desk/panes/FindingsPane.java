package edgewright.desk.panes;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.check.Finding;
import edgewright.check.FindingCount;
import edgewright.check.FindingSentences;
import edgewright.check.Remedy;
import edgewright.check.Severity;
import edgewright.check.Verdict;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.SeverityIcon;
import edgewright.desk.parts.TextColumn;
import edgewright.desk.work.PlaceTexts;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.WorkbenchChange;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractListModel;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** The findings in working order; the chosen one is explained below, with what can be done about it. */
public final class FindingsPane extends JPanel {
    private static final String SOME = "some";
    private static final String NONE = "none";

    private final transient Workbench bench;
    private final transient FindingSentences sentences;
    private final transient Messages says;
    private final Rows rows = new Rows();
    private final JList<Finding> list = new JList<>(rows);
    private final JLabel summary = Look.quiet("");
    private final FindingPage page;
    private final CardLayout card = new CardLayout();
    private final JPanel cards = new JPanel(card);
    private final JTextArea noneProse;
    /** Set while the list follows the chart, so that it does not lead the cursor about. */
    private boolean following;

    public FindingsPane(Workbench bench, FindingSentences sentences, Language language) {
        super(new MigLayout("insets 10 12 12 12, gap 4, fill", "[grow, fill]", "[][][grow, fill]"));
        this.bench = bench;
        this.sentences = sentences;
        says = language.messages("desk/panes");
        page = new FindingPage(sentences, language, this::remedy);
        noneProse = Forms.prose(says.text("findings-none-text"));
        noneProse.setName("noFindingsText");
        setUpList();
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
        JScrollPane scroll = new JScrollPane(list);
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, scroll, page);
        split.setName("findingsSplit");
        split.setBorder(BorderFactory.createEmptyBorder());
        split.setResizeWeight(0.35);
        split.setDividerLocation(236);
        add(Look.heading(says.text("findings-heading")), "wrap");
        add(summary, "wrap, gapbottom 4, wmin 0");
        cards.add(split, SOME);
        cards.add(noneCard(), NONE);
        add(cards);
        bench.listen(this::changed);
        fill();
    }

    private void setUpList() {
        list.setName("findings");
        list.getAccessibleContext().setAccessibleName(says.text("findings-heading"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Row());
        list.setFixedCellHeight(46);
        // As wide as its window; else every finding would be laid out at every edit to find the widest.
        list.setFixedCellWidth(1);
    }

    /** The finding that is explained. */
    Optional<Finding> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    /** Chooses the finding that many further on in the list, around its ends, and goes to its stitch. */
    public void step(int by) {
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
            apply(page.offered().get(remedy - 1));
        }
    }

    /** Does what helps, and has the keys choose the next finding. */
    private void remedy(Remedy remedy) {
        apply(remedy);
        if (rows.getSize() > 0) {
            list.requestFocusInWindow();
        }
    }

    /** Does what helps, and goes on to the finding that now stands in the place of the one that it was for. */
    private void apply(Remedy remedy) {
        int at = list.getSelectedIndex();
        bench.edit(says.text("edit-remedy", arg("remedy", sentences.action(remedy))), remedy::applyTo);
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
            following = true;
            list.setSelectedValue(here.get(0), true);
            following = false;
            explain();
        }
    }

    private void jump() {
        chosen().flatMap(finding -> PlaceTexts.of(finding, bench.chart())).ifPresent(bench::moveCursor);
    }

    private void changed(WorkbenchChange change) {
        if (change.ofChart()) {
            fill();
        }
        if (change.ofChart() || change.kind() == WorkbenchChange.Kind.CURSOR) {
            followCursor();
        }
    }

    private void fill() {
        Optional<Finding> before = chosen();
        Verdict verdict = bench.verdict();
        following = true;
        rows.show(verdict.findings());
        int again = before.map(verdict.findings()::indexOf).orElse(-1);
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
        card.show(cards, rows.getSize() == 0 ? NONE : SOME);
        chosen().ifPresentOrElse(page::explain, page::empty);
    }

    /** What stands here when there is nothing to say against the chart. */
    private JPanel noneCard() {
        TextColumn none = new TextColumn(12, 0, 0);
        none.setName("noFindings");
        none.heading(says.text("findings-none"));
        none.add(noneProse);
        return none;
    }

    /** The findings as rows; the whole list is exchanged at once. */
    private static final class Rows extends AbstractListModel<Finding> {
        private transient List<Finding> findings = List.of();

        void show(List<Finding> shown) {
            int before = findings.size();
            findings = shown;
            if (before > 0) {
                fireIntervalRemoved(this, 0, before - 1);
            }
            if (!findings.isEmpty()) {
                fireIntervalAdded(this, 0, findings.size() - 1);
            }
        }

        @Override
        public int getSize() {
            return findings.size();
        }

        @Override
        public Finding getElementAt(int index) {
            return findings.get(index);
        }
    }

    /** A finding in two lines: what the matter is, and where. */
    private final class Row extends JPanel implements ListCellRenderer<Finding> {
        private final JLabel icon = new JLabel();
        private final JLabel title = new JLabel();
        private final JLabel where = new JLabel();

        Row() {
            super(new MigLayout("insets 4 8 4 8, gap 8 0, fill", "[][grow, fill]", "[][]"));
            add(icon, "spany 2, top, gaptop 2");
            add(title, "wrap, wmin 0");
            add(where, "wmin 0");
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Finding> of, Finding finding, int index, boolean chosen, boolean focused) {
            setBackground(chosen ? of.getSelectionBackground() : of.getBackground());
            title.setForeground(chosen ? of.getSelectionForeground() : of.getForeground());
            where.setForeground(chosen ? of.getSelectionForeground() : Look.colour("quiet"));
            icon.setIcon(
                    SeverityIcon.of(finding.severity() == Severity.ERROR, chosen ? of.getSelectionForeground() : null));
            title.setText(says.text(
                    "findings-number", number("place", index + 1), arg("title", sentences.title(finding.rule()))));
            where.setText(sentences.of(finding.place()));
            getAccessibleContext().setAccessibleName(sentences.of(finding));
            return this;
        }
    }
}
