package edgewright.booklet;

import edgewright.chart.Colour;
import edgewright.draw.Area;
import edgewright.draw.Mark;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;

/** Prints the things of one page. */
final class PagePrinter {
    private final PDPageContentStream content;
    private final Sheet sheet;
    private final Type type;
    private final Edition edition;
    private final Stamps stamps;
    private final Map<Anchor, Integer> pageOf;

    /**
     * @param stamps of the whole document
     * @param pageOf the pages on which anchors came to stand, counted from 1
     */
    PagePrinter(
            PDPageContentStream content,
            Sheet sheet,
            Type type,
            Edition edition,
            Stamps stamps,
            Map<Anchor, Integer> pageOf) {
        this.content = content;
        this.sheet = sheet;
        this.type = type;
        this.edition = edition;
        this.stamps = stamps;
        this.pageOf = pageOf;
    }

    /** Prints one thing; a link has nothing that is seen. */
    void print(Ink ink) throws IOException {
        if (ink instanceof Ink.Words words) {
            show(words);
        } else if (ink instanceof Ink.PageOf of) {
            String number = Integer.toString(pageOf.get(of.anchor()));
            double before = of.flushRight() ? of.face().widthPt(number, of.sizePt()) : 0;
            show(new Ink.Words(of.edgePt() - before, of.baselinePt(), number, of.face(), of.sizePt(), Tone.INK));
        } else if (ink instanceof Ink.Box box) {
            draw(box);
        } else if (ink instanceof Ink.Art art) {
            draw(art);
        }
    }

    private void show(Ink.Words words) throws IOException {
        content.beginText();
        fill(words.colour());
        content.setFont(words.face().font(), (float) words.sizePt());
        content.newLineAtOffset((float) (sheet.leftPt() + words.xPt()), (float) sheet.up(words.baselinePt()));
        content.showText(words.text());
        content.endText();
    }

    private void draw(Ink.Box box) throws IOException {
        PDRectangle r = sheet.rectangle(box.xPt(), box.yPt(), box.widthPt(), box.heightPt());
        if (box.fill().isPresent()) {
            fill(box.fill().get());
            content.addRect(r.getLowerLeftX(), r.getLowerLeftY(), r.getWidth(), r.getHeight());
            content.fill();
        }
        if (box.outline().isPresent()) {
            Colour colour = Tone.printed(box.outline().get(), edition);
            content.setStrokingColor(colour.red() / 255f, colour.green() / 255f, colour.blue() / 255f);
            content.setLineWidth((float) box.linePt());
            content.addRect(r.getLowerLeftX(), r.getLowerLeftY(), r.getWidth(), r.getHeight());
            content.stroke();
        }
    }

    private void draw(Ink.Art art) throws IOException {
        PDRectangle window = sheet.rectangle(art.xPt(), art.yPt(), art.widthPt(), art.heightPt());
        float ptPerMm = (float) (art.scale() * Sheet.PT_PER_MM);
        content.saveGraphicsState();
        content.addRect(window.getLowerLeftX(), window.getLowerLeftY(), window.getWidth(), window.getHeight());
        content.clip();
        content.transform(
                new Matrix(ptPerMm, 0, 0, -ptPerMm, (float) (window.getLowerLeftX() - art.fromXMm() * ptPerMm), (float)
                        (window.getUpperRightY() + art.fromYMm() * ptPerMm)));
        Area shown = new Area(art.fromXMm(), art.fromYMm(), art.widthPt() / ptPerMm, art.heightPt() / ptPerMm);
        List<Mark> marks = art.drawing().get().marks().stream()
                .filter(mark -> mark.bounds().touches(shown))
                .toList();
        new MarkPrinter(content, type, stamps).print(marks);
        content.restoreGraphicsState();
    }

    private void fill(Colour asked) throws IOException {
        Colour colour = Tone.printed(asked, edition);
        content.setNonStrokingColor(colour.red() / 255f, colour.green() / 255f, colour.blue() / 255f);
    }
}
