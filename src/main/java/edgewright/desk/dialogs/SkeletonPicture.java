package edgewright.desk.dialogs;

import static edgewright.texts.Arg.count;

import edgewright.chart.SideShape;
import edgewright.desk.parts.Look;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.swing.JPanel;

/**
 * A border before it has stitches: one corner of it with its diagonal, the rounds in the yarns that take turns, and on both
 * arms where the corner ends and the repeat begins. The corner is at the upper left and the piece at the lower right; the top is
 * worked to the left and the other arm downwards.
 */
final class SkeletonPicture extends JPanel {
    private static final int SIDE_PX = 320;
    private static final int LEAST_PX = 180;
    private static final int MOST_CELL_PX = 12;
    private static final int GAP_PX = 4;
    /** A line between squares is drawn from here on. */
    private static final double LEAST_RULED_PX = 5;

    private static final int REPEATS = 2;

    private final transient Messages says;
    private transient SideShape shape;
    private transient List<Color> yarns = List.of();
    private int rounds;

    /** @param yarns the colours that take turns, from round 1 on */
    SkeletonPicture(SideShape shape, int rounds, List<Color> yarns, Language language) {
        says = language.messages("desk/dialogs");
        setName("newChart.skeleton");
        setOpaque(false);
        setPreferredSize(new Dimension(Look.px(SIDE_PX), Look.px(SIDE_PX)));
        setMinimumSize(new Dimension(Look.px(LEAST_PX), Look.px(LEAST_PX)));
        show(shape, rounds, yarns);
    }

    /** Shows another one. */
    void show(SideShape newShape, int newRounds, List<Color> newYarns) {
        shape = newShape;
        rounds = newRounds;
        yarns = List.copyOf(newYarns);
        getAccessibleContext()
                .setAccessibleName(says.text(
                        "newChart-skeleton",
                        count("rounds", rounds),
                        count("yarns", yarns.size()),
                        count("fromCorner", shape.a()),
                        count("repeat", shape.w()),
                        count("toCorner", shape.b())));
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        new Sheet(g).paint();
        g.dispose();
    }

    /** The picture at the size that there is now; places are in squares, from the outermost corner. */
    private final class Sheet {
        private final Graphics2D g;
        /** Where the repeats begin on the top, and on the arm that goes down. */
        private final int topRepeat = rounds + 1 + shape.b();

        private final int sideRepeat = rounds + 1 + shape.a();
        private final int across = topRepeat + REPEATS * shape.w();
        private final int down = sideRepeat + REPEATS * shape.w();
        private final double cell;

        Sheet(Graphics2D g) {
            this.g = g;
            double fits = Math.min((getWidth() - 1.0) / across, (getHeight() - 1.0) / down);
            double least = Math.min(fits, Look.px(MOST_CELL_PX));
            cell = least < 1 ? least : Math.floor(least);
        }

        void paint() {
            for (int round = 0; round <= rounds; round++) {
                int at = rounds - round;
                g.setColor(round == 0 ? Look.colour("quiet") : yarns.get((round - 1) % yarns.size()));
                fill(at, at, across - at, 1);
                fill(at, at, 1, down - at);
            }
            if (cell >= LEAST_RULED_PX) {
                rule();
            }
            g.setColor(Look.colour("accent"));
            g.setStroke(new BasicStroke(Look.px(2)));
            line(0, 0, rounds + 1, rounds + 1);
            for (int i = 0; i <= REPEATS; i++) {
                line(topRepeat + i * shape.w(), 0, topRepeat + i * shape.w(), rounds + 1);
                line(0, sideRepeat + i * shape.w(), rounds + 1, sideRepeat + i * shape.w());
            }
            number();
        }

        private void rule() {
            g.setColor(new Color(128, 128, 128, 110));
            g.setStroke(new BasicStroke(1));
            for (int i = 0; i <= rounds + 1; i++) {
                line(i, i, across, i);
                line(i, i, i, down);
            }
            for (int i = 1; i <= across; i++) {
                line(i, 0, i, Math.min(i, rounds + 1));
            }
            for (int i = 1; i <= down; i++) {
                line(0, i, Math.min(i, rounds + 1), i);
            }
        }

        /** On the piece, each number beside the stitches of the base round that it counts. */
        private void number() {
            g.setFont(Look.font(12));
            g.setColor(Look.colour("quiet"));
            FontMetrics font = g.getFontMetrics();
            double inside = (rounds + 1) * cell + Look.px(GAP_PX);
            double top = inside + font.getAscent();
            above(shape.b(), rounds + 1 + shape.b() / 2.0, top);
            beside(shape.a(), inside, rounds + 1 + shape.a() / 2.0);
            for (int i = 0; i < REPEATS; i++) {
                above(shape.w(), topRepeat + (i + 0.5) * shape.w(), top);
                beside(shape.w(), inside, sideRepeat + (i + 0.5) * shape.w());
            }
        }

        private void above(int stitches, double middle, double y) {
            String text = String.valueOf(stitches);
            double wide = g.getFontMetrics().stringWidth(text);
            if (stitches > 0 && wide <= Math.max(stitches * cell, cell + Look.px(GAP_PX))) {
                g.drawString(text, (float) (middle * cell - wide / 2), (float) y);
            }
        }

        private void beside(int stitches, double x, double middle) {
            FontMetrics font = g.getFontMetrics();
            // The first line belongs to the numbers of the top.
            double y = middle * cell + font.getAscent() / 2.0;
            boolean isFree = y - font.getAscent() > x + font.getHeight() || stitches == shape.w();
            if (stitches > 0 && isFree && stitches * cell >= font.getAscent()) {
                g.drawString(String.valueOf(stitches), (float) x, (float) y);
            }
        }

        private void fill(int x, int y, int wide, int high) {
            g.fill(new Rectangle2D.Double(x * cell, y * cell, wide * cell, high * cell));
        }

        private void line(double fromX, double fromY, double toX, double toY) {
            g.draw(new Line2D.Double(fromX * cell, fromY * cell, toX * cell, toY * cell));
        }
    }
}
