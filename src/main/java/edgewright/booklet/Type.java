package edgewright.booklet;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The faces of one document. Figures stand in columns, so tables are set in the tabular ones. */
record Type(Face text, Face bold, Face figures, Face boldFigures) {
    private static final String REGULAR = "AtkinsonHyperlegibleNext-Regular.ttf";
    private static final String BOLD = "AtkinsonHyperlegibleNext-Bold.ttf";

    static Type embedIn(PDDocument document) {
        return new Type(
                Face.embedIn(document, REGULAR, false),
                Face.embedIn(document, BOLD, false),
                Face.embedIn(document, REGULAR, true),
                Face.embedIn(document, BOLD, true));
    }

    /** The characters for which a question mark had to stand in any of the faces, each once, in the order of Unicode. */
    String unprinted() {
        return Stream.of(text, bold, figures, boldFigures)
                .flatMap(face -> face.unprinted().stream())
                .distinct()
                .sorted()
                .map(Character::toString)
                .collect(Collectors.joining());
    }
}
