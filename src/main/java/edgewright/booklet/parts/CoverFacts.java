package edgewright.booklet.parts;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.fit.FitSentences;
import edgewright.texts.Messages;
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
        Messages says = options.says();
        add(
                says.text("cover-terms"),
                says.text("cover-terms-" + options.telling().terms()));
        if (options.edition() != Edition.STANDARD) {
            add(says.text("cover-edition"), says.text("cover-edition-" + options.edition()));
        }
        if (options.hand() == HookHand.LEFT) {
            add(says.text("cover-hand"), says.text("cover-hand-LEFT"));
        }
        options.size()
                .changes()
                .ifPresent(plan -> add(
                        says.text("cover-piece"),
                        says.text(
                                "cover-piece-one",
                                arg(
                                        "counted",
                                        new FitSentences(options.language())
                                                .counted(plan.question().in(options.counting()))),
                                number("round", plan.changing()))));
        add(says.text("cover-sizes"), options.language().commas(options.size().names()));
        TextBlock.RoundWords base = baseRound(words);
        all.add(new Fact(base.name(), base.counts()));
        add(says.text("cover-rounds"), options.language().count(chart.rounds().size()));
        add(says.text("cover-skill"), chart.making().skill().strip());
        add(says.text("cover-version"), options.imprint().version());
        add(says.text("cover-date"), options.imprint().date());
    }

    List<Fact> all() {
        return all;
    }

    private void add(String label, String text) {
        if (!text.isEmpty()) {
            all.add(new Fact(label, text));
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
