package edgewright.desk.panes;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Lanes;
import edgewright.desk.parts.DeskAction;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.tool.Ghost;
import edgewright.desk.tool.Toolbox;
import edgewright.desk.work.Listening;
import edgewright.desk.work.PlaceTexts;
import edgewright.desk.work.Workbench;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;

/**
 * The line at the foot of the window: what the stitch at the cursor is, stands on and lands in; what was done last; and how far
 * the jobs in the background are, a bar for each lane in which one runs.
 */
public final class StatusLine extends JPanel {
    private transient Optional<Workbench> bench = Optional.empty();
    private transient Listening listening = () -> {};
    private final transient Messages says;
    private final transient PlaceTexts places;
    private transient Optional<Ghost> ghost = Optional.empty();
    private final JLabel stitch = new JLabel();
    private final JLabel news = Look.quiet("");
    private final transient List<JButton> offers = new ArrayList<>();
    private transient Optional<Workbench.Deed> said = Optional.empty();

    public StatusLine(Language language) {
        super(new MigLayout(
                "insets 5 12 5 12, gap 12, hidemode 3", "[grow, fill, shrinkprio 50][shrinkprio 200]", "[26!]"));
        says = language.messages("desk/panes");
        places = new PlaceTexts(language);
        stitch.setName("stitchAtCursor");
        news.setName("news");
        add(stitch, "wmin 0");
        add(news, "wmin 0");
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                say();
            }
        });
    }

    /**
     * Follows the work on this bench with these tools from now on, and on no other: says where the cursor stands, and in its
     * place what the tool would do under the mouse, as long as it would do anything.
     */
    public void follow(Workbench followed, Toolbox tools) {
        listening.end();
        bench = Optional.of(followed);
        said = followed.lastDeed();
        ghost = tools.ghost();
        Listening work = followed.listen(change -> {
            say();
            sayDeed();
        });
        Listening drawing = tools.listen(change -> {
            if (change == Toolbox.Change.GHOST) {
                ghost = tools.ghost();
                say();
            }
        });
        listening = () -> {
            work.end();
            drawing.end();
        };
        say();
    }

    /** Follows no work any more, and speaks of no stitch. */
    public void rest() {
        listening.end();
        listening = () -> {};
        bench = Optional.empty();
        ghost = Optional.empty();
        say();
    }

    /** Says what has happened, until something else does. */
    public void tell(String text) {
        offers.forEach(offer -> offer.setVisible(false));
        news.setText(text);
        news.setToolTipText(text);
        news.getAccessibleContext().setAccessibleName(text);
    }

    /** Has buttons for these, which are seen only beside news that they belong to. */
    public void offering(DeskAction... actions) {
        for (DeskAction action : actions) {
            JButton button = Forms.button(action);
            button.setMnemonic(0);
            button.setVisible(false);
            offers.add(button);
            add(button);
        }
    }

    /** Offers what there are buttons for, until other news comes. */
    public void offer() {
        offers.forEach(offer -> offer.setVisible(true));
    }

    /** Where a lane of jobs shows how far it is. To be asked once for each lane. */
    public Jobs.Board board(Lanes.Lane lane) {
        return new JobBoard(lane);
    }

    /** Says what was done to the chart, once. */
    private void sayDeed() {
        Optional<Workbench.Deed> last = bench.flatMap(Workbench::lastDeed);
        if (!last.equals(said)) {
            said = last;
            said.ifPresent(deed -> tell(says.text("news-" + deed.way(), arg("edit", deed.name()))));
        }
    }

    private void say() {
        String sentence = ghost.filter(this::doesAnything)
                .map(this::landing)
                .or(() -> bench.map(of -> places.sentence(of.chart(), of.cursor())))
                .orElse("");
        if (!sentence.equals(stitch.getText())) {
            stitch.setText(sentence);
            stitch.setToolTipText(sentence);
        }
    }

    /** The bar of one lane, and the button that stops its job; only there while one runs. */
    private final class JobBoard implements Jobs.Board {
        private final JProgressBar progress = new JProgressBar();
        private final JButton cancel = Forms.caption(new JButton(), says.text("status-cancel"));
        private Runnable onCancel = () -> {};

        JobBoard(Lanes.Lane lane) {
            progress.setName("progress." + lane);
            progress.getAccessibleContext().setAccessibleName(says.text("status-progress"));
            cancel.setName("cancelJob." + lane);
            cancel.addActionListener(event -> {
                cancel.setEnabled(false);
                onCancel.run();
            });
            add(progress, "width 120!");
            add(cancel);
            clear();
        }

        @Override
        public void begin(String job, Optional<Runnable> stop) {
            onCancel = stop.orElse(() -> {});
            tell(job);
            progress.setToolTipText(job);
            progress.setIndeterminate(true);
            progress.setValue(0);
            progress.setVisible(true);
            cancel.setEnabled(true);
            cancel.setVisible(stop.isPresent());
        }

        @Override
        public void progress(int percent) {
            progress.setIndeterminate(false);
            progress.setValue(percent);
        }

        @Override
        public void end(String outcome) {
            clear();
            tell(outcome);
        }

        private void clear() {
            progress.setVisible(false);
            progress.setIndeterminate(false);
            cancel.setVisible(false);
        }
    }

    /** Where all is worked so already, as under the mouse that has just worked it, what is there says more. */
    private boolean doesAnything(Ghost of) {
        return bench.filter(on -> !on.chart().equals(of.chart())).isPresent();
    }

    /** How many stitches would land, and what that would break. */
    private String landing(Ghost of) {
        int stitches = of.lands().size();
        return of.findings() > 0
                ? says.text("status-landing-findings", count("stitches", stitches), count("findings", of.findings()))
                : says.text("status-landing", count("stitches", stitches));
    }
}
