package edgewright.draw.paint;

import java.util.List;

/**
 * Shapes that a picture shows alike in many places, measured from a zero of their own. A driver may keep what it has drawn of a
 * stamp, and print it again wherever it comes.
 *
 * <p>Two stamps are equal if their shapes are; whoever makes many marks makes each stamp once, so that drivers find it quickly.
 */
public final class Stamp {
    private final List<Shape> shapes;
    private final Area bounds;
    private final int hash;

    /** @param shapes in the order in which they are drawn, at least one; no text, which must be found where it is read */
    public Stamp(List<Shape> shapes) {
        this.shapes = List.copyOf(shapes);
        this.bounds = this.shapes.stream().map(Shape::bounds).reduce(Area::with).orElseThrow();
        this.hash = this.shapes.hashCode();
        if (this.shapes.stream().anyMatch(Shape.Text.class::isInstance)) {
            throw new IllegalArgumentException("a stamp with text");
        }
    }

    /** The shapes, in the order in which they are drawn. */
    public List<Shape> shapes() {
        return shapes;
    }

    /** The smallest area known to hold all shapes. */
    public Area bounds() {
        return bounds;
    }

    @Override
    public boolean equals(Object other) {
        return this == other || (other instanceof Stamp that && hash == that.hash && shapes.equals(that.shapes));
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public String toString() {
        return "Stamp" + shapes;
    }
}
