package edgewright.draw.picture;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Hatch;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the yarns of the rounds look like in a style: their colours, or their hatches where all is black on white. Round 0 is
 * the base round, which has no yarn of the chart.
 */
final class YarnColours {
    private final PictureStyle style;
    private final Colour[] colours;
    private final Hatch[] hatches;

    YarnColours(Chart chart, PictureStyle style) {
        this.style = style;
        this.colours = new Colour[chart.rounds().size() + 1];
        this.hatches = new Hatch[colours.length];
        Map<String, Hatch> hatchOf = style.inking() == ColourMode.BLACK ? Hatch.of(chart) : Map.of();
        colours[0] = style.palette().base();
        hatches[0] = Hatch.BLANK;
        for (int r = 1; r < colours.length; r++) {
            colours[r] = chart.yarnOf(r).colour();
            hatches[r] = hatchOf.get(chart.round(r).yarn());
        }
    }

    PictureStyle style() {
        return style;
    }

    /** How a cell is hatched where the yarn of this round shows; empty where it is filled with colour. */
    Optional<Hatch> hatch(int round) {
        return style.inking() == ColourMode.BLACK ? Optional.of(hatches[round]) : Optional.empty();
    }

    /** The colours of the yarns that are worked with, each once. */
    List<Colour> all() {
        return Arrays.stream(colours).skip(1).distinct().toList();
    }

    /** The colour of the yarn of this round. */
    Colour colour(int round) {
        return colours[round];
    }

    /** What marks in the yarn of this round are drawn in. */
    Colour mark(int round) {
        return style.inking().yarn(colours[round]);
    }

    /** What marks lie on where the yarn of this round shows. */
    Colour ground(int round) {
        return style.ground(colours[round]);
    }
}
