package edgewright.booklet.page;

import edgewright.booklet.PatternPages;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.Paginator.Placed;
import edgewright.booklet.press.EmbeddedFonts;
import edgewright.chart.Chart;
import edgewright.check.Checker;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The pages of a pattern as they are set, before they are printed, and what is wrong with their ends to the eye: judged by what
 * stands on them, not by what was said of where a page may end.
 */
record SetPages(List<List<Placed>> pages, PageLayout sheet, TextStyles styles) {
    static SetPages of(Chart chart, BookletOptions options) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PageLayout sheet = PageLayout.of(options.paper(), options.edition());
            TextStyles styles = TextStyles.of(new EmbeddedFonts(document).typefaces(), sheet);
            TextSetter setter =
                    new TextSetter(sheet, styles, new YarnChips(chart, sheet, options.edition()), options.language());
            List<ColumnSlice> strips =
                    new PatternPages(setter, chart, options, Checker.check(chart), Progress.NONE).strips();
            return new SetPages(new Paginator(sheet.heightPt()).pages(strips), sheet, styles);
        }
    }

    /** Pages whose last words are all bold, as those of headings, labels and heads of tables are. */
    List<String> boldAtTheFoot() {
        List<String> found = new ArrayList<>();
        for (int page = 0; page < pages.size(); page++) {
            List<Placed> placed = pages.get(page);
            List<PageItem.Words> words = words(placed.get(placed.size() - 1).strip());
            boolean bold = words.stream()
                    .allMatch(each -> each.face() == styles.strong().face()
                            || each.face() == styles.label().face());
            if (!words.isEmpty() && bold) {
                found.add("page " + (page + 1) + " ends with '" + text(words) + "'");
            }
        }
        return found;
    }

    /** Paragraphs of which one line stands alone at the foot or at the head of a page. */
    List<String> lonelyLines() {
        Map<Tag, TreeMap<Integer, Integer>> linesOnPage = new HashMap<>();
        Map<Tag, String> begins = new HashMap<>();
        for (int page = 0; page < pages.size(); page++) {
            for (Placed placed : pages.get(page)) {
                for (Piece piece : placed.strip().pieces()) {
                    if (piece.tag().isPresent() && piece.inks().stream().anyMatch(PageItem.Words.class::isInstance)) {
                        Tag tag = piece.tag().get();
                        linesOnPage.computeIfAbsent(tag, t -> new TreeMap<>()).merge(page + 1, 1, Integer::sum);
                        begins.putIfAbsent(tag, text(words(placed.strip())));
                    }
                }
            }
        }
        List<String> found = new ArrayList<>();
        linesOnPage.forEach((tag, lines) -> {
            boolean alone =
                    lines.firstEntry().getValue() == 1 || lines.lastEntry().getValue() == 1;
            if (lines.size() > 1 && alone) {
                found.add("page " + lines.firstKey() + " parts '" + begins.get(tag) + "': " + lines);
            }
        });
        return found.stream().sorted().toList();
    }

    /** Pages that end with a heading over rounds in words and no more than one of them, though others follow. */
    List<String> roundsAlone() {
        List<Tag> all = pages.stream().flatMap(page -> titles(page).stream()).toList();
        List<String> found = new ArrayList<>();
        for (int page = 0; page < pages.size(); page++) {
            List<Tag> titles = titles(pages.get(page));
            int end = titles.size();
            boolean oneUnder = end > 1
                    && titles.get(end - 1).role() == StructureRole.H3
                    && titles.get(end - 2).role() == StructureRole.H2
                    && heading(titles.get(end - 2)).startsWith("Rounds");
            int next = end == 0 ? 0 : all.indexOf(titles.get(end - 1)) + 1;
            if (oneUnder && next < all.size() && all.get(next).role() == StructureRole.H3) {
                found.add("page " + (page + 1));
            }
        }
        return found;
    }

    /** The headings on a page and the titles of its rounds, each once. */
    private static List<Tag> titles(List<Placed> page) {
        return page.stream()
                .flatMap(placed -> placed.strip().pieces().stream())
                .flatMap(piece -> piece.tag().stream())
                .filter(tag -> tag.role() == StructureRole.H2 || tag.role() == StructureRole.H3)
                .distinct()
                .toList();
    }

    private String heading(Tag tag) {
        return pages.stream()
                .flatMap(List::stream)
                .filter(placed -> placed.strip().pieces().stream()
                        .anyMatch(piece -> piece.tag().equals(Optional.of(tag))))
                .map(placed -> text(words(placed.strip())))
                .findFirst()
                .orElseThrow();
    }

    /** What is read; numbers on a picture are not. */
    private static List<PageItem.Words> words(ColumnSlice strip) {
        return strip.pieces().stream()
                .filter(piece -> piece.tag().isPresent())
                .flatMap(piece -> piece.inks().stream())
                .filter(PageItem.Words.class::isInstance)
                .map(PageItem.Words.class::cast)
                .toList();
    }

    private static String text(List<PageItem.Words> words) {
        return words.stream().map(each -> each.text().strip()).collect(Collectors.joining(" "));
    }
}
