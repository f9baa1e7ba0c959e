package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.desk.parts.Look;
import edgewright.desk.tool.Mirror;
import edgewright.draw.picture.CellLayout;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The axes of the mirrors that are up, across the rounds: dashes where something is mirrored, dots where it is moved on. */
final class MirrorAxes {
    private static final float[] DASHES = {7, 4};
    private static final float[] DOTS = {1.5f, 4};
    private static final float WIDTH_PX = 2;
    private static final float HALO_PX = 4;

    private final ChartCanvas canvas;
    private final CellLayout layout;

    MirrorAxes(ChartCanvas canvas) {
        this.canvas = canvas;
        layout = canvas.cells();
    }

    void paint(Graphics2D g, Set<Mirror> mirrors) {
        for (Mirror mirror : mirrors) {
            List<Line2D> lines = lines(mirror);
            paint(g, lines, Color.WHITE, new BasicStroke(HALO_PX, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            float[] pattern = mirror == Mirror.HALF ? DOTS : DASHES;
            paint(
                    g,
                    lines,
                    Look.colour("cursor"),
                    new BasicStroke(WIDTH_PX, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, pattern, 0));
        }
    }

    private static void paint(Graphics2D g, List<Line2D> lines, Color colour, BasicStroke stroke) {
        g.setColor(colour);
        g.setStroke(stroke);
        lines.forEach(g::draw);
    }

    private List<Line2D> lines(Mirror mirror) {
        List<Line2D> lines = new ArrayList<>();
        for (Side side : Side.values()) {
            if (mirror == Mirror.CORNER) {
                corner(side).ifPresent(lines::add);
            } else if (layout.isDrawn(cell(side, 0, 1, 1))) {
                repeats(side, mirror).forEach(lines::add);
            }
        }
        return lines;
    }

    /** The line through the corner at the end of a side, if that is drawn. */
    private Optional<Line2D> corner(Side side) {
        GridCell innermost = layout.grid().cornerCell(side, 0);
        GridCell outermost = layout.grid().cornerCell(side, layout.rounds());
        return layout.isDrawn(innermost)
                ? Optional.of(through(middle(innermost, innermost), middle(outermost, outermost)))
                : Optional.empty();
    }

    private Stream<Line2D> repeats(Side side, Mirror mirror) {
        int w = layout.grid().border().on(side).w();
        return IntStream.rangeClosed(1, canvas.repeats())
                .mapToObj(occurrence -> mirror == Mirror.REPEAT
                        ? between(side, occurrence, 1, w)
                        : between(side, occurrence, w / 2, w / 2 + 1));
    }

    /** The line midway between two stitches of a repeat, across all rounds. */
    private Line2D between(Side side, int occurrence, int one, int other) {
        return through(
                middle(cell(side, 0, occurrence, one), cell(side, 0, occurrence, other)),
                middle(cell(side, layout.rounds(), occurrence, one), cell(side, layout.rounds(), occurrence, other)));
    }

    private GridCell cell(Side side, int round, int occurrence, int place) {
        return layout.cellOf(side, new Place(round, Section.REPEAT, place), occurrence);
    }

    private Point2D middle(GridCell one, GridCell other) {
        Rectangle both = canvas.boundsOf(one).union(canvas.boundsOf(other));
        return new Point2D.Double(both.getCenterX(), both.getCenterY());
    }

    /** The line from one point to another and half a cell beyond both: the rounds end there. */
    private Line2D through(Point2D inner, Point2D outer) {
        double across = Math.signum(outer.getX() - inner.getX()) * canvas.cellPx() / 2;
        double down = Math.signum(outer.getY() - inner.getY()) * canvas.cellPx() / 2;
        return new Line2D.Double(
                inner.getX() - across, inner.getY() - down, outer.getX() + across, outer.getY() + down);
    }
}
