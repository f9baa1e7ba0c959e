package edgewright.testing;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Heading;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Every chart of a small size. */
public final class EveryChart {
    private static final List<Yarn> YARNS =
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));

    private final SideShape shape;
    private final int rounds;
    private final String letters;
    private final Rules rules;

    /**
     * @param letters the stitches to choose from for every place; with n of them and s stitches a side in all rounds together
     *     there are n to the power of s charts
     */
    public EveryChart(SideShape shape, int rounds, String letters, Rules rules) {
        this.shape = shape;
        this.rounds = rounds;
        this.letters = letters;
        this.rules = rules;
    }

    /** How many there are. */
    public long count() {
        return Math.round(Math.pow(letters.length(), places()));
    }

    /** Shows all of them, one after the other; rounds are worked in yarns A and B in turn. */
    public void forEach(Consumer<Chart> look) {
        int[] choice = new int[places()];
        do {
            look.accept(chart(choice));
        } while (next(choice));
    }

    private int places() {
        int places = 0;
        for (int r = 1; r <= rounds; r++) {
            places += shape.stitches(r, 1);
        }
        return places;
    }

    private Chart chart(int[] choice) {
        List<Round> worked = new ArrayList<>();
        int used = 0;
        for (int r = 1; r <= rounds; r++) {
            String[] rows = new String[3];
            for (Section section : Section.values()) {
                StringBuilder row = new StringBuilder();
                for (int i = shape.length(section, r); i > 0; i--) {
                    row.append(letters.charAt(choice[used++]));
                }
                rows[section.ordinal()] = row.toString();
            }
            worked.add(Round.of(r % 2 == 1 ? "A" : "B", rows[0], rows[1], rows[2]));
        }
        return new Chart(Heading.of("Every"), YARNS, worked).withRules(rules);
    }

    /** Counts on by one; false after the last. */
    private boolean next(int[] choice) {
        for (int i = 0; i < choice.length; i++) {
            if (++choice[i] < letters.length()) {
                return true;
            }
            choice[i] = 0;
        }
        return false;
    }
}
