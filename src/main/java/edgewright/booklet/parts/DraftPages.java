package edgewright.booklet.parts;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.LabelledEntries;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyles;
import edgewright.check.Finding;
import edgewright.check.FindingSentences;
import edgewright.check.Severity;
import edgewright.check.Verdict;
import edgewright.draw.marks.Emphasis;
import edgewright.texts.Language;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What is wrong with a draft: every finding with its sentence, numbered as it is ringed in the chart. */
public final class DraftPages {
    /** So many findings are listed and ringed; of more, only their number is given. */
    private static final int MOST_LISTED = 200;

    private final List<Finding> listed;
    private final int all;
    private final Language language;

    public DraftPages(Verdict verdict, Language language) {
        this.language = language;
        all = verdict.count().all();
        listed = Stream.concat(
                        verdict.errors().stream(),
                        verdict.findings().stream().filter(f -> f.severity() != Severity.ERROR))
                .limit(MOST_LISTED)
                .toList();
    }

    /** Rings in the chart, with the numbers of the list. */
    public Emphasis emphasis() {
        return Emphasis.of(listed);
    }

    public List<ColumnSlice> set(TextSetter setter, Tag parent, Anchor anchor) {
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        strips.addAll(setter.paragraph(parent, setter.says().text("draft-why")));
        LabelledEntries entries = new LabelledEntries(setter);
        FindingSentences sentences = new FindingSentences(language);
        TextStyles styles = setter.styles();
        Tag list = parent.child(StructureRole.LIST);
        for (int i = 0; i < listed.size(); i++) {
            Finding finding = listed.get(i);
            Tag item = list.child(StructureRole.ITEM);
            String label = setter.says().text("finding-" + finding.severity(), number("finding", i + 1));
            List<ColumnSlice> entry = new ArrayList<>(entries.entry(
                    item.child(StructureRole.LABEL),
                    label,
                    styles.strong(),
                    List.of(),
                    0,
                    List.of(new LabelledEntries.Line(
                            item.child(StructureRole.BODY),
                            setter.says()
                                    .text(
                                            "draft-line",
                                            arg("place", sentences.of(finding.place())),
                                            arg("finding", sentences.of(finding))),
                            styles.text(),
                            false))));
            entry.set(0, entry.get(0).spaced(setter.sheet().halfLinePt()));
            strips.addAll(entry);
        }
        if (listed.size() < all) {
            List<ColumnSlice> more = new ArrayList<>(setter.paragraph(
                    parent, setter.says().text("draft-more", count("findings", all - listed.size()))));
            more.set(0, more.get(0).spaced(setter.sheet().halfLinePt()));
            strips.addAll(more);
        }
        return strips;
    }
}
