package edgewright.desk;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Chart;
import edgewright.desk.canvas.ChartCanvas;
import edgewright.desk.jobs.ChartOpener;
import edgewright.desk.jobs.DeskState;
import edgewright.desk.jobs.Lanes;
import edgewright.desk.jobs.MadeFile;
import edgewright.desk.jobs.Printers;
import edgewright.desk.jobs.Questions;
import edgewright.desk.journal.DeskJournal;
import edgewright.desk.panes.StatusLine;
import edgewright.desk.parts.CommandTexts;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.ShortText;
import edgewright.desk.shelf.MotifShelf;
import edgewright.desk.shelf.ShelfMenu;
import edgewright.desk.start.StartPage;
import edgewright.desk.work.ChartCommands;
import edgewright.desk.work.Document;
import edgewright.desk.work.KnownMistakes;
import edgewright.desk.work.Settings;
import edgewright.desk.work.ViewChange;
import edgewright.desk.work.ViewMemory;
import edgewright.desk.work.Workbench;
import edgewright.file.JournalFolder;
import edgewright.file.ReadResult;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Dimension;
import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** The window: the documents on their tabs, the menus above, and at the foot what the stitch at the cursor is. */
public final class DeskFrame extends JFrame {
    private static final int WIDTH_PX = 1900;
    private static final int HEIGHT_PX = 1160;
    private static final int MOST_OF_TITLE = 80;
    private static final int MOST_OF_FILE = 60;
    private static final int MOST_OF_EDIT = 40;

    private final transient DeskState state;
    private final transient DeskActions actions;
    private final transient Messages says;
    private final transient ChartOpener opener;
    private final transient CommandTexts texts;
    private final transient KnownMistakes mistakes = new KnownMistakes();
    private final transient KeyEventDispatcher tabKeys = this::stepByTab;
    private final StatusLine status;
    private final DocumentTabs tabs;
    private final StartDeck deck;
    private transient Optional<DeskJournal> journal = Optional.empty();
    private boolean telling;

    DeskFrame(Chart first, Settings settings, Language language) {
        actions = new DeskActions(language);
        texts = new CommandTexts(language);
        says = language.messages("desk");
        setIconImages(DeskIcon.images());
        setName("desk");
        setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
        status = new StatusLine(language);
        Lanes lanes = new Lanes(status::board, language);
        state = new DeskState(
                this,
                settings,
                lanes,
                new Questions(this, language),
                status::tell,
                MadeFile.ofMachine(status::tell, language),
                Printers.ofMachine(),
                language);
        opener = new ChartOpener(state);
        tabs = new DocumentTabs(language, this::close, this::frontChanged);
        deck = new StartDeck(tabs, startPage(), this::offer);
        setMinimumSize(new Dimension(900, 620));
        if (!KeptPlace.restore(this, settings)) {
            setSize(Look.onScreen(this, WIDTH_PX, HEIGHT_PX));
            setLocationRelativeTo(null);
        }
        new DeskCommands(this, state, actions).addTo(actions.desk());
        offerWhatIsMade();
        tabs.lay(pane(first, true));
        setJMenuBar(menus().bar());
        actions.bindOtherKeys(getRootPane());
        setContentPane(content());
        lanes.listen(actions::refresh);
        actions.afterRefresh(this::nameUndo);
        actions.refresh();
        addWindowListener(new Doors());
    }

    private Menus menus() {
        return new Menus(actions, state.language())
                .withRecent(state.settings(), this::open)
                .withYarns(
                        () -> bench().chart().yarns(),
                        yarn -> ChartCommands.changeYarn(
                                bench(), front().rounds().chosen(), yarn))
                .withShelf(new ShelfMenu(
                        this,
                        new MotifShelf(state.settings().folder()),
                        () -> canvas().marking().motif(),
                        motif -> front().motifs().work(motif, false),
                        state.questions(),
                        state.language()));
    }

    private void offerWhatIsMade() {
        status.offering(actions.get("openMade"), actions.get("showMade"));
        state.made().listen(() -> {
            actions.refresh();
            status.offer();
        });
    }

    /** The file that was made last for others to read. */
    MadeFile made() {
        return state.made();
    }

    /** The printers to which patterns can be sent. */
    Printers printers() {
        return state.printers();
    }

    private JPanel content() {
        JPanel content = new JPanel(new MigLayout("insets 0, gap 0, fill", "[grow, fill]", "[grow, fill][]"));
        content.add(deck, "wrap");
        content.add(status);
        return content;
    }

    /** The document in front. */
    Document document() {
        return front().document();
    }

    /** The workbench of the document in front. */
    public Workbench bench() {
        return document().bench();
    }

    /** The chart of the document in front. */
    ChartCanvas canvas() {
        return front().canvas();
    }

    DocumentPane front() {
        return tabs.front();
    }

    DeskActions actions() {
        return actions;
    }

    DocumentTabs tabs() {
        return tabs;
    }

    /** The start page, and whether it lies over the documents. */
    StartDeck deck() {
        return deck;
    }

    private StartPage startPage() {
        return new StartPage(
                state.settings(),
                new StartDeeds(
                        id -> actions.get(id).actionPerformed(null), this::open, this::lay, () -> deck().leave()),
                state.language());
    }

    /** Opens a chart file on a tab of its own, or goes to its tab if it is open. */
    public void open(Path file) {
        of(file).ifPresentOrElse(there -> status.tell(goTo(there, file)), () -> opener.open(file, this::take));
    }

    private String take(Path file, ReadResult.Read read) {
        // It may have been asked for twice.
        return of(file).map(there -> goTo(there, file))
                .orElseGet(() -> sheet().files().lay(file, read));
    }

    private String goTo(DocumentPane pane, Path file) {
        deck.leave();
        tabs.bring(pane);
        return says.text("news-there", arg("file", String.valueOf(file.getFileName())));
    }

    private Optional<DocumentPane> of(Path file) {
        return tabs.all().stream().filter(pane -> pane.document().isOf(file)).findFirst();
    }

    /** Keeps unsaved work in this folder, and offers what was lost; then goes on. */
    void keepJournal(JournalFolder folder, Runnable then) {
        DeskJournal begun = new DeskJournal(state, folder);
        journal = Optional.of(begun);
        tabs.all().forEach(pane -> pane.keepIn(begun));
        begun.openWhatIsDropped(getRootPane(), this::open);
        begun.offerLost(() -> sheet().kept().orElseThrow(), then);
    }

    /** Lays a chart that has no file yet on the desk. */
    void lay(Chart chart) {
        sheet().files().begin(chart);
    }

    /** Where another chart can be laid: the document in front if nothing was ever done with it, else a new one. */
    private DocumentPane sheet() {
        if (!front().isReplaceable()) {
            tabs.lay(pane(Desk.blank(state.language()), true));
        }
        return front();
    }

    private DocumentPane pane(Chart chart, boolean blank) {
        Document document = new Document(
                new Workbench(chart, Optional.empty(), state.language()),
                ViewMemory.recall(state.settings(), state.language()));
        DocumentPane pane = new DocumentPane(document, blank, state, actions, this::lay);
        journal.ifPresent(pane::keepIn);
        document.bench().listen(change -> follow());
        document.bench().listen(deck::makeWayFor);
        document.view().listen(change -> {
            if (change == ViewChange.COUNTING) {
                countAlike(document);
            }
            actions.refresh();
        });
        return pane;
    }

    /** The way of counting goes for the whole desk. */
    private void countAlike(Document document) {
        state.settings().setCounting(document.view().counting());
        tabs.all().forEach(pane -> pane.document().view().count(document.view().counting()));
    }

    /** Closes a document when nothing of it would be lost. In place of the last one there is a new chart. */
    void close(DocumentPane pane) {
        whenNothingIsLost(pane, () -> {
            if (tabs.all().size() == 1) {
                tabs.lay(pane(Desk.blank(state.language()), true));
            }
            tabs.takeOff(pane);
            pane.close();
            if (front().isReplaceable()) {
                deck.begin();
            }
            status.tell(says.text(
                    "news-closed", arg("title", pane.document().bench().chart().title())));
        });
    }

    private void whenNothingIsLost(DocumentPane pane, Runnable then) {
        if (pane.document().bench().hasUnsavedWork()) {
            tabs.bring(pane);
        }
        pane.files().whenNothingIsLost(then);
    }

    /** Closes the desk when nothing of any document would be lost: one after the other is asked about. */
    void quit() {
        if (state.lanes().isBusy()) {
            status.tell(says.text("news-busy"));
        } else {
            quit(tabs.all());
        }
    }

    private void quit(List<DocumentPane> left) {
        if (left.isEmpty()) {
            dispose();
        } else {
            whenNothingIsLost(left.get(0), () -> quit(left.subList(1, left.size())));
        }
    }

    @Override
    public void dispose() {
        if (isDisplayable()) {
            KeptPlace.keep(this, state.settings());
            DocumentPane last = front();
            tabs.all().stream().filter(pane -> pane != last).forEach(DocumentPane::close);
            // How it is looked at is what is remembered.
            last.close();
            journal.ifPresent(DeskJournal::end);
        }
        super.dispose();
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
                state.questions().tellOfMistake(problem);
            } finally {
                telling = false;
            }
        }
    }

    private void frontChanged() {
        deck.giveWay();
        offer();
    }

    /** Offers what can be done with what is seen: the document in front, or the start page over it. */
    private void offer() {
        actions.bringToFront(deck.possible(front().commands()));
        if (deck.isStart()) {
            status.rest();
        } else {
            status.follow(bench(), canvas().toolbox());
        }
        follow();
    }

    private void follow() {
        actions.refresh();
        Workbench bench = bench();
        String file = bench.file().map(path -> path.getFileName().toString()).orElse(says.text("title-noFile"));
        setTitle(says.text(
                bench.hasUnsavedWork() ? "title-changed" : "title",
                arg("title", ShortText.of(bench.chart().title(), MOST_OF_TITLE)),
                arg("file", ShortText.of(file, MOST_OF_FILE))));
        deck.nameIn(this, says);
        getRootPane().putClientProperty("Window.documentModified", bench.hasUnsavedWork());
    }

    private void nameUndo() {
        actions.get("undo")
                .name(bench().undoName()
                        .map(name -> says.text("undo-of", arg("edit", ShortText.of(name, MOST_OF_EDIT)))));
        actions.get("redo")
                .name(bench().redoName()
                        .map(name -> says.text("redo-of", arg("edit", ShortText.of(name, MOST_OF_EDIT)))));
    }

    /** Goes from tab to tab before the tabulator leads the keys on, whatever has them. */
    private boolean stepByTab(KeyEvent event) {
        if (event.getID() != KeyEvent.KEY_PRESSED || event.getKeyCode() != KeyEvent.VK_TAB || !isFocused()) {
            return false;
        }
        KeyStroke key = KeyStroke.getKeyStrokeForEvent(event);
        for (String id : List.of("nextChart", "previousChart")) {
            if (texts.keys(id).contains(key)) {
                actions.get(id).actionPerformed(null);
                return true;
            }
        }
        return false;
    }

    @Override
    public void addNotify() {
        super.addNotify();
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addKeyEventDispatcher(tabKeys);
    }

    @Override
    public void removeNotify() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removeKeyEventDispatcher(tabKeys);
        super.removeNotify();
    }

    /** What happens as the window opens and is to close. */
    private final class Doors extends WindowAdapter {
        @Override
        public void windowClosing(WindowEvent event) {
            quit();
        }

        @Override
        public void windowOpened(WindowEvent event) {
            deck.takeKeys();
        }
    }
}
