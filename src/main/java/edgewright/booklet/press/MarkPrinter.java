package edgewright.booklet.press;

import edgewright.chart.Colour;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Stamp;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/**
 * Prints the marks of a drawing in few words: squares of one colour as one path, marks that come often as stamps, all else
 * shape by shape. What is seen is the same as if every shape were drawn in its turn.
 */
final class MarkPrinter {
    /** A mark that comes less often is drawn in full: a stamp has its price too. */
    private static final int WORTH_A_STAMP = 4;

    /** Steps add up in the rounding of a reader; after so many it starts afresh. */
    private static final int MOST_STEPS = 200;

    private final PDPageContentStream content;
    private final PdfSurface surface;
    private final MarkStamps stamps;
    private final Map<Colour, List<Area>> squares = new LinkedHashMap<>();
    private final Map<Stamp, String> operatorsOf = new HashMap<>();
    private int steps;
    private double atXMm;
    private double atYMm;

    MarkPrinter(PDPageContentStream content, EmbeddedFonts fonts, MarkStamps stamps) {
        this.content = content;
        this.surface = new PdfSurface(content, fonts);
        this.stamps = stamps;
    }

    /** A mark as a stamp: the point that it is measured from, and what is drawn from there. */
    private record Stampable(Mark mark, double xMm, double yMm, String operators) {}

    void print(List<Mark> marks) throws IOException {
        List<Optional<Stampable>> stampables = new ArrayList<>(marks.size());
        Map<String, Integer> times = new HashMap<>();
        for (Mark mark : marks) {
            Optional<Stampable> stampable = square(mark).isPresent() ? Optional.empty() : stampable(mark);
            stampable.ifPresent(found -> times.merge(found.operators(), 1, Integer::sum));
            stampables.add(stampable);
        }
        for (int i = 0; i < marks.size(); i++) {
            Optional<Shape.Fill> square = square(marks.get(i));
            if (square.isPresent()) {
                endSteps();
                squares.computeIfAbsent(square.get().colour(), colour -> new ArrayList<>())
                        .add(square.get().bounds());
                continue;
            }
            fillSquares();
            Optional<Stampable> stampable = stampables.get(i);
            if (stampable.isPresent()
                    && (stamps.has(stampable.get().operators())
                            || times.get(stampable.get().operators()) >= WORTH_A_STAMP)) {
                stamp(stampable.get());
            } else {
                endSteps();
                marks.get(i).drawOn(surface);
            }
        }
        fillSquares();
        endSteps();
    }

    /** The only shape of a mark that is a cell of one colour. Cells lie beside one another, so their order does not matter. */
    private static Optional<Shape.Fill> square(Mark mark) {
        return mark.kind().layer() == Layer.FABRIC
                        && mark.cell().isPresent()
                        && mark.shapes().size() == 1
                        && mark.shapes().get(0) instanceof Shape.Fill fill
                        && fill.path().isUpright()
                ? Optional.of(fill)
                : Optional.empty();
    }

    private Optional<Stampable> stampable(Mark mark) {
        if (mark.shapes().size() == 1 && mark.shapes().get(0) instanceof Shape.Stamped stamped) {
            String operators = operatorsOf.computeIfAbsent(stamped.stamp(), MarkPrinter::operators);
            return Optional.of(new Stampable(mark, stamped.xMm(), stamped.yMm(), operators));
        }
        if (mark.cell().isEmpty() || mark.shapes().stream().anyMatch(Shape.Text.class::isInstance)) {
            return Optional.empty();
        }
        Area bounds = mark.bounds();
        double xMm = bounds.middleXMm();
        double yMm = bounds.middleYMm();
        StampSurface operators = new StampSurface(xMm, yMm);
        mark.drawOn(operators);
        return Optional.of(new Stampable(mark, xMm, yMm, operators.operators()));
    }

    private static String operators(Stamp stamp) {
        StampSurface operators = new StampSurface(0, 0);
        stamp.shapes().forEach(shape -> shape.drawOn(operators));
        return operators.operators();
    }

    private void fillSquares() throws IOException {
        for (Map.Entry<Colour, List<Area>> ofColour : squares.entrySet()) {
            surface.squares(ofColour.getKey(), ofColour.getValue());
        }
        squares.clear();
    }

    private void stamp(Stampable mark) throws IOException {
        if (steps == MOST_STEPS) {
            endSteps();
        }
        if (steps == 0) {
            content.saveGraphicsState();
            atXMm = 0;
            atYMm = 0;
        }
        float right = PdfSurface.mm(mark.xMm() - atXMm);
        float down = PdfSurface.mm(mark.yMm() - atYMm);
        content.transform(Matrix.getTranslateInstance(right, down));
        content.drawForm(stamps.stamp(mark.operators(), mark.mark().bounds().moved(-mark.xMm(), -mark.yMm())));
        // What was rounded off this step is made good by the next.
        atXMm += right;
        atYMm += down;
        steps++;
    }

    private void endSteps() throws IOException {
        if (steps > 0) {
            content.restoreGraphicsState();
        }
        steps = 0;
    }
}
