package edgewright.booklet.press;

import edgewright.booklet.page.Tag;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDObjectReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDLayoutAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;

/**
 * The structure tree of a document while it is printed: what is a heading, a row, a picture, in reading order. Marked
 * content and links are tied to it by numbers that count up in the order of printing; see ISO 32000-1, 14.7.4.
 */
final class StructureTree {
    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final Map<Tag, PDStructureElement> elements = new HashMap<>();
    private final COSArray parentNumbers = new COSArray();
    private int nextKey;
    private COSArray contentOfPage = new COSArray();
    private PDPage page = new PDPage();

    /** Makes the document a tagged one. */
    StructureTree(PDDocument document, String language) {
        document.getDocumentCatalog().setStructureTreeRoot(root);
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(marked);
        document.getDocumentCatalog().setLanguage(language);
    }

    void beginPage(PDPage newPage) {
        page = newPage;
        contentOfPage = new COSArray();
        page.setStructParents(nextKey);
        page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
        file(contentOfPage);
    }

    /** Gives the next piece of this page to a tag; the number marks it in the page's content. */
    int nextContent(Tag tag) {
        PDStructureElement element = element(tag);
        int number = contentOfPage.size();
        PDMarkedContentReference reference = new PDMarkedContentReference();
        reference.setPage(page);
        reference.setMCID(number);
        element.appendKid(reference);
        contentOfPage.add(element.getCOSObject());
        return number;
    }

    /** Gives a link of this page to a tag. */
    void addLink(Tag tag, PDAnnotation link) {
        PDStructureElement element = element(tag);
        PDObjectReference reference = new PDObjectReference();
        reference.setReferencedObject(link);
        reference.getCOSObject().setItem(COSName.PG, page);
        element.appendKid(reference);
        link.setStructParent(nextKey);
        file(element.getCOSObject());
    }

    /** Says where on its page a picture lies. */
    void place(Tag figure, PDRectangle box) {
        PDLayoutAttributeObject layout = new PDLayoutAttributeObject();
        layout.setPlacement(PDLayoutAttributeObject.PLACEMENT_BLOCK);
        layout.setBBox(box);
        element(figure).addAttribute(layout);
    }

    /** Writes the way back from content to tags. */
    void finish() {
        COSDictionary tree = new COSDictionary();
        tree.setItem(COSName.NUMS, parentNumbers);
        root.setParentTree(new PDNumberTreeNode(tree, PDParentTreeValue.class));
        root.setParentTreeNextKey(nextKey);
    }

    private void file(COSBase value) {
        parentNumbers.add(COSInteger.get(nextKey));
        parentNumbers.add(value);
        nextKey++;
    }

    private PDStructureElement element(Tag tag) {
        List<Tag> missing = new ArrayList<>();
        for (Tag t = tag; t != null && !elements.containsKey(t); t = t.parent().orElse(null)) {
            missing.add(0, t);
        }
        missing.forEach(this::create);
        return elements.get(tag);
    }

    private void create(Tag tag) {
        PDStructureNode parent =
                tag.parent().map(p -> (PDStructureNode) elements.get(p)).orElse(root);
        PDStructureElement element = new PDStructureElement(StructureTypes.of(tag.role()), parent);
        element.setPage(page);
        tag.alternative().ifPresent(element::setAlternateDescription);
        tag.language().ifPresent(element::setLanguage);
        if (tag.scope().isPresent() || tag.columns() > 1) {
            PDTableAttributeObject cell = new PDTableAttributeObject();
            tag.scope().ifPresent(scope -> cell.setScope(StructureTypes.of(scope)));
            if (tag.columns() > 1) {
                cell.setColSpan(tag.columns());
            }
            element.addAttribute(cell);
        }
        parent.appendKid(element);
        elements.put(tag, element);
    }
}
