package edgewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The faces in fonts/ travel in the jar and can be embedded in a printed pattern. */
class BundledFontsTest {

    private static final String LINE = "1 dc blo, 1 drop tr, 13 dc blo; ½ × 4.5 mm – ‘Reed Bank’";

    @ParameterizedTest
    @ValueSource(strings = {"AtkinsonHyperlegibleNext-Regular.ttf", "AtkinsonHyperlegibleNext-Bold.ttf"})
    void aFaceIsEmbeddedAsASubsetAndItsWordsReadBack(String file) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument();
                InputStream face = BundledFontsTest.class.getResourceAsStream("/edgewright/fonts/" + file)) {
            PDFont font = PDType0Font.load(document, face, true);
            PDPage page = new PDPage();
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.beginText();
                content.setFont(font, 12);
                content.newLineAtOffset(50, 700);
                content.showText(LINE);
                content.endText();
            }
            document.save(bytes);
        }

        try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
            var resources = document.getPage(0).getResources();
            for (var name : resources.getFontNames()) {
                assertThat(resources.getFont(name).isEmbedded()).isTrue();
                // A subset's name has a six-letter tag: ISO 32000-1, 9.6.4.
                assertThat(resources.getFont(name).getName()).matches("[A-Z]{6}\\+AtkinsonHyperlegibleNext.*");
            }
            assertThat(new PDFTextStripper().getText(document).strip()).isEqualTo(LINE);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"OFL-AtkinsonHyperlegibleNext.txt", "OFL-NotoSans.txt"})
    void theLicenceTravelsWithTheFaces(String file) throws Exception {
        try (InputStream licence = BundledFontsTest.class.getResourceAsStream("/edgewright/fonts/" + file)) {
            assertThat(new String(licence.readAllBytes(), StandardCharsets.UTF_8))
                    .contains("SIL OPEN FONT LICENSE Version 1.1");
        }
    }
}
