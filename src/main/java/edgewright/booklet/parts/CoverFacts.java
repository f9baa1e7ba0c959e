package edgewright.booklet.parts;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletTexts;
import edgewright.booklet.choice.Edition;
import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.fit.FitSentences;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.page.TextBlock;
import java.util.ArrayList;
import java.util.List;

/** What the first page says of a pattern, a label and a text for each. */
public final class CoverFacts {
    private final List<Fact> all = new ArrayList<>();

    /** What is said, and what it is called. */
    record Fact(String label, String text) {}

    public CoverFacts(Chart chart, BookletOptions options, PatternText words) {
        add("cover.terms", BookletTexts.of("cover.terms." + options.telling().terms()));
        if (options.edition() != Edition.STANDARD) {
            add("cover.edition", BookletTexts.of("cover.edition." + options.edition()));
        }
        if (options.hand() == HookHand.LEFT) {
            add("cover.hand", BookletTexts.of("cover.hand.LEFT"));
        }
        options.size()
                .changes()
                .ifPresent(plan -> add(
                        "cover.piece",
                        BookletTexts.of(
                                "cover.piece.one",
                                new FitSentences(options.language())
                                        .counted(plan.question().in(options.counting())),
                                plan.changing())));
        TextBlock.RoundWords base = baseRound(words);
        all.add(new Fact(base.name(), base.counts()));
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
            all.add(new Fact(BookletTexts.of(label), text));
        }
    }

    private static TextBlock.RoundWords baseRound(PatternText words) {
        return words.parts().stream()
                .filter(part -> part.kind() == PatternPart.Kind.SET_UP)
                .flatMap(part -> part.blocks().stream())
                .filter(TextBlock.RoundWords.class::isInstance)
                .map(TextBlock.RoundWords.class::cast)
                .findFirst()
                .orElseThrow();
    }
}
