package edgewright.booklet;

import edgewright.check.Finding;
import edgewright.check.Sentences;
import edgewright.check.Severity;
import edgewright.check.Verdict;
import edgewright.draw.Emphasis;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** What is wrong with a draft: every finding with its sentence, numbered as it is ringed in the chart. */
final class DraftPages {
    /** So many findings are listed and ringed; of more, only their number is given. */
    private static final int MOST_LISTED = 200;

    private final List<Finding> listed;
    private final int all;

    DraftPages(Verdict verdict) {
        List<Finding> errorsFirst = Stream.concat(
                        verdict.findings().stream().filter(f -> f.severity() == Severity.ERROR),
                        verdict.findings().stream().filter(f -> f.severity() != Severity.ERROR))
                .toList();
        all = errorsFirst.size();
        listed = errorsFirst.subList(0, Math.min(all, MOST_LISTED));
    }

    /** Rings in the chart, with the numbers of the list. */
    Emphasis emphasis() {
        return Emphasis.of(listed);
    }

    List<Strip> set(TextSetter setter, Tag parent, Anchor anchor) {
        List<Strip> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        strips.addAll(setter.paragraph(parent, Texts.of("draft.why")));
        Entries entries = new Entries(setter);
        Sentences sentences = Sentences.english();
        Styles styles = setter.styles();
        Tag list = parent.child(StandardStructureTypes.L);
        for (int i = 0; i < listed.size(); i++) {
            Finding finding = listed.get(i);
            Tag item = list.child(StandardStructureTypes.LI);
            String label = (i + 1) + " " + Texts.of("draft." + finding.severity());
            List<Strip> entry = new ArrayList<>(entries.entry(
                    item.child(StandardStructureTypes.LBL),
                    label,
                    styles.strong(),
                    List.of(),
                    0,
                    List.of(new Entries.Line(
                            item.child(StandardStructureTypes.L_BODY),
                            sentences.of(finding.where()) + ": " + sentences.of(finding),
                            styles.text(),
                            false))));
            entry.set(0, entry.get(0).spaced(setter.sheet().halfLinePt()));
            strips.addAll(entry);
        }
        if (listed.size() < all) {
            List<Strip> more = new ArrayList<>(setter.paragraph(parent, Texts.of("draft.more", all - listed.size())));
            more.set(0, more.get(0).spaced(setter.sheet().halfLinePt()));
            strips.addAll(more);
        }
        return strips;
    }
}
