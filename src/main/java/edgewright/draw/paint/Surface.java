package edgewright.draw.paint;

/**
 * What a driver can do: fill a path, stroke a path, set text. Later shapes lie over earlier ones.
 *
 * <p>There is no other way to draw, so each driver shows the same picture, and a new kind of shape breaks every driver that
 * has not learned it yet.
 */
public interface Surface {
    /** Fills a path; parts that lie in one another make holes (even-odd rule). */
    void fill(Shape.Fill fill);

    /** Strokes a path. */
    void line(Shape.Line line);

    /** Sets one line of text in the bundled face. */
    void text(Shape.Text text);

    /** Prints a stamp: all its shapes, where it lies. A driver that keeps what it has drawn does this in fewer steps. */
    default void stamped(Shape.Stamped stamped) {
        for (Shape shape : stamped.stamp().shapes()) {
            shape.moved(stamped.xMm(), stamped.yMm()).drawOn(this);
        }
    }
}
