package edgewright.draw.svg;

import edgewright.draw.marks.Drawing;
import edgewright.draw.paint.FontStack;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Shape.Weight;
import edgewright.draw.paint.Typeface;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The bundled faces inside a document of SVG: the first face always, the others where a text needs them. */
final class SvgFaces {
    /** All but the accents and the Greek that {@link FontStack} leaves to the next face. */
    private static final String OF_THE_FIRST = "U+0-2FF, U+400-10FFFF";

    private SvgFaces() {}

    /** The rules of a style sheet that give every text of a drawing its faces. */
    static String of(Drawing drawing) {
        Set<Weight> beyondTheFirst = beyondTheFirst(drawing);
        boolean first = beyondTheFirst.isEmpty();
        StringBuilder rules = new StringBuilder();
        for (Weight weight : Weight.values()) {
            rules.append(rule(Typeface.HYPERLEGIBLE, weight, first ? "" : "; unicode-range: " + OF_THE_FIRST));
        }
        for (Weight weight : beyondTheFirst) {
            rules.append(rule(Typeface.NOTO, weight, ""));
        }
        String families = Stream.of(Typeface.values())
                .limit(first ? 1 : Typeface.values().length)
                .map(face -> "'" + face.family() + "', ")
                .collect(Collectors.joining());
        return rules + "text { font-family: " + families + "sans-serif; font-kerning: none; }\n";
    }

    /** The weights in which a text needs the second face. */
    private static Set<Weight> beyondTheFirst(Drawing drawing) {
        Set<Weight> weights = EnumSet.noneOf(Weight.class);
        drawing.marks().stream()
                .flatMap(mark -> mark.shapes().stream())
                .filter(shape -> shape instanceof Shape.Text text
                        && FontStack.runs(text.text()).stream()
                                .anyMatch(run -> run.typeface() != Typeface.HYPERLEGIBLE))
                .forEach(shape -> weights.add(((Shape.Text) shape).weight()));
        return weights;
    }

    private static String rule(Typeface face, Weight weight, String range) {
        try (InputStream font = face.open(weight)) {
            return "@font-face { font-family: '" + face.family() + "'; font-weight: "
                    + (weight == Weight.BOLD ? 700 : 400) + range + "; src: url(data:font/ttf;base64,"
                    + Base64.getEncoder().encodeToString(font.readAllBytes()) + ") format('truetype'); }\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
