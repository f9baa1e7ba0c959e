package edgewright.draw;

import edgewright.draw.Shape.Weight;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Drawings as SVG 1.1. One unit is a millimetre. Marks of a layer are one group with the layer's name as id; each mark is a
 * group whose {@code class} is its kind, with the place and the yarn as data.
 *
 * <p>Text stays text, so that it can be searched, read aloud and edited. The face is embedded, for machines that lack it;
 * programs that cannot use an embedded face take their own sans serif, and the anchors keep the text in its place.
 */
public final class SvgPicture {
    private SvgPicture() {}

    /** The drawing as a document of its own, in UTF-8. */
    public static String of(Drawing drawing) {
        String width = Numbers.mm(drawing.widthMm(), 3);
        String height = Numbers.mm(drawing.heightMm(), 3);
        String size = " width=\"" + width + "mm\" height=\"" + height + "mm\"";
        String style = face(Weight.REGULAR, 400) + face(Weight.BOLD, 700) + "text { font-family: '" + Lettering.FAMILY
                + "', sans-serif; font-kerning: none; }\n";
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + element(drawing, " xmlns=\"http://www.w3.org/2000/svg\"" + size, "<style>\n" + style + "</style>\n");
    }

    /** The drawing as a part of a page of HTML, which gives it its size and its face. A page can hold one of them. */
    public static String inPage(Drawing drawing) {
        return element(drawing, "", "");
    }

    private static String element(Drawing drawing, String attributes, String style) {
        StringBuilder svg = new StringBuilder();
        svg.append("<svg")
                .append(attributes)
                .append(" viewBox=\"0 0 ")
                .append(Numbers.mm(drawing.widthMm(), 3))
                .append(' ')
                .append(Numbers.mm(drawing.heightMm(), 3))
                .append("\" role=\"img\" aria-labelledby=\"title description\">\n")
                .append("<title id=\"title\">")
                .append(escape(drawing.title()))
                .append("</title>\n<desc id=\"description\">")
                .append(escape(drawing.description()))
                .append("</desc>\n")
                .append(style);
        for (Layer layer : Layer.values()) {
            svg.append("<g id=\"").append(name(layer)).append("\">\n");
            for (Mark mark : drawing.marks()) {
                if (mark.kind().layer() == layer) {
                    mark(mark, svg);
                }
            }
            svg.append("</g>\n");
        }
        return svg.append("</svg>\n").toString();
    }

    private static void mark(Mark mark, StringBuilder svg) {
        svg.append("<g class=\"").append(name(mark.kind())).append('"');
        mark.place()
                .ifPresent(place -> svg.append(" data-round=\"")
                        .append(place.round())
                        .append("\" data-section=\"")
                        .append(place.section().member())
                        .append("\" data-place=\"")
                        .append(place.place())
                        .append('"'));
        mark.yarn()
                .ifPresent(
                        yarn -> svg.append(" data-yarn=\"").append(escape(yarn)).append('"'));
        svg.append('>');
        mark.drawOn(new SvgSurface(svg));
        svg.append("</g>\n");
    }

    private static String name(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String face(Weight weight, int number) {
        try (InputStream font = Lettering.open(weight)) {
            return "@font-face { font-family: '" + Lettering.FAMILY + "'; font-weight: " + number
                    + "; src: url(data:font/ttf;base64,"
                    + Base64.getEncoder().encodeToString(font.readAllBytes()) + ") format('truetype'); }\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Text for XML. Characters that XML 1.0 does not know become the sign for an unknown character. */
    static String escape(String text) {
        return text.codePoints()
                .mapToObj(c -> switch (c) {
                    case '&' -> "&amp;";
                    case '<' -> "&lt;";
                    case '>' -> "&gt;";
                    case '"' -> "&quot;";
                    default -> isXml(c) ? Character.toString(c) : "\ufffd";
                })
                .collect(Collectors.joining());
    }

    /** Production 2 of https://www.w3.org/TR/xml/#charsets. */
    private static boolean isXml(int c) {
        return c == 0x9
                || c == 0xa
                || c == 0xd
                || (c >= 0x20 && c <= 0xd7ff)
                || (c >= 0xe000 && c <= 0xfffd)
                || c >= 0x10000;
    }
}
