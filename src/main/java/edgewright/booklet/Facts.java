package edgewright.booklet;

import edgewright.chart.Chart;
import edgewright.chart.Hand;
import edgewright.fit.FitSentences;
import edgewright.words.Block;
import edgewright.words.Part;
import edgewright.words.WrittenPattern;
import java.util.ArrayList;
import java.util.List;

/** What the first page says of a pattern, a label and a text for each. */
final class Facts {
    private final List<Fact> all = new ArrayList<>();

    /** What is said, and what it is called. */
    record Fact(String label, String text) {}

    Facts(Chart chart, BookletOptions options, WrittenPattern words) {
        add("cover.terms", Texts.of("cover.terms." + options.telling().terms()));
        if (options.edition() != Edition.STANDARD) {
            add("cover.edition", Texts.of("cover.edition." + options.edition()));
        }
        if (options.hand() == Hand.LEFT) {
            add("cover.hand", Texts.of("cover.hand.LEFT"));
        }
        options.size()
                .changes()
                .ifPresent(plan -> add(
                        "cover.piece",
                        Texts.of(
                                "cover.piece.one",
                                new FitSentences().counted(plan.question().in(options.counting())),
                                plan.changing())));
        String base = baseRound(words);
        int end = PartPages.endOfName(base, "");
        all.add(new Fact(
                base.substring(0, end).strip().replaceAll("\\.$", ""),
                base.substring(end).strip()));
        add("cover.rounds", Integer.toString(chart.rounds().size()));
        add("cover.skill", chart.making().skill().strip());
        add("cover.version", options.imprint().version());
        add("cover.date", options.imprint().date());
    }

    List<Fact> all() {
        return all;
    }

    private void add(String label, String text) {
        if (!text.isEmpty()) {
            all.add(new Fact(Texts.of(label), text));
        }
    }

    /** The line that names the base round and its counts. */
    private static String baseRound(WrittenPattern words) {
        Block.RoundWords base = words.parts().stream()
                .filter(part -> part.kind() == Part.Kind.SET_UP)
                .flatMap(part -> part.blocks().stream())
                .filter(Block.RoundWords.class::isInstance)
                .map(Block.RoundWords.class::cast)
                .findFirst()
                .orElseThrow();
        return base.lines().get(0);
    }
}
