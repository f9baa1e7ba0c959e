package edgewright.booklet.page;

import edgewright.draw.paint.FontStack;
import edgewright.draw.paint.Shape.Weight;
import edgewright.draw.paint.Typeface;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The type of one weight in one document: the faces of {@link FontStack}, each embedded as a subset once something is printed
 * in it. Widths are those that are printed: there is no kerning and no ligature, so that what is measured and shown is the
 * same. Texts are measured and shown as the stack has them printed, with a number in brackets for what no face has.
 */
public final class Face {
    /** How far a face reaches over the baseline, as a share of its size. */
    static final double CAP_HEIGHT = 0.668;

    private static final double UNITS = 1000;

    /** A face as it is embedded. Only the first has figures that are exchanged: no figure is ever printed in another. */
    private record Cut(Typeface typeface, boolean tabular) {}

    private final PDDocument document;
    private final Weight weight;
    private final boolean tabular;
    private final Map<Cut, PDType0Font> fonts;
    private final Map<Integer, Double> figures = new HashMap<>();

    private Face(PDDocument document, Weight weight, boolean tabular, Map<Cut, PDType0Font> fonts) {
        this.document = document;
        this.weight = weight;
        this.tabular = tabular;
        this.fonts = fonts;
    }

    /** For running text. */
    static Face in(PDDocument document, Weight weight) {
        return new Face(document, weight, false, new HashMap<>());
    }

    /** The same with all figures equally wide, for columns. */
    Face withTabularFigures() {
        return new Face(document, weight, true, fonts);
    }

    /** How wide a text is as it is printed. */
    public double widthPt(String text, double sizePt) {
        return FontStack.runs(text).stream().mapToDouble(this::width).sum() * sizePt;
    }

    /** Prints a text at the place to which the content has come, between its beginning and end of text. */
    public void show(PDPageContentStream content, String text, double size) throws IOException {
        List<FontStack.Run> runs = FontStack.runs(text);
        for (FontStack.Run run : runs) {
            content.setFont(font(run.typeface()), (float) size);
            content.showText(run.text());
        }
    }

    private double width(FontStack.Run run) {
        return tabular && run.typeface() == Typeface.HYPERLEGIBLE
                ? run.text().codePoints().mapToDouble(this::figure).sum()
                : run.width(weight);
    }

    /** The width of a character as the printed file has it, since another glyph may stand for it in columns. */
    private double figure(int c) {
        return figures.computeIfAbsent(c, key -> {
            try {
                return font(Typeface.HYPERLEGIBLE).getStringWidth(Character.toString(key)) / UNITS;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private PDType0Font font(Typeface typeface) {
        return fonts.computeIfAbsent(new Cut(typeface, tabular && typeface == Typeface.HYPERLEGIBLE), this::embedded);
    }

    private PDType0Font embedded(Cut cut) {
        try (InputStream in = cut.typeface().open(weight)) {
            TrueTypeFont outlines =
                    new TTFParser().parse(new RandomAccessReadBuffer(new ByteArrayInputStream(in.readAllBytes())));
            outlines.setEnableGsub(cut.tabular());
            if (cut.tabular()) {
                outlines.enableGsubFeature("tnum");
            }
            return PDType0Font.load(document, outlines, true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
