package edgewright.booklet.press;

import edgewright.booklet.page.FaceMetrics;
import edgewright.booklet.page.Typefaces;
import edgewright.draw.paint.FontStack;
import edgewright.draw.paint.Shape.Weight;
import edgewright.draw.paint.Typeface;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The faces of {@link FontStack} in one document, each embedded as a subset once something is printed in it. */
public final class EmbeddedFonts {
    private static final double UNITS = 1000;

    /** A face as it is embedded. Only the first has figures that are exchanged: no figure is ever printed in another. */
    private record Cut(Typeface typeface, Weight weight, boolean tabular) {}

    private final PDDocument document;
    private final Map<Cut, PDType0Font> fonts = new HashMap<>();
    private final Typefaces typefaces;

    public EmbeddedFonts(PDDocument document) {
        this.document = document;
        this.typefaces = new Typefaces(
                FaceMetrics.running(Weight.REGULAR),
                FaceMetrics.running(Weight.BOLD),
                FaceMetrics.tabular(Weight.REGULAR, character -> columnWidth(Weight.REGULAR, character)),
                FaceMetrics.tabular(Weight.BOLD, character -> columnWidth(Weight.BOLD, character)));
    }

    /** The faces by which pages are set that are printed in these fonts. */
    public Typefaces typefaces() {
        return typefaces;
    }

    /** Prints a text at the place to which the content has come, between its beginning and end of text. */
    void show(PDPageContentStream content, FaceMetrics face, String text, double sizePt) throws IOException {
        for (FontStack.Run run : FontStack.runs(text)) {
            boolean tabular = face.isTabular() && run.typeface() == Typeface.HYPERLEGIBLE;
            content.setFont(font(new Cut(run.typeface(), face.weight(), tabular)), (float) sizePt);
            content.showText(run.text());
        }
    }

    private double columnWidth(Weight weight, int character) {
        try {
            return font(new Cut(Typeface.HYPERLEGIBLE, weight, true)).getStringWidth(Character.toString(character))
                    / UNITS;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private PDType0Font font(Cut cut) {
        return fonts.computeIfAbsent(cut, this::embedded);
    }

    private PDType0Font embedded(Cut cut) {
        try (InputStream in = cut.typeface().open(cut.weight())) {
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
