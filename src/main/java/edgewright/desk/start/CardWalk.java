package edgewright.desk.start;

import java.awt.Rectangle;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Where the arrow keys lead among buttons that stand in rows. */
enum CardWalk {
    LEFT,
    RIGHT,
    UP,
    DOWN;

    /**
     * The button that is next in this direction. To the left and right goes through all rows as one reads; up and down goes to
     * the nearest button of the row above or below.
     *
     * @param places of the buttons, as one reads
     * @param from counts from 0
     * @return counts from 0; {@code from} where there is nothing in that direction
     */
    int from(List<Rectangle> places, int from) {
        return switch (this) {
            case LEFT -> Math.max(0, from - 1);
            case RIGHT -> Math.min(places.size() - 1, from + 1);
            case UP -> nearest(places, from, -1);
            case DOWN -> nearest(places, from, 1);
        };
    }

    private static int nearest(List<Rectangle> places, int from, int way) {
        Rectangle here = places.get(from);
        return IntStream.range(0, places.size())
                .filter(i -> way > 0 ? places.get(i).y >= here.y + here.height : bottom(places.get(i)) <= here.y)
                .boxed()
                .min(Comparator.<Integer>comparingInt(i -> way * places.get(i).y)
                        .thenComparingDouble(i -> Math.abs(places.get(i).getCenterX() - here.getCenterX())))
                .orElse(from);
    }

    private static int bottom(Rectangle place) {
        return place.y + place.height;
    }
}
