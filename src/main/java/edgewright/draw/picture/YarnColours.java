package edgewright.draw.picture;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Hatch;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.YarnSign;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * What the yarns of the rounds look like in a style: their colours, or where all is black on white what tells them apart: signs
 * under marks, and where there are no marks the tones of areas. Round 0 is
 * the base round, which has no yarn of the chart.
 */
final class YarnColours {
    private final PictureStyle style;
    private final Colour[] colours;
    private final Hatch[] hatches;
    private final YarnSign[] signs;

    YarnColours(Chart chart, PictureStyle style) {
        this.style = style;
        this.colours = new Colour[chart.rounds().size() + 1];
        this.hatches = new Hatch[colours.length];
        this.signs = new YarnSign[colours.length];
        Map<String, Hatch> hatchOf = isInOneInk() ? Hatch.of(chart) : Map.of();
        Map<String, YarnSign> signOf = isInOneInk() ? YarnSign.of(chart) : Map.of();
        colours[0] = style.palette().base();
        hatches[0] = Hatch.BLANK;
        signs[0] = YarnSign.BLANK;
        for (int r = 1; r < colours.length; r++) {
            colours[r] = chart.yarnOf(r).colour();
            hatches[r] = hatchOf.get(chart.round(r).yarn());
            signs[r] = signOf.get(chart.round(r).yarn());
        }
    }

    PictureStyle style() {
        return style;
    }

    /** Whether all is black on white. */
    boolean isInOneInk() {
        return style.inking() == ColourMode.BLACK;
    }

    /** Whether the areas of yarns have tones, for no mark lies on them. */
    boolean isToned() {
        return isInOneInk() && !style.marks();
    }

    /** Whether an area in which the yarn of this round shows is all black. */
    boolean isSolid(int round) {
        return isToned() && hatches[round] == Hatch.SOLID;
    }

    /**
     * A cell in one ink where the yarn of this round shows.
     *
     * @param column in which it is drawn
     * @param row in which it is drawn
     * @param frame in which its mark is made
     */
    List<Shape> inOneInk(int round, Area area, int column, int row, Frame frame) {
        return isToned() ? hatches[round].in(area, column, row, tile()) : signs[round].in(area, frame);
    }

    /** How many cells a tile of a hatch is wide, so that its lines stay about half a millimetre apart or more in print. */
    private int tile() {
        return switch (style.look()) {
            case SMALL -> 4;
            case SHADED -> 2;
            case FLAT, WORKED -> 1;
        };
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
