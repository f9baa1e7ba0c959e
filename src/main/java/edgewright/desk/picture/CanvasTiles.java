package edgewright.desk.picture;

import edgewright.desk.parts.Look;
import edgewright.draw.raster.SeenPixels;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The painted chart, kept in tiles: what was painted once is only laid down again, and an edit costs what it has changed. A
 * large chart takes longer to paint than a frame may last, so it is painted a few tiles at a time; until its turn comes a tile
 * is shown as it was.
 */
public final class CanvasTiles {
    /** The edge of a tile; a whole number of the screen's own pixels at every usual scaling. */
    private static final int EDGE_PX = 128;

    private static final int MOST_STALE_PARTS = 24;
    private static final int FEWEST_KEPT = 64;

    private record Key(int column, int row) {
        Rectangle area() {
            return new Rectangle(column * EDGE_PX, row * EDGE_PX, EDGE_PX, EDGE_PX);
        }
    }

    /** A painted tile, and which parts of it look otherwise by now. */
    private static final class Tile {
        private final BufferedImage image;
        /** The same as somebody sees it. */
        private BufferedImage seen;

        private final List<Rectangle> stale = new ArrayList<>();
        private boolean outdated = true;

        Tile(BufferedImage image) {
            this.image = image;
            this.seen = image;
        }

        void spoil(Rectangle part) {
            stale.add(part);
            if (stale.size() > MOST_STALE_PARTS || 2 * part.width * part.height > EDGE_PX * EDGE_PX) {
                outdate();
            }
        }

        void outdate() {
            outdated = true;
            stale.clear();
        }
    }

    /** The tile used last stands last. */
    private final Map<Key, Tile> tiles = new LinkedHashMap<>(16, 0.75f, true);

    private CanvasScale scale = new CanvasScale(new Point(), 1);
    /** Pixels of the screen for each pixel of the canvas. */
    private double density = 1;

    /** Everything looks otherwise. */
    public void outdate() {
        tiles.values().forEach(Tile::outdate);
    }

    /** What lies in these parts of the canvas looks otherwise. */
    public void spoil(List<Rectangle> parts) {
        for (Rectangle part : parts) {
            for (Key key : keysIn(part)) {
                Tile tile = tiles.get(key);
                if (tile != null && !tile.outdated) {
                    tile.spoil(part.intersection(key.area()));
                }
            }
        }
    }

    /** Whether these parts can be laid down without painting a tile anew, at this scale. */
    public boolean areReady(List<Rectangle> parts, CanvasScale now) {
        return now.equals(scale)
                && parts.stream().flatMap(part -> keysIn(part).stream()).allMatch(key -> {
                    Tile tile = tiles.get(key);
                    return tile != null && !tile.outdated;
                });
    }

    /**
     * Lays down what lies in a part of the canvas.
     *
     * @param first the tiles nearest to this point are painted first
     * @param mostNanos how long tiles may be painted for; one is painted whatever it takes
     * @return the tiles that are still to be painted
     */
    public List<Rectangle> lay(
            Graphics2D g, CanvasPicture picture, CanvasScale now, Rectangle clip, Point first, long mostNanos) {
        double screen = g.getTransform().getScaleX();
        if (!now.equals(scale) || screen != density) {
            tiles.clear();
            scale = now;
            density = screen;
        }
        List<Key> keys = keysIn(clip);
        keys.sort(Comparator.comparingDouble(
                key -> first.distanceSq(key.area().getCenterX(), key.area().getCenterY())));
        List<Rectangle> owed = new ArrayList<>();
        long begin = System.nanoTime();
        boolean painted = false;
        for (Key key : keys) {
            Tile tile = tiles.get(key);
            boolean whole = tile == null || tile.outdated;
            if (whole && painted && System.nanoTime() - begin > mostNanos) {
                owed.add(key.area());
            } else if (whole) {
                tile = painted(key, tile, picture);
                painted = true;
            } else {
                mend(key, tile, picture);
            }
            layDown(g, key, tile);
        }
        keepNoMoreThan(Math.max(FEWEST_KEPT, 2 * keys.size()));
        return owed;
    }

    private static void layDown(Graphics2D g, Key key, Tile tile) {
        Rectangle area = key.area();
        if (tile == null) {
            g.setColor(Look.colour("canvas"));
            g.fill(area);
        } else {
            g.drawImage(tile.seen, area.x, area.y, EDGE_PX, EDGE_PX, null);
        }
    }

    private Tile painted(Key key, Tile before, CanvasPicture picture) {
        int edge = (int) Math.ceil(EDGE_PX * density);
        Tile tile = before == null ? new Tile(new BufferedImage(edge, edge, BufferedImage.TYPE_INT_RGB)) : before;
        paint(key, tile, key.area(), picture);
        tile.seen = SeenPixels.of(tile.image, picture.vision());
        tile.outdated = false;
        tiles.put(key, tile);
        return tile;
    }

    private void mend(Key key, Tile tile, CanvasPicture picture) {
        if (!tile.stale.isEmpty()) {
            tile.stale.forEach(part -> paint(key, tile, part, picture));
            tile.seen = SeenPixels.of(tile.image, picture.vision());
            tile.stale.clear();
        }
    }

    private void paint(Key key, Tile tile, Rectangle part, CanvasPicture picture) {
        Rectangle area = key.area();
        Graphics2D g = tile.image.createGraphics();
        g.scale(density, density);
        g.translate(-area.x, -area.y);
        g.setClip(part);
        picture.paintOn(g, scale, part);
        g.dispose();
    }

    private static List<Key> keysIn(Rectangle part) {
        List<Key> keys = new ArrayList<>();
        if (part.isEmpty()) {
            return keys;
        }
        for (int row = Math.floorDiv(part.y, EDGE_PX); row * EDGE_PX < part.y + part.height; row++) {
            for (int column = Math.floorDiv(part.x, EDGE_PX); column * EDGE_PX < part.x + part.width; column++) {
                keys.add(new Key(column, row));
            }
        }
        return keys;
    }

    private void keepNoMoreThan(int most) {
        Iterator<Key> oldest = tiles.keySet().iterator();
        for (int over = tiles.size() - most; over > 0; over--) {
            oldest.next();
            oldest.remove();
        }
    }
}
