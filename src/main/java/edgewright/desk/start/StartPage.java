package edgewright.desk.start;

import edgewright.chart.Chart;
import edgewright.desk.parts.ColumnScroll;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.TextColumn;
import edgewright.desk.work.Settings;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * The page on which the desk begins: three first steps, the charts worked on last, and the samples. The arrow keys walk over all
 * of it, Enter does what a button says, Escape leads to the chart.
 */
public final class StartPage extends JPanel {
    private static final int EDGE_PX = 26;

    private final transient Settings settings;
    private final transient Deeds deeds;
    private final transient Language language;
    private final transient Messages says;
    private final JButton leave = new JButton();
    private final CardRows recent = new CardRows("start.recent");
    private final JLabel none;
    private final JPanel lately = new JPanel(new BorderLayout());
    private final List<StartButton> steps = new ArrayList<>();
    private final List<StartCard> samples = new ArrayList<>();
    private final ColumnScroll scroll = new ColumnScroll("start.scroll");
    private transient Optional<CardWork> work = Optional.empty();

    /** What can be done from the page. */
    public interface Deeds {
        /** Begins a new border. */
        void begin();

        /** Reads a pattern text. */
        void readText();

        /** Opens a chart file. */
        void open(Path file);

        /** Lays a chart that has no file on the desk. */
        void lay(Chart chart);

        /** Goes to the chart that lies on the desk. */
        void leave();
    }

    public StartPage(Settings settings, Deeds deeds, Language language) {
        super(new BorderLayout());
        this.settings = settings;
        this.deeds = deeds;
        this.language = language;
        says = language.messages("desk/start");
        setName("startPage");
        getAccessibleContext().setAccessibleName(says.text("start-heard"));
        none = Look.quiet(says.text("start-noRecent"));
        none.setName("start.noRecent");
        lately.setOpaque(false);
        leave.setText(says.text("start-leave"));
        leave.setName("start.leave");
        leave.addActionListener(event -> deeds.leave());
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.show(column());
        add(scroll);
        bindKeys();
    }

    private TextColumn column() {
        TextColumn column = new TextColumn(16, EDGE_PX, 16);
        JPanel head = new JPanel(new MigLayout("insets 0, fill", "[grow][]"));
        head.setOpaque(false);
        JLabel title = new JLabel(says.text("start-title"));
        title.putClientProperty("FlatLaf.styleClass", "h2");
        head.add(title, "wmin 0");
        head.add(leave);
        column.add(head);
        column.add(stepRow());
        column.add(heading(says.text("start-recent")));
        column.add(lately);
        column.add(heading(says.text("start-samples")));
        CardRows rows = new CardRows("start.samples");
        for (String name : Samples.NAMES) {
            StartCard card =
                    new StartCard("start.sample." + name, new CardChart.Sample(name), this::openSample, language);
            samples.add(card);
            rows.add(card);
        }
        column.add(rows);
        return column;
    }

    /** It stands off what is above it. */
    private static JLabel heading(String text) {
        JLabel heading = Look.heading(text);
        heading.setBorder(BorderFactory.createEmptyBorder(8, 0, 2, 0));
        return heading;
    }

    private StepRow stepRow() {
        List<StartStep> row = List.of(
                new StartStep("start.new", says.text("start-new"), says.text("start-new-what"), deeds::begin),
                new StartStep(
                        "start.change",
                        says.text("start-change"),
                        says.text("start-change-what"),
                        () -> openSample(samples.get(0))),
                new StartStep("start.read", says.text("start-read"), says.text("start-read-what"), deeds::readText));
        steps.addAll(row);
        return new StepRow(row);
    }

    private void openSample(StartCard card) {
        // It is a moment's work, so nobody needs to wait for its picture.
        deeds.lay(Samples.chart(card.stands().name()));
    }

    private void openRecent(StartCard card) {
        Path file = ((CardChart.Recent) card.stands()).file();
        if (card.content().filter(CardContent.Gone.class::isInstance).isPresent()) {
            settings.removeRecent(file);
            fill();
            takeKeys();
        } else {
            deeds.open(file);
        }
    }

    /** Lays out the charts worked on last as they are known now, and has what is not drawn yet be drawn. */
    public void fill() {
        rest();
        recent.removeAll();
        List<StartCard> toLookAt = new ArrayList<>();
        for (Path file : settings.recent()) {
            StartCard card = new StartCard(
                    "start.recent" + (recent.getComponentCount() + 1),
                    new CardChart.Recent(file),
                    this::openRecent,
                    language);
            toLookAt.add(card);
            recent.add(card);
        }
        lately.removeAll();
        lately.add(toLookAt.isEmpty() ? none : recent);
        samples.stream().filter(card -> card.content().isEmpty()).forEach(toLookAt::add);
        CardWork next = new CardWork(toLookAt, scale(), language);
        work = Optional.of(next);
        next.execute();
        revalidate();
        repaint();
    }

    /** Is not seen any more: what is not drawn yet waits. */
    public void rest() {
        work.ifPresent(going -> going.cancel(false));
        work = Optional.empty();
    }

    /** Takes the keys to the first step. */
    public void takeKeys() {
        steps.get(0).requestFocusInWindow();
    }

    private double scale() {
        return getGraphicsConfiguration() == null
                ? 1
                : getGraphicsConfiguration().getDefaultTransform().getScaleX();
    }

    private void bindKeys() {
        for (CardWalk way : CardWalk.values()) {
            bind(scroll.getViewport(), way.name(), () -> walk(way));
            bind(scroll.getViewport(), "KP_" + way.name(), () -> walk(way));
        }
        bind(this, "ESCAPE", deeds::leave);
    }

    private static void bind(Component part, String key, Runnable deed) {
        JComponent at = (JComponent) part;
        at.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), key);
        at.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                deed.run();
            }
        });
    }

    private void walk(CardWalk way) {
        List<Component> all = Stream.of(
                        Stream.of(leave), steps.stream(), Stream.of(recent.getComponents()), samples.stream())
                .<Component>flatMap(some -> some)
                .toList();
        int at = all.indexOf(
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
        if (at >= 0) {
            List<Rectangle> places = all.stream()
                    .map(part -> SwingUtilities.convertRectangle(part.getParent(), part.getBounds(), this))
                    .toList();
            all.get(way.from(places, at)).requestFocusInWindow();
        }
    }
}
