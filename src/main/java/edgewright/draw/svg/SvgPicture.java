package edgewright.draw.svg;

import edgewright.draw.marks.Drawing;
import edgewright.draw.paint.LengthText;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/**
 * Drawings as SVG 1.1. One unit is a millimetre. Each layer is a group with the layer's name as id. In it, marks of one kind
 * and one yarn that look the same stand together, as one path, as texts or as uses of one sign; {@code class} is their kind and
 * {@code data-yarn} their yarn. Where marks overlap, the upper ones come later.
 *
 * <p>Text stays text, so that it can be searched, read aloud and edited. The faces that it needs are embedded, for machines that
 * lack them; programs that cannot use an embedded face take their own sans serif, and the anchors keep the text in its place.
 */
public final class SvgPicture {
    private SvgPicture() {}

    /** The drawing as a document of its own, in UTF-8. */
    public static String of(Drawing drawing) {
        return of(drawing, () -> false);
    }

    /**
     * The drawing as a document of its own, in UTF-8.
     *
     * @param cancelled asked before each mark; once it answers true the work ends with a {@link
     *     java.util.concurrent.CancellationException}
     */
    public static String of(Drawing drawing, BooleanSupplier cancelled) {
        String size = " width=\"" + LengthText.mm(drawing.widthMm(), 3) + "mm\" height=\""
                + LengthText.mm(drawing.heightMm(), 3) + "mm\"";
        String style = SvgFaces.of(drawing);
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + element(
                        drawing,
                        " xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\"" + size,
                        "<style>\n" + style + "</style>\n",
                        new SvgGroups(drawing, "", false, cancelled),
                        "");
    }

    /**
     * The drawing as a part of a page of HTML, which gives it its size and its face.
     *
     * @param prefix before each id in it: letters, digits and hyphens, the first a letter; another for each picture of a page
     */
    public static String inPage(Drawing drawing, String prefix) {
        return element(drawing, "", "", new SvgGroups(drawing, prefix, true, () -> false), prefix);
    }

    private static String element(Drawing drawing, String attributes, String style, SvgGroups groups, String prefix) {
        String title = prefix + "title";
        String description = prefix + "description";
        return "<svg" + attributes + " viewBox=\"0 0 " + LengthText.mm(drawing.widthMm(), 3) + " "
                + LengthText.mm(drawing.heightMm(), 3) + "\" role=\"img\" aria-labelledby=\"" + title + " "
                + description
                + "\"" + SvgSurface.USUAL + ">\n<title id=\"" + title + "\">" + escape(drawing.title())
                + "</title>\n<desc id=\"" + description + "\">" + escape(drawing.description()) + "</desc>\n" + style
                + groups.elements() + "</svg>\n";
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
