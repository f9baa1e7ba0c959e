package edgewright.booklet;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletPart;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.matter.OwnPages;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.parts.CountsPages;
import edgewright.booklet.parts.LargePrintNotes;
import edgewright.booklet.parts.PartPages;
import edgewright.booklet.parts.TermsTexts;
import edgewright.booklet.parts.TermsTexts.Told;
import edgewright.booklet.sheets.ChartLinks;
import edgewright.booklet.technique.TechniquePages;
import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.texts.Messages;
import edgewright.words.page.PatternPart;
import edgewright.words.page.TextBlock;
import edgewright.words.technique.ToldTechnique;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a pattern says in words, as strips: part by part, and in both terms what depends on them twice. */
final class ToldPages {
    private final TextSetter setter;
    private final Messages says;
    private final Chart chart;
    private final BookletOptions options;
    private final List<BookletPart> order;
    private final Tag root;
    private final ChartLinks links;
    private final TermsTexts texts;
    private final OwnPages own;
    /** One for each part, also where it is set twice to stand in one of two places: the list of contents knows no other. */
    private final Map<Told, Anchor> anchors = new HashMap<>();

    ToldPages(
            TextSetter setter,
            Chart chart,
            BookletOptions options,
            Tag root,
            ChartLinks links,
            TermsTexts texts,
            OwnPages own) {
        this.setter = setter;
        this.says = setter.says();
        this.chart = chart;
        this.options = options;
        this.order = options.inOrder();
        this.root = root;
        this.links = links;
        this.texts = texts;
        this.own = own;
    }

    /** Tells the chart which headings its rounds in words stand under; where no rounds are told, nothing. */
    void announceRounds() {
        texts.heading(PatternPart.Kind.ROUNDS)
                .ifPresent(heading -> options.telling()
                        .terms()
                        .inTurn()
                        .forEach(terms -> links.announce(terms, headed(heading, Optional.of(terms)))));
    }

    /** The parts of the words of these kinds. */
    List<ColumnSlice> words(Set<PatternPart.Kind> kinds, TextSetter by) {
        List<ColumnSlice> strips = new ArrayList<>();
        Map<Terms, Tag> toldIn = new EnumMap<>(Terms.class);
        for (Told told : texts.parts(kinds)) {
            Tag parent = told.terms()
                    .map(terms -> toldIn.computeIfAbsent(
                            terms, each -> root.child(StructureRole.SECTION).inLanguage(options.languageTag(each))))
                    .orElse(root);
            strips.addAll(part(parent.child(StructureRole.SECTION), told, by));
        }
        return strips;
    }

    private List<ColumnSlice> part(Tag section, Told told, TextSetter by) {
        PatternPart part = told.part();
        boolean rounds = part.kind() == PatternPart.Kind.ROUNDS;
        boolean opening = part.kind() == PatternPart.Kind.TERMS;
        String title = told.terms().isPresent() && opening
                ? says.text("terms-" + told.terms().get())
                : headed(part.heading(), told.terms());
        Anchor anchor = rounds
                ? links.rounds(told.terms().orElse(options.terms()))
                : anchors.computeIfAbsent(told, each -> new Anchor(title, 1));
        if (part.kind() == PatternPart.Kind.TECHNIQUES) {
            return new TechniquePages(by, options).set(section, anchor, techniques(part));
        }
        List<ColumnSlice> strips = new ArrayList<>(PartPages.set(
                by,
                chart,
                part,
                section,
                heading -> rounds && order.contains(BookletPart.CHART) ? links.toChart(heading, section) : heading,
                anchor));
        strips.addAll(own.beside(part.kind(), section, by));
        if (part.kind() == PatternPart.Kind.NOTES
                && options.edition() == Edition.LARGE_PRINT
                && told.terms().isEmpty()) {
            strips.addAll(LargePrintNotes.set(
                    by, root.child(StructureRole.SECTION), new Anchor(says.text("large-heading"), 1)));
        }
        return strips;
    }

    /** The table of counts, for any size or for those of the pattern. */
    List<ColumnSlice> counts() {
        Set<PatternPart.Kind> kind = EnumSet.of(PatternPart.Kind.COUNTS);
        if (!options.sizes().isEmpty()) {
            return words(kind, setter);
        }
        Tag section = root.child(StructureRole.SECTION);
        List<ColumnSlice> strips = new ArrayList<>();
        texts.heading(PatternPart.Kind.COUNTS).ifPresent(heading -> {
            strips.addAll(setter.partHeading(section, new Anchor(heading, 1)));
            strips.addAll(CountsPages.set(setter, chart, options.counting(), section));
        });
        return strips;
    }

    private static List<ToldTechnique> techniques(PatternPart part) {
        return part.blocks().stream()
                .map(TextBlock.Technique.class::cast)
                .map(TextBlock.Technique::told)
                .toList();
    }

    /** A heading of what is told in one of two terms. */
    private String headed(String heading, Optional<Terms> terms) {
        return options.telling().terms().inTurn().size() > 1 && terms.isPresent()
                ? says.text("both-heading", arg("heading", heading), arg("terms", says.text("terms-" + terms.get())))
                : heading;
    }
}
