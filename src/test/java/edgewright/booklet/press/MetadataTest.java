package edgewright.booklet.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

class MetadataTest {
    @ParameterizedTest
    @ValueSource(strings = {"{creator}", "{title}", "{language} {program}", "$1 \\1", "<a>&lt;{creator}</a>"})
    void a_title_that_looks_like_a_gap_is_a_title(String title) throws Exception {
        Document said = metadata(title, "Saltmarsh {title} Studio");
        assertThat(text(said, "dc:title")).isEqualTo(title);
        assertThat(text(said, "dc:creator")).isEqualTo("Saltmarsh {title} Studio");
        assertThat(text(said, "dc:rights")).isEqualTo("© {title} & Studio");
    }

    private static String text(Document said, String name) {
        return said.getElementsByTagName(name).item(0).getTextContent().strip();
    }

    private static Document metadata(String title, String author) throws Exception {
        try (PDDocument document = new PDDocument()) {
            Metadata.write(document, title, author, "© {title} & Studio", "en-GB", 1);
            byte[] packet = document.getDocumentCatalog().getMetadata().toByteArray();
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(packet));
        }
    }
}
