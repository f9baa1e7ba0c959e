package edgewright.desk.output;

import edgewright.desk.parts.Look;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;

/**
 * A page in a window that scrolls: fitted whole, fitted to the width, or as large as somebody zooms it. A page that is drawn
 * anew for another size stands there as it was, larger or smaller, until it is. An empty sheet has words on it.
 */
final class PagePaper extends JPanel implements Scrollable {
    /** How a page is fitted into its window. */
    enum Fit {
        PAGE,
        WIDTH,
        /** Not at all: somebody has zoomed. */
        NONE
    }

    private static final double STEP = 1.25;
    /** A page comes out of its drawing by so much narrower or wider than it was asked for. */
    private static final int ROUNDED_PX = 2;

    private static final int LEAST_PX = 120;
    private static final int MOST_PX = 3000;
    /** Height of a page by its width while there is none: that of A4. */
    private static final double USUAL_SHAPE = Math.sqrt(2);

    private final transient Supplier<String> otherwise;
    private transient BufferedImage image;
    private Fit fit = Fit.PAGE;
    private int zoomedPx;

    /**
     * An empty sheet.
     *
     * @param heard what a screen reader calls it
     * @param otherwise what stands on the sheet where there is no page
     */
    PagePaper(String heard, Supplier<String> otherwise) {
        this.otherwise = otherwise;
        setOpaque(false);
        setFocusable(true);
        setName("preview.paper");
        getAccessibleContext().setAccessibleName(heard);
        MouseAdapter mouse = new Hand();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
    }

    /** The window through which it is seen. The wheel scrolls, and zooms while Ctrl is held. */
    JScrollPane scroll() {
        JScrollPane scroll = new JScrollPane(this);
        scroll.setName("preview.scroll");
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        addMouseWheelListener(this::wheel);
        return scroll;
    }

    private void wheel(MouseWheelEvent event) {
        if (event.isControlDown() || event.isMetaDown()) {
            zoom(Math.pow(STEP, -event.getPreciseWheelRotation()), event.getPoint());
        } else {
            getParent().dispatchEvent(SwingUtilities.convertMouseEvent(this, event, getParent()));
        }
    }

    /** Lays another page, or none. */
    void lay(BufferedImage newImage) {
        image = newImage;
        revalidate();
        repaint();
    }

    /** Fits the page from now on. */
    void fit(Fit newFit) {
        fit = newFit;
        revalidate();
        repaint();
    }

    Fit fitted() {
        return fit;
    }

    /** Makes it a step larger, or smaller; the middle of what is seen stays there. */
    void zoom(int steps) {
        Rectangle seen = getVisibleRect();
        zoom(Math.pow(STEP, steps), new Point((int) seen.getCenterX(), (int) seen.getCenterY()));
    }

    private void zoom(double factor, Point at) {
        int before = pagePx().width;
        Rectangle seen = getVisibleRect();
        fit = Fit.NONE;
        zoomedPx = (int) Math.max(Look.px(LEAST_PX), Math.min(Look.px(MOST_PX), before * factor));
        double grown = zoomedPx / (double) before;
        revalidate();
        if (getParent() instanceof JViewport window) {
            window.validate();
            window.setViewPosition(within(window, (int) Math.round(at.x * grown - (at.x - seen.x)), (int)
                    Math.round(at.y * grown - (at.y - seen.y))));
        }
        repaint();
    }

    private Point within(JViewport window, int x, int y) {
        return new Point(
                Math.max(0, Math.min(x, getWidth() - window.getWidth())),
                Math.max(0, Math.min(y, getHeight() - window.getHeight())));
    }

    /** How large the page is on the screen, in our pixels. */
    Dimension pagePx() {
        double shape = image == null ? USUAL_SHAPE : image.getHeight() / (double) image.getWidth();
        Dimension window = getParent() == null ? getSize() : getParent().getSize();
        int width = switch (fit) {
            case PAGE -> (int) Math.min(window.width, window.height / shape);
            case WIDTH -> window.width;
            case NONE -> zoomedPx;
        };
        double drawn = image == null ? 0 : image.getWidth() / scale();
        if (Math.abs(drawn - width) <= ROUNDED_PX) {
            // Dot for dot, or it would be blurred.
            return new Dimension((int) Math.round(drawn), (int) Math.round(image.getHeight() / scale()));
        }
        int wide = Math.max(1, width);
        return new Dimension(wide, (int) Math.round(wide * shape));
    }

    /** Into how many pixels of the screen a page is to be drawn so that it is as large as is wanted. */
    Dimension roomPx() {
        Dimension window = getParent().getSize();
        int wide = fit == Fit.NONE ? zoomedPx : Math.max(window.width, LEAST_PX);
        int high = fit == Fit.PAGE ? Math.max(window.height, LEAST_PX) : Integer.MAX_VALUE;
        return new Dimension(
                (int) Math.round(wide * scale()),
                fit == Fit.PAGE ? (int) Math.round(high * scale()) : Integer.MAX_VALUE);
    }

    /** Whether it is drawn for another size than it is looked at. */
    boolean isBlurred() {
        return image != null && Math.abs(image.getWidth() - pagePx().width * scale()) > scale();
    }

    /** Pixels of the screen for each of ours. */
    private double scale() {
        return getGraphicsConfiguration() == null
                ? 1
                : getGraphicsConfiguration().getDefaultTransform().getScaleX();
    }

    @Override
    public Dimension getPreferredSize() {
        return fit == Fit.PAGE && getParent() != null ? getParent().getSize() : pagePx();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Look.px(32);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(Look.px(32), visible.height - Look.px(32));
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return fit != Fit.NONE || getParent().getWidth() > zoomedPx;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return fit == Fit.PAGE || getParent().getHeight() > pagePx().height;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        Dimension page = pagePx();
        int x = Math.max(0, (getWidth() - page.width) / 2);
        if (image == null) {
            paintEmpty(g, new Rectangle(x, 0, page.width, page.height));
        } else {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.drawImage(image, x, 0, page.width, page.height, null);
        }
        g.setColor(Look.colour(isFocusOwner() ? "accent" : "line"));
        g.drawRect(x, 0, page.width - 1, page.height - 1);
        g.dispose();
    }

    private void paintEmpty(Graphics2D g, Rectangle page) {
        g.setColor(Look.colour("paper"));
        g.fill(page);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setFont(Look.font(13));
        g.setColor(Look.colour("quiet"));
        String words = otherwise.get();
        g.drawString(
                words, page.x + Math.max(4, (page.width - g.getFontMetrics().stringWidth(words)) / 2), page.height / 2);
    }

    /** Takes the keys at a press, and moves the page under the window. */
    private final class Hand extends MouseAdapter {
        private Point from = new Point();

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            from = event.getPoint();
            setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            Rectangle seen = getVisibleRect();
            seen.translate(from.x - event.getX(), from.y - event.getY());
            scrollRectToVisible(seen);
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            setCursor(Cursor.getDefaultCursor());
        }
    }
}
