package edgewright.desk.start;

import edgewright.chart.Chart;
import java.awt.image.BufferedImage;

/** What came of looking at the chart of a card. */
sealed interface CardContent {
    /** The chart, and a picture of it. */
    record Drawn(Chart chart, BufferedImage picture) implements CardContent {}

    /** Its file is not there any more. */
    record Gone() implements CardContent {}

    /** Its file is there, but it is no chart, or cannot be read. */
    record Unreadable() implements CardContent {}
}
