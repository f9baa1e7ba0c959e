package edgewright.draw.picture;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.HookHand;
import edgewright.draw.grid.Rotation;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Palette;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.OptionalInt;

/**
 * How a chart is to be drawn. Start from {@link #print}, {@link #screen}, {@link #darkScreen} or {@link #fabric} and change
 * what is wanted.
 *
 * @param cellMm the edge of a cell; more than 0. Everything else grows with it
 * @param palette the colours that are not yarn
 * @param fabric whether the layer of what shows is drawn
 * @param marks whether the layer of what to do is drawn
 * @param grid whether lines between cells are drawn
 * @param labels whether numbers, letters, arrow and brackets are drawn around the cells
 * @param legend whether the legend is set into the same drawing
 * @param look how fabric is filled
 * @param rotation how the corner lies
 * @param repeats how often the repeat is drawn on each arm, 1 or more; empty for as often as shows it well
 * @param inking in the colours of the yarns, or in black alone; that is meant for the palette {@link Palette#BLACK}
 * @param hand whose border is drawn: that of a left-handed maker, rotated, is seen in a mirror. Letters and numbers
 *     are not mirrored, and neither are hatches
 * @param markStyle how long stitches are marked
 * @param language in which the picture speaks: its labels, its title and what is said of it to those who do not see it
 */
public record PictureStyle(
        double cellMm,
        Palette palette,
        boolean fabric,
        boolean marks,
        boolean grid,
        boolean labels,
        boolean legend,
        FabricFill look,
        Rotation rotation,
        OptionalInt repeats,
        ColourMode inking,
        HookHand hand,
        MarkStyle markStyle,
        Language language) {
    /** The usual edge of a cell. */
    public static final double CELL_MM = 5;

    /** The fewest stitches of repeats in the picture of an example. */
    private static final int ENOUGH_FOR_EXAMPLE = 4;

    /** The fewest stitches of repeats that an arm shows where no number of repeats is asked for. */
    private static final int ENOUGH_STITCHES = 12;

    public PictureStyle {
        if (!(cellMm > 0) || (repeats.isPresent() && repeats.getAsInt() < 1)) {
            throw new IllegalArgumentException("cells of " + cellMm + " mm, repeats drawn: " + repeats);
        }
    }

    /** Both layers on white paper with a legend: a complete chart. */
    public static PictureStyle print(Language language) {
        return new PictureStyle(
                CELL_MM,
                Palette.LIGHT,
                true,
                true,
                true,
                true,
                true,
                FabricFill.FLAT,
                Rotation.NONE,
                OptionalInt.empty(),
                ColourMode.COLOUR,
                HookHand.RIGHT,
                MarkStyle.USUAL,
                language);
    }

    /** Both layers on a light screen; the legend is elsewhere. */
    public static PictureStyle screen(Language language) {
        return print(language).withLegend(false);
    }

    /** Both layers on a dark screen; the legend is elsewhere. */
    public static PictureStyle darkScreen(Language language) {
        return screen(language).withPalette(Palette.DARK);
    }

    /** The worked border alone, without marks, lines and labels. */
    public static PictureStyle fabric(Language language) {
        return screen(language)
                .withMarks(false)
                .withGrid(false)
                .withLabels(false)
                .withLook(FabricFill.WORKED);
    }

    /** A complete chart in one ink: marks, letters and hatches. */
    public static PictureStyle blackAndWhite(Language language) {
        return print(language).withPalette(Palette.BLACK).withInking(ColourMode.BLACK);
    }

    /** For a small picture of a chart of a few rounds that shows one thing, such as a rule: no more repeats than it needs. */
    public static PictureStyle example(Chart chart, Language language) {
        int w = chart.shape(Arm.INCOMING.side()).w();
        return screen(language).withRepeats((ENOUGH_FOR_EXAMPLE + w - 1) / w);
    }

    /** How often the repeat of this chart is drawn on each arm. */
    public int repeatsOf(Chart chart) {
        return repeats.orElse(usualRepeats(chart));
    }

    /** How often the repeat of this chart is drawn on each arm where no number of repeats is asked for. */
    public static int usualRepeats(Chart chart) {
        int width = chart.shape(Arm.INCOMING.side()).w();
        return (ENOUGH_STITCHES + width - 1) / width;
    }

    /** The words in pictures. */
    public Messages says() {
        return language.messages("draw");
    }

    /** With cells of another size. */
    public PictureStyle withCellMm(double newCellMm) {
        return new PictureStyle(
                newCellMm, palette, fabric, marks, grid, labels, legend, look, rotation, repeats, inking, hand,
                markStyle, language);
    }

    /** In other colours. */
    public PictureStyle withPalette(Palette newPalette) {
        return new PictureStyle(
                cellMm,
                newPalette,
                fabric,
                marks,
                grid,
                labels,
                legend,
                look,
                rotation,
                repeats,
                inking,
                hand,
                markStyle,
                language);
    }

    /** With the layer of what shows, or without. */
    public PictureStyle withFabric(boolean shown) {
        return new PictureStyle(
                cellMm, palette, shown, marks, grid, labels, legend, look, rotation, repeats, inking, hand, markStyle,
                language);
    }

    /** With the layer of what to do, or without. */
    public PictureStyle withMarks(boolean shown) {
        return new PictureStyle(
                cellMm, palette, fabric, shown, grid, labels, legend, look, rotation, repeats, inking, hand, markStyle,
                language);
    }

    /** With lines between cells, or without. */
    public PictureStyle withGrid(boolean shown) {
        return new PictureStyle(
                cellMm, palette, fabric, marks, shown, labels, legend, look, rotation, repeats, inking, hand, markStyle,
                language);
    }

    /** With numbers, letters, arrow and brackets, or without. */
    public PictureStyle withLabels(boolean shown) {
        return new PictureStyle(
                cellMm, palette, fabric, marks, grid, shown, legend, look, rotation, repeats, inking, hand, markStyle,
                language);
    }

    /** With the legend in the same drawing, or without. */
    public PictureStyle withLegend(boolean shown) {
        return new PictureStyle(
                cellMm, palette, fabric, marks, grid, labels, shown, look, rotation, repeats, inking, hand, markStyle,
                language);
    }

    /** With fabric filled otherwise. */
    public PictureStyle withLook(FabricFill newLook) {
        return new PictureStyle(
                cellMm, palette, fabric, marks, grid, labels, legend, newLook, rotation, repeats, inking, hand,
                markStyle, language);
    }

    /** With the corner lying otherwise. */
    public PictureStyle withRotation(Rotation newRotation) {
        return new PictureStyle(
                cellMm,
                palette,
                fabric,
                marks,
                grid,
                labels,
                legend,
                look,
                newRotation,
                repeats,
                inking,
                hand,
                markStyle,
                language);
    }

    /** With the repeat drawn that often on each arm. */
    public PictureStyle withRepeats(int newRepeats) {
        return new PictureStyle(
                cellMm,
                palette,
                fabric,
                marks,
                grid,
                labels,
                legend,
                look,
                rotation,
                OptionalInt.of(newRepeats),
                inking,
                hand,
                markStyle,
                language);
    }

    /** In colours or in black. */
    public PictureStyle withInking(ColourMode newInking) {
        return new PictureStyle(
                cellMm, palette, fabric, marks, grid, labels, legend, look, rotation, repeats, newInking, hand,
                markStyle, language);
    }

    /** For a maker of that hand. */
    public PictureStyle withHand(HookHand newHand) {
        return new PictureStyle(
                cellMm, palette, fabric, marks, grid, labels, legend, look, rotation, repeats, inking, newHand,
                markStyle, language);
    }

    /** With long stitches marked otherwise. */
    public PictureStyle withMarkStyle(MarkStyle newMarkStyle) {
        return new PictureStyle(
                cellMm,
                palette,
                fabric,
                marks,
                grid,
                labels,
                legend,
                look,
                rotation,
                repeats,
                inking,
                hand,
                newMarkStyle,
                language);
    }

    /** What marks lie on where this colour shows: that colour, or the paper where there is none. */
    Colour ground(Colour shown) {
        return fabric && inking == ColourMode.COLOUR ? shown : palette.paper();
    }

    /** Whether the corner lies on the left of the drawing. */
    boolean cornerLeft() {
        return rotation.cornerLeft() == (hand == HookHand.RIGHT);
    }
}
