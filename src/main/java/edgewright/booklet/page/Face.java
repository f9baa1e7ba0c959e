package edgewright.booklet.page;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A face of type that is embedded, as a subset, in one document. Widths are those that are printed: there is no kerning and
 * no ligature, so that what is measured, shown and read back is the same.
 */
public final class Face {
    /** How far a face reaches over the baseline, as a share of its size. */
    static final double CAP_HEIGHT = 0.668;

    private static final double UNITS = 1000;

    /** What is printed for a character that the face does not have. */
    private static final String STAND_IN = "?";

    private final PDType0Font font;
    private final Map<Integer, Double> widths = new HashMap<>();
    private final SortedSet<Integer> unprinted = new TreeSet<>();

    private Face(PDType0Font font) {
        this.font = font;
    }

    /**
     * @param resource the file in {@code edgewright/fonts}
     * @param tabular whether all figures are equally wide
     */
    static Face embedIn(PDDocument document, String resource, boolean tabular) {
        try (InputStream in = Face.class.getResourceAsStream("/edgewright/fonts/" + resource)) {
            if (in == null) {
                throw new IllegalStateException("the face " + resource + " does not lie with the program");
            }
            TrueTypeFont outlines =
                    new TTFParser().parse(new RandomAccessReadBuffer(new ByteArrayInputStream(in.readAllBytes())));
            outlines.setEnableGsub(tabular);
            if (tabular) {
                outlines.enableGsubFeature("tnum");
            }
            return new Face(PDType0Font.load(document, outlines, true));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public PDType0Font font() {
        return font;
    }

    /** The width of text that {@link #printable} gave back. */
    public double widthPt(String text, double sizePt) {
        return text.codePoints().mapToDouble(this::width).sum() * sizePt / UNITS;
    }

    /**
     * The text with everything in it that this face can print. Blanks of any kind become plain blanks; a letter that is not
     * there loses its accent; what is left over becomes a question mark.
     */
    public String printable(String text) {
        StringBuilder out = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(c -> out.append(printable(c)));
        return out.toString();
    }

    private String printable(int c) {
        if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
            return " ";
        }
        if (Character.isISOControl(c) || Character.getType(c) == Character.FORMAT) {
            return "";
        }
        if (Character.getType(c) == Character.NON_SPACING_MARK && !has(c)) {
            return "";
        }
        if (has(c)) {
            return Character.toString(c);
        }
        String bare = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "");
        if (!bare.isEmpty() && bare.codePoints().allMatch(this::has)) {
            return bare;
        }
        unprinted.add(c);
        return STAND_IN;
    }

    /** The characters for which a question mark had to stand so far. */
    SortedSet<Integer> unprinted() {
        return unprinted;
    }

    private boolean has(int c) {
        return c == ' ' || width(c) > 0;
    }

    private double width(int c) {
        return widths.computeIfAbsent(c, key -> {
            try {
                return (double) font.getStringWidth(Character.toString(key));
            } catch (IllegalArgumentException missing) {
                return 0.0;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
