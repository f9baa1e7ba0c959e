package edgewright.draw.marks;

import edgewright.draw.paint.LengthText;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import java.util.Locale;

/**
 * A drawing as text, a line for each mark and under it one for each shape: for tests that compare pictures, and for people who
 * read why two differ. Lengths are millimetres, rounded to hundredths.
 */
public final class TextDump implements Surface {
    private final StringBuilder text = new StringBuilder();

    private TextDump() {}

    /** The whole drawing. */
    public static String of(Drawing drawing) {
        TextDump dump = new TextDump();
        dump.add("sheet %s x %s, %s%n".formatted(mm(drawing.widthMm()), mm(drawing.heightMm()), drawing.title()));
        for (Mark mark : drawing.marks()) {
            dump.add(heading(mark));
            mark.drawOn(dump);
        }
        return dump.text.toString();
    }

    /** Each mark in one line, without its shapes. */
    public static String outline(Drawing drawing) {
        StringBuilder lines = new StringBuilder();
        drawing.marks().forEach(mark -> lines.append(heading(mark)));
        return lines.toString();
    }

    private static String heading(Mark mark) {
        StringBuilder line = new StringBuilder(mark.kind().name());
        mark.cell()
                .ifPresent(cell ->
                        line.append(" cell ").append(cell.x()).append(',').append(cell.y()));
        mark.place().ifPresent(place -> line.append(" at ").append(place));
        mark.yarn().ifPresent(yarn -> line.append(" yarn ").append(yarn));
        return line.append('\n').toString();
    }

    @Override
    public void fill(Shape.Fill fill) {
        add("  fill " + fill.colour() + path(fill.path()) + "\n");
    }

    @Override
    public void line(Shape.Line line) {
        String dash = line.dashMm().isEmpty()
                ? ""
                : " dash" + line.dashMm().stream().map(d -> " " + mm(d)).reduce("", String::concat);
        String ends = line.ends().name().toLowerCase(Locale.ROOT);
        add("  line " + line.colour() + " " + mm(line.widthMm()) + " " + ends + dash + path(line.path()) + "\n");
    }

    @Override
    public void text(Shape.Text shape) {
        String turned = shape.quarterTurns() == 0 ? "" : " turned " + shape.quarterTurns();
        add("  text " + shape.colour() + " " + mm(shape.sizeMm()) + " "
                + shape.weight().name().toLowerCase(Locale.ROOT) + " "
                + shape.anchor().name().toLowerCase(Locale.ROOT) + turned + " at " + mm(shape.xMm()) + ","
                + mm(shape.yMm()) + " '" + shape.text() + "'\n");
    }

    private void add(String line) {
        text.append(line);
    }

    private static String path(PenPath path) {
        StringBuilder steps = new StringBuilder();
        path.trace(new PenPath.Pen() {
            @Override
            public void moveTo(double x, double y) {
                steps.append(" M ").append(mm(x)).append(',').append(mm(y));
            }

            @Override
            public void lineTo(double x, double y) {
                steps.append(" L ").append(mm(x)).append(',').append(mm(y));
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                steps.append(" C ").append(mm(x1)).append(',').append(mm(y1));
                steps.append(' ').append(mm(x2)).append(',').append(mm(y2));
                steps.append(' ').append(mm(x)).append(',').append(mm(y));
            }

            @Override
            public void close() {
                steps.append(" Z");
            }
        });
        return steps.toString();
    }

    private static String mm(double millimetres) {
        return LengthText.mm(millimetres, 2);
    }
}
