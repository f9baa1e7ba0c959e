package edgewright.draw.svg;

import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.DrawingOrder;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Stamp;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/**
 * The marks of a drawing in groups of SVG, layer by layer: one group for marks of one kind, yarn and look that do not overlap.
 * What is drawn again and again is said once, and used.
 */
final class SvgGroups {
    /** Programs that read SVG have limits for the length of an attribute; a path of so many parts keeps far below them. */
    private static final int MOST_PARTS = 2000;

    /** What marks have in common that stand in one group. */
    private record Key(int storey, MarkKind kind, Optional<String> yarn, List<String> look) {}

    /**
     * The shapes of a mark.
     *
     * @param look how one shape is inked; of several, all of them from the place of the first on
     * @param rightMm how much farther right the shapes of a stamp are printed
     * @param downMm how much farther down the shapes of a stamp are printed
     */
    private record Drawn(Mark mark, List<SvgShape> shapes, List<String> look, double rightMm, double downMm) {
        static Drawn of(Mark mark, List<SvgShape> shapes) {
            return new Drawn(mark, shapes, look(shapes), 0, 0);
        }

        /** The same shapes, printed elsewhere for another mark. */
        Drawn again(Mark other, Shape.Stamped stamped) {
            return new Drawn(other, shapes, look, stamped.xMm(), stamped.yMm());
        }

        double xMm() {
            return shapes.get(0).xMm() + rightMm;
        }

        double yMm() {
            return shapes.get(0).yMm() + downMm;
        }

        boolean isOneShape() {
            return shapes.size() == 1;
        }

        private static List<String> look(List<SvgShape> shapes) {
            if (shapes.isEmpty()) {
                return List.of();
            }
            SvgShape first = shapes.get(0);
            return shapes.size() == 1
                    ? List.of(first.style(), first.isSquare() + "")
                    : shapes.stream()
                            .map(shape -> shape.element(first.xMm(), first.yMm()))
                            .toList();
        }
    }

    private final Drawing drawing;
    private final String prefix;
    private final boolean inPage;
    private final BooleanSupplier cancelled;
    private final Map<Stamp, Drawn> stamps = new HashMap<>();
    /** How often each look is drawn, in whatever layer. */
    private final Map<List<String>, Integer> times = new HashMap<>();

    private final Map<List<String>, String> signs = new LinkedHashMap<>();
    private final StringBuilder layers = new StringBuilder();

    /**
     * @param prefix before every id
     * @param inPage whether it is a part of a page, whose face it takes
     * @param cancelled asked before each mark; once it answers true the work ends with a {@link
     *     java.util.concurrent.CancellationException}
     */
    SvgGroups(Drawing drawing, String prefix, boolean inPage, BooleanSupplier cancelled) {
        this.drawing = drawing;
        this.prefix = prefix;
        this.inPage = inPage;
        this.cancelled = cancelled;
    }

    /** The signs that are used, then the layers. */
    String elements() {
        Map<Layer, List<Map.Entry<Key, List<Drawn>>>> groups = new EnumMap<>(Layer.class);
        for (Layer layer : Layer.values()) {
            List<Map.Entry<Key, List<Drawn>>> ofLayer = groups(drawing.marks().stream()
                    .filter(mark -> mark.kind().layer() == layer)
                    .toList());
            ofLayer.forEach(
                    group -> times.merge(group.getKey().look(), group.getValue().size(), Integer::sum));
            groups.put(layer, ofLayer);
        }
        groups.forEach((layer, ofLayer) -> {
            layers.append("<g id=\"").append(prefix).append(name(layer)).append("\">\n");
            ofLayer.forEach(group -> group(group.getKey(), group.getValue()));
            layers.append("</g>\n");
        });
        StringBuilder defs = new StringBuilder();
        signs.forEach((look, id) -> defs.append("<g id=\"")
                .append(id)
                .append("\">")
                .append(String.join("", look))
                .append("</g>\n"));
        return (defs.isEmpty() ? "" : "<defs>\n" + defs + "</defs>\n") + layers;
    }

    /** What looks alike and may be drawn together, in the order in which it is drawn. */
    private List<Map.Entry<Key, List<Drawn>>> groups(List<Mark> marks) {
        List<Integer> storeys = DrawingOrder.storeys(marks, drawing, cancelled);
        Map<Key, List<Drawn>> groups = new LinkedHashMap<>();
        for (int i = 0; i < marks.size(); i++) {
            Drawing.requireWanted(cancelled);
            Mark mark = marks.get(i);
            Drawn drawn = drawn(mark);
            if (!drawn.shapes().isEmpty()) {
                Key key = new Key(storeys.get(i), mark.kind(), mark.yarn(), drawn.look());
                groups.computeIfAbsent(key, k -> new ArrayList<>()).add(drawn);
            }
        }
        return groups.entrySet().stream()
                .sorted(Comparator.comparingInt(entry -> entry.getKey().storey()))
                .toList();
    }

    /** A stamp is turned into shapes of SVG once. One of a single shape is drawn as if there were no stamp. */
    private Drawn drawn(Mark mark) {
        if (mark.shapes().size() == 1
                && mark.shapes().get(0) instanceof Shape.Stamped stamped
                && stamped.stamp().shapes().size() > 1) {
            return stamps.computeIfAbsent(stamped.stamp(), stamp -> Drawn.of(mark, SvgSurface.shapesOf(stamp)))
                    .again(mark, stamped);
        }
        return Drawn.of(mark, SvgSurface.shapesOf(mark, inPage));
    }

    private void group(Key key, List<Drawn> all) {
        String names = " class=\"" + name(key.kind()) + "\""
                + key.yarn()
                        .map(yarn -> " data-yarn=\"" + SvgPicture.escape(yarn) + "\"")
                        .orElse("");
        SvgShape first = all.get(0).shapes().get(0);
        if (!all.get(0).isOneShape()) {
            append("g", names, signs(key.look(), all));
        } else if (first.isText()) {
            append(
                    "g",
                    names + first.style(),
                    all.stream().map(drawn -> drawn.shapes().get(0).letters()).collect(Collectors.joining()));
        } else {
            paths(names + first.style(), parts(all, first.isSquare()));
        }
    }

    private String signs(List<String> look, List<Drawn> all) {
        if (times.get(look) == 1) {
            Drawn only = all.get(0);
            return only.shapes().stream()
                    .map(shape -> shape.element(-only.rightMm(), -only.downMm()))
                    .collect(Collectors.joining());
        }
        String id = signs.computeIfAbsent(look, l -> prefix + "sign" + (signs.size() + 1));
        // Programs that know SVG 1.1 alone find a sign by the name from XLink only.
        String href = inPage ? "href" : "xlink:href";
        return all.stream()
                .map(drawn -> "<use " + href + "=\"#" + id + "\" x=\"" + SvgNumbers.mm(drawn.xMm()) + "\" y=\""
                        + SvgNumbers.mm(drawn.yMm()) + "\"/>")
                .collect(Collectors.joining());
    }

    private static List<SvgPart> parts(List<Drawn> all, boolean squares) {
        return squares
                ? SvgSquares.parts(
                        all.stream().map(drawn -> drawn.mark().bounds()).toList())
                : all.stream().map(drawn -> drawn.shapes().get(0).part()).toList();
    }

    private void paths(String attributes, List<SvgPart> parts) {
        for (int from = 0; from < parts.size(); from += MOST_PARTS) {
            List<SvgPart> some = parts.subList(from, Math.min(parts.size(), from + MOST_PARTS));
            layers.append("<path").append(attributes).append(" d=\"");
            layers.append(SvgPart.joined(some)).append("\"/>\n");
        }
    }

    private void append(String element, String attributes, String content) {
        layers.append('<').append(element).append(attributes).append('>').append(content);
        layers.append("</").append(element).append(">\n");
    }

    private static String name(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
