package edgewright.draw.paint;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What says in a square of a chart in one ink which yarn shows there, and leaves the mark on it clear: of two yarns the darker one
 * is hatched with few lines and the other left blank. Of more yarns the darkest is hatched and each other one has its letter, small,
 * in a corner of the square; a denser hatching would eat the marks.
 *
 * @param hatched whether the square is hatched
 * @param letter the id of the yarn, where that stands in the square
 */
public record YarnSign(boolean hatched, Optional<String> letter) {
    /** A square with nothing in it. */
    public static final YarnSign BLANK = new YarnSign(false, Optional.empty());

    private static final YarnSign HATCHED = new YarnSign(true, Optional.empty());

    /** Lines that rise to the right and go on from square to square: where they begin and end, in a square one wide. */
    private static final double[][] LINES = {
        {0, 0.25, 0.25, 0}, {0, 0.75, 0.75, 0}, {0.25, 1, 1, 0.25}, {0.75, 1, 1, 0.75}
    };

    private static final double LINE = 0.05;

    /** The letter is so large that its stems are wider than the blur of a photocopier in the smallest squares. */
    private static final double LETTER = 0.35;

    private static final double LETTER_WIDE = 0.22;

    /** The middle of the letter, in the outer corner where the round begins: no mark reaches there, nor do the lines of tens. */
    private static final double ALONG = -0.295;

    private static final double OUT = 0.33;

    /** The yarns that the chart works with, the lightest first. */
    static List<Yarn> fromLightToDark(Chart chart) {
        return chart.yarns().stream()
                .filter(yarn ->
                        chart.rounds().stream().anyMatch(round -> round.yarn().equals(yarn.id())))
                .sorted(Comparator.comparingDouble((Yarn yarn) -> yarn.colour().luminance())
                        .reversed())
                .toList();
    }

    /** What says each yarn that the chart works with, by id. */
    public static Map<String, YarnSign> of(Chart chart) {
        List<Yarn> used = fromLightToDark(chart);
        Map<String, YarnSign> signs = new HashMap<>();
        for (int i = 0; i < used.size(); i++) {
            String id = used.get(i).id();
            boolean darkest = i == used.size() - 1 && i > 0;
            signs.put(id, darkest ? HATCHED : used.size() < 3 ? BLANK : new YarnSign(false, Optional.of(id)));
        }
        return signs;
    }

    /** Whether some yarns of this chart have their letters in the squares. */
    public static boolean hasLetters(Chart chart) {
        return fromLightToDark(chart).size() > 2;
    }

    /** A square on white with this sign, as it stands in a row with the piece below. */
    public List<Shape> in(Area square) {
        return in(square, Frame.of(0, square.middleXMm(), square.middleYMm(), square.widthMm()));
    }

    /**
     * A square on white with this sign. The letter stands upright however the frame lies.
     *
     * @param frame in which the mark of the square is made
     */
    public List<Shape> in(Area square, Frame frame) {
        Shape ground = new Shape.Fill(PenPath.rectangle(square), Palette.BLACK.paper());
        if (hatched) {
            return List.of(ground, hatching(square));
        }
        return letter.map(id -> List.of(ground, lettering(id, square.widthMm(), frame)))
                .orElse(List.of(ground));
    }

    private static Shape hatching(Area square) {
        PenPath.Builder path = new PenPath.Builder();
        double c = square.widthMm();
        for (double[] line : LINES) {
            path.moveTo(square.xMm() + line[0] * c, square.yMm() + line[1] * c)
                    .lineTo(square.xMm() + line[2] * c, square.yMm() + line[3] * c);
        }
        return new Shape.Line(path.build(), LINE * c, Palette.BLACK.ink(), Shape.Ends.CUT, List.of());
    }

    private static Shape lettering(String id, double c, Frame frame) {
        double wide = Lettering.widthMm(id, Shape.Weight.BOLD, LETTER * c);
        double size = LETTER * c * Math.min(1, LETTER_WIDE * c / wide);
        return new Shape.Text(
                id,
                frame.xMm(ALONG, OUT),
                frame.yMm(ALONG, OUT) + Lettering.CAPITAL * size / 2,
                size,
                Shape.Weight.BOLD,
                Shape.Anchor.MIDDLE,
                0,
                Palette.BLACK.ink());
    }
}
