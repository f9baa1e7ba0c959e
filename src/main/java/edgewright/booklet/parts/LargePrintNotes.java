package edgewright.booklet.parts;

import edgewright.booklet.choice.BookletTexts;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import java.util.ArrayList;
import java.util.List;

/** Which of the published advice for readers with low vision the large print edition meets, as that advice asks to be told. */
public final class LargePrintNotes {
    private static final List<String> NOTES =
            List.of("large.type", "large.lines", "large.words", "large.running", "large.links", "large.chart");

    private LargePrintNotes() {}

    public static List<ColumnSlice> set(TextSetter setter, Tag parent, Anchor anchor) {
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        for (String note : NOTES) {
            List<ColumnSlice> lines = new ArrayList<>(setter.paragraph(parent, BookletTexts.of(note)));
            if (!note.equals(NOTES.get(0))) {
                lines.set(0, lines.get(0).spaced(setter.betweenPt()));
            }
            strips.addAll(lines);
        }
        return strips;
    }
}
