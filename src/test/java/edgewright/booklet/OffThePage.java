package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.TextPosition;

/** Finds letters that stand outside the printable part of a page. */
public final class OffThePage {
    /** What many printers cannot print on at the edges: common practice, no source. */
    private static final float UNPRINTABLE_PT = 14;

    private OffThePage() {}

    public static void assertNothing(PDDocument document) throws IOException {
        List<String> off = new ArrayList<>();
        PageText stripper = new PageText() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                PDRectangle page = getCurrentPage().getMediaBox();
                float right = letter.getXDirAdj() + letter.getWidthDirAdj();
                boolean inside = letter.getXDirAdj() >= UNPRINTABLE_PT
                        && letter.getYDirAdj() >= UNPRINTABLE_PT
                        && (letter.getDir() != 0 || right <= page.getWidth() - UNPRINTABLE_PT)
                        && (letter.getDir() != 0 || letter.getYDirAdj() <= page.getHeight() - UNPRINTABLE_PT);
                if (!inside && !letter.getUnicode().isBlank()) {
                    off.add("page " + getCurrentPageNo() + ": '" + letter.getUnicode() + "'");
                }
                super.processTextPosition(letter);
            }
        };
        stripper.getText(document);
        assertThat(off).isEmpty();
    }
}
