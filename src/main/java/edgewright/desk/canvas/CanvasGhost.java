package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.desk.picture.CanvasPicture;
import edgewright.desk.picture.DamagedParts;
import edgewright.desk.tool.Ghost;
import edgewright.desk.tool.Sheet;
import edgewright.desk.tool.Toolbox;
import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Area;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The cell under the mouse, and what the tool would do there, seen through before the button goes down. */
final class CanvasGhost {
    /** How much of what would be there is seen, from 0 to 1; the rest is what is there. */
    private static final float SEEN = 0.6f;
    /** Beyond this many cells only frames are painted: to paint a large part twice would take too long. */
    private static final int MOST_SEEN_THROUGH = 400;

    private final ChartCanvas canvas;
    private final Toolbox toolbox;
    private Optional<GridCell> hovered = Optional.empty();
    private Optional<CanvasPicture> picture = Optional.empty();
    private List<Rectangle> through = List.of();
    private List<Rectangle> landing = List.of();
    private List<Rectangle> breaking = List.of();

    CanvasGhost(ChartCanvas canvas) {
        this.canvas = canvas;
        toolbox = canvas.toolbox();
    }

    /** The cell under the mouse, if it shows a stitch. */
    Optional<GridCell> hovered() {
        return hovered;
    }

    /** The mouse is in this cell now, or in none. */
    void hover(Optional<GridCell> cell) {
        Optional<GridCell> stitch = cell.filter(of -> canvas.placeIn(of).isPresent());
        if (!stitch.equals(hovered)) {
            hovered.ifPresent(this::repaintCell);
            hovered = stitch;
            hovered.ifPresent(this::repaintCell);
            follow();
        }
    }

    /** Looks again what would land, after the chart, the stitch, the tool or the mirrors have changed. */
    void follow() {
        List<Rectangle> spoilt = areas();
        Optional<Ghost> ghost = canvas.tools().isBusy()
                ? Optional.empty()
                : hovered.filter(cell -> canvas.placeIn(cell).isPresent())
                        .flatMap(cell -> toolbox.ghostAt(
                                new Sheet(canvas.cells(), canvas.bench().chart()), cell));
        landing = boundsOf(ghost.map(Ghost::lands).orElse(Set.of()));
        breaking = boundsOf(ghost.map(Ghost::breaks).orElse(Set.of()));
        picture = ghost.filter(of -> landing.size() <= MOST_SEEN_THROUGH)
                .map(of -> CanvasPicture.of(of.verdict(), canvas.view()));
        through = picture.map(this::differing).map(DamagedParts::merged).orElse(List.of());
        spoilt.addAll(areas());
        canvas.mend(spoilt);
        toolbox.show(ghost);
    }

    /** The cells lie otherwise now. */
    void forget() {
        hovered = Optional.empty();
        picture = Optional.empty();
        through = List.of();
        landing = List.of();
        breaking = List.of();
        toolbox.show(Optional.empty());
    }

    /** Paints what would be there over what is there. */
    void paint(Graphics2D g, CanvasCursor frames) {
        picture.ifPresent(of -> paintThrough(g, of));
        landing.stream().filter(at -> isNear(g, at)).forEach(frames::landing);
        breaking.stream().filter(at -> isNear(g, at)).forEach(frames::breaking);
        hovered.ifPresent(frames::hovered);
    }

    /** Where another picture of the chart looks otherwise than the one that is shown. */
    private List<Rectangle> differing(CanvasPicture other) {
        return other.damageSince(canvas.picture()).stream()
                .map(canvas.scale()::toPx)
                .toList();
    }

    private static boolean isNear(Graphics2D g, Rectangle at) {
        Rectangle around = CursorFrames.around(at);
        return g.hitClip(around.x, around.y, around.width, around.height);
    }

    /** Each spot once, or two that lie over each other would hide what is there. */
    private void paintThrough(Graphics2D g, CanvasPicture of) {
        Area painted = new Area();
        for (Rectangle part : through) {
            Rectangle seen = part.intersection(g.getClipBounds());
            Area rest = new Area(seen);
            rest.subtract(painted);
            if (!rest.isEmpty()) {
                Graphics2D clear = (Graphics2D) g.create();
                clear.clip(rest);
                clear.setComposite(AlphaComposite.SrcOver.derive(SEEN));
                clear.drawImage(
                        imageOf(of, seen, g.getTransform().getScaleX()), seen.x, seen.y, seen.width, seen.height, null);
                clear.dispose();
                painted.add(rest);
            }
        }
    }

    /**
     * A part of the picture as a whole, so that it is seen through as a whole and not mark by mark.
     *
     * @param density pixels of the screen for each pixel of the canvas
     */
    private BufferedImage imageOf(CanvasPicture of, Rectangle part, double density) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(part.width * density),
                (int) Math.ceil(part.height * density),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(image.getWidth() / (double) part.width, image.getHeight() / (double) part.height);
        g.translate(-part.x, -part.y);
        g.setClip(part);
        of.paintOn(g, canvas.scale(), part);
        g.dispose();
        return image;
    }

    private List<Rectangle> areas() {
        List<Rectangle> areas = new ArrayList<>(through);
        landing.forEach(at -> areas.add(CursorFrames.around(at)));
        breaking.forEach(at -> areas.add(CursorFrames.around(at)));
        return areas;
    }

    private List<Rectangle> boundsOf(Collection<Place> places) {
        return places.stream()
                .flatMap(place -> canvas.cells().cellsOf(place).stream())
                .map(canvas::boundsOf)
                .toList();
    }

    private void repaintCell(GridCell cell) {
        canvas.repaint(CursorFrames.around(canvas.boundsOf(cell)));
    }
}
