package edgewright.booklet.matter;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.own.Photograph;
import edgewright.booklet.own.PrintedImprint;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.chart.Imprint;
import edgewright.texts.Messages;
import edgewright.words.own.OwnText;
import java.util.ArrayList;
import java.util.List;

/** Sets an imprint: the logo, then who publishes, how to reach them, whose the pattern is and what buyers may do. */
final class ImprintSetter {
    private static final double LOGO_LINES = 3;

    private final TextSetter setter;
    private final Messages says;
    private final PhotoSetter pictures;
    private final OwnTextSetter texts;

    ImprintSetter(TextSetter setter, PhotoSetter pictures) {
        this.setter = setter;
        this.says = setter.says();
        this.pictures = pictures;
        this.texts = new OwnTextSetter(setter);
    }

    List<ColumnSlice> set(Tag parent, PrintedImprint printed) {
        Imprint imprint = printed.imprint();
        List<ColumnSlice> strips = new ArrayList<>();
        printed.logo().ifPresent(logo -> strips.add(logo(parent, imprint.name(), logo)));
        Tag list = parent.child(StructureRole.LIST);
        new ImprintTexts(says).of(imprint).forEach(text -> add(strips, list, text.label(), text.text()));
        return strips;
    }

    private ColumnSlice logo(Tag parent, String name, Photograph logo) {
        double width = pictures.widthPt(
                logo, setter.sheet().textPt() / 2, LOGO_LINES * setter.sheet().linePt());
        ColumnSlice figure = pictures.figure(
                parent.figure(says.text("own-logo", arg("name", name))),
                logo,
                setter.sheet().labelPt(),
                width);
        return ColumnSlice.of(figure.heightPt() + setter.sheet().halfLinePt(), figure.pieces())
                .breaking(Break.NEVER);
    }

    private void add(List<ColumnSlice> strips, Tag list, String label, OwnText text) {
        List<ColumnSlice> entry = texts.labelled(list.child(StructureRole.ITEM), label, text);
        strips.addAll(
                setter.sheet().oneColumn() && !strips.isEmpty()
                        ? OwnTextSetter.spaced(entry, setter.sheet().linePt())
                        : entry);
    }
}
