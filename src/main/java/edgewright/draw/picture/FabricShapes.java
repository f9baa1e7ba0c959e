package edgewright.draw.picture;

import edgewright.chart.Colour;
import edgewright.chart.Stitch;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMixing;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Hatch;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.List;
import java.util.Optional;

/** What a cell looks like in the layer of what shows. */
final class FabricShapes {
    private final Frame frame;
    private final Area cell;
    private final YarnColours yarns;
    private final FabricFill look;

    FabricShapes(Frame frame, Area cell, YarnColours yarns) {
        this.frame = frame;
        this.cell = cell;
        this.yarns = yarns;
        this.look = yarns.style().look();
    }

    /**
     * The cell of a stitch. A long stitch is drawn over the cells that it covers too, so cells must be drawn from the inside out.
     *
     * @param shownRound the round whose yarn shows in the cell
     * @param covered whether the stitch above is long and hides this one
     */
    List<Shape> stitch(Stitch stitch, int shownRound, boolean covered) {
        Optional<Hatch> hatch = yarns.hatch(shownRound);
        if (hatch.isPresent()) {
            return hatch.get().in(cell);
        }
        Colour shown = yarns.colour(shownRound);
        if (look == FabricFill.FLAT) {
            return flat(shown);
        }
        Shape ground = new Shape.Fill(PenPath.rectangle(cell), ColourMixing.shade(shown, 0.3));
        if (covered) {
            return List.of(ground);
        }
        int down = stitch.roundsDown();
        Shape top = body(-0.36, 0.16, 0.36, 0.38, 0.11, ColourMixing.mix(shown, ColourMixing.on(shown), 0.1));
        return stitch.coversStitchBelow()
                ? List.of(
                        ground,
                        body(-0.47, 0.53 - down, 0.47, 0.47, 0.24, shown),
                        body(
                                -0.09,
                                0.7 - down,
                                -0.03,
                                0.1,
                                0.03,
                                ColourMixing.mix(shown, ColourMixing.on(shown), 0.14)),
                        top)
                : List.of(ground, body(-0.47, -0.47, 0.47, 0.47, 0.24, shown), top);
    }

    /** The chains of a corner; never hatched, for the number of the round stands there too. */
    List<Shape> corner(int round) {
        if (yarns.hatch(round).isPresent()) {
            return bare();
        }
        Colour colour = yarns.colour(round);
        return look == FabricFill.FLAT
                ? flat(colour)
                : List.of(
                        new Shape.Fill(PenPath.rectangle(cell), ColourMixing.shade(colour, 0.3)),
                        body(-0.47, -0.47, 0.47, 0.47, 0.24, colour));
    }

    /** The cell of a stitch of the base round. */
    List<Shape> base() {
        return flat(yarns.colour(0));
    }

    /** The cell of a stitch that is not there. */
    List<Shape> bare() {
        return flat(yarns.style().palette().paper());
    }

    private List<Shape> flat(Colour colour) {
        return List.of(new Shape.Fill(PenPath.rectangle(cell), colour));
    }

    private Shape body(double along1, double out1, double along2, double out2, double radius, Colour colour) {
        return new Shape.Fill(
                PenPath.rounded(Area.between(along1, out1, along2, out2), radius)
                        .through(frame),
                colour);
    }
}
