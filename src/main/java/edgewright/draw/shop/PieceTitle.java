package edgewright.draw.shop;

import edgewright.chart.Colour;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Shape.Weight;
import edgewright.draw.paint.ShortenedText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Title and designer in the middle of a piece, as large as goes with it. */
record PieceTitle(Area piece, Colour ink) {
    private static final int MOST_LINES = 3;
    private static final double LEADING = 1.2;

    /** How much of the piece the text takes at most, across and down. */
    private static final double ROOM = 0.8;

    /** The largest and the smallest letters of the title, as parts of the shorter side of the piece. */
    private static final double LARGEST = 0.16;

    private static final double SMALLEST = 0.05;

    /** The letters of the designer, as a part of those of the title. */
    private static final double BY = 0.45;

    /** Nothing for a chart with neither title nor designer. */
    Optional<Mark> of(String title, String designer) {
        List<Shape> lines = new ArrayList<>();
        double shorter = Math.min(piece.widthMm(), piece.heightMm());
        List<String> set = title.isBlank() ? List.of() : set(title.strip(), shorter);
        double size = set.isEmpty() ? shorter * LARGEST / 2 : size(set, shorter);
        double by = Math.max(shorter * SMALLEST * BY, size * BY);
        double high = LEADING * (set.size() * size + (designer.isBlank() ? 0 : by));
        double y = piece.middleYMm() - high / 2;
        for (String line : set) {
            lines.add(text(
                    line, y + Lettering.CAPITAL * size + (LEADING - Lettering.CAPITAL) * size / 2, size, Weight.BOLD));
            y += LEADING * size;
        }
        if (!designer.isBlank()) {
            lines.add(text(designer.strip(), y + LEADING * by, by, Weight.REGULAR));
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(Mark.beside(MarkKind.CAPTION, lines));
    }

    private Shape text(String text, double baseline, double size, Weight weight) {
        String fitted =
                ShortenedText.toFit(text, cut -> Lettering.widthMm(cut, weight, size) <= ROOM * piece.widthMm() + 1e-9);
        return new Shape.Text(fitted, piece.middleXMm(), baseline, size, weight, Shape.Anchor.MIDDLE, 0, ink);
    }

    /** The title in as many lines as let its letters be largest. */
    private List<String> set(String title, double shorter) {
        List<String> words = List.of(title.split("\\s+"));
        return IntStream.rangeClosed(1, Math.min(MOST_LINES, words.size()))
                .mapToObj(lines -> broken(words, lines))
                // Of two that are as large the one of fewer lines.
                .reduce((one, other) -> size(other, shorter) > size(one, shorter) ? other : one)
                .orElseThrow();
    }

    private double size(List<String> lines, double shorter) {
        double across = ROOM * piece.widthMm() / width(lines);
        double down = ROOM * piece.heightMm() / (LEADING * (lines.size() + BY));
        return Math.max(SMALLEST * shorter, Math.min(LARGEST * shorter, Math.min(across, down)));
    }

    /** The widest line, in parts of its size. */
    private static double width(List<String> lines) {
        return lines.stream()
                .mapToDouble(line -> Lettering.widthMm(line, Weight.BOLD, 1))
                .max()
                .orElseThrow();
    }

    /** The words in so many lines, the widest as narrow as can be; for so few lines every way can be tried. */
    private static List<String> broken(List<String> words, int lines) {
        if (lines == 1) {
            return List.of(String.join(" ", words));
        }
        return IntStream.rangeClosed(1, words.size() - lines + 1)
                .mapToObj(first -> {
                    List<String> set = new ArrayList<>();
                    set.add(String.join(" ", words.subList(0, first)));
                    set.addAll(broken(words.subList(first, words.size()), lines - 1));
                    return set;
                })
                .min(Comparator.comparingDouble(PieceTitle::width))
                .orElseThrow();
    }
}
