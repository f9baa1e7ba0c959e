package edgewright.booklet.parts;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.choice.BookletOptions;
import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.texts.Messages;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.page.TextBlock;
import edgewright.words.technique.ToldTechnique;
import edgewright.words.write.PatternWriter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The words of a pattern in one of the terms or in both. In both, what has no terms in it stands once: parts that say the same
 * in any terms, and paragraphs and entries that came out alike. Rounds are never taken apart.
 */
public final class TermsTexts {
    /** What says the same in any terms, but for a word. */
    private static final Set<PatternPart.Kind> ONCE = EnumSet.of(
            PatternPart.Kind.NEEDS,
            PatternPart.Kind.DESIGNER_NOTES,
            PatternPart.Kind.COUNTS,
            PatternPart.Kind.TECHNIQUES,
            PatternPart.Kind.FINISHING);

    private final Map<Terms, PatternText> texts = new EnumMap<>(Terms.class);
    private final Messages says;

    public TermsTexts(Chart chart, BookletOptions options, boolean draft) {
        says = options.says();
        for (Terms terms : options.telling().terms().inTurn()) {
            texts.put(terms, PatternWriter.write(chart, options.withTerms(terms).words(draft)));
        }
    }

    /**
     * A part, or as much of it as is told in one of the terms.
     *
     * @param terms empty for what holds in both
     */
    public record Told(Optional<Terms> terms, PatternPart part) {}

    /** The words in the first of the terms. */
    public PatternText first() {
        return texts.values().iterator().next();
    }

    /** The heading of a kind of part, if the pattern has one. */
    public Optional<String> heading(PatternPart.Kind kind) {
        return part(first(), kind).map(PatternPart::heading);
    }

    /** Parts of these kinds in the order of the words: first what holds in any terms, then the rest in each of them. */
    public List<Told> parts(Set<PatternPart.Kind> kinds) {
        boolean single = texts.size() == 1;
        List<Told> told = new ArrayList<>();
        for (PatternPart part : single ? termsInList(first().parts()) : first().parts()) {
            if (kinds.contains(part.kind())) {
                List<TextBlock> common = single || ONCE.contains(part.kind()) ? told(part) : common(part);
                add(told, Optional.empty(), part, common);
            }
        }
        if (!single) {
            texts.forEach((terms, text) -> {
                for (PatternPart part : text.parts()) {
                    if (kinds.contains(part.kind()) && !ONCE.contains(part.kind())) {
                        List<TextBlock> common = common(part);
                        List<TextBlock> own = part.blocks().stream()
                                .filter(block -> !common.contains(block))
                                .toList();
                        add(told, Optional.of(terms), part, own);
                    }
                }
            });
        }
        return told;
    }

    /** The parts of words in one of the terms: which they are stands over the abbreviations, under no heading of its own. */
    private static List<PatternPart> termsInList(List<PatternPart> parts) {
        List<PatternPart> told = new ArrayList<>();
        List<TextBlock> which = new ArrayList<>();
        for (PatternPart part : parts) {
            if (part.kind() == PatternPart.Kind.TERMS) {
                which.addAll(part.blocks());
            } else if (part.kind() == PatternPart.Kind.ABBREVIATIONS) {
                List<TextBlock> blocks = new ArrayList<>(which);
                blocks.addAll(part.blocks());
                told.add(new PatternPart(part.kind(), part.heading(), blocks));
            } else {
                told.add(part);
            }
        }
        return told;
    }

    /** The blocks of a part that stands once; a technique has a figure, and steps in as many terms as they differ in. */
    private List<TextBlock> told(PatternPart part) {
        if (texts.size() == 1 || part.kind() != PatternPart.Kind.TECHNIQUES) {
            return part.blocks();
        }
        List<List<ToldTechnique>> all = texts.values().stream()
                .map(text -> part(text, part.kind()).orElseThrow().blocks().stream()
                        .map(TextBlock.Technique.class::cast)
                        .map(TextBlock.Technique::told)
                        .toList())
                .toList();
        return IntStream.range(0, all.get(0).size())
                .mapToObj(i -> new TextBlock.Technique(
                        inBoth(all.get(0).get(i), all.get(1).get(i))))
                .map(TextBlock.class::cast)
                .toList();
    }

    private ToldTechnique inBoth(ToldTechnique one, ToldTechnique other) {
        String title = one.title().equals(other.title())
                ? one.title()
                : says.text("both-title", arg("one", one.title()), arg("other", other.title()));
        List<String> steps = IntStream.range(0, one.steps().size())
                .mapToObj(i -> inBoth(one.steps().get(i), other.steps().get(i)))
                .toList();
        return new ToldTechnique(one.shown(), title, inBoth(one.alternative(), other.alternative()), steps);
    }

    private String inBoth(String one, String other) {
        List<Terms> terms = List.copyOf(texts.keySet());
        return one.equals(other)
                ? one
                : says.text(
                        "both-step",
                        arg("first", says.text("terms-" + terms.get(0))),
                        arg("one", one),
                        arg("second", says.text("terms-" + terms.get(1))),
                        arg("other", other));
    }

    private static void add(List<Told> told, Optional<Terms> terms, PatternPart part, List<TextBlock> blocks) {
        if (!blocks.isEmpty()) {
            told.add(new Told(terms, new PatternPart(part.kind(), part.heading(), blocks)));
        }
    }

    /** The blocks that are alike in all terms; of a part with rounds all or none of these. */
    private List<TextBlock> common(PatternPart part) {
        List<TextBlock> common = part.blocks().stream()
                .filter(block -> texts.values().stream()
                        .allMatch(text -> part(text, part.kind())
                                .map(other -> other.blocks().contains(block))
                                .orElse(false)))
                .toList();
        List<TextBlock> rounds = part.blocks().stream()
                .filter(block -> !(block instanceof TextBlock.Prose || block instanceof TextBlock.Entry))
                .toList();
        return common.containsAll(rounds)
                ? common
                : common.stream().filter(block -> !rounds.contains(block)).toList();
    }

    private static Optional<PatternPart> part(PatternText text, PatternPart.Kind kind) {
        return text.parts().stream().filter(part -> part.kind() == kind).findFirst();
    }
}
