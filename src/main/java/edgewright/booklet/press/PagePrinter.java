package edgewright.booklet.press;

import edgewright.booklet.choice.Edition;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.PageColour;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.chart.Colour;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Area;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;

/** Prints the things of one page. */
public final class PagePrinter {
    private final PDPageContentStream content;
    private final PageLayout sheet;
    private final EmbeddedFonts fonts;
    private final Edition edition;
    private final MarkStamps stamps;
    private final Map<Anchor, Integer> pageOf;

    /**
     * @param stamps of the whole document
     * @param pageOf the pages on which anchors came to stand, counted from 1
     */
    public PagePrinter(
            PDPageContentStream content,
            PageLayout sheet,
            EmbeddedFonts fonts,
            Edition edition,
            MarkStamps stamps,
            Map<Anchor, Integer> pageOf) {
        this.content = content;
        this.sheet = sheet;
        this.fonts = fonts;
        this.edition = edition;
        this.stamps = stamps;
        this.pageOf = pageOf;
    }

    /** Prints one thing; a link has nothing that is seen. */
    public void print(PageItem ink) throws IOException {
        if (ink instanceof PageItem.Words words) {
            show(words);
        } else if (ink instanceof PageItem.PageOf of) {
            String number = Integer.toString(pageOf.get(of.anchor()));
            double before = of.flushRight() ? of.face().widthPt(number, of.sizePt()) : 0;
            show(new PageItem.Words(
                    of.edgePt() - before, of.baselinePt(), number, of.face(), of.sizePt(), PageColour.INK));
        } else if (ink instanceof PageItem.Box box) {
            draw(box);
        } else if (ink instanceof PageItem.Art art) {
            draw(art);
        } else if (ink instanceof PageItem.Photo photo) {
            draw(photo);
        }
    }

    private void show(PageItem.Words words) throws IOException {
        content.beginText();
        fill(words.colour());
        content.newLineAtOffset((float) (sheet.leftPt() + words.xPt()), (float) sheet.up(words.baselinePt()));
        fonts.show(content, words.face(), words.text(), words.sizePt());
        content.endText();
    }

    private void draw(PageItem.Box box) throws IOException {
        PDRectangle r = rectangle(sheet, box.xPt(), box.yPt(), box.widthPt(), box.heightPt());
        if (box.fill().isPresent()) {
            fill(box.fill().get());
            content.addRect(r.getLowerLeftX(), r.getLowerLeftY(), r.getWidth(), r.getHeight());
            content.fill();
        }
        if (box.outline().isPresent()) {
            Colour colour = PageColour.printed(box.outline().get(), edition);
            content.setStrokingColor(colour.red() / 255f, colour.green() / 255f, colour.blue() / 255f);
            content.setLineWidth((float) box.linePt());
            content.addRect(r.getLowerLeftX(), r.getLowerLeftY(), r.getWidth(), r.getHeight());
            content.stroke();
        }
    }

    private void draw(PageItem.Art art) throws IOException {
        PDRectangle window = rectangle(sheet, art.xPt(), art.yPt(), art.widthPt(), art.heightPt());
        float ptPerMm = (float) (art.scale() * PageLayout.PT_PER_MM);
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
        new MarkPrinter(content, fonts, stamps).print(marks);
        content.restoreGraphicsState();
    }

    private void draw(PageItem.Photo photo) throws IOException {
        PDRectangle r = rectangle(sheet, photo.xPt(), photo.yPt(), photo.widthPt(), photo.heightPt());
        content.drawImage(
                stamps.picture(photo.picture().get()),
                r.getLowerLeftX(),
                r.getLowerLeftY(),
                r.getWidth(),
                r.getHeight());
    }

    private void fill(Colour asked) throws IOException {
        Colour colour = PageColour.printed(asked, edition);
        content.setNonStrokingColor(colour.red() / 255f, colour.green() / 255f, colour.blue() / 255f);
    }

    /** A rectangle of a page as the file has it, given from the left edge of the column and the top of the sheet. */
    static PDRectangle rectangle(PageLayout sheet, double xPt, double yPt, double widthPt, double heightPt) {
        return new PDRectangle(
                (float) (sheet.leftPt() + xPt), (float) sheet.up(yPt + heightPt), (float) widthPt, (float) heightPt);
    }
}
