package edgewright.booklet.page;

import edgewright.draw.paint.Shape.Weight;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The faces of one document. Figures stand in columns, so tables are set in the tabular ones. */
public record Typefaces(Face text, Face bold, Face figures, Face boldFigures) {
    public static Typefaces embedIn(PDDocument document) {
        Face text = Face.in(document, Weight.REGULAR);
        Face bold = Face.in(document, Weight.BOLD);
        return new Typefaces(text, bold, text.withTabularFigures(), bold.withTabularFigures());
    }
}
