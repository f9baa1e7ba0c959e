package edgewright.booklet.press;

import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.Paginator.Placed;
import edgewright.booklet.page.Tag;
import edgewright.draw.paint.Area;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderStyleDictionary;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** Prints set pages into a document: ink, tags, links and outline. */
final class Press {
    /** What stands around the column on every page. */
    interface RunningMatter {
        /**
         * @param page counted from 1
         * @param sheet what the page is like
         * @return things in the coordinates of the page: x from the left edge of the column, y from the top of the sheet
         */
        List<PageItem> around(int page, int pages, PageLayout sheet);
    }

    private final PDDocument document;
    private final PageLayout sheet;
    private final EmbeddedFonts fonts;
    private final Edition edition;
    private final StructureTree structure;
    private final MarkStamps stamps;
    private final List<PDPage> pages = new ArrayList<>();
    private final Map<Anchor, Integer> pageOf = new HashMap<>();
    private final Map<Anchor, PDPageXYZDestination> destinations = new HashMap<>();

    Press(PDDocument document, PageLayout sheet, EmbeddedFonts fonts, Edition edition, StructureTree structure) {
        this.document = document;
        this.sheet = sheet;
        this.fonts = fonts;
        this.edition = edition;
        this.structure = structure;
        this.stamps = new MarkStamps(document);
    }

    /**
     * @return whether it came to the end; {@code false} if the caller asked to stop
     */
    boolean print(List<List<Placed>> set, RunningMatter running, Progress progress) throws IOException {
        List<Anchor> anchors = findAnchors(set);
        for (int i = 0; i < set.size(); i++) {
            if (!progress.goOn(i, set.size())) {
                return false;
            }
            PageLayout of = sheetOf(set.get(i));
            printPage(pages.get(i), set.get(i), of, running.around(i + 1, set.size(), of));
        }
        outline(anchors);
        structure.finish();
        return progress.goOn(set.size(), set.size());
    }

    private List<Anchor> findAnchors(List<List<Placed>> set) {
        List<Anchor> anchors = new ArrayList<>();
        for (List<Placed> placed : set) {
            PageLayout of = sheetOf(placed);
            PDPage page = new PDPage(new PDRectangle((float) of.pageWidthPt(), (float) of.pageHeightPt()));
            document.addPage(page);
            pages.add(page);
            for (Placed strip : placed) {
                strip.strip().anchors().forEach(reached -> {
                    Anchor anchor = reached.anchor();
                    anchors.add(anchor);
                    pageOf.put(anchor, pages.size());
                    PDPageXYZDestination destination = new PDPageXYZDestination();
                    destination.setPage(page);
                    destination.setTop(
                            (int) Math.ceil(of.up(of.topPt() + strip.topPt() + reached.downPt() - of.halfLinePt())));
                    destinations.put(anchor, destination);
                });
            }
        }
        return anchors;
    }

    /** What a page is like: as its strips want it, else as the rest. */
    private PageLayout sheetOf(List<Placed> strips) {
        return strips.get(0).strip().sheet().orElse(sheet);
    }

    private void printPage(PDPage page, List<Placed> strips, PageLayout of, List<PageItem> running) throws IOException {
        structure.beginPage(page);
        try (PDPageContentStream stream =
                new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, true)) {
            PagePrinter printer = new PagePrinter(stream, of, fonts, edition, stamps, pageOf);
            MarkedContent marked = new MarkedContent(stream, structure);
            marked.runningMatter();
            for (PageItem ink : running) {
                printer.print(ink);
            }
            for (Placed placed : strips) {
                for (Piece piece : placed.strip().pieces()) {
                    marked.next(piece.tag());
                    List<PageItem> inks = piece.inks().stream()
                            .map(ink -> ink.moved(0, of.topPt() + placed.topPt()))
                            .toList();
                    for (PageItem ink : inks) {
                        printer.print(ink);
                    }
                    if (piece.tag().isPresent()) {
                        tie(page, of, piece.tag().get(), inks);
                    }
                }
            }
            marked.end();
        }
    }

    /** Links and pictures have more to tell the structure tree than that they are there. */
    private void tie(PDPage page, PageLayout of, Tag tag, List<PageItem> inks) throws IOException {
        Optional<Area> pictures = Optional.empty();
        for (PageItem ink : inks) {
            if (ink instanceof PageItem.Art art) {
                Area area = new Area(art.xPt(), art.yPt(), art.widthPt(), art.heightPt());
                pictures = Optional.of(pictures.map(area::with).orElse(area));
            }
            if (ink instanceof PageItem.Photo photo) {
                pictures = Optional.of(new Area(photo.xPt(), photo.yPt(), photo.widthPt(), photo.heightPt()));
            }
            if (ink instanceof PageItem.Link link) {
                link(page, of, tag, link);
            }
            if (ink instanceof PageItem.WebLink link) {
                link(page, of, tag, link);
            }
        }
        pictures.ifPresent(area -> structure.place(
                tag, PagePrinter.rectangle(of, area.xMm(), area.yMm(), area.widthMm(), area.heightMm())));
    }

    private void link(PDPage page, PageLayout of, Tag tag, PageItem.Link link) throws IOException {
        PDAnnotationLink annotation = new PDAnnotationLink();
        annotation.setRectangle(PagePrinter.rectangle(of, link.xPt(), link.yPt(), link.widthPt(), link.heightPt()));
        annotation.setDestination(destinations.get(link.to()));
        annotation.setContents(link.to().title());
        add(page, tag, annotation);
    }

    private void link(PDPage page, PageLayout of, Tag tag, PageItem.WebLink link) throws IOException {
        PDActionURI action = new PDActionURI();
        action.setURI(link.address());
        PDAnnotationLink annotation = new PDAnnotationLink();
        annotation.setRectangle(PagePrinter.rectangle(of, link.xPt(), link.yPt(), link.widthPt(), link.heightPt()));
        annotation.setAction(action);
        annotation.setContents(link.words());
        add(page, tag, annotation);
    }

    private void add(PDPage page, Tag tag, PDAnnotationLink annotation) throws IOException {
        annotation.setPrinted(true);
        PDBorderStyleDictionary none = new PDBorderStyleDictionary();
        none.setWidth(0);
        annotation.setBorderStyle(none);
        structure.addLink(tag, annotation);
        List<PDAnnotation> annotations = new ArrayList<>(page.getAnnotations());
        annotations.add(annotation);
        page.setAnnotations(annotations);
    }

    private void outline(List<Anchor> anchors) {
        PDDocumentOutline outline = new PDDocumentOutline();
        List<PDOutlineNode> parents = new ArrayList<>(List.of(outline));
        for (Anchor anchor : anchors) {
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(anchor.title());
            item.setDestination(destinations.get(anchor));
            int level = Math.min(anchor.level(), parents.size());
            parents.get(level - 1).addLast(item);
            parents = new ArrayList<>(parents.subList(0, level));
            parents.add(item);
        }
        document.getDocumentCatalog().setDocumentOutline(outline);
    }
}
