package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.check.FindingSentences;
import edgewright.desk.canvas.CanvasKeys;
import edgewright.desk.canvas.ChartCanvas;
import edgewright.desk.canvas.MotifCommands;
import edgewright.desk.command.Command;
import edgewright.desk.command.Commands;
import edgewright.desk.jobs.DeskState;
import edgewright.desk.jobs.FileCommands;
import edgewright.desk.journal.DeskJournal;
import edgewright.desk.panes.FindingsPane;
import edgewright.desk.panes.RoundsPane;
import edgewright.desk.panes.ToolTray;
import edgewright.desk.panes.YarnsPane;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.KeptSplit;
import edgewright.desk.parts.Look;
import edgewright.desk.pattern.PatternPane;
import edgewright.desk.tool.Toolbox;
import edgewright.desk.work.Document;
import edgewright.desk.work.Looks;
import edgewright.desk.work.ViewMemory;
import edgewright.desk.work.WorkbenchChange;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * All that belongs to one document: the chart in the middle like a table with work on it, its words below, the findings beside
 * it, the rounds and yarns on the side from which a round is worked, and what can be done with them.
 */
final class DocumentPane extends JPanel {
    private static final int FINDINGS_PX = 310;
    private static final int SIDE_PX = 326;
    private static final int WORDS_PX = 168;
    private static final int YARNS_PX = 286;

    private final transient Document document;
    private final transient DeskState desk;
    private final transient FileCommands files;
    private final transient DocumentWindows windows;
    private final transient Commands commands = new Commands();
    private final transient PaneWalk walk = new PaneWalk();
    private final ChartCanvas canvas;
    private final transient MotifCommands motifs;
    private final FindingsPane findings;
    private final RoundsPane rounds;
    private final YarnsPane yarns;
    private transient Optional<DeskJournal.Kept> kept = Optional.empty();
    private transient Optional<Component> hadKeys = Optional.empty();
    private boolean blank;
    private Looks looks;
    private JSplitPane side;

    /**
     * The panes of a document.
     *
     * @param blank whether it only lies there until another chart takes its place
     * @param lay lays a chart that was made in it on the desk
     */
    DocumentPane(Document document, boolean blank, DeskState desk, DeskActions actions, Consumer<Chart> lay) {
        super(new BorderLayout());
        this.document = document;
        this.blank = blank;
        this.desk = desk;
        looks = desk.settings().looks();
        setName("document");
        windows = new DocumentWindows(desk.window());
        files = new FileCommands(document.bench(), desk);
        canvas = new ChartCanvas(document.bench(), document.view());
        motifs = new MotifCommands(canvas, desk.news());
        findings = new FindingsPane(document.bench(), new FindingSentences(desk.language()), desk.language());
        rounds = new RoundsPane(document.bench(), document.view(), actions);
        yarns = new YarnsPane(document.bench(), actions, desk.language());
        add(layOut(actions));
        new DocumentCommands(this, desk, lay).all().forEach(command -> commands.add(inItsWindows(command)));
        CanvasKeys.bind(canvas, commands, desk.language());
        rounds.rounds().getSelectionModel().addListSelectionListener(event -> actions.refresh());
        canvas.marking().listen(actions::refresh);
        canvas.toolbox().listen(change -> {
            if (change != Toolbox.Change.GHOST) {
                actions.refresh();
            }
        });
        document.bench().listen(change -> {
            if (change.kind() == WorkbenchChange.Kind.OPENED) {
                this.blank = false;
                canvas.requestFocusInWindow();
            }
        });
    }

    private Command inItsWindows(Command command) {
        return command.doing(deed -> () -> {
            document.bench().stopLooking();
            windows.during(deed);
        });
    }

    Document document() {
        return document;
    }

    FileCommands files() {
        return files;
    }

    ChartCanvas canvas() {
        return canvas;
    }

    MotifCommands motifs() {
        return motifs;
    }

    FindingsPane findings() {
        return findings;
    }

    RoundsPane rounds() {
        return rounds;
    }

    YarnsPane yarns() {
        return yarns;
    }

    PaneWalk walk() {
        return walk;
    }

    /** Has its unsaved work be kept in a journal, and its file watched, until it is put away. */
    void keepIn(DeskJournal journal) {
        kept = Optional.of(journal.keep(document.bench(), files));
    }

    /** As it is kept in the journal; empty where there is none. */
    Optional<DeskJournal.Kept> kept() {
        return kept;
    }

    /** What can be done with the document. */
    Commands commands() {
        return commands;
    }

    /** Whether another chart may take its place, since nothing was ever done with it. */
    boolean isReplaceable() {
        return blank && document.isUntouched();
    }

    /** Takes on the look of the desk, which may have changed while this was not part of the window. */
    void lookAgain() {
        if (!looks.equals(desk.settings().looks())) {
            Look.renew(this);
            looks = desk.settings().looks();
        }
    }

    /** Makes the side pane at least as wide as its buttons, in letters of any size. */
    void makeRoom() {
        int least = Math.max(
                rounds.getLayout().minimumLayoutSize(rounds).width,
                yarns.getLayout().minimumLayoutSize(yarns).width);
        side.setMinimumSize(new Dimension(Math.max(298, least), 100));
        side.revalidate();
    }

    /** Comes to the front: the keys are where they were when it was there last. */
    void toFront() {
        walk.watch();
        Look.see(document.view().seeing().vision());
        windows.show();
        hadKeys.filter(Component::isShowing).orElse(canvas).requestFocusInWindow();
    }

    /** Another document comes to the front. */
    void toRest() {
        looks = desk.settings().looks();
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        hadKeys = Optional.ofNullable(owner).filter(part -> SwingUtilities.isDescendingFrom(part, this));
        walk.rest();
        windows.hide();
    }

    /** Is put away for good: nothing listens any more, and its windows are gone. */
    void close() {
        walk.rest();
        kept.ifPresent(DeskJournal.Kept::end);
        ViewMemory.keep(desk.settings(), document.view());
        document.close();
        windows.dispose();
    }

    private JSplitPane layOut(DeskActions actions) {
        JScrollPane table = new JScrollPane(canvas);
        table.setName("table");
        table.setBorder(BorderFactory.createEmptyBorder());
        Look.ground(table.getViewport(), "canvas");
        ToolTray tray = new ToolTray(document.bench(), document.view(), actions, canvas.toolbox());
        JPanel sheet = new JPanel(new BorderLayout());
        sheet.add(table);
        JPanel chart = new JPanel(new MigLayout("insets 0, gap 0, fill", "[grow, fill]", "[][grow, fill]"));
        chart.add(tray, "wrap");
        chart.add(sheet);
        PatternPane words = new PatternPane(
                document.bench(), document.view(), desk.settings(), desk.news(), canvas::requestFocusInWindow);
        walk.add(findings, findings::firstPart);
        walk.add(tray, tray::firstPart);
        walk.add(sheet, () -> canvas);
        walk.add(words, words::firstPart);
        walk.add(rounds, rounds::rounds);
        walk.add(yarns, yarns::firstPart);
        JSplitPane middle =
                split("wordsSplit", JSplitPane.VERTICAL_SPLIT, chart, words, KeptSplit.Keeps.SECOND, WORDS_PX);
        JSplitPane side =
                split("roundsSplit", JSplitPane.VERTICAL_SPLIT, rounds, yarns, KeptSplit.Keeps.SECOND, YARNS_PX);
        JSplitPane right =
                split("sideSplit", JSplitPane.HORIZONTAL_SPLIT, middle, side, KeptSplit.Keeps.SECOND, SIDE_PX);
        chart.setMinimumSize(new Dimension(330, 160));
        words.setMinimumSize(new Dimension(100, 90));
        rounds.setMinimumSize(new Dimension(100, rounds.getMinimumSize().height));
        yarns.setMinimumSize(new Dimension(100, 190));
        findings.setMinimumSize(new Dimension(240, 100));
        this.side = side;
        middle.setMinimumSize(new Dimension(330, 100));
        makeRoom();
        right.setMinimumSize(new Dimension(330 + side.getMinimumSize().width + 8, 100));
        return split("deskSplit", JSplitPane.HORIZONTAL_SPLIT, findings, right, KeptSplit.Keeps.FIRST, FINDINGS_PX);
    }

    private JSplitPane split(
            String name, int way, Component first, Component second, KeptSplit.Keeps keeps, int wantedPx) {
        return new KeptSplit(name, way, first, second, keeps, wantedPx).remembered(desk.settings());
    }
}
