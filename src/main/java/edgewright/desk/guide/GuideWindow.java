package edgewright.desk.guide;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.Place;
import edgewright.chart.Side;
import edgewright.desk.parts.ColumnScroll;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.SizeSpinners;
import edgewright.desk.parts.TextColumn;
import edgewright.desk.parts.WhileShown;
import edgewright.desk.parts.YarnCard;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.GuideTicks;
import edgewright.desk.work.RoundGuide;
import edgewright.desk.work.ViewChange;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.WorkbenchChange;
import edgewright.texts.Messages;
import edgewright.words.write.WordingOptions;
import java.awt.Dimension;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/**
 * The round in which the cursor stands, as a maker works it: words by part, what to see, counts, and boxes to tick. It stays
 * beside the chart and goes along with the cursor.
 */
public final class GuideWindow extends JDialog {
    private final transient Messages says;
    private final transient Messages common;
    private final transient Workbench bench;
    private final transient ChartView view;
    private final transient GuideTicks ticks = new GuideTicks();
    private final transient WhileShown writing = new WhileShown(this, this::write);
    private final JLabel heading = Look.heading("");
    private final JButton previous = new JButton();
    private final JButton next = new JButton();
    private final RoundStrip strip;
    private final ColumnScroll words = new ColumnScroll("guideWords");
    private final SizeSpinners size;
    private final Map<Side, JLabel> counts = new EnumMap<>(Side.class);
    private final JLabel way = Look.quiet("");
    private final Map<GuideTicks.Tick, JCheckBox> boxes = new EnumMap<>(GuideTicks.Tick.class);
    private final JLabel progress = Look.quiet("");

    public GuideWindow(Window owner, Workbench bench, ChartView view) {
        super(owner, ModalityType.MODELESS);
        says = view.language().messages("desk/guide");
        common = view.language().messages("desk/common");
        setTitle(says.text("guide-title"));
        this.bench = bench;
        this.view = view;
        size = new SizeSpinners(view, "guideLevel", "guideUpright");
        setName("guideWindow");
        strip = new RoundStrip(view.language());
        setContentPane(layOut());
        bench.listen(this::changed);
        view.listen(change -> {
            if (change == ViewChange.COUNTING || change == ViewChange.REPEATS || change == ViewChange.SEEING) {
                writing.run();
            }
        });
        write();
        setSize(Look.onScreen(this, 620, 640));
        setMinimumSize(new Dimension(480, 420));
        setLocationRelativeTo(owner);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                next.requestFocusInWindow();
            }
        });
        Forms.onEscape(this, () -> dispose());
    }

    private JPanel layOut() {
        heading.setName("guideHeading");
        Forms.caption(previous, says.text("guide-previous"), says.text("guide-previous-tip"))
                .setName("guidePrevious");
        Forms.caption(next, says.text("guide-next"), says.text("guide-next-tip"))
                .setName("guideNext");
        previous.addActionListener(event -> step(-1));
        next.addActionListener(event -> step(1));
        words.setBorder(BorderFactory.createEmptyBorder());
        JPanel content = new JPanel(
                new MigLayout("insets 16 20 16 20, gap 8 10, fill, wrap 1", "[grow, fill]", "[][][grow, fill][][][]"));
        JPanel head = row("[grow, fill][][]");
        head.add(heading, "wmin 0");
        head.add(previous, "sizegroup step");
        head.add(next, "sizegroup step");
        content.add(head);
        content.add(strip, "wmin 0");
        content.add(words, "hmin 120");
        content.add(sizes());
        content.add(sides());
        content.add(done());
        return content;
    }

    private JPanel sizes() {
        JPanel line = row("[][]18[][]");
        line.add(Forms.label(says.text("guide-level"), size.level()));
        line.add(size.level(), "wmin 84");
        line.add(Forms.label(says.text("guide-upright"), size.upright()));
        line.add(size.upright(), "wmin 84");
        return line;
    }

    /** The count of each side under its name, in columns of one width. */
    private JPanel sides() {
        JPanel sides = new JPanel(
                new MigLayout("insets 0, gap 8 2, wrap 4", "[84!, fill][84!, fill][84!, fill][84!, fill][]"));
        sides.setOpaque(false);
        for (Side side : Side.values()) {
            sides.add(Look.quiet(says.text("guide-side-" + side.name())));
        }
        for (Side side : Side.values()) {
            JLabel count = Look.heading("");
            count.setName("guideCount." + side.name());
            counts.put(side, count);
            sides.add(count);
        }
        way.setName("guideWay");
        sides.add(way, "span");
        return sides;
    }

    private JPanel done() {
        JPanel done = new JPanel(new MigLayout("insets 0, gap 8 6", "[84!][84!][84!][84!][]"));
        done.setOpaque(false);
        for (GuideTicks.Tick tick : GuideTicks.Tick.values()) {
            JCheckBox box = Forms.caption(new JCheckBox(), says.text("guide-tick-" + tick.name()));
            box.setName("guideTick." + tick.name());
            box.addActionListener(event -> {
                ticks.tick(round(), tick, box.isSelected());
                tell();
            });
            boxes.put(tick, box);
            done.add(box, tick == GuideTicks.Tick.COUNTED ? "wrap" : "");
        }
        progress.setName("guideProgress");
        done.add(progress, "span");
        return done;
    }

    private static JPanel row(String columns) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 8", columns));
        row.setOpaque(false);
        return row;
    }

    private int round() {
        return bench.cursor().round();
    }

    private void step(int by) {
        Place at = bench.cursor();
        bench.moveCursor(new Place(at.round() + by, at.section(), at.place()));
    }

    private void changed(WorkbenchChange change) {
        if (change.kind() == WorkbenchChange.Kind.OPENED) {
            ticks.clear();
        }
        writing.run();
    }

    private void write() {
        int rounds = bench.chart().rounds().size();
        var yarn = bench.chart().yarnOf(round());
        heading.setText(says.text(
                "guide-heading",
                number("round", round()),
                count("rounds", rounds),
                arg("yarn", common.text("yarn-short", arg("id", yarn.id()), arg("yarn", yarn.name())))));
        heading.setIcon(new YarnCard(yarn.colour(), 16));
        previous.setEnabled(round() > 1);
        next.setEnabled(round() < rounds);
        boolean even = bench.verdict().judged();
        strip.show(
                Optional.of(bench.chart()).filter(any -> even),
                round(),
                view.seeing().hand());
        TextColumn column = new TextColumn(2, 0, 2);
        if (even) {
            RoundGuide guide = RoundGuide.of(bench.chart(), round(), options(), view.language());
            guide.rows().forEach(row -> column.add(said(row)));
            counts.forEach((side, count) ->
                    count.setText(view.language().count(guide.counts().get(side))));
        } else {
            column.prose(common.text("words-ragged"));
            counts.values().forEach(count -> count.setText(says.text("guide-noCount")));
        }
        words.show(column);
        way.setText(says.text("guide-way-" + view.counting().name()));
        tell();
    }

    private WordingOptions options() {
        return new WordingOptions(view.language(), bench.chart().terms(), view.counting(), Optional.of(view.repeats()));
    }

    /** A label, and beside it what is said. */
    private static JPanel said(RoundGuide.Row row) {
        JPanel said = new JPanel(new MigLayout("insets 0, gap 8 0, fillx", "[124!][grow, fill]"));
        said.setOpaque(false);
        JLabel label = Look.quiet(row.label());
        said.add(label, "top");
        var text = Forms.prose(row.text());
        text.setName(row.name());
        text.getAccessibleContext().setAccessibleName(label.getText());
        said.add(text, "wmin 0, growx");
        return said;
    }

    private void tell() {
        boxes.forEach((tick, box) -> box.setSelected(ticks.isTicked(round(), tick)));
        int rounds = bench.chart().rounds().size();
        progress.setText(says.text("guide-progress", count("done", ticks.finished(rounds)), count("rounds", rounds)));
    }
}
