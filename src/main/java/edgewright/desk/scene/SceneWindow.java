package edgewright.desk.scene;

import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.SizeSpinners;
import edgewright.desk.parts.WhileShown;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Workbench;
import edgewright.texts.Messages;
import java.awt.Dimension;
import java.awt.Window;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/**
 * The whole border around a piece of the chosen size, as it will look. It stays beside the chart and goes along with it at every
 * stitch; while it is not shown nothing is painted.
 */
public final class SceneWindow extends JDialog {
    private static final int WIDTH_PX = 900;
    private static final int HEIGHT_PX = 760;

    private final transient Messages says;
    private final SceneCanvas canvas;

    public SceneWindow(Window owner, Workbench bench, ChartView view) {
        this(owner, bench, view, besideTheEvents());
    }

    SceneWindow(Window owner, Workbench bench, ChartView view, Executor beside) {
        super(owner, ModalityType.MODELESS);
        says = view.language().messages("desk/scene");
        setName("sceneWindow");
        setTitle(says.text("scene-title"));
        canvas = new SceneCanvas(bench, view, beside);
        JPanel content = new JPanel(new MigLayout("insets 0, gap 0, fill", "[grow, fill]", "[][grow, fill]"));
        content.add(above(view), "wrap");
        content.add(canvas);
        setContentPane(content);
        WhileShown following = new WhileShown(canvas, canvas::follow);
        bench.listen(change -> {
            if (change.ofChart()) {
                following.run();
            }
        });
        view.listen(change -> following.run());
        Forms.onEscape(this, () -> setVisible(false));
        setSize(Look.onScreen(owner, WIDTH_PX, HEIGHT_PX));
        setMinimumSize(new Dimension(560, 420));
        setLocationRelativeTo(owner);
    }

    /** A thread of its own, which keeps no program from ending. */
    private static Executor besideTheEvents() {
        return Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, "scene");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Opens the one window of this kind that an owner has; it is made when it is first asked for. */
    public static Runnable opener(Window owner, Workbench bench, ChartView view) {
        AtomicReference<SceneWindow> window = new AtomicReference<>();
        return () -> {
            if (window.get() == null) {
                window.set(new SceneWindow(owner, bench, view));
            }
            window.get().setVisible(true);
            window.get().toFront();
            window.get().canvas.requestFocusInWindow();
        };
    }

    private JPanel above(ChartView view) {
        JPanel row = new JPanel(new MigLayout("insets 10 14 10 14, gap 8", "[][70!]12[][70!]push[][][]"));
        SizeSpinners size = new SizeSpinners(view, "scene.across", "scene.down");
        row.add(Forms.label(says.text("scene-across"), size.level()));
        row.add(size.level());
        row.add(Forms.label(says.text("scene-down"), size.upright()));
        row.add(size.upright());
        row.add(button("scene.smaller", says.text("scene-smaller"), () -> canvas.larger(false)));
        row.add(button("scene.larger", says.text("scene-larger"), () -> canvas.larger(true)));
        row.add(button("scene.whole", says.text("scene-whole"), canvas::fit));
        return row;
    }

    private static JButton button(String name, String text, Runnable deed) {
        JButton button = Forms.caption(new JButton(), text);
        button.setName(name);
        button.addActionListener(event -> deed.run());
        return button;
    }
}
