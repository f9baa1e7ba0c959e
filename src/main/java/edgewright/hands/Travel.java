package edgewright.hands;

import edgewright.chart.Hand;
import java.util.List;

/** The way round the piece that a maker travels, right side facing. Sides count from 0: top, left, bottom, right. */
enum Travel {
    /** With the hook in the right hand. */
    ANTICLOCKWISE(List.of(0, 1, 2, 3)),
    /** With the hook in the left hand. */
    CLOCKWISE(List.of(0, 3, 2, 1));

    private final List<Integer> order;

    Travel(List<Integer> order) {
        this.order = order;
    }

    static Travel of(Hand hand) {
        return hand == Hand.LEFT ? CLOCKWISE : ANTICLOCKWISE;
    }

    /** The four sides in the order in which they are come to, from this one on. */
    List<Integer> from(int side) {
        return List.of(side, after(side), after(after(side)), after(after(after(side))));
    }

    int after(int side) {
        return order.get((order.indexOf(side) + 1) % order.size());
    }
}
