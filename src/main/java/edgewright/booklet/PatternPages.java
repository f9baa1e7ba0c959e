package edgewright.booklet;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.maker.GuidePages;
import edgewright.booklet.maker.WorksheetPages;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.parts.ContentsPage;
import edgewright.booklet.parts.CountsPages;
import edgewright.booklet.parts.Cover;
import edgewright.booklet.parts.CoverFacts;
import edgewright.booklet.parts.DraftPages;
import edgewright.booklet.parts.LargePrintNotes;
import edgewright.booklet.parts.PartPages;
import edgewright.booklet.parts.ProvedPages;
import edgewright.booklet.parts.YarnPages;
import edgewright.booklet.sheets.ChartLinks;
import edgewright.booklet.sheets.ChartSheets;
import edgewright.booklet.sheets.CoverPicture;
import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.check.Verdict;
import edgewright.draw.marks.Emphasis;
import edgewright.texts.Messages;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.write.PatternWriter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A whole pattern as strips, in the order in which it is read: first page, contents, findings of a draft, what is needed and
 * how the words are meant, the chart, the rounds in words, finishing, for which sizes the words were worked back, counts, and
 * then the extras: the round guide and the worksheet. In large print the words come before the chart. In both terms, what
 * depends on them comes twice.
 */
public final class PatternPages {
    /** What says the same in any terms, and so is printed once. */
    private static final Set<PatternPart.Kind> ONCE =
            EnumSet.of(PatternPart.Kind.NEEDS, PatternPart.Kind.DESIGNER_NOTES, PatternPart.Kind.COUNTS);

    private final TextSetter setter;
    private final Messages says;
    private final Chart chart;
    private final BookletOptions options;
    private final Verdict verdict;
    private final boolean draft;
    private final Progress progress;
    private final Tag root = Tag.document();
    private final ChartLinks links;
    private final List<ColumnSlice> body = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();

    public PatternPages(TextSetter setter, Chart chart, BookletOptions options, Verdict verdict, Progress progress) {
        this.setter = setter;
        this.says = setter.says();
        this.chart = chart;
        this.options = options;
        this.verdict = verdict;
        this.draft = verdict.hasErrors();
        this.progress = progress;
        this.links = new ChartLinks(setter);
    }

    /**
     * All strips.
     *
     * @throws java.util.concurrent.CancellationException if it is not to go on
     */
    public List<ColumnSlice> strips() {
        PatternText words = PatternWriter.write(chart, options.words(draft));
        DraftPages findings = new DraftPages(verdict, options.language());
        announceRounds(words);
        if (draft) {
            body.addAll(findings.set(setter, section(root), new Anchor(says.text("draft-heading"), 1)));
        }
        if (options.telling().terms().inTurn().size() > 1) {
            inBothTerms(words, findings);
        } else {
            told(root, options, words, findings);
        }
        if (options.supplements().worksheet()) {
            body.addAll(new WorksheetPages(setter, chart, options)
                    .set(section(root), new Anchor(says.text("worksheet-heading"), 1)));
        }
        return withFirstPages(words);
    }

    /** What stands against the words of the strips that were set, a sentence each; none if they make the chart. */
    List<String> problems() {
        return List.copyOf(problems);
    }

    /** The chart leads to rounds that are yet to come. */
    private void announceRounds(PatternText words) {
        for (PatternPart part : words.parts()) {
            if (part.kind() == PatternPart.Kind.ROUNDS) {
                for (Terms terms : options.telling().terms().inTurn()) {
                    links.announce(terms, headed(part.heading(), terms));
                }
            }
        }
    }

    /** The pattern in one of the terms: everything in its place. */
    private void told(Tag parent, BookletOptions in, PatternText words, DraftPages findings) {
        boolean chartLast = in.edition() == Edition.LARGE_PRINT;
        for (PatternPart part : inOrder(words)) {
            if (part.kind() == PatternPart.Kind.ROUNDS && !chartLast) {
                chart(findings);
            }
            if (part.kind() == PatternPart.Kind.COUNTS) {
                if (chartLast) {
                    chart(findings);
                }
                proved(parent, in);
            }
            part(parent, in, part, part.heading());
        }
        if (in.supplements().guide()) {
            guide(parent, in);
        }
    }

    /** First what is the same in both terms, then all that is not, once in each, and at last the counts. */
    private void inBothTerms(PatternText words, DraftPages findings) {
        boolean chartLast = options.edition() == Edition.LARGE_PRINT;
        List<PatternPart> parts = inOrder(words);
        parts.stream()
                .filter(part -> ONCE.contains(part.kind()) && part.kind() != PatternPart.Kind.COUNTS)
                .forEach(part -> part(root, options, part, part.heading()));
        if (!chartLast) {
            chart(findings);
        }
        for (Terms terms : options.telling().terms().inTurn()) {
            BookletOptions in = options.withTerms(terms);
            Tag told = section(root).inLanguage(options.languageTag(terms));
            String name = says.text("terms-" + terms);
            int first = body.size();
            for (PatternPart part : inOrder(PatternWriter.write(chart, in.words(draft)))) {
                if (!ONCE.contains(part.kind())) {
                    boolean opening = part.kind() == PatternPart.Kind.TERMS;
                    part(told, in, part, opening ? name : headed(part.heading(), terms));
                }
            }
            body.set(first, body.get(first).onNewPage(true));
            proved(told, in);
        }
        if (chartLast) {
            chart(findings);
        }
        parts.stream()
                .filter(part -> part.kind() == PatternPart.Kind.COUNTS)
                .forEach(part -> part(root, options, part, part.heading()));
        if (options.supplements().guide()) {
            for (Terms terms : options.telling().terms().inTurn()) {
                guide(section(root).inLanguage(options.languageTag(terms)), options.withTerms(terms));
            }
        }
    }

    /** The order of the words themselves. The heading is the first page. */
    private static List<PatternPart> inOrder(PatternText words) {
        return words.parts().stream()
                .filter(part -> part.kind() != PatternPart.Kind.HEADING)
                .toList();
    }

    /** The guide is an extra, to be worked from when the pattern has been read. */
    private void guide(Tag parent, BookletOptions in) {
        body.addAll(new GuidePages(setter, chart, in).set(section(parent), anchor(says.text("guide-heading"), in)));
    }

    /** Cover and contents, which knows of everything that comes after it. */
    private List<ColumnSlice> withFirstPages(PatternText words) {
        List<Anchor> inside = new ArrayList<>();
        body.forEach(strip -> strip.anchor().ifPresent(inside::add));
        List<ColumnSlice> strips = new ArrayList<>(new Cover(setter, chart, root)
                .strips(
                        CoverPicture.of(chart, options),
                        new CoverFacts(chart, options, words, CoverPicture.repeatsShown(chart, options))));
        List<ColumnSlice> contents = new ArrayList<>(
                new ContentsPage(setter).set(section(root), new Anchor(says.text("contents-heading"), 1), inside));
        contents.set(0, contents.get(0).onNewPage(!setter.sheet().oneColumn()));
        strips.addAll(contents);
        strips.addAll(body);
        return strips;
    }

    private void chart(DraftPages findings) {
        progress.requireGoOn();
        body.addAll(new ChartSheets(setter, chart, options, draft ? findings.emphasis() : Emphasis.NONE)
                .set(section(root), links));
    }

    private void proved(Tag parent, BookletOptions in) {
        if (!draft) {
            ProvedPages proved = new ProvedPages(setter, chart, in, progress);
            body.addAll(proved.set(section(parent), anchor(says.text("proved-heading"), in)));
            problems.addAll(proved.problems());
        }
    }

    private void part(Tag parent, BookletOptions in, PatternPart part, String title) {
        progress.requireGoOn();
        Tag section = section(parent);
        boolean rounds = part.kind() == PatternPart.Kind.ROUNDS;
        Anchor anchor = rounds ? links.rounds(in.terms()) : new Anchor(title, 1);
        List<ColumnSlice> strips;
        if (part.kind() == PatternPart.Kind.COUNTS && in.sizes().isEmpty()) {
            strips = new ArrayList<>(setter.partHeading(section, anchor));
            strips.addAll(CountsPages.set(setter, chart, in.counting(), section));
        } else {
            strips = new ArrayList<>(PartPages.set(
                    setter,
                    chart,
                    part,
                    section,
                    heading -> rounds ? links.toChart(heading, section) : heading,
                    anchor));
        }
        if (rounds) {
            strips.set(0, strips.get(0).onNewPage(true));
        }
        body.addAll(strips);
        if (part.kind() == PatternPart.Kind.NOTES && in.edition() == Edition.LARGE_PRINT) {
            body.addAll(LargePrintNotes.set(setter, section(parent), anchor(says.text("large-heading"), in)));
        }
        yarn(part.kind());
    }

    /** How much yarn stands after what is needed, and round by round after the counts. */
    private void yarn(PatternPart.Kind after) {
        if (!options.supplements().yarn()) {
            return;
        }
        YarnPages yarn = new YarnPages(setter, chart, options);
        switch (after) {
            case NEEDS -> body.addAll(yarn.needs(section(root), new Anchor(says.text("yarn-needs-heading"), 1)));
            case COUNTS -> body.addAll(yarn.rounds(section(root), new Anchor(says.text("yarn-rounds-heading"), 1)));
            default -> {}
        }
    }

    /** A heading of the booklet's own, with the terms where there are two. */
    private Anchor anchor(String heading, BookletOptions in) {
        return new Anchor(headed(heading, in.terms()), 1);
    }

    private String headed(String heading, Terms terms) {
        return options.telling().terms() == PrintedTerms.BOTH
                ? says.text("both-heading", arg("heading", heading), arg("terms", says.text("terms-" + terms)))
                : heading;
    }

    private static Tag section(Tag parent) {
        return parent.child(StructureRole.SECTION);
    }
}
