package edgewright.testing;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

/** Charts whose texts are long. */
public final class LongNames {
    private static final String LETTERS = "abcdeghilmnoprstuWMWM\u0416\u03a9\u00e9";

    private LongNames() {}

    /** A small chart whose title, designer, notes, words about skill and yarn names have so many letters each. */
    public static Chart chart(int letters, boolean blanks) {
        return in(RandomCharts.workable(new RandomCharts(letters).small()), letters, blanks);
    }

    /** This chart with texts of so many letters each. */
    public static Chart in(Chart chart, int letters, boolean blanks) {
        Random random = new Random(letters);
        List<Yarn> yarns = chart.yarns().stream()
                .map(yarn -> new Yarn(yarn.id(), text(random, letters, blanks), yarn.colour()))
                .toList();
        return chart.withYarns(yarns)
                .withTitle(text(random, letters, blanks))
                .withDesigner(text(random, letters, blanks))
                .withNotes(text(random, letters, blanks))
                .withMaking(chart.making().withSkill(text(random, letters, blanks)));
    }

    /** This chart with ids of yarns as wide as there are: of so many letters, 1 to 8. */
    public static Chart withWideIds(Chart chart, int letters) {
        Map<String, String> ids = new HashMap<>();
        for (Yarn yarn : chart.yarns()) {
            ids.put(yarn.id(), "W".repeat(letters - 1) + (char) ('A' + ids.size()));
        }
        List<Yarn> renamed = chart.yarns().stream()
                .map(yarn -> new Yarn(ids.get(yarn.id()), yarn.name(), yarn.colour()))
                .toList();
        List<Yarn> both = Stream.concat(chart.yarns().stream(), renamed.stream())
                .filter(new HashSet<>()::add)
                .toList();
        return letters == 1
                ? chart
                : chart.withYarns(both)
                        .withRounds(chart.rounds().stream()
                                .map(round -> round.withYarn(ids.get(round.yarn())))
                                .toList())
                        .withYarns(renamed);
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
