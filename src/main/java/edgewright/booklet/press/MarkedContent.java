package edgewright.booklet.press;

import edgewright.booklet.page.Tag;
import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;

/**
 * Marks the content of a page: what belongs to which tag, and what is an artifact that a reader does not hear of. Everything
 * on a page is one or the other. Neighbours with the same tag are marked as one.
 */
final class MarkedContent {
    private final PDPageContentStream content;
    private final StructureTree structure;
    private final PDPropertyList layout = artifact("Layout");
    private boolean open;
    private Optional<Tag> tag = Optional.empty();

    MarkedContent(PDPageContentStream content, StructureTree structure) {
        this.content = content;
        this.structure = structure;
    }

    /** What follows stands on every page. */
    void runningMatter() throws IOException {
        end();
        content.beginMarkedContent(COSName.ARTIFACT, artifact("Pagination"));
        open = true;
    }

    /** What follows belongs to this tag; to none if it is an ornament. */
    void next(Optional<Tag> next) throws IOException {
        if (open && next.isPresent() && next.equals(tag)) {
            return;
        }
        end();
        if (next.isPresent()) {
            int number = structure.nextContent(next.get());
            content.beginMarkedContent(
                    COSName.getPDFName(StructureTypes.of(next.get().role())), number);
        } else {
            content.beginMarkedContent(COSName.ARTIFACT, layout);
        }
        open = true;
        tag = next;
    }

    /** Ends what is marked. */
    void end() throws IOException {
        if (open) {
            content.endMarkedContent();
        }
        open = false;
        tag = Optional.empty();
    }

    private static PDPropertyList artifact(String kind) {
        COSDictionary properties = new COSDictionary();
        properties.setItem(COSName.TYPE, COSName.getPDFName(kind));
        return PDPropertyList.create(properties);
    }
}
