package edgewright.booklet.parts;

import edgewright.booklet.choice.BookletOptions;
import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.page.TermsParts;
import edgewright.words.page.TermsVersion;
import edgewright.words.page.TextBlock;
import edgewright.words.write.PatternWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The words of a printed pattern in one of the terms or in both; in both, what has no terms in it stands once. */
public final class TermsTexts {
    private final List<TermsVersion> versions;
    private final TermsParts parts;

    public TermsTexts(Chart chart, BookletOptions options, boolean draft) {
        versions = options.telling().terms().inTurn().stream()
                .map(terms -> new TermsVersion(
                        options.language(),
                        terms,
                        PatternWriter.write(chart, options.withTerms(terms).words(draft))))
                .toList();
        parts = new TermsParts(versions);
    }

    /**
     * A part, or as much of it as is told in one of the terms.
     *
     * @param terms empty for what holds in both
     */
    public record Told(Optional<Terms> terms, PatternPart part) {}

    /** The words in the first of the terms. */
    public PatternText first() {
        return versions.get(0).words();
    }

    /** The heading of a kind of part, if the pattern has one. */
    public Optional<String> heading(PatternPart.Kind kind) {
        return first().parts().stream()
                .filter(part -> part.kind() == kind)
                .findFirst()
                .map(PatternPart::heading);
    }

    /** Parts of these kinds in the order of the words: first what holds in any terms, then the rest in each of them. */
    public List<Told> parts(Set<PatternPart.Kind> kinds) {
        List<Told> told = new ArrayList<>();
        List<PatternPart> common = parts.common();
        add(told, kinds, Optional.empty(), versions.size() == 1 ? termsInList(common) : common);
        versions.forEach(version -> add(told, kinds, Optional.of(version.terms()), parts.only(version.terms())));
        return told;
    }

    private static void add(
            List<Told> told, Set<PatternPart.Kind> kinds, Optional<Terms> terms, List<PatternPart> parts) {
        parts.stream().filter(part -> kinds.contains(part.kind())).forEach(part -> told.add(new Told(terms, part)));
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
}
