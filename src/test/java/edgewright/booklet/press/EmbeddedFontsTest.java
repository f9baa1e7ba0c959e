package edgewright.booklet.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.booklet.PageText;
import edgewright.booklet.page.FaceMetrics;
import edgewright.booklet.page.Typefaces;
import edgewright.draw.paint.FontStack;
import edgewright.draw.paint.Shape.Weight;
import edgewright.testing.SampleTexts;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What embedded faces print, read back from the page. */
class EmbeddedFontsTest {
    private static final float SIZE_PT = 10;

    private record Printed(String text, double widthPt) {}

    private static List<Printed> printed(List<String> texts, Weight weight, boolean tabular) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            EmbeddedFonts fonts = new EmbeddedFonts(document);
            FaceMetrics face = face(fonts.typefaces(), weight, tabular);
            for (String text : texts) {
                PDPage page = new PDPage(new PDRectangle(14_000, 20));
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    content.beginText();
                    content.newLineAtOffset(0, 5);
                    // A stop at the end, so that a blank before it is seen.
                    fonts.show(content, face, text + ".", SIZE_PT);
                    content.endText();
                }
            }
            document.save(bytes);
        }
        List<Printed> printed = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
            for (int page = 1; page <= texts.size(); page++) {
                StringBuilder letters = new StringBuilder();
                double[] right = {0};
                PageText stripper = new PageText() {
                    @Override
                    protected void processTextPosition(TextPosition letter) {
                        letters.append(letter.getUnicode());
                        right[0] = letter.getX();
                    }
                };
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                stripper.getText(document);
                printed.add(new Printed(letters.substring(0, letters.length() - 1), right[0]));
            }
        }
        return printed;
    }

    private static FaceMetrics face(Typefaces type, Weight weight, boolean tabular) {
        return weight == Weight.BOLD
                ? tabular ? type.boldFigures() : type.bold()
                : tabular ? type.figures() : type.text();
    }

    @ParameterizedTest
    @EnumSource
    void aTextIsAsWideOnPaperAsTheStackMeasuresItAndReadsBack(Weight weight) throws IOException {
        List<String> texts = SampleTexts.all();
        List<Printed> printed = printed(texts, weight, false);
        for (int i = 0; i < texts.size(); i++) {
            String text = texts.get(i);
            assertThat(printed.get(i).widthPt())
                    .as(text)
                    .isCloseTo(SIZE_PT * FontStack.width(text, weight), within(0.01));
            assertThat(printed.get(i).text()).isEqualTo(FontStack.printable(text));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"1111 Ж 7", "0 of 8", "Ωμέγα 12"})
    void inColumnsAllFiguresAreEquallyWideAsMeasured(String text) throws IOException {
        try (PDDocument document = new PDDocument()) {
            FaceMetrics face = new EmbeddedFonts(document).typefaces().figures();
            assertThat(printed(List.of(text), Weight.REGULAR, true).get(0).widthPt())
                    .isCloseTo(face.widthPt(text, SIZE_PT), within(0.01));
            assertThat(face.widthPt("1", SIZE_PT)).isEqualTo(face.widthPt("8", SIZE_PT));
        }
    }
}
