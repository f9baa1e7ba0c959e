package edgewright.booklet;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.texts.English;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

/** A program of its own: publishes a border of as many rounds as it is told, in whatever memory it is given. */
final class PosterMemory {
    private PosterMemory() {}

    /** A chart with a long stitch in every third column of the repeat, none of them over another. */
    static Chart chart(int rounds) {
        SideShape shape = new SideShape(6, 12, 7);
        List<Yarn> yarns = List.of(
                new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));
        List<Place> longs = new ArrayList<>();
        for (int r = 3; r <= rounds; r++) {
            for (int i = 1 + r % 3; i <= shape.w(); i += 3) {
                longs.add(new Place(r, Section.REPEAT, i));
            }
        }
        return Edits.setStitches(Chart.blank("Reed Bank", shape, rounds, yarns), longs, Stitch.LONG);
    }

    public static void main(String[] rounds) throws IOException {
        Chart chart = chart(Integer.parseInt(rounds[0]));
        PublishOutcome outcome = Booklet.publish(
                chart, BookletOptions.of(chart, English.LANGUAGE), OutputStream.nullOutputStream(), Progress.NONE);
        if (!(outcome instanceof PublishOutcome.Published)) {
            throw new IllegalStateException(outcome.toString());
        }
    }
}
