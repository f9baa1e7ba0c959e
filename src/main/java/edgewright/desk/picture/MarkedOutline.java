package edgewright.desk.picture;

import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** The outline of strips of cells that lie one on the other, each in a round, as stairs. */
public final class MarkedOutline {
    private MarkedOutline() {}

    /** One way round each pile of strips that touch; the strips are in the order of their rounds. */
    public static Path2D of(List<Rectangle> strips) {
        Path2D outline = new Path2D.Double();
        List<Rectangle> pile = new ArrayList<>();
        for (Rectangle strip : strips) {
            if (!pile.isEmpty() && !touch(pile.get(pile.size() - 1), strip)) {
                trace(pile, outline);
                pile.clear();
            }
            pile.add(strip);
        }
        trace(pile, outline);
        return outline;
    }

    private static boolean touch(Rectangle one, Rectangle next) {
        Rectangle grown = new Rectangle(one);
        grown.grow(1, 1);
        return grown.intersects(next);
    }

    /** Out along one end of the strips and back along the other. */
    private static void trace(List<Rectangle> pile, Path2D outline) {
        if (pile.isEmpty()) {
            return;
        }
        boolean upright = pile.size() > 1 && isBeside(pile.get(0), pile.get(1));
        boolean onwards = pile.size() == 1 || (upright ? pile.get(0).x < pile.get(1).x : pile.get(0).y < pile.get(1).y);
        for (int i = 0; i < pile.size(); i++) {
            step(pile.get(i), upright, onwards, true, i == 0, outline);
        }
        for (int i = pile.size() - 1; i >= 0; i--) {
            step(pile.get(i), upright, !onwards, false, false, outline);
        }
        outline.closePath();
    }

    /** Whether two strips that touch lie side by side; by a pixel or so they may lie over each other as well. */
    private static boolean isBeside(Rectangle one, Rectangle next) {
        int across = Math.min(one.x + one.width, next.x + next.width) - Math.max(one.x, next.x);
        int down = Math.min(one.y + one.height, next.y + next.height) - Math.max(one.y, next.y);
        return down > across;
    }

    /**
     * Along the one end of a strip: its right one, or its lower one where strips stand upright, if {@code far}. It begins where
     * the last one has ended, so strips that lie over each other by a pixel make no tooth.
     */
    private static void step(
            Rectangle strip, boolean upright, boolean onwards, boolean far, boolean first, Path2D outline) {
        if (upright) {
            int y = far ? strip.y + strip.height : strip.y;
            if (first) {
                outline.moveTo(onwards ? strip.x : strip.x + strip.width, y);
            } else {
                outline.lineTo(outline.getCurrentPoint().getX(), y);
            }
            outline.lineTo(onwards ? strip.x + strip.width : strip.x, y);
        } else {
            int x = far ? strip.x + strip.width : strip.x;
            if (first) {
                outline.moveTo(x, onwards ? strip.y : strip.y + strip.height);
            } else {
                outline.lineTo(x, outline.getCurrentPoint().getY());
            }
            outline.lineTo(x, onwards ? strip.y + strip.height : strip.y);
        }
    }
}
