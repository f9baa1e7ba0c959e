package edgewright.desk;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.Stitch;
import edgewright.check.FindingSentences;
import edgewright.desk.canvas.ChartCanvas;
import edgewright.desk.canvas.MotifCommands;
import edgewright.desk.canvas.ToolCommands;
import edgewright.desk.dialogs.NewChartDialog;
import edgewright.desk.guide.GuideCommands;
import edgewright.desk.jobs.FileCommands;
import edgewright.desk.jobs.Lanes;
import edgewright.desk.jobs.Lanes.Lane;
import edgewright.desk.jobs.Questions;
import edgewright.desk.journal.DeskJournal;
import edgewright.desk.output.ProofCommands;
import edgewright.desk.output.PublishCommands;
import edgewright.desk.own.OwnCommands;
import edgewright.desk.panes.FindingsPane;
import edgewright.desk.panes.RoundsPane;
import edgewright.desk.panes.StatusLine;
import edgewright.desk.panes.ToolTray;
import edgewright.desk.panes.YarnsPane;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.DeskIcon;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.KeptPlace;
import edgewright.desk.parts.KeptSplit;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.ShortText;
import edgewright.desk.pattern.PatternPane;
import edgewright.desk.piece.PieceWindow;
import edgewright.desk.reading.ReadingCommands;
import edgewright.desk.work.ChartCommands;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Document;
import edgewright.desk.work.KnownMistakes;
import edgewright.desk.work.RoundRange;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.desk.work.ViewMemory;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.WorkbenchChange;
import edgewright.desk.yarn.YarnWindow;
import edgewright.file.JournalFolder;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import net.miginfocom.swing.MigLayout;

/**
 * The window: the chart in the middle like a table with work on it, its words below, the findings beside it, and the rounds and
 * yarns on the side from which a round is worked.
 */
public final class DeskFrame extends JFrame {
    private static final int WIDTH_PX = 1900;
    private static final int HEIGHT_PX = 1160;
    private static final int FINDINGS_PX = 310;
    private static final int SIDE_PX = 326;
    private static final int WORDS_PX = 132;
    private static final int YARNS_PX = 286;
    private static final int MOST_OF_TITLE = 80;
    private static final int MOST_OF_FILE = 60;
    private static final int MOST_OF_EDIT = 40;

    private final transient Document document;
    private final transient Workbench bench;
    private final transient Settings settings;
    private final transient ChartView view;
    private final transient DeskActions actions;
    private final transient Messages says;
    private final transient Questions asking;
    private final transient FindingSentences sentences;
    private final transient Lanes lanes;
    private final transient FileCommands files;
    private final transient PublishCommands publishing;
    private final transient ProofCommands proving;
    private final transient FormCommands forms;
    private final StatusLine status;
    private final ChartCanvas canvas;
    private final RoundsPane rounds;
    private final YarnsPane yarns;
    private final FindingsPane findings;
    private transient Optional<HelpWindow> help = Optional.empty();
    private transient Optional<PieceWindow> piece = Optional.empty();
    private final transient KnownMistakes mistakes = new KnownMistakes();
    private boolean telling;

    DeskFrame(Chart first, Settings settings, Language language) {
        this.settings = settings;
        document =
                new Document(new Workbench(first, Optional.empty(), language), ViewMemory.recall(settings, language));
        bench = document.bench();
        view = document.view();
        sentences = new FindingSentences(language);
        actions = new DeskActions(language);
        says = language.messages("desk");
        asking = new Questions(this, language);
        setIconImages(DeskIcon.images());
        setName("desk");
        setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
        status = new StatusLine(bench, language);
        lanes = new Lanes(status::board, language);
        files = new FileCommands(bench, settings, asking, lanes.in(Lane.FILE), status::tell, view.language());
        publishing = new PublishCommands(this, bench, asking, lanes.in(Lane.EXPORT), view, settings);
        proving = new ProofCommands(this, bench, view, lanes.in(Lane.EXPORT));
        canvas = new ChartCanvas(bench, view);
        forms = new FormCommands(this, bench, view);
        findings = new FindingsPane(bench, sentences, language);
        addActions();
        rounds = new RoundsPane(bench, view, actions);
        yarns = new YarnsPane(bench, actions, language);
        setJMenuBar(Menus.bar(
                bench,
                view,
                settings,
                actions,
                path -> files.whenNothingIsLost(() -> files.open(path)),
                yarn -> ChartCommands.changeYarn(bench, rounds.chosen(), yarn)));
        DrawMenus.addTo(getJMenuBar(), actions, canvas.toolbox(), language);
        setContentPane(layOut());
        follow();
        listen();
        addWindowListener(new Doors());
        setMinimumSize(new Dimension(900, 620));
        if (!KeptPlace.restore(this, settings)) {
            setSize(Look.onScreen(this, WIDTH_PX, HEIGHT_PX));
            setLocationRelativeTo(null);
        }
        new SeeingCommands(this, bench, view, settings, actions).addTo(getJMenuBar());
    }

    private void listen() {
        bench.listen(change -> {
            follow();
            if (change.kind() == WorkbenchChange.Kind.OPENED) {
                canvas.requestFocusInWindow();
            }
        });
        view.listen(change -> actions.refresh());
        lanes.listen(actions::refresh);
        rounds.rounds().getSelectionModel().addListSelectionListener(event -> actions.refresh());
        actions.afterRefresh(this::nameUndo);
    }

    public Workbench bench() {
        return bench;
    }

    Document document() {
        return document;
    }

    ChartCanvas canvas() {
        return canvas;
    }

    /** Opens a chart file; nothing is lost by it, since the desk was just set up. */
    public void open(Path file) {
        files.open(file);
    }

    /** Keeps unsaved work in this folder, and offers what was lost; then goes on, unless that is laid on the desk. */
    void keepJournal(JournalFolder folder, Runnable then) {
        new DeskJournal(this, bench, files, lanes.in(Lane.FILE), asking, status::tell, view.language()).begin(folder, then);
    }

    /**
     * Tells of a mistake in the program itself, in words; what a developer needs can be copied. One at a time, and each mistake
     * once; when it is met again, as at every painting, the status line says so.
     */
    void tellOf(Throwable problem) {
        if (!mistakes.isNew(problem)) {
            status.tell(says.text("news-mistakeAgain"));
        } else if (!telling) {
            telling = true;
            try {
                asking.tellOfMistake(problem);
            } finally {
                telling = false;
            }
        }
    }

    private JPanel layOut() {
        JScrollPane table = new JScrollPane(canvas);
        table.setName("table");
        table.setBorder(BorderFactory.createEmptyBorder());
        Look.ground(table.getViewport(), "canvas");
        JPanel chart = new JPanel(new MigLayout("insets 0, gap 0, fill", "[grow, fill]", "[][grow, fill]"));
        chart.add(new ToolTray(bench, view, actions, canvas.toolbox()), "wrap");
        chart.add(table);
        PatternPane words = new PatternPane(bench, view, settings, status::tell, canvas::requestFocusInWindow);
        JSplitPane middle = new KeptSplit(
                        "wordsSplit", JSplitPane.VERTICAL_SPLIT, chart, words, KeptSplit.Keeps.SECOND, WORDS_PX)
                .remembered(settings);
        JSplitPane side = new KeptSplit(
                        "roundsSplit", JSplitPane.VERTICAL_SPLIT, rounds, yarns, KeptSplit.Keeps.SECOND, YARNS_PX)
                .remembered(settings);
        JSplitPane right = new KeptSplit(
                        "sideSplit", JSplitPane.HORIZONTAL_SPLIT, middle, side, KeptSplit.Keeps.SECOND, SIDE_PX)
                .remembered(settings);
        JSplitPane all = new KeptSplit(
                        "deskSplit", JSplitPane.HORIZONTAL_SPLIT, findings, right, KeptSplit.Keeps.FIRST, FINDINGS_PX)
                .remembered(settings);
        chart.setMinimumSize(new Dimension(330, 160));
        words.setMinimumSize(new Dimension(100, 90));
        rounds.setMinimumSize(new Dimension(100, 320));
        yarns.setMinimumSize(new Dimension(100, 190));
        findings.setMinimumSize(new Dimension(240, 100));
        side.setMinimumSize(new Dimension(298, 100));
        middle.setMinimumSize(new Dimension(330, 100));
        right.setMinimumSize(new Dimension(330 + 298 + 8, 100));
        JPanel content = new JPanel(new MigLayout("insets 0, gap 0, fill", "[grow, fill]", "[grow, fill][]"));
        content.add(all, "wrap");
        content.add(status);
        return content;
    }

    private void addActions() {
        addFileActions();
        addEditActions();
        addRoundActions();
        addViewActions();
    }

    private void addFileActions() {
        actions.add("new", () -> files.whenNothingIsLost(this::begin), this::isFree);
        actions.add(
                "open", () -> files.whenNothingIsLost(() -> asking.fileToOpen().ifPresent(files::open)), this::isFree);
        actions.add("save", () -> files.save(() -> {}), this::isFree);
        actions.add("saveAs", () -> files.saveAs(() -> {}), this::isFree);
        actions.add(
                "readText", new ReadingCommands(this, bench, view, lanes.in(Lane.PREVIEW), asking, this::lay)::read);
        actions.add(
                "prove", proving::prove, () -> canExport() && !bench.verdict().hasErrors());
        actions.add("publish", publishing::publish, this::canExport);
        actions.add("picture", publishing::picture, this::canExport);
        actions.add("saveWords", publishing::words, this::canExport);
        actions.add("properties", forms::properties);
        actions.add("ownPages", new OwnCommands(this, bench, asking, view.language())::ownPages);
        new GuideCommands(this, bench, view).addTo(actions);
        actions.add("quit", this::quit);
    }

    private void lay(Chart chart) {
        files.whenNothingIsLost(() -> files.begin(chart));
    }

    private void addEditActions() {
        actions.add("undo", bench::undo, () -> bench.undoName().isPresent());
        actions.add("redo", bench::redo, () -> bench.redoName().isPresent());
        actions.get("redo").alsoOn(getRootPane());
        new MotifCommands(canvas, status::tell).addTo(actions);
        actions.add(
                "nextFinding",
                () -> findings.step(1),
                () -> !bench.verdict().findings().isEmpty());
        actions.add(
                "previousFinding",
                () -> findings.step(-1),
                () -> !bench.verdict().findings().isEmpty());
        actions.add("evenOut", () -> ChartCommands.evenOut(bench), () -> !ChartCommands.isEven(bench));
        for (Stitch stitch : Stitch.values()) {
            actions.add("choose." + stitch.letter(), () -> bench.choose(stitch));
        }
        new ToolCommands(canvas).addTo(actions);
        actions.add("insertColumn", () -> ChartCommands.insertColumn(bench), () -> ChartCommands.isEven(bench));
        actions.add(
                "deleteColumn", () -> ChartCommands.deleteColumn(bench), () -> ChartCommands.canDeleteColumn(bench));
        actions.add("side", forms::reshape, () -> ChartCommands.isEven(bench));
        actions.add("shiftOn", () -> ChartCommands.shiftRepeat(bench, 1), () -> ChartCommands.canShift(bench));
        actions.add("shiftBack", () -> ChartCommands.shiftRepeat(bench, -1), () -> ChartCommands.canShift(bench));
        actions.add("shift", forms::shift, () -> ChartCommands.canShift(bench));
        actions.add("reverse", () -> ChartCommands.reverse(bench));
    }

    private void addRoundActions() {
        actions.add(
                "insertOutside",
                () -> ChartCommands.insertOutside(bench, rounds.chosen()),
                () -> ChartCommands.hasRoomFor(bench, 1));
        actions.add(
                "insertInside",
                () -> ChartCommands.insertInside(bench, rounds.chosen()),
                () -> ChartCommands.hasRoomFor(bench, 1));
        actions.add(
                "duplicateRounds",
                () -> ChartCommands.duplicate(bench, rounds.chosen()),
                () -> ChartCommands.hasRoomFor(bench, chosenRounds().count()));
        actions.add("moveOut", () -> moveRounds(1), () -> ChartCommands.canMove(bench, chosenRounds(), 1));
        actions.add("moveIn", () -> moveRounds(-1), () -> ChartCommands.canMove(bench, chosenRounds(), -1));
        actions.add(
                "deleteRounds",
                () -> ChartCommands.delete(bench, rounds.chosen()),
                () -> ChartCommands.canDelete(bench, chosenRounds()));
        actions.add("letters", forms::letters);
        actions.add("amounts", YarnWindow.opener(this, bench, view));
        actions.add("addYarn", forms::addYarn, () -> bench.chart().yarns().size() < Chart.MOST_YARNS);
        actions.add("changeYarn", () -> yarns.chosen().ifPresent(forms::changeYarn), this::hasYarn);
        actions.add(
                "removeYarn",
                () -> yarns.chosen().ifPresent(yarn -> ChartCommands.removeYarn(bench, yarn)),
                () -> hasYarn()
                        && ChartCommands.canRemove(bench.chart(), yarns.chosen().orElseThrow()));
    }

    private void addViewActions() {
        for (ChartView.Layers layers : ChartView.Layers.values()) {
            actions.add("layers." + layers.name(), () -> view.show(layers));
        }
        actions.add("fitPiece", () -> piece().setVisible(true));
        for (Counting way : Counting.values()) {
            actions.add("counting." + way.name(), () -> view.count(way));
        }
        actions.add("turn", view::turnOn);
        actions.add("zoomIn", () -> view.zoom(1), () -> view.canZoom(1));
        actions.add("zoomOut", () -> view.zoom(-1), () -> view.canZoom(-1));
        actions.add("fit", canvas::fit);
        for (Theme theme : Theme.values()) {
            actions.add("theme." + theme.name(), () -> {
                settings.setTheme(theme);
                Look.setUp(theme);
            });
        }
        actions.add("help", () -> help().open(0));
        actions.add("laws", () -> help().open(1));
        actions.add("keys", () -> help().open(2));
        actions.add(
                "about",
                () -> JOptionPane.showMessageDialog(
                        this,
                        Forms.message(says.text("about-text")),
                        says.text("about-title"),
                        JOptionPane.PLAIN_MESSAGE));
    }

    private HelpWindow help() {
        if (help.isEmpty()) {
            help = Optional.of(new HelpWindow(this, actions, sentences, view.language()));
        }
        return help.get();
    }

    private PieceWindow piece() {
        if (piece.isEmpty()) {
            piece = Optional.of(new PieceWindow(this, bench, view));
        }
        return piece.get();
    }

    private boolean isFree() {
        return !lanes.in(Lane.FILE).isBusy();
    }

    private boolean canExport() {
        return !lanes.in(Lane.EXPORT).isBusy();
    }

    private boolean hasYarn() {
        return yarns != null && yarns.chosen().isPresent();
    }

    private RoundRange chosenRounds() {
        return rounds == null ? RoundRange.of(bench.cursor().round()) : rounds.chosen();
    }

    private void moveRounds(int by) {
        RoundRange chosen = rounds.chosen();
        ChartCommands.move(bench, chosen, by);
        rounds.choose(new RoundRange(chosen.first() + by, chosen.last() + by));
    }

    private void begin() {
        NewChartDialog dialog = new NewChartDialog(this, view.counting(), view.language());
        if (dialog.ask()) {
            files.begin(dialog.chart());
        }
    }

    private void quit() {
        if (lanes.isBusy()) {
            status.tell(says.text("news-busy"));
        } else {
            files.whenNothingIsLost(this::dispose);
        }
    }

    @Override
    public void dispose() {
        if (isDisplayable()) {
            KeptPlace.keep(this, settings);
            ViewMemory.keep(settings, view);
        }
        super.dispose();
    }

    private void follow() {
        actions.refresh();
        String file = bench.file().map(path -> path.getFileName().toString()).orElse(says.text("title-noFile"));
        setTitle(says.text(
                bench.hasUnsavedWork() ? "title-changed" : "title",
                arg("title", ShortText.of(bench.chart().title(), MOST_OF_TITLE)),
                arg("file", ShortText.of(file, MOST_OF_FILE))));
        getRootPane().putClientProperty("Window.documentModified", bench.hasUnsavedWork());
    }

    private void nameUndo() {
        actions.get("undo")
                .name(bench.undoName()
                        .map(name -> says.text("undo-of", arg("edit", ShortText.of(name, MOST_OF_EDIT)))));
        actions.get("redo")
                .name(bench.redoName()
                        .map(name -> says.text("redo-of", arg("edit", ShortText.of(name, MOST_OF_EDIT)))));
    }

    /** What happens as the window opens and is to close. */
    private final class Doors extends WindowAdapter {
        @Override
        public void windowClosing(WindowEvent event) {
            quit();
        }

        @Override
        public void windowOpened(WindowEvent event) {
            canvas.requestFocusInWindow();
        }
    }
}
