package edgewright.testing;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import java.util.List;
import java.util.Random;

/** Charts whose texts are long. */
public final class LongNames {
    private static final String LETTERS = "abcdeghilmnoprstuWMWM\u0416\u03a9\u00e9";

    private LongNames() {}

    /** A small chart whose title, designer, notes, words about skill and yarn names have so many letters each. */
    public static Chart chart(int letters, boolean blanks) {
        Random random = new Random(letters);
        Chart chart = RandomCharts.workable(new RandomCharts(letters).small());
        List<Yarn> yarns = chart.yarns().stream()
                .map(yarn -> new Yarn(yarn.id(), text(random, letters, blanks), yarn.colour()))
                .toList();
        return chart.withYarns(yarns)
                .withTitle(text(random, letters, blanks))
                .withDesigner(text(random, letters, blanks))
                .withNotes(text(random, letters, blanks))
                .withMaking(chart.making().withSkill(text(random, letters, blanks)));
    }

    private static String text(Random random, int letters, boolean blanks) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < letters; i++) {
            boolean blank = blanks && i % 8 == 7 && i < letters - 1;
            text.append(blank ? ' ' : LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return text.toString();
    }
}
