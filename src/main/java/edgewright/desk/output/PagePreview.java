package edgewright.desk.output;

import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.booklet.Preview;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Progress;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.KeyNames;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.WrappingRow;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Dimension;
import java.awt.Toolkit;
import java.awt.event.HierarchyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.SwingWorker;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/**
 * The printed pages as they will be with what is chosen now, one at a time. They are set anew beside the event thread whenever
 * the choice has changed; setting can be stopped, and begins again with the next change.
 */
final class PagePreview extends JPanel {
    private static final int WIDTH_PX = 560;
    private static final int HEIGHT_PX = 790;

    /** Where letters are large or the screen is small. */
    private static final int LEAST_WIDTH_PX = 300;

    private static final int LEAST_HEIGHT_PX = 200;

    /** How often it looks whether something else has been chosen. */
    private static final int LOOK_MS = 300;

    /** What is said while no page is shown. */
    private enum State {
        MAKING,
        CANCELLED,
        FAILED
    }

    /** Makes the pages of a choice; empty if it was asked to stop. Beside the event thread. */
    interface Pages {
        Optional<Preview> make(BookletOptions options, Progress progress) throws IOException;

        /** The first page alone, which is there sooner; empty if nobody knows it before the others. */
        default Optional<Preview> first(BookletOptions options, Progress progress) throws IOException {
            return Optional.empty();
        }
    }

    private final transient Messages says;
    private final transient Language language;
    private final transient Pages maker;
    private final transient Supplier<BookletOptions> choice;
    private final Timer looking = new Timer(LOOK_MS, event -> look());
    private final PagePaper paper;
    private final JButton back = new JButton();
    private final JButton on = new JButton();
    private final JButton stop = new JButton();
    private final JLabel where = Look.quiet(" ");
    private final JProgressBar progress = new JProgressBar();
    private transient Optional<BookletOptions> shown = Optional.empty();
    private transient Optional<Preview> pages = Optional.empty();
    private transient Optional<Setting> setting = Optional.empty();
    private transient State state = State.MAKING;
    private int page = 1;
    /** For which room a page was drawn anew last. */
    private Dimension sharpened = new Dimension();
    /** Whether the first page lies there alone. */
    private boolean isFirstShown;

    PagePreview(Pages maker, Supplier<BookletOptions> choice, Language language) {
        super(new MigLayout("insets 0, gap 8 8, wrap 1, fill", "[grow, fill]", "[grow, fill][][][]"));
        says = language.messages("desk/output");
        this.language = language;
        paper = new PagePaper(says.text("preview-paper"), where::getText);
        this.maker = maker;
        this.choice = choice;
        setOpaque(false);
        Forms.caption(back, says.text("preview-back")).setName("preview.back");
        back.addActionListener(event -> turn(-1));
        Forms.caption(on, says.text("preview-on")).setName("preview.on");
        on.addActionListener(event -> turn(1));
        Forms.caption(stop, says.text("preview-stop")).setName("preview.stop");
        stop.addActionListener(event -> setting.ifPresent(Setting::askToStop));
        where.setName("preview.where");
        where.setHorizontalAlignment(SwingConstants.CENTER);
        progress.setName("preview.progress");
        progress.getAccessibleContext().setAccessibleName(says.text("preview-setting"));
        add(
                paper.scroll(),
                "width " + LEAST_WIDTH_PX + ":" + WIDTH_PX + ":, height " + LEAST_HEIGHT_PX + ":" + HEIGHT_PX + ":");
        add(where, "growx, wmin 0");
        add(turnsAndSizes(), "growx, wmin 0");
        add(progress, "split 2, growx");
        add(stop, "growx 0");
        // At once: whoever opens the dialog waits for the first page.
        addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && isShowing()) {
                look();
            }
        });
        follow();
    }

    /** Which page is seen, and how large: a button each, and a key wherever the keys are. */
    private JPanel turnsAndSizes() {
        WrappingRow row = new WrappingRow(6, 2);
        row.add(back);
        row.add(on);
        row.add(size("preview.fitPage", says.text("preview-fitPage"), "0", () -> paper.fit(PagePaper.Fit.PAGE)));
        row.add(size("preview.fitWidth", says.text("preview-fitWidth"), "9", () -> paper.fit(PagePaper.Fit.WIDTH)));
        row.add(size("preview.zoomOut", says.text("preview-zoomOut"), "MINUS", () -> paper.zoom(-1)));
        row.add(size("preview.zoomIn", says.text("preview-zoomIn"), "EQUALS", () -> paper.zoom(1)));
        onKey("PLUS", () -> paper.zoom(1));
        onKey("PAGE_UP", () -> turn(-1));
        onKey("PAGE_DOWN", () -> turn(1));
        return row;
    }

    private JButton size(String name, String text, String key, Runnable deed) {
        JButton button = Forms.caption(new JButton(), text);
        button.setName(name);
        button.addActionListener(event -> {
            deed.run();
            sharpen();
        });
        KeyStroke stroke = onKey(key, button::doClick);
        button.setToolTipText(new KeyNames(language).of(stroke));
        return button;
    }

    private KeyStroke onKey(String key, Runnable deed) {
        KeyStroke stroke = KeyStroke.getKeyStroke(key);
        KeyStroke withMenu = KeyStroke.getKeyStroke(
                stroke.getKeyCode(), Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx());
        registerKeyboardAction(event -> deed.run(), withMenu, WHEN_IN_FOCUSED_WINDOW);
        return withMenu;
    }

    /** Draws the page anew if it is looked at in another size than it was drawn for. */
    private void sharpen() {
        boolean isDrawn = pages.isPresent() && setting.isEmpty();
        if (isDrawn && paper.isBlurred() && !paper.roomPx().equals(sharpened)) {
            sharpened = paper.roomPx();
            new Turning(pages.get(), page).execute();
        }
    }

    @Override
    public void addNotify() {
        super.addNotify();
        looking.start();
    }

    @Override
    public void removeNotify() {
        looking.stop();
        setting.ifPresent(Setting::askToStop);
        drop();
        super.removeNotify();
    }

    private void look() {
        BookletOptions chosen = choice.get().withDraft(false);
        if (shown.isEmpty() || !shown.get().equals(chosen)) {
            shown = Optional.of(chosen);
            setting.ifPresent(Setting::askToStop);
            Setting job = new Setting(chosen, page);
            setting = Optional.of(job);
            state = State.MAKING;
            job.execute();
            follow();
        }
        sharpen();
    }

    private void turn(int by) {
        int all = pages.map(Preview::pages).orElse(0);
        if (page + by < 1 || page + by > all) {
            return;
        }
        page += by;
        pages.ifPresent(preview -> new Turning(preview, page).execute());
        follow();
    }

    private void follow() {
        int all = pages.map(Preview::pages).orElse(0);
        back.setEnabled(page > 1 && all > 0);
        on.setEnabled(page < all);
        stop.setEnabled(setting.isPresent());
        progress.setIndeterminate(setting.isPresent() && progress.getValue() == 0);
        where.setText(where(all));
        paper.repaint();
    }

    private String where(int all) {
        if (all == 0) {
            return isFirstShown ? says.text("preview-first") : says.text("preview-none-" + state);
        }
        // What was made last stays to be looked at while the next pages are being made.
        return setting.isPresent()
                ? says.text("preview-pageSetting", number("page", page), count("pages", all))
                : says.text("preview-page", number("page", page), count("pages", all));
    }

    private void drop() {
        pages.ifPresent(Preview::close);
        pages = Optional.empty();
    }

    /** Shows pages that have just been made, or says why there are none. */
    private void take(Optional<Made> made, State otherwise) {
        state = otherwise;
        if (isFirstShown) {
            isFirstShown = false;
            paper.lay(null);
        }
        if (made.isEmpty()) {
            if (otherwise == State.FAILED) {
                // What is chosen now does not look like what was shown.
                paper.lay(null);
                drop();
            }
            return;
        }
        Made set = made.get();
        drop();
        pages = Optional.of(set.preview());
        page = Math.max(1, Math.min(page, set.preview().pages()));
        paper.lay(set.image());
        if (page != set.page()) {
            // Somebody has turned on while the pages were made.
            new Turning(set.preview(), page).execute();
        }
    }

    private static BufferedImage draw(Preview preview, int page, Dimension roomPx) throws IOException {
        return preview.page(page, roomPx.width, roomPx.height);
    }

    /** The pages that have been set, and the one that is looked at. */
    private record Made(Preview preview, int page, BufferedImage image) {}

    private final class Setting extends SwingWorker<Optional<Made>, BufferedImage> {
        private final BookletOptions options;
        private final int wanted;
        private final transient Dimension roomPx = paper.roomPx();
        private final boolean isNothingShown = pages.isEmpty();
        private volatile boolean stopped;

        Setting(BookletOptions options, int wanted) {
            this.options = options;
            this.wanted = wanted;
            progress.setValue(0);
            addPropertyChangeListener(event -> {
                if (event.getPropertyName().equals("progress") && !stopped) {
                    progress.setIndeterminate(false);
                    progress.setValue((Integer) event.getNewValue());
                }
            });
        }

        /** Asks; the pages are put away by themselves if they are there before it can stop. */
        void askToStop() {
            stopped = true;
        }

        @Override
        protected Optional<Made> doInBackground() throws IOException {
            if (isNothingShown) {
                showFirst();
            }
            Optional<Preview> made = maker.make(options, (done, all) -> {
                setProgress(100 * done / Math.max(1, all));
                return !stopped;
            });
            if (made.isEmpty()) {
                return Optional.empty();
            }
            Preview preview = made.get();
            boolean drawn = false;
            try {
                int first = Math.min(wanted, preview.pages());
                Made shown = new Made(preview, first, draw(preview, first, roomPx));
                drawn = true;
                return Optional.of(shown);
            } finally {
                if (!drawn) {
                    preview.close();
                }
            }
        }

        private void showFirst() throws IOException {
            Optional<Preview> first = maker.first(options, (done, all) -> !stopped);
            if (first.isPresent()) {
                try (Preview page = first.get()) {
                    publish(draw(page, 1, roomPx));
                }
            }
        }

        @Override
        protected void process(List<BufferedImage> firstPages) {
            if (pages.isEmpty() && setting.isPresent() && setting.get() == this && !stopped) {
                paper.lay(firstPages.get(0));
                isFirstShown = true;
                follow();
            }
        }

        @Override
        protected void done() {
            Optional<Made> made = Optional.empty();
            State otherwise = stopped ? State.CANCELLED : State.FAILED;
            try {
                made = get();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            } catch (ExecutionException e) {
                // The pages cannot be made, which is said in their place.
            }
            boolean isLatest = setting.isPresent() && setting.get() == this;
            if (stopped || !isLatest) {
                made.map(Made::preview).ifPresent(Preview::close);
                made = Optional.empty();
            }
            if (isLatest) {
                setting = Optional.empty();
                progress.setValue(0);
                take(made, otherwise);
                follow();
            }
        }
    }

    private final class Turning extends SwingWorker<BufferedImage, Void> {
        private final transient Preview preview;
        private final int wanted;
        private final transient Dimension roomPx = paper.roomPx();

        Turning(Preview preview, int wanted) {
            this.preview = preview;
            this.wanted = wanted;
        }

        @Override
        protected BufferedImage doInBackground() throws IOException {
            return draw(preview, wanted, roomPx);
        }

        @Override
        protected void done() {
            if (wanted != page || pages.isEmpty() || pages.get() != preview) {
                return;
            }
            try {
                paper.lay(get());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            } catch (ExecutionException e) {
                paper.lay(null);
            }
        }
    }
}
