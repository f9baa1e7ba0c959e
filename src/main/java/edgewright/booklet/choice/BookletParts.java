package edgewright.booklet.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;

/**
 * Of which parts a file is, and in which order.
 *
 * @param chosen each once; empty for the usual ones of the edition, which leave out the workbook
 * @param appendix whether the workbook follows what was chosen, unless parts of it were chosen themselves
 */
public record BookletParts(List<BookletPart> chosen, boolean appendix) {
    /** The pattern without the workbook. */
    public static final BookletParts USUAL = new BookletParts(List.of(), false);

    /** The pattern, and the workbook after it. */
    public static final BookletParts WITH_WORKBOOK = new BookletParts(List.of(), true);

    /** The workbook alone. */
    public static final BookletParts WORKBOOK = new BookletParts(BookletPart.ofWorkbook(), false);

    /** @throws IllegalArgumentException if a part is there twice */
    public BookletParts {
        chosen = List.copyOf(chosen);
        if (!chosen.isEmpty() && EnumSet.copyOf(chosen).size() < chosen.size()) {
            throw new IllegalArgumentException("a part is there twice: " + chosen);
        }
    }

    /** These parts and no others. */
    public static BookletParts of(BookletPart... parts) {
        return new BookletParts(List.of(parts), false);
    }

    /** The parts as they are printed in an edition, at least one. Large print and what has an appendix lists its contents. */
    public List<BookletPart> inOrder(Edition edition) {
        List<BookletPart> parts = new ArrayList<>(chosen);
        if (chosen.isEmpty()) {
            boolean listed = appendix || edition == Edition.LARGE_PRINT;
            Arrays.stream(BookletPart.values())
                    .filter(part -> part.isOfPattern() || (listed && part == BookletPart.CONTENTS))
                    .forEach(parts::add);
            if (edition == Edition.LARGE_PRINT) {
                // Who reads large print reads the words rather than the chart.
                parts.remove(BookletPart.CHART);
                parts.add(parts.indexOf(BookletPart.WORDS) + 1, BookletPart.CHART);
            }
        }
        if (appendix && parts.stream().noneMatch(BookletPart::isOfWorkbook)) {
            parts.addAll(BookletPart.ofWorkbook());
        }
        return List.copyOf(parts);
    }

    /** Whether nothing but parts of the workbook were chosen. */
    public boolean isWorkbook() {
        return !chosen.isEmpty() && chosen.stream().allMatch(BookletPart::isOfWorkbook);
    }
}
