package edgewright.desk.output;

import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.booklet.Preview;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Progress;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.HierarchyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.SwingConstants;
import javax.swing.SwingWorker;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/**
 * The printed pages as they will be with what is chosen now, one at a time. They are set anew beside the event thread whenever
 * the choice has changed; setting can be stopped, and begins again with the next change.
 */
final class PagePreview extends JPanel {
    private static final int WIDTH_PX = 430;
    private static final int HEIGHT_PX = 590;

    /** On a low screen. */
    private static final int LEAST_HEIGHT_PX = 380;

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
    }

    private final transient Messages says;
    private final transient Pages maker;
    private final transient Supplier<BookletOptions> choice;
    private final Timer looking = new Timer(LOOK_MS, event -> look());
    private final Paper paper;
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

    PagePreview(Pages maker, Supplier<BookletOptions> choice, Language language) {
        super(new MigLayout("insets 0, gap 8 8, wrap 1, fill", "[grow, fill]", "[grow, fill][][]"));
        says = language.messages("desk/output");
        paper = new Paper(says.text("preview-paper"), where::getText);
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
        add(paper, "width " + WIDTH_PX + "!, height " + LEAST_HEIGHT_PX + ":" + HEIGHT_PX + ":");
        add(back, "split 3, growx 0");
        add(where, "growx, alignx center");
        add(on, "growx 0");
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
    }

    private void turn(int by) {
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
        where.setText(
                all == 0
                        ? says.text("preview-none-" + state)
                        : says.text("preview-page", number("page", page), count("pages", all)));
        paper.repaint();
    }

    private void drop() {
        pages.ifPresent(PagePreview::putAway);
        pages = Optional.empty();
    }

    private static void putAway(Preview preview) {
        try {
            preview.close();
        } catch (IOException ignored) {
            // It was only in memory.
        }
    }

    /** Shows pages that have just been made, or says why there are none. */
    private void take(Optional<Made> made, State otherwise) {
        state = otherwise;
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

    private static BufferedImage draw(Preview preview, int page, double scale) throws IOException {
        return preview.page(page, (int) (WIDTH_PX * scale), (int) (HEIGHT_PX * scale));
    }

    /** Pixels of the screen for each of ours. */
    private double scale() {
        return getGraphicsConfiguration() == null
                ? 1
                : getGraphicsConfiguration().getDefaultTransform().getScaleX();
    }

    /** The pages that have been set, and the one that is looked at. */
    private record Made(Preview preview, int page, BufferedImage image) {}

    private final class Setting extends SwingWorker<Optional<Made>, Void> {
        private final BookletOptions options;
        private final int wanted;
        private final double scale = scale();
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
                Made shown = new Made(preview, first, draw(preview, first, scale));
                drawn = true;
                return Optional.of(shown);
            } finally {
                if (!drawn) {
                    putAway(preview);
                }
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
                made.map(Made::preview).ifPresent(PagePreview::putAway);
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
        private final double scale = scale();

        Turning(Preview preview, int wanted) {
            this.preview = preview;
            this.wanted = wanted;
        }

        @Override
        protected BufferedImage doInBackground() throws IOException {
            return draw(preview, wanted, scale);
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

    /** The page, in the middle of its place; an empty sheet with words on it until it is there. */
    private static final class Paper extends JPanel {
        private final transient Supplier<String> otherwise;
        private transient BufferedImage image;

        /** @param otherwise what stands on the empty sheet where there is no page */
        Paper(String heard, Supplier<String> otherwise) {
            this.otherwise = otherwise;
            setOpaque(false);
            setName("preview.paper");
            getAccessibleContext().setAccessibleName(heard);
            setPreferredSize(new Dimension(WIDTH_PX, HEIGHT_PX));
        }

        void lay(BufferedImage newImage) {
            image = newImage;
            repaint();
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            if (image == null) {
                paintEmpty(g);
                g.dispose();
                return;
            }
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            double fit = Math.min(getWidth() / (double) image.getWidth(), getHeight() / (double) image.getHeight());
            int width = (int) Math.round(image.getWidth() * fit);
            int height = (int) Math.round(image.getHeight() * fit);
            int x = (getWidth() - width) / 2;
            g.drawImage(image, x, 0, width, height, null);
            g.setColor(Look.colour("line"));
            g.drawRect(x, 0, width - 1, height - 1);
            g.dispose();
        }

        private void paintEmpty(Graphics2D g) {
            g.setColor(Look.colour("paper"));
            g.fillRect(0, 0, getWidth(), getHeight());
            g.setColor(Look.colour("line"));
            g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setFont(Look.font(13));
            g.setColor(Look.colour("quiet"));
            String words = otherwise.get();
            g.drawString(words, (getWidth() - g.getFontMetrics().stringWidth(words)) / 2, getHeight() / 2);
        }
    }
}
