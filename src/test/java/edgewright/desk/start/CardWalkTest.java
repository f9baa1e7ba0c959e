package edgewright.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Two steps in a row, then three cards and two. */
class CardWalkTest {
    private static final List<Rectangle> PLACES = List.of(
            new Rectangle(0, 0, 150, 40),
            new Rectangle(160, 0, 150, 60),
            new Rectangle(0, 100, 90, 50),
            new Rectangle(100, 100, 90, 50),
            new Rectangle(200, 100, 90, 50),
            new Rectangle(0, 160, 90, 50),
            new Rectangle(100, 160, 90, 50));

    @Test
    void leftAndRightGoThroughAllRowsAsOneReads() {
        assertThat(all(CardWalk.RIGHT)).containsExactly(1, 2, 3, 4, 5, 6, 6);
        assertThat(all(CardWalk.LEFT)).containsExactly(0, 0, 1, 2, 3, 4, 5);
    }

    @Test
    void upAndDownGoToTheNearestOfTheRowBeyond() {
        assertThat(all(CardWalk.DOWN)).containsExactly(2, 4, 5, 6, 6, 5, 6);
        assertThat(all(CardWalk.UP)).containsExactly(0, 1, 0, 0, 1, 2, 3);
    }

    private static List<Integer> all(CardWalk way) {
        return IntStream.range(0, PLACES.size())
                .mapToObj(from -> way.from(PLACES, from))
                .toList();
    }
}
