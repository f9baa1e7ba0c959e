package edgewright.booklet;

import java.awt.geom.Point2D;
import java.util.Locale;

/** A way to go on a page, whose second coordinate grows downwards. */
public enum Direction {
    RIGHT(1, 0),
    DOWN(0, 1),
    LEFT(-1, 0),
    UP(0, -1);

    private final int x;
    private final int y;

    Direction(int x, int y) {
        this.x = x;
        this.y = y;
    }

    /** The nearest of the four from one point to another. */
    static Direction of(Point2D from, Point2D to) {
        double right = to.getX() - from.getX();
        double down = to.getY() - from.getY();
        if (Math.abs(right) > Math.abs(down)) {
            return right > 0 ? RIGHT : LEFT;
        }
        return down > 0 ? DOWN : UP;
    }

    Direction opposite() {
        return values()[(ordinal() + 2) % 4];
    }

    Point2D step(Point2D from, double distance) {
        return new Point2D.Double(from.getX() + x * distance, from.getY() + y * distance);
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
