package edgewright.draw;

import java.util.List;

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
        for (Mark mark : marks) {
            mark.drawOn(surface);
        }
    }
}
