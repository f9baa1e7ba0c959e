package edgewright.booklet.page;

import edgewright.booklet.own.EncodedPicture;
import edgewright.chart.Colour;
import edgewright.draw.marks.Drawing;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * One thing on a page. Points of 1/72 inch, x from the left edge of the column of text, y downwards from the top of the
 * strip that it stands in.
 */
public sealed interface PageItem {
    /** This thing, moved. */
    PageItem moved(double rightPt, double downPt);

    /** A piece of one line, in one face. */
    record Words(double xPt, double baselinePt, String text, FaceMetrics face, double sizePt, Colour colour)
            implements PageItem {
        @Override
        public Words moved(double rightPt, double downPt) {
            return new Words(xPt + rightPt, baselinePt + downPt, text, face, sizePt, colour);
        }

        public double widthPt() {
            return face.widthPt(text, sizePt);
        }
    }

    /**
     * The number of the page on which an anchor came to stand.
     *
     * @param edgePt where the number ends, or begins
     * @param flushRight whether it ends there, as in a column of numbers; else it begins there, as in running words
     */
    record PageOf(double edgePt, boolean flushRight, double baselinePt, Anchor anchor, FaceMetrics face, double sizePt)
            implements PageItem {
        @Override
        public PageOf moved(double right, double down) {
            return new PageOf(edgePt + right, flushRight, baselinePt + down, anchor, face, sizePt);
        }
    }

    /** A rectangle, filled, outlined or both. */
    record Box(
            double xPt,
            double yPt,
            double widthPt,
            double heightPt,
            Optional<Colour> fill,
            Optional<Colour> outline,
            double linePt)
            implements PageItem {
        public static Box filled(double xPt, double yPt, double widthPt, double heightPt, Colour fill) {
            return new Box(xPt, yPt, widthPt, heightPt, Optional.of(fill), Optional.empty(), 0);
        }

        @Override
        public Box moved(double rightPt, double downPt) {
            return new Box(xPt + rightPt, yPt + downPt, widthPt, heightPt, fill, outline, linePt);
        }
    }

    /**
     * A window on a drawing, which is made when it is printed: a poster of many sheets is never in memory as a whole.
     *
     * @param fromXMm the left edge of the window in the drawing
     * @param fromYMm the top edge of the window in the drawing
     * @param scale printed millimetres for each millimetre of the drawing
     */
    record Art(
            double xPt,
            double yPt,
            double widthPt,
            double heightPt,
            Supplier<Drawing> drawing,
            double fromXMm,
            double fromYMm,
            double scale)
            implements PageItem {
        @Override
        public Art moved(double rightPt, double downPt) {
            return new Art(xPt + rightPt, yPt + downPt, widthPt, heightPt, drawing, fromXMm, fromYMm, scale);
        }
    }

    /** A photograph, which is made as fine as it is printed only when it is printed. */
    record Photo(double xPt, double yPt, double widthPt, double heightPt, Supplier<EncodedPicture> picture)
            implements PageItem {
        @Override
        public Photo moved(double rightPt, double downPt) {
            return new Photo(xPt + rightPt, yPt + downPt, widthPt, heightPt, picture);
        }
    }

    /**
     * The part of the page that a reader clicks to leave the document.
     *
     * @param address a URI in ASCII
     * @param words what the link says, for whoever does not see it
     */
    record WebLink(double xPt, double yPt, double widthPt, double heightPt, String address, String words)
            implements PageItem {
        @Override
        public WebLink moved(double rightPt, double downPt) {
            return new WebLink(xPt + rightPt, yPt + downPt, widthPt, heightPt, address, words);
        }
    }

    /** The part of the page that a reader clicks to go somewhere. */
    record Link(double xPt, double yPt, double widthPt, double heightPt, Anchor to) implements PageItem {
        @Override
        public Link moved(double rightPt, double downPt) {
            return new Link(xPt + rightPt, yPt + downPt, widthPt, heightPt, to);
        }
    }
}
