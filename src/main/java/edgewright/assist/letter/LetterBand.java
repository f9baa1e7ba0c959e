package edgewright.assist.letter;

import edgewright.assist.picture.PictureAnswer.Stitched;
import edgewright.assist.picture.PictureStitcher;
import edgewright.assist.picture.PictureTask;
import edgewright.assist.picture.PictureYarns;
import edgewright.assist.picture.Wanted;
import edgewright.assist.picture.WantedPicture;
import edgewright.chart.Chart;
import edgewright.chart.Corner;
import edgewright.chart.Heading;
import edgewright.chart.Place;
import edgewright.chart.Rules;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A band of one line of text, as often on a side as the repeat is worked and never over a corner: the corner sections are plain. It
 * is read from the outside of the border, and so written against the direction of work of a right-handed maker.
 *
 * <p>Law: a fabric cell shows its own round or the one above, so strokes of the second yarn on a ground of the first can begin and
 * end only on rounds of their own. Therefore each row of squares of a letter is one round of the second yarn, the rounds between
 * are of the first, and a stroke upwards is a column of long stitches, each landing on the one before: stacking is allowed in the
 * band. {@link PictureStitcher} then shows every square. Two plain rounds and a line of the second yarn are above and below.
 *
 * <p>The ground lies over rounds of the second yarn in runs of long stitches. Where a run would be loose, single squares of the
 * second yarn are left in it, as far apart as the rules allow.
 */
public final class LetterBand {
    /** The free columns between the end of the text and its next beginning, at least. */
    private static final int GAP = 5;

    /** The rounds below the first row of squares, and above the last. */
    private static final int FRAME = 4;

    private final int width;
    private final int lines;
    private final Yarn ground;
    private final Yarn letters;
    private final int looseRun;
    private final boolean[][] filled;
    private final boolean[][] ties;

    private LetterBand(Squares squares, int width, Yarn ground, Yarn letters, int looseRun) {
        this.width = width;
        this.lines = squares.highest() - squares.lowest() + 1;
        this.ground = ground;
        this.letters = letters;
        this.looseRun = looseRun;
        this.filled = new boolean[lines][width];
        this.ties = new boolean[lines][width];
        int before = (width - squares.width()) / 2;
        for (int line = 0; line < lines; line++) {
            for (int column = 0; column < squares.width(); column++) {
                filled[line][width - 1 - before - column] = squares.isFilled(squares.lowest() + line, column);
            }
            tieDown(filled[line], ties[line]);
        }
    }

    /**
     * A band with a text.
     *
     * @param like the chart whose first two yarns, rules, corner and terms it takes, and on whose repeat its own comes out even;
     *     empty for the usual ones
     */
    public static LetterAnswer of(String text, Optional<Chart> like) {
        List<String> missing = PixelAlphabet.ours().missing(text);
        if (!missing.isEmpty()) {
            return new LetterAnswer.Missing(missing);
        }
        Squares squares = PixelAlphabet.ours().squares(text);
        if (squares.isEmpty()) {
            return new LetterAnswer.NoText();
        }
        List<Yarn> yarns = like.map(Chart::yarns).orElse(PictureYarns.of(List.of("A", "B")));
        if (yarns.size() < 2) {
            return new LetterAnswer.OneYarn();
        }
        int multiple = like.map(chart -> chart.shape().w()).orElse(1);
        int width = (squares.width() + GAP + multiple - 1) / multiple * multiple;
        if (width > Chart.MOST_STITCHES) {
            return new LetterAnswer.TooLong(width);
        }
        Rules rules = like.map(Chart::rules).orElse(Rules.DEFAULT).withStackLongStitches(true);
        LetterBand band = new LetterBand(squares, width, yarns.get(0), yarns.get(1), rules.looseRun());
        Heading heading = like.map(chart -> chart.heading().withNotes(""))
                .orElse(Heading.of(text))
                .withTitle(text);
        return new LetterAnswer.Band(band.stitched(rules)
                .chart(heading, like.map(Chart::corner).orElse(Corner.DEFAULT), rules, yarns, 0, 0));
    }

    /** Leaves squares in a round so that no run of free ones, around the ends of the repeat, is longer than allowed. */
    private void tieDown(boolean[] line, boolean[] tied) {
        int start = 0;
        while (start < width && !line[start]) {
            start++;
        }
        if (start == width) {
            tied[0] = true;
            start = 0;
        }
        int run = 0;
        for (int step = 1; step <= width; step++) {
            int column = (start + step) % width;
            if (!line[column] && !tied[column]) {
                run++;
                continue;
            }
            int count = run / (looseRun + 1);
            for (int tie = 1; tie <= count; tie++) {
                tied[Math.floorMod(column - run - 1 + tie * (run + 1) / (count + 1), width)] = true;
            }
            run = 0;
        }
    }

    private Stitched stitched(Rules rules) {
        List<String> yarns = new ArrayList<>(List.of(ground.id(), letters.id(), ground.id(), ground.id()));
        for (int line = 0; line < lines; line++) {
            yarns.add(letters.id());
            yarns.add(ground.id());
        }
        yarns.addAll(List.of(ground.id(), letters.id(), ground.id()));
        WantedPicture picture = WantedPicture.of(yarns.size(), width, place -> wanted(place, yarns));
        // No stitch is locked, so there is always an answer.
        return (Stitched) PictureStitcher.nearest(new PictureTask(picture, yarns, rules));
    }

    private Wanted wanted(Place place, List<String> yarns) {
        int height = place.round() - FRAME - 1;
        int column = place.place() - 1;
        if (height < 0 || height > 2 * lines - 2) {
            return Wanted.of(yarns.get(place.round() - 1));
        }
        int line = height / 2;
        boolean isFilled = height % 2 == 0
                ? filled[line][column] || ties[line][column]
                : filled[line][column] && filled[line + 1][column];
        return Wanted.of(isFilled ? letters.id() : ground.id());
    }
}
