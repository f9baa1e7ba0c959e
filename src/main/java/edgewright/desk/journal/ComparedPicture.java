package edgewright.desk.journal;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.desk.parts.Look;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.Area;
import edgewright.draw.picture.CellLayout;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.raster.RasterSurface;
import edgewright.texts.Language;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import javax.swing.JPanel;
import javax.swing.SwingWorker;

/** A chart, drawn whole, with some of its places framed. It is drawn beside the event thread, since it may be large. */
final class ComparedPicture extends JPanel {
    private static final double MOST_CELL_PX = 24;
    private static final int SIZE_PX = 400;

    private final transient Language language;
    private transient Optional<Shown> shown = Optional.empty();
    private transient Optional<Drawn> drawn = Optional.empty();
    private transient Optional<Drawing> going = Optional.empty();

    private record Shown(Chart chart, List<Place> framed) {}

    private record Drawn(BufferedImage image, double scale) {}

    ComparedPicture(String name, Language language) {
        this.language = language;
        setName(name);
        setOpaque(false);
        setPreferredSize(new Dimension(SIZE_PX, SIZE_PX));
        setMinimumSize(new Dimension(SIZE_PX / 2, SIZE_PX / 2));
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                draw();
            }
        });
    }

    /**
     * Shows a chart.
     *
     * @param heard what it is called to whoever does not see it
     */
    void show(Chart chart, List<Place> framed, String heard) {
        shown = Optional.of(new Shown(chart, framed));
        getAccessibleContext().setAccessibleName(heard);
        draw();
    }

    /** Whether the picture is there to be seen. */
    boolean isDrawn() {
        return drawn.isPresent() && going.isEmpty();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (shown != null) {
            draw();
        }
    }

    private void draw() {
        Optional<Drawing> old = going;
        going = Optional.empty();
        // Afterwards, since a drawing that is cancelled is done at once.
        old.ifPresent(drawing -> drawing.cancel(false));
        if (shown.isPresent() && getWidth() > 0 && getHeight() > 0) {
            AffineTransform screen = getGraphicsConfiguration() == null
                    ? new AffineTransform()
                    : getGraphicsConfiguration().getDefaultTransform();
            Drawing next = new Drawing(shown.get(), screen.getScaleX());
            going = Optional.of(next);
            next.execute();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        drawn.ifPresent(picture -> {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            double left = (getWidth() - picture.image().getWidth() / picture.scale()) / 2;
            g.translate((int) Math.max(0, left), 0);
            g.scale(1 / picture.scale(), 1 / picture.scale());
            g.drawImage(picture.image(), 0, 0, null);
            g.dispose();
        });
    }

    /** One drawing of what is shown, at the size of now. */
    private final class Drawing extends SwingWorker<BufferedImage, Void> {
        private final Shown of;
        private final double scale;
        private final int widthPx = getWidth();
        private final int heightPx = getHeight();
        private final PictureStyle style = PictureStyle.screen(language).withPalette(Look.palette());
        private final Color accent = Look.colour("accent");
        private final Color paper = Look.colour("paper");

        Drawing(Shown of, double scale) {
            this.of = of;
            this.scale = scale;
        }

        @Override
        protected BufferedImage doInBackground() {
            CornerPicture picture = CornerPicture.of(of.chart(), style.withRepeats(1), Emphasis.NONE);
            double pxPerMm = Math.min(
                    MOST_CELL_PX / PictureStyle.CELL_MM,
                    Math.min(widthPx / picture.widthMm(), heightPx / picture.heightMm()));
            BufferedImage image = new BufferedImage(
                    (int) Math.max(1, Math.ceil(picture.widthMm() * pxPerMm * scale)),
                    (int) Math.max(1, Math.ceil(picture.heightMm() * pxPerMm * scale)),
                    BufferedImage.TYPE_INT_ARGB);
            Graphics2D g = image.createGraphics();
            g.scale(pxPerMm * scale, pxPerMm * scale);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            RasterSurface surface = new RasterSurface(g);
            picture.marksIn(new Area(0, 0, picture.widthMm(), picture.heightMm()))
                    .forEach(mark -> mark.drawOn(surface));
            frame(g, picture.layout());
            g.dispose();
            return image;
        }

        private void frame(Graphics2D g, CellLayout layout) {
            Color veil = new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), 90);
            // Paper under the accent, so that the frame is seen on a yarn of any colour.
            BasicStroke wide = new BasicStroke((float) (layout.cellMm() / 3));
            BasicStroke narrow = new BasicStroke((float) (layout.cellMm() / 6));
            of.framed().stream()
                    .flatMap(place -> layout.cellsOf(place).stream())
                    .map(layout::areaOf)
                    .map(RasterSurface::boxOf)
                    .forEach(cell -> {
                        g.setColor(veil);
                        g.fill(cell);
                        g.setColor(paper);
                        g.setStroke(wide);
                        g.draw(cell);
                        g.setColor(accent);
                        g.setStroke(narrow);
                        g.draw(cell);
                    });
        }

        @Override
        protected void done() {
            if (going.filter(latest -> latest == this).isEmpty()) {
                return;
            }
            going = Optional.empty();
            try {
                drawn = Optional.of(new Drawn(get(), scale));
            } catch (ExecutionException e) {
                throw new IllegalStateException(e.getCause());
            } catch (InterruptedException e) {
                // The picture is there when done() is called, so nobody waits here.
                Thread.currentThread().interrupt();
            }
            repaint();
        }
    }
}
