package edgewright.booklet;

import edgewright.chart.Chart;
import edgewright.check.Verdict;
import edgewright.draw.Emphasis;
import edgewright.words.Block;
import edgewright.words.Part;
import edgewright.words.PatternWriter;
import edgewright.words.WrittenPattern;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/**
 * A whole pattern as strips, in the order in which it is read: first page, findings of a draft, what is needed and how the
 * words are meant, the chart, the rounds in words, the round guide, finishing, for which sizes the words were worked back, counts, the
 * worksheet.
 */
final class PatternPages {
    private final TextSetter setter;
    private final Chart chart;
    private final BookletOptions options;
    private final Verdict verdict;
    private final boolean draft;
    private final Tag root = Tag.document();

    PatternPages(TextSetter setter, Chart chart, BookletOptions options, Verdict verdict) {
        this.setter = setter;
        this.chart = chart;
        this.options = options;
        this.verdict = verdict;
        this.draft = verdict.hasErrors();
    }

    List<Strip> strips() {
        WrittenPattern words = PatternWriter.write(chart, options.words(draft));
        DraftPages findings = new DraftPages(verdict);
        List<Anchor> inside = new ArrayList<>();
        List<Strip> body = new ArrayList<>();
        if (draft) {
            body.addAll(findings.set(
                    setter, root.child(StandardStructureTypes.SECT), anchor(inside, Texts.of("draft.heading"))));
        }
        for (Part part : inOrder(words)) {
            if (part.kind() == Part.Kind.ROUNDS) {
                body.addAll(chart(findings, inside));
            }
            if (part.kind() == Part.Kind.COUNTS && !draft) {
                body.addAll(new ProvedPages(setter, chart, options)
                        .set(root.child(StandardStructureTypes.SECT), anchor(inside, Texts.of("proved.heading"))));
            }
            body.addAll(part(part, inside));
            body.addAll(yarn(part.kind(), inside));
            if (part.kind() == Part.Kind.ROUNDS && options.supplements().guide()) {
                body.addAll(new GuidePages(setter, chart, options)
                        .set(root.child(StandardStructureTypes.SECT), anchor(inside, Texts.of("guide.heading"))));
            }
        }
        if (options.supplements().worksheet()) {
            body.addAll(new WorksheetPages(setter, chart, options)
                    .set(root.child(StandardStructureTypes.SECT), anchor(inside, Texts.of("worksheet.heading"))));
        }
        body.set(0, body.get(0).onNewPage(true));
        List<Strip> strips = new ArrayList<>(cover(words, inside));
        strips.addAll(body);
        return strips;
    }

    /** The counts come last: they are looked up, not read. The heading is the first page. */
    private static List<Part> inOrder(WrittenPattern words) {
        List<Part> parts = new ArrayList<>();
        List<Part> last = new ArrayList<>();
        for (Part part : words.parts()) {
            switch (part.kind()) {
                case HEADING -> {}
                case COUNTS -> last.add(part);
                default -> parts.add(part);
            }
        }
        parts.addAll(last);
        return parts;
    }

    private List<Strip> cover(WrittenPattern words, List<Anchor> inside) {
        String title = chart.title().isBlank() ? Texts.of("untitled") : chart.title();
        return new Cover(setter, chart, root).strips(title, CoverPicture.of(chart, options), facts(words), inside);
    }

    private List<Strip> chart(DraftPages findings, List<Anchor> inside) {
        Anchor anchor = anchor(inside, Texts.of("chart.heading"));
        return new ChartSheets(setter, chart, options, draft ? findings.emphasis() : Emphasis.NONE)
                .set(root.child(StandardStructureTypes.SECT), anchor);
    }

    private List<Strip> part(Part part, List<Anchor> inside) {
        Tag section = root.child(StandardStructureTypes.SECT);
        Anchor anchor = anchor(inside, part.heading());
        List<Strip> strips;
        if (part.kind() == Part.Kind.COUNTS && options.repeats().isEmpty()) {
            strips = new ArrayList<>(setter.partHeading(section, anchor));
            strips.addAll(CountsPages.set(setter, chart, options.counting(), section));
        } else {
            strips = new ArrayList<>(PartPages.set(setter, chart, part, section, anchor));
        }
        if (part.kind() == Part.Kind.ROUNDS) {
            strips.set(0, strips.get(0).onNewPage(true));
        }
        return strips;
    }

    /** How much yarn stands after what is needed, and round by round after the counts. */
    private List<Strip> yarn(Part.Kind after, List<Anchor> inside) {
        if (!options.supplements().yarn()) {
            return List.of();
        }
        YarnPages yarn = new YarnPages(setter, chart, options);
        return switch (after) {
            case NEEDS ->
                yarn.needs(root.child(StandardStructureTypes.SECT), anchor(inside, Texts.of("yarn.needs.heading")));
            case COUNTS ->
                yarn.rounds(root.child(StandardStructureTypes.SECT), anchor(inside, Texts.of("yarn.rounds.heading")));
            default -> List.of();
        };
    }

    /** Label and text in turn. */
    private List<String> facts(WrittenPattern words) {
        List<String> facts = new ArrayList<>();
        facts.add(Texts.of("cover.terms"));
        facts.add(Texts.of("cover.terms." + options.terms()));
        String base = baseRound(words);
        int end = PartPages.endOfName(base, "");
        facts.add(base.substring(0, end).strip().replaceAll("\\.$", ""));
        facts.add(base.substring(end).strip());
        facts.add(Texts.of("cover.rounds"));
        facts.add(Integer.toString(chart.rounds().size()));
        return facts;
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

    private static Anchor anchor(List<Anchor> inside, String title) {
        Anchor anchor = new Anchor(title, 1);
        inside.add(anchor);
        return anchor;
    }
}
