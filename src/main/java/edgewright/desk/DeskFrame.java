package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.check.Sentences;
import java.awt.Dimension;
import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
final class DeskFrame extends JFrame {
    private static final int WIDTH_PX = 1460;
    private static final int HEIGHT_PX = 940;
    private static final int FINDINGS_PX = 310;
    private static final int SIDE_PX = 326;
    private static final int WORDS_PX = 196;
    private static final int YARNS_PX = 286;

    private final transient Workbench bench;
    private final transient Settings settings;
    private final transient View view;
    private final transient Actions actions = new Actions();
    private final transient Asking asking = new Asking(this);
    private final transient Sentences sentences = Sentences.english();
    private final transient Jobs jobs;
    private final transient FileDeeds files;
    private final transient Publishing publishing;
    private final transient Proving proving;
    private final transient Guiding guiding;
    private final StatusLine status;
    private final ChartCanvas canvas;
    private final RoundsPane rounds;
    private final YarnsPane yarns;
    private final FindingsPane findings;
    private transient Optional<HelpWindow> help = Optional.empty();
    private transient Optional<PieceWindow> piece = Optional.empty();
    private boolean telling;

    DeskFrame(Chart first, Settings settings) {
        this.settings = settings;
        view = new View(settings.counting());
        setIconImages(DeskIcon.images());
        setName("desk");
        setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
        bench = new Workbench(first, Optional.empty());
        status = new StatusLine(bench);
        jobs = new Jobs(status);
        files = new FileDeeds(bench, settings, asking, jobs, status::tell);
        publishing = new Publishing(this, bench, asking, jobs, view, settings);
        proving = new Proving(this, bench, view, jobs);
        guiding = new Guiding(this, bench, view);
        canvas = new ChartCanvas(bench, view);
        findings = new FindingsPane(bench, sentences);
        addActions();
        rounds = new RoundsPane(bench, view, actions);
        yarns = new YarnsPane(bench, actions);
        setJMenuBar(Menus.bar(
                bench,
                view,
                settings,
                actions,
                path -> files.whenNothingIsLost(() -> files.open(path)),
                yarn -> ChartDeeds.changeYarn(bench, rounds.chosen(), yarn)));
        setContentPane(layOut());
        follow();
        bench.listen(change -> follow());
        view.listen(actions::refresh);
        view.listen(() -> settings.setCounting(view.counting()));
        jobs.listen(actions::refresh);
        rounds.rounds().getSelectionModel().addListSelectionListener(event -> actions.refresh());
        actions.afterRefresh(this::nameUndo);
        addWindowListener(new Doors());
        setSize(placed());
        setMinimumSize(new Dimension(900, 620));
        setLocationRelativeTo(null);
    }

    Workbench bench() {
        return bench;
    }

    ChartCanvas canvas() {
        return canvas;
    }

    /** Opens a chart file; nothing is lost by it, since the desk was just set up. */
    void open(Path file) {
        files.open(file);
    }

    /** Tells of a mistake in the program itself, in words; what a developer needs can be copied. Once at a time. */
    void tellOf(Throwable problem) {
        if (!telling) {
            telling = true;
            asking.tellOfMistake(problem);
            telling = false;
        }
    }

    private JPanel layOut() {
        JScrollPane table = new JScrollPane(canvas);
        table.setName("table");
        table.setBorder(null);
        table.getViewport().setBackground(Look.colour("canvas"));
        JPanel chart = new JPanel(new MigLayout("insets 0, gap 0, fill", "[grow, fill]", "[][grow, fill]"));
        chart.add(new Tray(bench, view, actions), "wrap");
        chart.add(table);
        WordsPane words = new WordsPane(bench, view);
        JSplitPane middle =
                new KeptSplit("wordsSplit", JSplitPane.VERTICAL_SPLIT, chart, words, KeptSplit.Keeps.SECOND, WORDS_PX);
        JSplitPane side = new KeptSplit(
                "roundsSplit", JSplitPane.VERTICAL_SPLIT, rounds, yarns, KeptSplit.Keeps.SECOND, YARNS_PX);
        JSplitPane right =
                new KeptSplit("sideSplit", JSplitPane.HORIZONTAL_SPLIT, middle, side, KeptSplit.Keeps.SECOND, SIDE_PX);
        JSplitPane all = new KeptSplit(
                "deskSplit", JSplitPane.HORIZONTAL_SPLIT, findings, right, KeptSplit.Keeps.FIRST, FINDINGS_PX);
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
        actions.add("prove", proving::prove, () -> isFree() && !bench.verdict().hasErrors());
        actions.add("publish", publishing::publish, this::isFree);
        actions.add("picture", publishing::picture, this::isFree);
        actions.add("saveWords", publishing::words, this::isFree);
        actions.add("properties", this::properties);
        actions.add("making", guiding::making);
        actions.add("guide", guiding::show);
        actions.add("startHere", guiding::startHere, guiding::canStartHere);
        actions.add("quit", this::quit);
    }

    private void addEditActions() {
        actions.add("undo", bench::undo, () -> bench.undoName().isPresent());
        actions.add("redo", bench::redo, () -> bench.redoName().isPresent());
        new MotifDeeds(canvas, status::tell).addTo(actions);
        actions.add("nextFinding", () -> findings.step(1), this::hasFindings);
        actions.add("previousFinding", () -> findings.step(-1), this::hasFindings);
        actions.add("evenOut", () -> ChartDeeds.evenOut(bench), () -> !ChartDeeds.isEven(bench));
        for (Stitch stitch : Stitch.values()) {
            actions.add("choose." + stitch.letter(), () -> bench.choose(stitch));
        }
        actions.add("workHere", () -> bench.work(List.of(bench.cursor()), bench.stitch()));
        actions.add("takeOut", () -> bench.work(List.of(bench.cursor()), Stitch.BACK_LOOP));
        actions.add("insertColumn", () -> ChartDeeds.insertColumn(bench), () -> ChartDeeds.isEven(bench));
        actions.add("deleteColumn", () -> ChartDeeds.deleteColumn(bench), () -> ChartDeeds.canDeleteColumn(bench));
        actions.add("side", this::reshape, () -> ChartDeeds.isEven(bench));
        actions.add("shiftOn", () -> ChartDeeds.shiftRepeat(bench, 1), this::canShift);
        actions.add("shiftBack", () -> ChartDeeds.shiftRepeat(bench, -1), this::canShift);
        actions.add("shift", this::shift, this::canShift);
        actions.add("reverse", () -> ChartDeeds.reverse(bench));
    }

    private void addRoundActions() {
        actions.add(
                "insertOutside",
                () -> ChartDeeds.insertOutside(bench, rounds.chosen()),
                () -> ChartDeeds.hasRoomFor(bench, 1));
        actions.add(
                "insertInside",
                () -> ChartDeeds.insertInside(bench, rounds.chosen()),
                () -> ChartDeeds.hasRoomFor(bench, 1));
        actions.add(
                "duplicateRounds",
                () -> ChartDeeds.duplicate(bench, rounds.chosen()),
                () -> ChartDeeds.hasRoomFor(bench, chosenRounds().count()));
        actions.add("moveOut", () -> moveRounds(1), () -> ChartDeeds.canMove(bench, chosenRounds(), 1));
        actions.add("moveIn", () -> moveRounds(-1), () -> ChartDeeds.canMove(bench, chosenRounds(), -1));
        actions.add(
                "deleteRounds",
                () -> ChartDeeds.delete(bench, rounds.chosen()),
                () -> ChartDeeds.canDelete(bench, chosenRounds()));
        actions.add("letters", this::letters);
        actions.add("amounts", YarnWindow.opener(this, bench, view));
        actions.add("addYarn", this::addYarn, () -> bench.chart().yarns().size() < Chart.MOST_YARNS);
        actions.add("changeYarn", () -> yarns.chosen().ifPresent(this::changeYarn), this::hasYarn);
        actions.add(
                "removeYarn",
                () -> yarns.chosen().ifPresent(yarn -> ChartDeeds.removeYarn(bench, yarn)),
                () -> hasYarn()
                        && ChartDeeds.canRemove(bench.chart(), yarns.chosen().orElseThrow()));
    }

    private void addViewActions() {
        for (View.Layers layers : View.Layers.values()) {
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
        actions.add("dark", () -> {
            settings.setDark(!settings.dark());
            Look.setUp(settings.dark());
        });
        actions.add("help", () -> help().open(0));
        actions.add("laws", () -> help().open(1));
        actions.add("keys", () -> help().open(2));
        actions.add(
                "about",
                () -> JOptionPane.showMessageDialog(
                        this,
                        Html.wrapped(Texts.of("about.text"), 360),
                        Texts.of("about.title"),
                        JOptionPane.PLAIN_MESSAGE));
    }

    private HelpWindow help() {
        if (help.isEmpty()) {
            help = Optional.of(new HelpWindow(this, actions, sentences));
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
        return !jobs.isBusy();
    }

    private boolean hasFindings() {
        return !bench.verdict().findings().isEmpty();
    }

    private boolean canShift() {
        return bench.chart().shape().w() > 1;
    }

    private boolean hasYarn() {
        return yarns != null && yarns.chosen().isPresent();
    }

    private RoundRange chosenRounds() {
        return rounds == null ? RoundRange.of(bench.cursor().round()) : rounds.chosen();
    }

    private void moveRounds(int by) {
        RoundRange chosen = rounds.chosen();
        ChartDeeds.move(bench, chosen, by);
        rounds.choose(new RoundRange(chosen.first() + by, chosen.last() + by));
    }

    private void begin() {
        NewChartDialog dialog = new NewChartDialog(this, view.counting());
        if (dialog.ask()) {
            files.begin(dialog.chart());
        }
    }

    private void properties() {
        PropertiesDialog dialog = new PropertiesDialog(this, bench.chart());
        if (dialog.ask()) {
            bench.edit(Texts.of("edit.properties"), dialog::appliedTo);
        }
    }

    private void reshape() {
        SideDialog dialog = new SideDialog(this, bench.chart().shape(), view.counting());
        if (dialog.ask()) {
            ChartDeeds.reshape(bench, dialog.shape());
        }
    }

    private void shift() {
        ShiftDialog dialog = new ShiftDialog(this, bench.chart().shape().w());
        if (dialog.ask()) {
            ChartDeeds.shiftRepeat(bench, dialog.columns());
        }
    }

    private void letters() {
        int round = bench.cursor().round();
        LettersDialog dialog = new LettersDialog(this, bench.chart(), round);
        if (dialog.ask()) {
            bench.edit(Texts.of("edit.letters", round), chart -> chart.withRound(round, dialog.round()));
        }
    }

    private void addYarn() {
        String id = ChartDeeds.freeYarnId(bench.chart());
        Yarn proposal = new Yarn(id, Texts.of("yarn.new"), YarnShelf.unlike(bench.chart()));
        YarnDialog dialog = YarnDialog.adding(this, bench.chart(), proposal);
        if (dialog.ask()) {
            ChartDeeds.addYarn(bench, dialog.yarn());
        }
    }

    private void changeYarn(Yarn yarn) {
        YarnDialog dialog = YarnDialog.changing(this, bench.chart(), yarn);
        if (dialog.ask()) {
            ChartDeeds.changeYarn(bench, yarn, dialog.yarn());
        }
    }

    private void quit() {
        if (jobs.isBusy()) {
            status.tell(Texts.of("news.busy"));
            return;
        }
        files.whenNothingIsLost(this::dispose);
    }

    private void follow() {
        actions.refresh();
        String file = bench.file().map(path -> path.getFileName().toString()).orElse(Texts.of("title.noFile"));
        setTitle(Texts.of(
                bench.hasUnsavedWork() ? "title.changed" : "title",
                bench.chart().title(),
                file));
        getRootPane().putClientProperty("Window.documentModified", bench.hasUnsavedWork());
    }

    private void nameUndo() {
        actions.get("undo")
                .name(bench.undoName()
                        .map(name -> Texts.of("action.undo.of", name))
                        .orElse(Texts.of("action.undo")));
        actions.get("redo")
                .name(bench.redoName()
                        .map(name -> Texts.of("action.redo.of", name))
                        .orElse(Texts.of("action.redo")));
    }

    /** As large as is comfortable, but within the screen. */
    private Dimension placed() {
        GraphicsConfiguration screen = getGraphicsConfiguration();
        Rectangle bounds = screen.getBounds();
        var insets = Toolkit.getDefaultToolkit().getScreenInsets(screen);
        int width = bounds.width - insets.left - insets.right;
        int height = bounds.height - insets.top - insets.bottom;
        return new Dimension(Math.min(WIDTH_PX, width), Math.min(HEIGHT_PX, height));
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
