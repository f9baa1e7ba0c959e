package edgewright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * Reads a picture of SVG back into the shapes that are seen, from the lowest to the topmost: uses are followed, what a group
 * says holds for what is in it, and each part of a path is a shape. Knows as much of
 * https://www.w3.org/TR/SVG11/paths.html#PathDataBNF as the driver writes, and refuses the rest.
 */
public final class SvgReader {
    private static final Pattern STEP = Pattern.compile("([Mmhvlcz])([-.\\d ]*)");
    private static final Pattern NUMBER = Pattern.compile("-?(\\d+(\\.\\d+)?|\\.\\d+)");

    /**
     * A shape as it is seen.
     *
     * @param layer id of the group
     * @param look attributes that hold for it, but for those of its place
     * @param form letters of its path, or the text
     * @param points x and y in turn, in millimetres, from the left and upper edge of the sheet
     */
    public record Seen(
            String layer, String kind, String yarn, Map<String, String> look, String form, List<Double> points) {}

    private final Document document;
    private final List<Seen> seen = new ArrayList<>();

    private SvgReader(Document document) {
        this.document = document;
    }

    public static List<Seen> read(Document document) {
        SvgReader reader = new SvgReader(document);
        reader.within(document.getDocumentElement(), "", Map.of(), 0, 0);
        return reader.seen;
    }

    private void within(Element element, String layer, Map<String, String> above, double xMm, double yMm) {
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                Map<String, String> look = look(child, above);
                switch (child.getLocalName()) {
                    case "g" -> within(child, layer.isEmpty() ? child.getAttribute("id") : layer, look, xMm, yMm);
                    case "use" -> use(child, layer, look, xMm, yMm);
                    case "path" -> path(child, layer, look, xMm, yMm);
                    case "text" -> {
                        List<Double> at = List.of(xMm + number(child, "x"), yMm + number(child, "y"));
                        see(layer, look, child.getTextContent(), at);
                    }
                    case "title", "desc", "style", "defs" -> {}
                    default -> throw new AssertionError(child.getLocalName());
                }
            }
        }
    }

    private void use(Element use, String layer, Map<String, String> look, double xMm, double yMm) {
        String id = (use.getAttribute("href") + use.getAttribute("xlink:href")).substring(1);
        within(sign(id), layer, look, xMm + number(use, "x"), yMm + number(use, "y"));
    }

    private Element sign(String id) {
        Element defs = (Element) document.getElementsByTagName("defs").item(0);
        for (Node node = defs.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element sign && sign.getAttribute("id").equals(id)) {
                return sign;
            }
        }
        throw new AssertionError("no sign " + id);
    }

    private void path(Element path, String layer, Map<String, String> look, double xMm, double yMm) {
        for (Part part : parts(path.getAttribute("d"), xMm, yMm)) {
            see(layer, look, part.form.toString(), part.points);
        }
    }

    /** What is drawn without the pen being lifted. */
    static final class Part {
        final StringBuilder form = new StringBuilder();
        final List<Double> points = new ArrayList<>();

        void to(char letter, double... numbers) {
            form.append(letter);
            for (double number : numbers) {
                points.add(number);
            }
        }
    }

    private static List<Part> parts(String data, double xMm, double yMm) {
        List<Part> parts = new ArrayList<>();
        Matcher step = STEP.matcher(data);
        double x = xMm;
        double y = yMm;
        int end = 0;
        while (step.find()) {
            assertThat(step.start()).isEqualTo(end);
            end = step.end();
            char letter = step.group(1).charAt(0);
            double[] n = NUMBER.matcher(step.group(2))
                    .results()
                    .mapToDouble(number -> Double.parseDouble(number.group()))
                    .toArray();
            if (letter == 'z') {
                Part closed = parts.get(parts.size() - 1);
                x = closed.points.get(0);
                y = closed.points.get(1);
                closed.to('Z');
                continue;
            }
            if (letter == 'm' || letter == 'M') {
                parts.add(new Part());
            }
            Part part = parts.get(parts.size() - 1);
            if (letter == 'c') {
                part.to('C', x + n[0], y + n[1], x + n[2], y + n[3]);
            }
            x += letter == 'v' ? 0 : n[n.length == 6 ? 4 : 0];
            y += letter == 'h' ? 0 : n[letter == 'v' ? 0 : n.length - 1];
            part.to(letter == 'c' ? 'E' : letter == 'm' || letter == 'M' ? 'M' : 'L', x, y);
        }
        assertThat(end).isEqualTo(data.length());
        return parts;
    }

    private void see(String layer, Map<String, String> look, String form, List<Double> points) {
        Map<String, String> seenLook = new TreeMap<>(look);
        String kind = seenLook.remove("class");
        String yarn = seenLook.getOrDefault("data-yarn", "");
        seenLook.remove("data-yarn");
        seen.add(new Seen(layer, kind, yarn, seenLook, form, List.copyOf(points)));
    }

    private static Map<String, String> look(Element element, Map<String, String> above) {
        Map<String, String> look = new TreeMap<>(above);
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.item(i).getNodeName();
            if (!List.of("id", "d", "x", "y", "href", "xlink:href").contains(name)) {
                look.put(name, attributes.item(i).getNodeValue());
            }
        }
        return look;
    }

    private static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }
}
