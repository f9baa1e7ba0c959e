package edgewright.desk.parts;

import edgewright.desk.work.Settings;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GridBagLayout;
import java.awt.RenderingHints;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JSplitPane;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicSplitPaneDivider;
import javax.swing.plaf.basic.BasicSplitPaneUI;

/**
 * Two panes, one of which keeps the size it was given while the other takes what is left. Where there is not room enough it gives
 * way down to its least size, and grows back as soon as there is: a split of its own accord only ever remembers the last size.
 * The pane that keeps its size can be folded to one line, by the arrow between the two too.
 */
public final class KeptSplit extends JSplitPane {
    /** Which of the two panes keeps its size. */
    public enum Keeps {
        FIRST,
        SECOND
    }

    private final Keeps keeps;
    private final Component kept;
    private final FoldedLine line;
    private final Arrow arrow = new Arrow();
    private transient Runnable whenFolded = () -> {};
    private int wantedPx;
    private transient Optional<Settings> memory = Optional.empty();

    /**
     * A split.
     *
     * @param way as of {@link JSplitPane}
     * @param wantedPx the size of the pane that keeps it, before the scaling of the screen
     */
    public KeptSplit(String name, int way, Component first, Component second, Keeps keeps, int wantedPx) {
        super(way, first, second);
        this.keeps = keeps;
        this.wantedPx = wantedPx;
        kept = keeps == Keeps.FIRST ? first : second;
        line = new FoldedLine(way == HORIZONTAL_SPLIT, () -> fold(false));
        setName(name);
        line.setName(name + ".line");
        arrow.setName(name + ".fold");
        setResizeWeight(keeps == Keeps.FIRST ? 0 : 1);
        setContinuousLayout(true);
        setBorder(BorderFactory.createEmptyBorder());
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                settle();
            }
        });
        dress();
    }

    /** Says what is folded: the name on the line that is left, and what the arrow is called. */
    public void name(String folded, String arrowName) {
        line.name(folded);
        line.getAccessibleContext().setAccessibleName(folded);
        arrow.setToolTipText(arrowName);
        arrow.getAccessibleContext().setAccessibleName(arrowName);
    }

    /** Runs this whenever the pane has been folded or laid open. */
    public void whenFolded(Runnable listener) {
        whenFolded = listener;
    }

    /** Whether the pane that keeps its size is one line now. */
    public boolean isFolded() {
        return shown() == line;
    }

    /** Folds the pane that keeps its size to one line, or lays it open as large as it was. */
    public void fold(boolean folded) {
        if (folded == isFolded()) {
            return;
        }
        Component shown = folded ? line : kept;
        if (keeps == Keeps.FIRST) {
            setLeftComponent(shown);
        } else {
            setRightComponent(shown);
        }
        // What is one line cannot be drawn larger.
        setEnabled(!folded);
        settle();
        arrow.repaint();
        whenFolded.run();
    }

    private Component shown() {
        return keeps == Keeps.FIRST ? getLeftComponent() : getRightComponent();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (kept != null) {
            dress();
            // What lies folded is no part of the window, and nobody else tells it of the new look.
            SwingUtilities.updateComponentTreeUI(isFolded() ? kept : line);
        }
    }

    private void dress() {
        if (getUI() instanceof BasicSplitPaneUI ui) {
            BasicSplitPaneDivider divider = ui.getDivider();
            divider.setLayout(new GridBagLayout());
            divider.add(arrow);
            divider.addMouseListener(new MouseAdapter() {
                @Override
                public void mouseReleased(MouseEvent event) {
                    if (!isFolded()) {
                        wantedPx = keeps == Keeps.FIRST ? getDividerLocation() : room() - getDividerLocation();
                        memory.ifPresent(settings -> settings.keep("split." + getName(), String.valueOf(wantedPx)));
                    }
                }
            });
        }
    }

    /** Has the settings remember the size that is given to the pane, and gives it the one that they remember. */
    public KeptSplit remembered(Settings settings) {
        memory = Optional.of(settings);
        recall();
        return this;
    }

    private void recall() {
        String kept =
                memory.map(settings -> settings.kept("split." + getName())).orElse("");
        if (kept.matches("\\d{1,5}")) {
            wantedPx = Integer.parseInt(kept);
        }
    }

    @Override
    public void addNotify() {
        super.addNotify();
        // Another document may have been given another size meanwhile.
        recall();
        if (room() > 0) {
            settle();
        }
    }

    private void settle() {
        // Laid out, the split shares out what its size has changed by; what is wanted stays only if set after that.
        validate();
        int least = least(getLeftComponent());
        int most = room() - least(getRightComponent());
        int size = isFolded() ? least(line) : wantedPx;
        int wanted = keeps == Keeps.FIRST ? size : room() - size;
        setDividerLocation(Math.max(least, Math.min(wanted, most)));
    }

    private int room() {
        return along(getSize().width, getSize().height) - getDividerSize();
    }

    private int least(Component pane) {
        return along(pane.getMinimumSize().width, pane.getMinimumSize().height);
    }

    private int along(int width, int height) {
        return getOrientation() == HORIZONTAL_SPLIT ? width : height;
    }

    /** The arrow in the middle of the divider: towards the pane that it folds, away from it where that is folded. */
    private final class Arrow extends JButton {
        private static final int LONG_PX = 48;

        Arrow() {
            setFocusable(false);
            setBorder(BorderFactory.createEmptyBorder());
            setContentAreaFilled(false);
            setCursor(Cursor.getDefaultCursor());
            setRolloverEnabled(true);
            addActionListener(event -> fold(!isFolded()));
        }

        @Override
        public Dimension getPreferredSize() {
            int thick = getDividerSize();
            return getOrientation() == HORIZONTAL_SPLIT ? new Dimension(thick, LONG_PX) : new Dimension(LONG_PX, thick);
        }

        @Override
        public Dimension getMinimumSize() {
            return getPreferredSize();
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setColor(Look.colour(getModel().isRollover() ? "accent" : "quiet"));
            g.translate(getWidth() / 2.0, getHeight() / 2.0);
            if (getOrientation() == VERTICAL_SPLIT) {
                g.rotate(Math.PI / 2);
            }
            boolean back = (keeps == Keeps.FIRST) != isFolded();
            double tip = back ? -2 : 2;
            Path2D path = new Path2D.Double();
            path.moveTo(-tip, -5);
            path.lineTo(tip, 0);
            path.lineTo(-tip, 5);
            g.setStroke(new BasicStroke(1.8f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(path);
            g.dispose();
        }
    }

    /** The one line that is left of a folded pane: a button with the name of the pane, which lays it open again. */
    private static final class FoldedLine extends JButton {
        private static final int THICK_PX = 28;

        /** Whether the pane stands beside the other one, so that its line is upright. */
        private final boolean upright;

        private String name = "";

        FoldedLine(boolean upright, Runnable unfold) {
            this.upright = upright;
            setBorder(BorderFactory.createEmptyBorder(4, 12, 4, 12));
            setHorizontalAlignment(SwingConstants.LEADING);
            putClientProperty("JButton.buttonType", "toolBarButton");
            putClientProperty("FlatLaf.styleClass", "h4");
            addActionListener(event -> unfold.run());
        }

        /** Letters that stand upright are painted here; as its text they would lie level. */
        void name(String folded) {
            name = folded;
            setText(upright ? "" : folded);
            repaint();
        }

        @Override
        public Dimension getMinimumSize() {
            return new Dimension(Look.px(THICK_PX), Look.px(THICK_PX));
        }

        @Override
        public Dimension getPreferredSize() {
            return getMinimumSize();
        }

        @Override
        public Dimension getMaximumSize() {
            return upright
                    ? new Dimension(Look.px(THICK_PX), Integer.MAX_VALUE)
                    : new Dimension(Integer.MAX_VALUE, Look.px(THICK_PX));
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            super.paintComponent(graphics);
            if (!upright) {
                return;
            }
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setFont(getFont());
            g.setColor(getForeground());
            FontMetrics metrics = g.getFontMetrics();
            g.rotate(-Math.PI / 2);
            int down = (getWidth() + metrics.getAscent() - metrics.getDescent()) / 2;
            g.drawString(name, -metrics.stringWidth(name) - 14, down);
            g.dispose();
        }
    }
}
