package edgewright.draw.picture;

import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;

/** The words of a legend in lines. */
final class LegendWords {
    /** From line to line, in cells. */
    static final double LINE = 0.78;

    private LegendWords() {}

    /** Words in as many lines as they need; a word that is wider than that has a line of its own. */
    static List<String> lines(String words, double mostMm, double cellMm) {
        List<String> lines = new ArrayList<>();
        for (String word : words.split(" ")) {
            String longer = lines.isEmpty() ? word : lines.get(lines.size() - 1) + " " + word;
            if (!lines.isEmpty() && Lettering.widthMm(longer, Shape.Weight.REGULAR, Legend.TEXT * cellMm) <= mostMm) {
                lines.set(lines.size() - 1, longer);
            } else {
                lines.add(word);
            }
        }
        return lines;
    }

    /** These lines one below the other, so that their middle is at that height. */
    static List<Shape.Text> set(List<String> lines, double xMm, double middleYMm, double cellMm, PictureStyle style) {
        double size = Legend.TEXT * cellMm;
        double base = middleYMm - (lines.size() - 1) * LINE * cellMm / 2 + Lettering.CAPITAL * size / 2;
        List<Shape.Text> set = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            set.add(new Shape.Text(
                    lines.get(i),
                    xMm,
                    base + i * LINE * cellMm,
                    size,
                    Shape.Weight.REGULAR,
                    Shape.Anchor.START,
                    0,
                    style.palette().ink()));
        }
        return set;
    }
}
