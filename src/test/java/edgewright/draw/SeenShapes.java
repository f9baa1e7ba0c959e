package edgewright.draw;

import edgewright.draw.SvgReader.Part;
import edgewright.draw.SvgReader.Seen;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.LengthText;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What a reader of a picture ought to see of the marks of a drawing. */
public final class SeenShapes implements Surface {
    /** Places are rounded to a thousandth, twice for what is used at a place. */
    private static final double ROUNDING_MM = 0.0021;

    private static final String SQUARE = "MLLLZ";

    private final Mark mark;
    private final List<Seen> seen = new ArrayList<>();

    private SeenShapes(Mark mark) {
        this.mark = mark;
    }

    public static List<Seen> of(Mark mark) {
        SeenShapes shapes = new SeenShapes(mark);
        mark.drawOn(shapes);
        return shapes.seen;
    }

    @Override
    public void fill(Shape.Fill fill) {
        add(fill.path(), new TreeMap<>(Map.of("fill", fill.colour().toString())));
    }

    @Override
    public void line(Shape.Line line) {
        Map<String, String> look = new TreeMap<>();
        look.put("fill", "none");
        look.put("stroke", line.colour().toString());
        look.put("stroke-width", rounded(line.widthMm()));
        if (line.ends() == Shape.Ends.CUT) {
            look.put("stroke-linecap", "butt");
            look.put("stroke-linejoin", "miter");
        }
        if (!line.dashMm().isEmpty()) {
            look.put(
                    "stroke-dasharray",
                    String.join(
                            " ", line.dashMm().stream().map(SeenShapes::rounded).toList()));
        }
        add(line.path(), look);
    }

    @Override
    public void text(Shape.Text text) {
        Map<String, String> look = new TreeMap<>();
        look.put("fill", text.colour().toString());
        look.put("font-size", rounded(text.sizeMm()));
        look.put("font-weight", text.weight() == Shape.Weight.BOLD ? "700" : "400");
        look.put("text-anchor", text.anchor().name().toLowerCase(Locale.ROOT));
        add(look, text.text(), List.of(text.xMm(), text.yMm()));
    }

    private void add(PenPath path, Map<String, String> look) {
        List<Part> parts = new ArrayList<>();
        path.trace(new PenPath.Pen() {
            @Override
            public void moveTo(double x, double y) {
                parts.add(new Part());
                last().to('M', x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                last().to('L', x, y);
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                last().to('C', x1, y1, x2, y2);
                last().to('E', x, y);
            }

            @Override
            public void close() {
                last().to('Z');
            }

            private Part last() {
                return parts.get(parts.size() - 1);
            }
        });
        parts.forEach(part -> add(look, part.form.toString(), part.points));
    }

    private void add(Map<String, String> look, String form, List<Double> points) {
        seen.add(new Seen(
                name(mark.kind().layer()), name(mark.kind()), mark.yarn().orElse(""), look, form, List.copyOf(points)));
    }

    /** Attributes but for the turn of a text, which repeats its place. */
    private static Map<String, String> look(Seen shape) {
        Map<String, String> look = new TreeMap<>(shape.look());
        look.remove("transform");
        return look;
    }

    public static List<Seen> withoutSquares(List<Seen> seen) {
        return seen.stream().filter(shape -> !isSquare(shape)).toList();
    }

    private static boolean isSquare(Seen shape) {
        return shape.form().equals(SQUARE) && !"none".equals(shape.look().get("fill")) && isUpright(shape.points());
    }

    private static boolean isUpright(List<Double> points) {
        return Math.abs(points.get(1) - points.get(3)) < ROUNDING_MM
                && Math.abs(points.get(2) - points.get(4)) < ROUNDING_MM;
    }

    /** The area of all squares of each kind, yarn and colour, in square millimetres. */
    public static Map<String, Long> areas(List<Seen> seen) {
        Map<String, Double> areas = new TreeMap<>();
        for (Seen square : squares(seen)) {
            Area area = area(square);
            areas.merge(key(square), area.widthMm() * area.heightMm(), Double::sum);
        }
        Map<String, Long> rounded = new TreeMap<>();
        areas.forEach((key, area) -> rounded.put(key, Math.round(area)));
        return rounded;
    }

    public static List<Seen> squares(List<Seen> seen) {
        return seen.stream().filter(SeenShapes::isSquare).toList();
    }

    /** How many squares of its kind, yarn and colour the middle of this one lies in. */
    public static long layersOver(Seen square, List<Seen> squares) {
        Area area = area(square);
        return squares.stream()
                .filter(other -> key(other).equals(key(square)))
                .filter(other -> area(other).holds(area.middleXMm(), area.middleYMm()))
                .count();
    }

    /** Which of the shapes seen is this one, or has it in it; -1 for none. */
    public static int indexOf(Seen shape, List<Seen> seen) {
        for (int i = 0; i < seen.size(); i++) {
            Seen other = seen.get(i);
            boolean both = isSquare(shape) && isSquare(other);
            if (both ? layersOver(shape, List.of(other)) == 1 : isSame(shape, other)) {
                return i;
            }
        }
        return -1;
    }

    private static String key(Seen square) {
        return square.layer() + " " + square.kind() + " " + square.yarn() + " " + square.look();
    }

    private static Area area(Seen square) {
        List<Double> points = square.points();
        return Area.between(points.get(0), points.get(1), points.get(4), points.get(5));
    }

    /** Takes a shape out of those seen; false if it is not among them. */
    public static boolean take(Seen shape, List<Seen> seen) {
        int at = indexOf(shape, seen);
        if (at < 0) {
            return false;
        }
        seen.remove(at);
        return true;
    }

    private static boolean isSame(Seen one, Seen other) {
        if (!one.layer().equals(other.layer())
                || !one.kind().equals(other.kind())
                || !one.yarn().equals(other.yarn())
                || !one.form().equals(other.form())
                || !look(one).equals(look(other))
                || one.points().size() != other.points().size()) {
            return false;
        }
        for (int i = 0; i < one.points().size(); i++) {
            if (Math.abs(one.points().get(i) - other.points().get(i)) > ROUNDING_MM) {
                return false;
            }
        }
        return true;
    }

    private static String rounded(double mm) {
        return LengthText.mm(mm, 3).replaceFirst("^0(?=\\.)", "");
    }

    private static String name(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
