package edgewright.draw;

import edgewright.chart.Colour;
import edgewright.chart.Stitch;
import java.util.List;

/** What a cell looks like in the layer of what shows. */
final class FabricShapes {
    private final Frame frame;
    private final Area cell;
    private final FabricLook look;

    FabricShapes(Frame frame, Area cell, FabricLook look) {
        this.frame = frame;
        this.cell = cell;
        this.look = look;
    }

    /**
     * The cell of a stitch. A long stitch is drawn over the cell below too, so cells must be drawn from the inside out.
     *
     * @param shown the colour that shows in the cell
     * @param covered whether the stitch above is long and hides this one
     */
    List<Shape> stitch(Stitch stitch, Colour shown, boolean covered) {
        if (look == FabricLook.FLAT) {
            return flat(shown);
        }
        Shape ground = new Shape.Fill(PenPath.rectangle(cell), Inks.shade(shown, 0.3));
        if (covered) {
            return List.of(ground);
        }
        return switch (stitch) {
            case LONG ->
                List.of(
                        ground,
                        body(-0.47, -1.47, 0.47, 0.47, 0.24, shown),
                        body(-0.09, -1.3, -0.03, 0.1, 0.03, Inks.mix(shown, Inks.on(shown), 0.14)),
                        body(-0.36, 0.16, 0.36, 0.38, 0.11, Inks.mix(shown, Inks.on(shown), 0.1)));
            case BACK_LOOP, PLAIN, CHAIN ->
                List.of(
                        ground,
                        body(-0.47, -0.47, 0.47, 0.47, 0.24, shown),
                        body(-0.36, 0.16, 0.36, 0.38, 0.11, Inks.mix(shown, Inks.on(shown), 0.1)));
        };
    }

    /** The chains of a corner. */
    List<Shape> corner(Colour colour) {
        return look == FabricLook.FLAT
                ? flat(colour)
                : List.of(
                        new Shape.Fill(PenPath.rectangle(cell), Inks.shade(colour, 0.3)),
                        body(-0.47, -0.47, 0.47, 0.47, 0.24, colour));
    }

    /** A cell of one colour. */
    List<Shape> flat(Colour colour) {
        return List.of(new Shape.Fill(PenPath.rectangle(cell), colour));
    }

    private Shape body(double along1, double out1, double along2, double out2, double radius, Colour colour) {
        return new Shape.Fill(
                PenPath.rounded(Area.between(along1, out1, along2, out2), radius)
                        .through(frame),
                colour);
    }
}
