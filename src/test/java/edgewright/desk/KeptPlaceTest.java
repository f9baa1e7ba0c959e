package edgewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A window stands where it stood, but never where nobody could reach it. */
class KeptPlaceTest {
    private static final Rectangle LEFT = new Rectangle(0, 30, 1600, 970);
    private static final Rectangle RIGHT = new Rectangle(1600, 0, 1024, 700);

    private static Rectangle within(Rectangle wanted) {
        return KeptPlace.within(wanted, List.of(LEFT, RIGHT));
    }

    @Test
    void aWindowThatIsWhollyOnAScreenStaysAsItWas() {
        assertThat(within(new Rectangle(100, 60, 1200, 900))).isEqualTo(new Rectangle(100, 60, 1200, 900));
        assertThat(within(new Rectangle(1650, 10, 900, 620))).isEqualTo(new Rectangle(1650, 10, 900, 620));
    }

    @Test
    void oneThatHangsOverAnEdgeIsMovedOntoTheScreenThatHasMostOfIt() {
        assertThat(within(new Rectangle(1500, 100, 1000, 650))).isEqualTo(new Rectangle(1600, 50, 1000, 650));
        assertThat(within(new Rectangle(-300, -40, 900, 620))).isEqualTo(new Rectangle(0, 30, 900, 620));
    }

    @Test
    void oneThatIsLargerThanItsScreenBecomesAsLargeAsThat() {
        assertThat(within(new Rectangle(1700, 100, 1460, 940))).isEqualTo(RIGHT);
    }

    @Test
    void oneOnAScreenThatIsNotThereAnyMoreComesToTheFirst() {
        assertThat(within(new Rectangle(5000, 200, 900, 620))).isEqualTo(new Rectangle(700, 200, 900, 620));
    }
}
