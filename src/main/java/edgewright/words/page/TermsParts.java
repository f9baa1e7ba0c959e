package edgewright.words.page;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Terms;
import edgewright.texts.Messages;
import edgewright.words.technique.ToldTechnique;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The words of a pattern in one of the terms or in both. In both, what has no terms in it stands once: parts that say the same
 * in any terms, and paragraphs and entries that came out alike. Rounds are never taken apart.
 */
public final class TermsParts {
    /** What says the same in any terms, but for a word. */
    private static final Set<PatternPart.Kind> ONCE = EnumSet.of(
            PatternPart.Kind.NEEDS,
            PatternPart.Kind.DESIGNER_NOTES,
            PatternPart.Kind.COUNTS,
            PatternPart.Kind.TECHNIQUES,
            PatternPart.Kind.FINISHING);

    private final Map<Terms, TermsVersion> versions = new EnumMap<>(Terms.class);
    private final Messages says;

    /** @param all of one chart, each in other terms; at least one */
    public TermsParts(List<TermsVersion> all) {
        all.forEach(version -> versions.put(version.terms(), version));
        says = all.get(0).language().messages("words/page");
    }

    /** What holds in all terms, in the order of the words. */
    public List<PatternPart> common() {
        boolean single = versions.size() == 1;
        List<PatternPart> told = new ArrayList<>();
        for (PatternPart part : first().parts()) {
            List<TextBlock> common = single || ONCE.contains(part.kind()) ? told(part) : common(part);
            add(told, part, common);
        }
        return told;
    }

    /** What is told in these terms alone; nothing where there are no others. */
    public List<PatternPart> only(Terms terms) {
        List<PatternPart> told = new ArrayList<>();
        if (versions.size() > 1) {
            for (PatternPart part : versions.get(terms).words().parts()) {
                if (!ONCE.contains(part.kind())) {
                    List<TextBlock> common = common(part);
                    add(
                            told,
                            part,
                            part.blocks().stream()
                                    .filter(block -> !common.contains(block))
                                    .toList());
                }
            }
        }
        return told;
    }

    /** What holds in all terms and comes before the rounds, but for the title and what else heads the first version. */
    List<PatternPart> before() {
        return common().stream()
                .filter(part ->
                        part.kind() != PatternPart.Kind.HEADING && part.kind().compareTo(PatternPart.Kind.ROUNDS) < 0)
                .toList();
    }

    /** What holds in all terms and comes after the rounds began. */
    List<PatternPart> after() {
        return common().stream()
                .filter(part -> part.kind().compareTo(PatternPart.Kind.ROUNDS) >= 0)
                .toList();
    }

    /** The names of two versions as one heading. */
    String name() {
        List<TermsVersion> both = List.copyOf(versions.values());
        return says.text(
                "both-terms",
                arg("one", both.get(0).name()),
                arg("other", both.get(1).name()));
    }

    /** What each of several versions says in its terms alone, below the heading of its terms. */
    List<TermsVersion> apart() {
        return versions.values().stream()
                .map(version -> new TermsVersion(
                        version.language(),
                        version.terms(),
                        new PatternText(Stream.concat(
                                        Stream.of(version.heading()),
                                        only(version.terms()).stream()
                                                .filter(part -> part.kind() != PatternPart.Kind.HEADING))
                                .toList())))
                .toList();
    }

    private PatternText first() {
        return versions.values().iterator().next().words();
    }

    private static void add(List<PatternPart> told, PatternPart part, List<TextBlock> blocks) {
        if (!blocks.isEmpty()) {
            told.add(new PatternPart(part.kind(), part.heading(), blocks));
        }
    }

    /** The blocks of a part that stands once; a technique has a figure, and steps in as many terms as they differ in. */
    private List<TextBlock> told(PatternPart part) {
        if (versions.size() == 1 || part.kind() != PatternPart.Kind.TECHNIQUES) {
            return part.blocks();
        }
        List<List<ToldTechnique>> all = versions.values().stream()
                .map(version -> part(version.words(), part.kind()).orElseThrow().blocks().stream()
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
        List<TermsVersion> both = List.copyOf(versions.values());
        return one.equals(other)
                ? one
                : says.text(
                        "both-step",
                        arg("first", both.get(0).name()),
                        arg("one", one),
                        arg("second", both.get(1).name()),
                        arg("other", other));
    }

    /** The blocks that are alike in all terms; of a part with rounds all or none of these. */
    private List<TextBlock> common(PatternPart part) {
        List<TextBlock> common = part.blocks().stream()
                .filter(block -> versions.values().stream()
                        .allMatch(version -> part(version.words(), part.kind())
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
