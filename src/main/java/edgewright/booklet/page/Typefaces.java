package edgewright.booklet.page;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The faces of one document. Figures stand in columns, so tables are set in the tabular ones. */
public record Typefaces(Face text, Face bold, Face figures, Face boldFigures) {
    private static final String REGULAR = "AtkinsonHyperlegibleNext-Regular.ttf";
    private static final String BOLD = "AtkinsonHyperlegibleNext-Bold.ttf";

    public static Typefaces embedIn(PDDocument document) {
        return new Typefaces(
                Face.embedIn(document, REGULAR, false),
                Face.embedIn(document, BOLD, false),
                Face.embedIn(document, REGULAR, true),
                Face.embedIn(document, BOLD, true));
    }

    /** The characters for which a question mark had to stand in any of the faces, each once, in the order of Unicode. */
    public String unprinted() {
        return Stream.of(text, bold, figures, boldFigures)
                .flatMap(face -> face.unprinted().stream())
                .distinct()
                .sorted()
                .map(Character::toString)
                .collect(Collectors.joining());
    }
}
