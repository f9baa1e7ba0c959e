package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.desk.parts.Look;
import edgewright.desk.tool.Mirror;
import edgewright.draw.picture.Arm;
import edgewright.draw.picture.CornerLayout;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The axes of the mirrors that are up, across the rounds: dashes where something is mirrored, dots where it is moved on. */
final class MirrorAxes {
    private static final float[] DASHES = {7, 4};
    private static final float[] DOTS = {1.5f, 4};
    private static final float WIDTH_PX = 2;
    private static final float HALO_PX = 4;

    private final ChartCanvas canvas;
    private final CornerLayout layout;

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
        if (mirror == Mirror.CORNER) {
            return List.of(through(
                    middle(layout.cornerCell(0), layout.cornerCell(0)),
                    middle(layout.cornerCell(layout.rounds()), layout.cornerCell(layout.rounds()))));
        }
        List<Line2D> lines = new ArrayList<>();
        for (Arm arm : Arm.values()) {
            int w = layout.grid().border().on(arm.side()).w();
            for (int occurrence = 1; occurrence <= layout.repeats(); occurrence++) {
                if (mirror == Mirror.REPEAT) {
                    lines.add(between(arm.side(), occurrence, 1, w));
                } else {
                    lines.add(between(arm.side(), occurrence, w / 2, w / 2 + 1));
                }
            }
        }
        return lines;
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
