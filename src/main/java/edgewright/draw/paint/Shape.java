package edgewright.draw.paint;

import edgewright.chart.Colour;
import java.util.List;

/**
 * One of the three things a driver can draw, or a stamp of them. All are opaque; measures are millimetres on the paper.
 */
public sealed interface Shape {
    /** Has the driver draw this shape. */
    void drawOn(Surface surface);

    /** This shape elsewhere. */
    Shape moved(double rightMm, double downMm);

    /** An area that holds all of this shape, the width of lines included; for text as its face measures it. */
    Area bounds();

    /** A filled path. */
    record Fill(PenPath path, Colour colour) implements Shape {
        @Override
        public void drawOn(Surface surface) {
            surface.fill(this);
        }

        @Override
        public Fill moved(double rightMm, double downMm) {
            return new Fill(path.through(Frame.moved(rightMm, downMm)), colour);
        }

        @Override
        public Area bounds() {
            return path.bounds();
        }
    }

    /**
     * A stroked path.
     *
     * @param widthMm more than 0
     * @param dashMm drawn and left out in turn, from the start of the path; empty for an unbroken line
     */
    record Line(PenPath path, double widthMm, Colour colour, Ends ends, List<Double> dashMm) implements Shape {
        public Line {
            dashMm = List.copyOf(dashMm);
            if (!(widthMm > 0)) {
                throw new IllegalArgumentException("no line is " + widthMm + " mm wide");
            }
        }

        /** An unbroken line with round ends and joins. */
        public Line(PenPath path, double widthMm, Colour colour) {
            this(path, widthMm, colour, Ends.ROUND, List.of());
        }

        @Override
        public void drawOn(Surface surface) {
            surface.line(this);
        }

        @Override
        public Line moved(double rightMm, double downMm) {
            return new Line(path.through(Frame.moved(rightMm, downMm)), widthMm, colour, ends, dashMm);
        }

        @Override
        public Area bounds() {
            return path.bounds().grown(widthMm / 2);
        }
    }

    /**
     * A stamp printed at a place.
     *
     * @param xMm where the stamp's own zero comes to lie
     * @param yMm where the stamp's own zero comes to lie
     */
    record Stamped(Stamp stamp, double xMm, double yMm) implements Shape {
        @Override
        public void drawOn(Surface surface) {
            surface.stamped(this);
        }

        @Override
        public Stamped moved(double rightMm, double downMm) {
            return new Stamped(stamp, xMm + rightMm, yMm + downMm);
        }

        @Override
        public Area bounds() {
            return stamp.bounds().moved(xMm, yMm);
        }
    }

    /** How a line ends and turns. */
    enum Ends {
        /** Round ends and joins. */
        ROUND,
        /** Cut off where the path ends; pointed joins. */
        CUT
    }

    /**
     * One line of text in the bundled face; see {@link Lettering} for its measures.
     *
     * @param xMm where the anchor lies
     * @param yMm where the base line passes the anchor
     * @param sizeMm the size of the face, from line to line set solid
     * @param quarterTurns how often the text is turned clockwise by a right angle about the anchor, 0 to 3
     */
    record Text(
            String text,
            double xMm,
            double yMm,
            double sizeMm,
            Weight weight,
            Anchor anchor,
            int quarterTurns,
            Colour colour)
            implements Shape {
        public Text {
            if (quarterTurns < 0 || quarterTurns > 3 || !(sizeMm > 0)) {
                throw new IllegalArgumentException(sizeMm + " mm, turned " + quarterTurns + " times");
            }
        }

        @Override
        public void drawOn(Surface surface) {
            surface.text(this);
        }

        @Override
        public Text moved(double rightMm, double downMm) {
            return new Text(text, xMm + rightMm, yMm + downMm, sizeMm, weight, anchor, quarterTurns, colour);
        }

        @Override
        public Area bounds() {
            double width = Lettering.widthMm(text, weight, sizeMm);
            double left = switch (anchor) {
                case START -> 0;
                case MIDDLE -> -width / 2;
                case END -> -width;
            };
            double up = Lettering.ACCENT * sizeMm;
            double down = Lettering.DESCENT * sizeMm;
            return switch (quarterTurns) {
                case 0 -> new Area(xMm + left, yMm - up, width, up + down);
                case 1 -> new Area(xMm - down, yMm + left, up + down, width);
                case 2 -> new Area(xMm - left - width, yMm - down, width, up + down);
                default -> new Area(xMm - up, yMm - left - width, up + down, width);
            };
        }
    }

    /** The two weights of the bundled face. */
    enum Weight {
        REGULAR,
        BOLD
    }

    /** Which point of a text lies at its anchor. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }
}
