package edgewright.desk.piece;

import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.Side;
import edgewright.desk.fitting.Piece;
import edgewright.desk.fitting.PieceOutcome;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.YarnCard;
import edgewright.texts.Messages;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Paints a piece in its border: the rounds in their yarns, the round counted in, and a mark wherever something is done. */
final class PiecePainter {
    private static final int ARM_PX = 13;
    private static final int VEIL = 90;
    private static final int GAP_PX = 5;

    private final Graphics2D g;
    private final PieceBox box;
    private final Piece piece;
    private final Messages says;

    PiecePainter(Graphics2D graphics, PieceBox box, Piece piece, Messages says) {
        g = graphics;
        this.box = box;
        this.piece = piece;
        this.says = says;
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    }

    void paint() {
        rounds();
        countedRound();
        directions();
        PieceOutcome outcome = piece.outcome();
        outcome.sides().forEach(this::marks);
        key(outcome);
    }

    private void rounds() {
        Chart chart = piece.chart();
        for (int r = chart.rounds().size(); r >= 1; r--) {
            g.setColor(YarnCard.of(chart.yarnOf(r).colour()));
            g.fill(box.round(r));
        }
        // The yarns stand back a little, so that what is written on them can be read.
        Color paper = Look.colour("paper");
        g.setColor(new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), VEIL));
        g.fill(box.outer());
        g.setColor(paper);
        g.fill(box.inner());
        g.setStroke(new BasicStroke(1));
        g.setColor(Look.colour("quiet"));
        g.draw(box.outer());
        g.draw(box.inner());
    }

    /** The counting round, as a broken line on the border; bare edges have none. */
    private void countedRound() {
        if (piece.way() != Piece.Way.COUNTED || piece.countedIn().back()) {
            return;
        }
        Rectangle2D round = box.round(piece.countedIn().round());
        halo(round, 3.5f);
        g.setColor(Look.colour("accent"));
        g.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {7, 4}, 0));
        g.draw(round);
    }

    /** A small arrow at the beginning of each side: which way the side is worked and its stitches are counted. */
    private void directions() {
        g.setColor(Look.colour("quiet"));
        g.setStroke(new BasicStroke(1.3f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (Side side : Side.values()) {
            double length =
                    side.isLevel() ? box.inner().getWidth() : box.inner().getHeight();
            Point2D from = PieceBox.point(box.inner(), side, piece.hand(), 16 / length, -10);
            Point2D to = PieceBox.point(box.inner(), side, piece.hand(), 44 / length, -10);
            g.draw(new Line2D.Double(from, to));
            Path2D head = new Path2D.Double();
            head.moveTo(-5, -3.5);
            head.lineTo(0, 0);
            head.lineTo(-5, 3.5);
            AffineTransform turn = AffineTransform.getTranslateInstance(to.getX(), to.getY());
            turn.rotate(to.getX() - from.getX(), to.getY() - from.getY());
            g.draw(turn.createTransformedShape(head));
        }
    }

    private void marks(PieceOutcome.OfSide side) {
        boolean bare = piece.way() != Piece.Way.COUNTED;
        Rectangle2D foot = box.round(bare ? 0 : Math.min(countedRound(piece), box.rounds()));
        g.setFont(Look.font(11));
        FontMetrics metrics = g.getFontMetrics();
        List<Rectangle2D> taken = new ArrayList<>();
        for (PieceOutcome.Mark mark : side.marks()) {
            Point2D at = PieceBox.point(foot, side.side(), piece.hand(), mark.along(), 0);
            Point2D end = PieceBox.point(box.outer(), side.side(), HookHand.RIGHT, fraction(side.side(), at), 5);
            mark(mark.kind(), at, end);
            label(mark.label(), side.side(), end, metrics, taken);
        }
    }

    private static int countedRound(Piece piece) {
        return piece.countedIn().back() ? 0 : piece.countedIn().round();
    }

    /** Where on the outer edge a point lies straight out from this one, as the right hand goes along the side. */
    private double fraction(Side side, Point2D at) {
        Rectangle2D outer = box.outer();
        return switch (side) {
            case TOP -> (outer.getMaxX() - at.getX()) / outer.getWidth();
            case LEFT -> (at.getY() - outer.getMinY()) / outer.getHeight();
            case BOTTOM -> (at.getX() - outer.getMinX()) / outer.getWidth();
            case RIGHT -> (outer.getMaxY() - at.getY()) / outer.getHeight();
        };
    }

    private void mark(PieceOutcome.Mark.Kind kind, Point2D foot, Point2D end) {
        AffineTransform out = AffineTransform.getTranslateInstance(foot.getX(), foot.getY());
        out.rotate(end.getX() - foot.getX(), end.getY() - foot.getY());
        double length = foot.distance(end);
        double arms = Math.min(ARM_PX, length);
        Shape line = out.createTransformedShape(new Line2D.Double(Math.min(arms + 4, length), 0, length, 0));
        Shape placed = out.createTransformedShape(shape(kind, arms));
        halo(line, 3.5f);
        halo(placed, 5.5f);
        g.setColor(Look.colour("quiet"));
        g.setStroke(new BasicStroke(1));
        g.draw(line);
        g.setColor(colour(kind));
        g.setStroke(new BasicStroke(2, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(placed);
    }

    /** A mark that points to the right: two stitches out of one foot, one out of two, or a bar. */
    private static Path2D shape(PieceOutcome.Mark.Kind kind, double length) {
        Path2D shape = new Path2D.Double();
        switch (kind) {
            case INCREASE -> {
                shape.moveTo(length, -length / 2);
                shape.lineTo(0, 0);
                shape.lineTo(length, length / 2);
            }
            case DECREASE -> {
                shape.moveTo(0, -length / 2);
                shape.lineTo(length, 0);
                shape.lineTo(0, length / 2);
            }
            case QUARTER -> {
                shape.moveTo(-length / 2, 0);
                shape.lineTo(length, 0);
            }
        }
        return shape;
    }

    private static Color colour(PieceOutcome.Mark.Kind kind) {
        return Look.colour(
                switch (kind) {
                    case INCREASE -> "good";
                    case DECREASE -> "error";
                    case QUARTER -> "accent";
                });
    }

    /** A ground of paper under a line, so that it can be told from every yarn. */
    private void halo(Shape line, float widthPx) {
        Stroke before = g.getStroke();
        g.setColor(Look.colour("paper"));
        g.setStroke(new BasicStroke(widthPx, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(line);
        g.setStroke(before);
    }

    /** A number outside the border, unless it would lie on one that is there already. */
    private void label(String text, Side side, Point2D end, FontMetrics metrics, List<Rectangle2D> taken) {
        double width = metrics.stringWidth(text);
        double height = metrics.getAscent();
        double x = switch (side) {
            case TOP, BOTTOM -> end.getX() - width / 2;
            case LEFT -> end.getX() - GAP_PX - width;
            case RIGHT -> end.getX() + GAP_PX;
        };
        double y = switch (side) {
            case TOP -> end.getY() - GAP_PX - height;
            case BOTTOM -> end.getY() + GAP_PX - 2;
            case LEFT, RIGHT -> end.getY() - height / 2;
        };
        Rectangle2D place = new Rectangle2D.Double(x - 2, y - 1, width + 4, height + 2);
        if (taken.stream().noneMatch(place::intersects)) {
            taken.add(place);
            g.setColor(Look.colour("quiet"));
            g.drawString(text, (float) x, (float) (y + height - metrics.getDescent() / 2.0));
        }
    }

    /** What the marks mean, at the foot of the drawing; only the marks that are there. */
    private void key(PieceOutcome outcome) {
        Set<PieceOutcome.Mark.Kind> kinds = EnumSet.noneOf(PieceOutcome.Mark.Kind.class);
        outcome.sides().forEach(side -> side.marks().forEach(mark -> kinds.add(mark.kind())));
        double x = box.outer().getX();
        double y = box.outer().getMaxY() + PieceBox.MARGIN_PX + 4;
        g.setFont(Look.font(11));
        for (PieceOutcome.Mark.Kind kind : kinds) {
            String text = says.text("piece-mark-" + kind.name());
            mark(kind, new Point2D.Double(x + 6, y), new Point2D.Double(x + 6, y - 10));
            g.setColor(Look.colour("quiet"));
            g.drawString(text, (float) (x + 18), (float) y);
            x += 18 + g.getFontMetrics().stringWidth(text) + 20;
        }
    }
}
