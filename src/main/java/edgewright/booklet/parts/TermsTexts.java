package edgewright.booklet.parts;

import edgewright.booklet.choice.BookletOptions;
import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.page.TextBlock;
import edgewright.words.write.PatternWriter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The words of a pattern in one of the terms or in both. In both, what has no terms in it stands once: parts that say the same
 * in any terms, and paragraphs and entries that came out alike. Rounds are never taken apart.
 */
public final class TermsTexts {
    /** What says the same in any terms, but for a word. */
    private static final Set<PatternPart.Kind> ONCE =
            EnumSet.of(PatternPart.Kind.NEEDS, PatternPart.Kind.DESIGNER_NOTES, PatternPart.Kind.COUNTS);

    private final Map<Terms, PatternText> texts = new EnumMap<>(Terms.class);

    public TermsTexts(Chart chart, BookletOptions options, boolean draft) {
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
        for (PatternPart part : first().parts()) {
            if (kinds.contains(part.kind())) {
                List<TextBlock> common = single || ONCE.contains(part.kind()) ? part.blocks() : common(part);
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
