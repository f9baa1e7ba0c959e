package edgewright.draw.picture;

import edgewright.chart.Colour;
import edgewright.chart.GridCell;
import edgewright.chart.Stitch;
import edgewright.chart.StitchLoop;
import edgewright.draw.fabric.FabricStamps;
import edgewright.draw.fabric.LoopsOnTop;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.List;
import java.util.Optional;

/** What cells look like in the layer of what shows: flat, hatched, or as worked fabric. */
final class FabricShapes {
    private final YarnColours yarns;
    private final Optional<FabricStamps> worked;

    /** The piece is of another make, and nothing of the border is deep in it. */
    private final Optional<FabricStamps> piece;

    FabricShapes(YarnColours yarns) {
        this.yarns = yarns;
        PictureStyle style = yarns.style();
        // Under marks and lines every stitch lies in its square.
        boolean drifts = !style.marks() && !style.grid();
        this.worked = style.look().detail().map(detail -> FabricStamps.ofBorder(detail, yarns.all(), drifts));
        this.piece = style.look().detail().map(detail -> FabricStamps.ofPiece(detail, yarns.colour(0), drifts));
    }

    /**
     * What lies under all cells of worked fabric; nothing under cells that are flat or hatched.
     *
     * @param areas that the cells cover, those of the last round up to their loops
     */
    Optional<Mark> under(List<Area> areas) {
        if (worked.isEmpty() || yarns.isInOneInk()) {
            return Optional.empty();
        }
        Colour depth = worked.get().depth();
        return Optional.of(Mark.beside(
                MarkKind.FABRIC_GROUND,
                areas.stream()
                        .<Shape>map(area -> new Shape.Fill(PenPath.rectangle(area), depth))
                        .toList()));
    }

    /** A cell, the frame in which its marks are made, where it lies, and in which column and row. */
    record Ground(GridCell cell, Frame frame, Area area, int column, int row) {}

    private List<Shape> inOneInk(Ground ground, int shownRound) {
        return yarns.inOneInk(shownRound, ground.area(), ground.column(), ground.row(), ground.frame());
    }

    /**
     * The cell of a stitch. A long stitch is drawn over the cells that it covers too, so cells must be drawn from the inside out.
     *
     * @param shownRound the round whose yarn shows in the cell
     * @param above the stitch above it; empty on the last round
     */
    List<Shape> stitch(Ground ground, Stitch stitch, int shownRound, Optional<Stitch> above) {
        if (yarns.isInOneInk()) {
            return inOneInk(ground, shownRound);
        }
        Colour shown = yarns.colour(shownRound);
        if (worked.isEmpty()) {
            return flat(ground, shown);
        }
        return List.of(stitch(worked.get(), ground, stitch, shown, above));
    }

    private static LoopsOnTop loops(Optional<Stitch> above) {
        if (above.isEmpty()) {
            return LoopsOnTop.EDGE;
        }
        if (!above.get().standsInStitchBelow()) {
            return LoopsOnTop.BOTH;
        }
        return above.get().leavesFree(StitchLoop.FRONT) ? LoopsOnTop.FRONT : LoopsOnTop.NONE;
    }

    /** The chains of a corner; bare under marks in one ink, for the number of the round stands there too. */
    List<Shape> corner(Ground ground, int round, int chains, boolean isLast) {
        if (yarns.isInOneInk()) {
            return yarns.isToned() ? inOneInk(ground, round) : bare(ground);
        }
        Colour colour = yarns.colour(round);
        LoopsOnTop loops = isLast ? LoopsOnTop.EDGE : LoopsOnTop.FRONT;
        return worked.isEmpty()
                ? flat(ground, colour)
                : List.of((round == 0 ? piece : worked)
                        .get()
                        .corner(chains, loops, colour, ground.frame(), ground.cell()));
    }

    /**
     * The cell of a stitch of the base round, which is plain.
     *
     * @param above the stitch above it; empty where the chart has none
     */
    List<Shape> base(Ground ground, Optional<Stitch> above) {
        return worked.isPresent() && !yarns.isInOneInk()
                ? List.of(stitch(piece.get(), ground, Stitch.PLAIN, yarns.colour(0), above))
                : flat(ground, yarns.colour(0));
    }

    private static Shape stitch(
            FabricStamps fabric, Ground ground, Stitch stitch, Colour shown, Optional<Stitch> above) {
        return above.filter(Stitch::coversStitchBelow).isPresent()
                ? fabric.covered(shown, ground.frame(), ground.cell())
                : fabric.stitch(stitch, loops(above), shown, ground.frame(), ground.cell());
    }

    /** The cell of a stitch that is not there. */
    List<Shape> bare(Ground ground) {
        return flat(ground, yarns.style().palette().paper());
    }

    private static List<Shape> flat(Ground ground, Colour colour) {
        return List.of(new Shape.Fill(PenPath.rectangle(ground.area()), colour));
    }
}
