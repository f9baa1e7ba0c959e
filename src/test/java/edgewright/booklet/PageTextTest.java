package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.BookletOptions;
import edgewright.chart.Chart;
import edgewright.texts.English;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What is passed over in a page for the sake of time says nothing. */
class PageTextTest {
    @Test
    void a_page_says_what_it_says_to_a_reader_that_passes_nothing_over() throws IOException {
        Chart chart = Published.sample("lantern-posts");
        try (PDDocument pattern = Loader.loadPDF(Published.bytes(chart, BookletOptions.of(chart, English.LANGUAGE)))) {
            assertThat(new PageText().getText(pattern))
                    .isEqualTo(new PDFTextStripper().getText(pattern))
                    .contains("Lantern Posts");
        }
    }

    @Test
    void letters_in_a_form_are_read_and_paths_are_not_taken_for_any() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.drawForm(form(document, "0 0 m 9 9 l S"));
                content.drawForm(form(document, "BT /F 12 Tf 40 40 Td (Reed) Tj ET"));
                content.drawForm(form(document, "BT /F 12 Tf 40 80 Td [(Ban) (k)] TJ ET"));
            }
            assertThat(new PageText().getText(document))
                    .isEqualTo(new PDFTextStripper().getText(document))
                    .contains("Reed", "Bank");
        }
    }

    private static PDFormXObject form(PDDocument document, String operators) throws IOException {
        PDFormXObject form = new PDFormXObject(document);
        form.setBBox(new PDRectangle(0, 0, 200, 200));
        form.setResources(new PDResources());
        form.getResources().put(COSName.getPDFName("F"), new PDType1Font(Standard14Fonts.FontName.HELVETICA));
        try (OutputStream out = form.getStream().createOutputStream()) {
            out.write(operators.getBytes(StandardCharsets.US_ASCII));
        }
        return form;
    }
}
