package edgewright.booklet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/**
 * A published pattern as a program reads it aloud: the structure tree from its root, each element with the text that belongs
 * to it, in the order of the tree. What is in no element is not heard.
 */
public final class ReadBack implements AutoCloseable {
    /**
     * An element that holds text or stands for a picture.
     *
     * @param text what is printed for it; the alternative text of a picture
     * @param page the first page with something of it, counted from 1
     */
    public record Heard(String role, String text, int page) {}

    private final PDDocument document;
    private final Map<COSDictionary, Integer> pageNumbers = new HashMap<>();
    private final List<Map<Integer, String>> textOfPage = new ArrayList<>();
    private final List<Heard> heard = new ArrayList<>();

    public ReadBack(byte[] bytes) {
        try {
            document = Loader.loadPDF(bytes);
            FormContents forms = new FormContents();
            for (PDPage page : document.getPages()) {
                pageNumbers.put(page.getCOSObject(), pageNumbers.size() + 1);
                textOfPage.add(markedText(page, forms));
            }
            hear(document.getDocumentCatalog().getStructureTreeRoot());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public PDDocument document() {
        return document;
    }

    public List<Heard> heard() {
        return heard;
    }

    /** The texts of all elements with a role. */
    public List<String> texts(String role) {
        return heard.stream()
                .filter(h -> h.role().equals(role))
                .map(Heard::text)
                .toList();
    }

    /** Everything that is heard, in order, in one line. */
    public String aloud() {
        return String.join(" ", heard.stream().map(Heard::text).toList());
    }

    @Override
    public void close() throws IOException {
        document.close();
    }

    private static Map<Integer, String> markedText(PDPage page, FormContents forms) throws IOException {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor() {
            @Override
            public void showForm(PDFormXObject form) throws IOException {
                if (!forms.isOfPathsAlone(form)) {
                    super.showForm(form);
                }
            }
        };
        extractor.processPage(page);
        Map<Integer, String> texts = new HashMap<>();
        for (PDMarkedContent content : extractor.getMarkedContents()) {
            if (content.getMCID() >= 0) {
                StringBuilder text = new StringBuilder();
                for (Object thing : content.getContents()) {
                    if (thing instanceof TextPosition position) {
                        text.append(position.getUnicode());
                    }
                }
                texts.put(content.getMCID(), text.toString());
            }
        }
        return texts;
    }

    private void hear(PDStructureNode node) {
        StringBuilder own = new StringBuilder();
        List<PDStructureElement> children = new ArrayList<>();
        int page = 0;
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                children.add(element);
            } else if (kid instanceof PDMarkedContentReference reference) {
                COSBase at = reference.getPage().getCOSObject();
                int number = pageNumbers.get(at);
                page = page == 0 ? number : page;
                own.append(textOfPage.get(number - 1).get(reference.getMCID()));
            }
        }
        if (node instanceof PDStructureElement element && page > 0) {
            String alternative = element.getAlternateDescription();
            heard.add(new Heard(element.getStructureType(), alternative == null ? own.toString() : alternative, page));
        }
        children.forEach(this::hear);
    }
}
