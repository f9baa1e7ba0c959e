package edgewright.booklet.parts;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.fit.FitSentences;
import edgewright.texts.Messages;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.page.TextBlock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the first page says of a pattern, a label and a text for each. */
public final class CoverFacts {
    private final List<Fact> all = new ArrayList<>();

    /** What is said, and what it is called. */
    record Fact(String label, String text) {}

    /** @param pictured how often the repeat is worked on each side of the border pictured; empty where only a corner is */
    public CoverFacts(Chart chart, BookletOptions options, PatternText words, Optional<PerSide<Integer>> pictured) {
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
        add(says.text("cover-pictured"), pictured(options, pictured));
        TextBlock.RoundWords base = baseRound(words);
        all.add(new Fact(base.name(), base.counts()));
        add(says.text("cover-rounds"), options.language().count(chart.rounds().size()));
        add(says.text("cover-skill"), chart.making().skill().strip());
        add(says.text("cover-version"), options.imprint().version());
        add(says.text("cover-date"), options.imprint().date());
    }

    private static String pictured(BookletOptions options, Optional<PerSide<Integer>> shown) {
        Messages says = options.says();
        return shown.map(repeats -> options.size().names().stream()
                        .findFirst()
                        .map(name -> says.text(
                                "cover-pictured-size",
                                arg("size", name),
                                count("across", repeats.top()),
                                count("down", repeats.left())))
                        .orElseGet(() -> says.text(
                                "cover-pictured-repeats",
                                count("across", repeats.top()),
                                count("down", repeats.left()))))
                .orElseGet(() -> says.text("cover-pictured-corner"));
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
