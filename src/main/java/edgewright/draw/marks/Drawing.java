package edgewright.draw.marks;

import edgewright.draw.paint.Surface;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * A finished picture: a sheet and the marks on it, from the lowest to the topmost.
 *
 * @param widthMm the width of the sheet
 * @param heightMm the height of the sheet
 * @param title what it shows, in a few words, for those who do not see it
 * @param description what it shows, in a sentence or two
 */
public record Drawing(double widthMm, double heightMm, String title, String description, List<Mark> marks) {
    public Drawing {
        marks = List.copyOf(marks);
    }

    /** Has the driver draw every mark. */
    public void drawOn(Surface surface) {
        drawOn(surface, () -> false);
    }

    /**
     * Has the driver draw every mark.
     *
     * @param cancelled asked before each mark; once it answers true the drawing ends with a {@link CancellationException}
     */
    public void drawOn(Surface surface, BooleanSupplier cancelled) {
        for (Mark mark : marks) {
            requireWanted(cancelled);
            mark.drawOn(surface);
        }
    }

    /** Ends with a {@link CancellationException} what is no longer wanted. */
    public static void requireWanted(BooleanSupplier cancelled) {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
    }
}
