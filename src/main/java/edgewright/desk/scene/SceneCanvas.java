package edgewright.desk.scene;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Colour;
import edgewright.desk.parts.Look;
import edgewright.desk.scene.ScenePainter.Painted;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Workbench;
import edgewright.texts.Messages;
import java.awt.AlphaComposite;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import java.util.concurrent.Executor;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/**
 * The border around its piece. The wheel zooms to the mouse, the mouse moves it, a double click shows it whole; the keys do the
 * same. What is not painted yet is shown from what was painted last, moved and stretched.
 */
final class SceneCanvas extends JComponent implements Accessible {
    private static final double NOTCH = 1.15;
    private static final double STEP = 1.4;
    private static final int KEY_PX = 60;

    private final transient Workbench bench;
    private final transient ChartView view;
    private final transient Messages says;
    private final transient SceneWork work;
    private final transient SceneSight sight = new SceneSight();
    private transient Optional<Painted> painted = Optional.empty();
    private transient Optional<SceneOrder> wanted = Optional.empty();
    private boolean tooLarge;

    /** @param beside runs the painting, one after the other */
    SceneCanvas(Workbench bench, ChartView view, Executor beside) {
        this.bench = bench;
        this.view = view;
        says = view.language().messages("desk/scene");
        work = new SceneWork(beside, SwingUtilities::invokeLater, this::take);
        setName("scene");
        setOpaque(true);
        setFocusable(true);
        setPreferredSize(new Dimension(760, 640));
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                follow();
            }
        });
        Hand hand = new Hand();
        addMouseListener(hand);
        addMouseMotionListener(hand);
        addMouseWheelListener(hand);
        bindKeys();
    }

    private void bindKeys() {
        key("left", () -> sight.move(KEY_PX, 0));
        key("right", () -> sight.move(-KEY_PX, 0));
        key("up", () -> sight.move(0, KEY_PX));
        key("down", () -> sight.move(0, -KEY_PX));
        key("in", () -> zoom(STEP));
        key("out", () -> zoom(1 / STEP));
        key("fit", this::fit);
    }

    private void key(String id, Runnable deed) {
        for (String key : says.text("scene-keys-" + id).split(",")) {
            getInputMap(WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key.strip()), id);
        }
        getActionMap().put(id, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                deed.run();
                follow();
            }
        });
    }

    /** Shows the whole border, and keeps doing so. */
    void fit() {
        sight.fit();
        follow();
    }

    /** Makes it a step larger or smaller. */
    void larger(boolean larger) {
        zoom(larger ? STEP : 1 / STEP);
        follow();
    }

    private void zoom(double factor) {
        sight.zoom(new Point(screenPx(getWidth() / 2.0), screenPx(getHeight() / 2.0)), factor);
    }

    /** Pixels of the screen for one of ours. */
    private double density() {
        return getGraphicsConfiguration() == null
                ? 1
                : getGraphicsConfiguration().getDefaultTransform().getScaleX();
    }

    private int screenPx(double ours) {
        return (int) Math.round(ours * density());
    }

    /** Has the border painted as it is now. */
    void follow() {
        SceneOrder order = order();
        tooLarge = order.isTooLarge();
        if (!tooLarge) {
            sight.lay(order.sheet(), screenPx(getWidth()), screenPx(getHeight()));
            order = order();
            if (!wanted.equals(Optional.of(order))) {
                wanted = Optional.of(order);
                work.order(order);
            }
        }
        repaint();
    }

    private SceneOrder order() {
        return new SceneOrder(
                bench.chart(),
                view.repeats(),
                view.seeing(),
                new Colour(Look.colour("canvas").getRGB() & 0xffffff),
                Look.palette(),
                view.language(),
                sight.window());
    }

    private void take(Painted made) {
        painted = Optional.of(made);
        repaint();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (bench != null && getWidth() > 0) {
            follow();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(Look.colour("canvas"));
        g.fillRect(0, 0, getWidth(), getHeight());
        if (tooLarge) {
            say(g, says.text("scene-tooLarge", count("stitches", order().stitches())));
        } else if (painted.isEmpty()) {
            say(g, says.text("scene-making"));
        } else {
            lay((Graphics2D) g.create(), painted.get());
        }
        if (isFocusOwner()) {
            g.setColor(Look.colour("accent"));
            g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        }
        g.dispose();
    }

    /** @param g the graphics, used up by this */
    private void lay(Graphics2D g, Painted of) {
        SceneOrder.Window then = of.order().window();
        SceneOrder.Window now = sight.window();
        g.scale(1 / density(), 1 / density());
        if (!then.equals(now)) {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.translate((then.leftMm() - now.leftMm()) * now.pxPerMm(), (then.topMm() - now.topMm()) * now.pxPerMm());
            g.scale(now.pxPerMm() / then.pxPerMm(), now.pxPerMm() / then.pxPerMm());
        }
        g.setComposite(AlphaComposite.Src);
        g.drawImage(of.seen(), 0, 0, null);
        g.dispose();
    }

    private void say(Graphics2D g, String text) {
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setFont(Look.font(14));

        g.setColor(UIManager.getColor("Label.foreground"));
        FontMetrics metrics = g.getFontMetrics();
        StringBuilder line = new StringBuilder();
        int y = getHeight() / 2 - metrics.getHeight();
        for (String word : text.split(" ")) {
            if (metrics.stringWidth(line + " " + word) > getWidth() - 40 && !line.isEmpty()) {
                g.drawString(line.toString(), (getWidth() - metrics.stringWidth(line.toString())) / 2, y);
                y += metrics.getHeight();
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        g.drawString(line.toString(), (getWidth() - metrics.stringWidth(line.toString())) / 2, y);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }

                @Override
                public String getAccessibleName() {
                    return says.text(
                            "scene-heard",
                            arg("title", bench.chart().title()),
                            count("across", view.repeats().top()),
                            count("down", view.repeats().left()));
                }
            };
        }
        return accessibleContext;
    }

    /** The mouse that moves and zooms. */
    private final class Hand extends MouseAdapter {
        private Point grip = new Point();

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            grip = event.getPoint();
            setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            setCursor(null);
        }

        @Override
        public void mouseClicked(MouseEvent event) {
            if (event.getClickCount() == 2) {
                fit();
            }
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            sight.move(screenPx(event.getX() - grip.x), screenPx(event.getY() - grip.y));
            grip = event.getPoint();
            follow();
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent event) {
            sight.zoom(
                    new Point(screenPx(event.getX()), screenPx(event.getY())),
                    Math.pow(NOTCH, -event.getPreciseWheelRotation()));
            follow();
        }
    }
}
