package edgewright.desk.canvas;

import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** The outline of strips of cells that lie one on the other, each in a round, as stairs. */
final class MarkedOutline {
    private MarkedOutline() {}

    /** One way round each pile of strips that touch; the strips are in the order of their rounds. */
    static Path2D of(List<Rectangle> strips) {
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
        boolean upright = pile.size() > 1
                && Math.max(pile.get(0).y, pile.get(1).y)
                        < Math.min(pile.get(0).y + pile.get(0).height, pile.get(1).y + pile.get(1).height);
        boolean onwards = pile.size() == 1 || (upright ? pile.get(0).x < pile.get(1).x : pile.get(0).y < pile.get(1).y);
        for (int i = 0; i < pile.size(); i++) {
            step(pile.get(i), upright, onwards, true, i == 0, outline);
        }
        for (int i = pile.size() - 1; i >= 0; i--) {
            step(pile.get(i), upright, !onwards, false, false, outline);
        }
        outline.closePath();
    }

    /** Along the one end of a strip: its right one, or its lower one where strips stand upright, if {@code far}. */
    private static void step(
            Rectangle strip, boolean upright, boolean onwards, boolean far, boolean first, Path2D outline) {
        if (upright) {
            int y = far ? strip.y + strip.height : strip.y;
            int from = onwards ? strip.x : strip.x + strip.width;
            go(from, y, first, outline);
            outline.lineTo(onwards ? strip.x + strip.width : strip.x, y);
        } else {
            int x = far ? strip.x + strip.width : strip.x;
            int from = onwards ? strip.y : strip.y + strip.height;
            go(x, from, first, outline);
            outline.lineTo(x, onwards ? strip.y + strip.height : strip.y);
        }
    }

    private static void go(int x, int y, boolean first, Path2D outline) {
        if (first) {
            outline.moveTo(x, y);
        } else {
            outline.lineTo(x, y);
        }
    }
}
