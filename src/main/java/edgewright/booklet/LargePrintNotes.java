package edgewright.booklet;

import java.util.ArrayList;
import java.util.List;

/** Which of the published advice for readers with low vision the large print edition meets, as that advice asks to be told. */
final class LargePrintNotes {
    private static final List<String> NOTES =
            List.of("large.type", "large.lines", "large.words", "large.running", "large.links", "large.chart");

    private LargePrintNotes() {}

    static List<Strip> set(TextSetter setter, Tag parent, Anchor anchor) {
        List<Strip> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        for (String note : NOTES) {
            List<Strip> lines = new ArrayList<>(setter.paragraph(parent, Texts.of(note)));
            if (!note.equals(NOTES.get(0))) {
                lines.set(0, lines.get(0).spaced(setter.betweenPt()));
            }
            strips.addAll(lines);
        }
        return strips;
    }
}
