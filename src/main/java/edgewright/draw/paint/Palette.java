package edgewright.draw.paint;

import edgewright.chart.Colour;

/**
 * The colours of everything that is not yarn.
 *
 * @param paper the ground
 * @param ink text and marks
 * @param quietInk what should be found but not seen first
 * @param grid lines between cells
 * @param tenth the heavier lines after every tenth round and stitch
 * @param base the cells of the base round
 * @param accent what belongs to the repeat and the way of working
 * @param error rings of errors
 * @param warning rings of warnings
 */
public record Palette(
        Colour paper,
        Colour ink,
        Colour quietInk,
        Colour grid,
        Colour tenth,
        Colour base,
        Colour accent,
        Colour error,
        Colour warning) {

    /** For white paper and a light screen. */
    public static final Palette LIGHT =
            of("#ffffff", "#1d2126", "#5f6873", "#b4bac1", "#7b848e", "#eceef0", "#0b6275", "#c0142b", "#9a5200");

    /** For a dark screen. */
    public static final Palette DARK =
            of("#1f2327", "#eceef0", "#a2abb5", "#59616a", "#98a1ab", "#30363c", "#6fd0e3", "#ff7a85", "#ffb561");

    /** For a dark screen on which everything stands out. */
    public static final Palette HIGH_CONTRAST =
            of("#000000", "#ffffff", "#e6e6e6", "#8c8c8c", "#ffffff", "#333333", "#ffd60a", "#ffa08f", "#ffc75a");

    /** For one ink on white paper, as a photocopier keeps it. */
    public static final Palette BLACK =
            of("#ffffff", "#000000", "#000000", "#000000", "#000000", "#ffffff", "#000000", "#000000", "#000000");

    /** With the base round, and the piece, in another colour. */
    public Palette withBase(Colour newBase) {
        return new Palette(paper, ink, quietInk, grid, tenth, newBase, accent, error, warning);
    }

    private static Palette of(
            String paper,
            String ink,
            String quietInk,
            String grid,
            String tenth,
            String base,
            String accent,
            String error,
            String warning) {
        return new Palette(
                Colour.parse(paper),
                Colour.parse(ink),
                Colour.parse(quietInk),
                Colour.parse(grid),
                Colour.parse(tenth),
                Colour.parse(base),
                Colour.parse(accent),
                Colour.parse(error),
                Colour.parse(warning));
    }
}
