package edgewright.booklet.parts;

import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;

/** Which of the published advice for readers with low vision the large print edition meets, as that advice asks to be told. */
public final class LargePrintNotes {
    private LargePrintNotes() {}

    public static List<ColumnSlice> set(TextSetter setter, Tag parent, Anchor anchor) {
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        List<String> notes = notes(setter.says());
        for (int i = 0; i < notes.size(); i++) {
            List<ColumnSlice> lines = new ArrayList<>(setter.paragraph(parent, notes.get(i)));
            if (i > 0) {
                lines.set(0, lines.get(0).spaced(setter.betweenPt()));
            }
            strips.addAll(lines);
        }
        return strips;
    }

    private static List<String> notes(Messages says) {
        return List.of(
                says.text("large-type"),
                says.text("large-lines"),
                says.text("large-words"),
                says.text("large-running"),
                says.text("large-links"),
                says.text("large-chart"));
    }
}
