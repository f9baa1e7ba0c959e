package edgewright.cli;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.choice.BookletPart;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.Edition;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Of which parts a printed pattern is, and where its workbook goes. */
final class PartsOption {
    private static final String APPENDIX = "appendix";

    @Option(names = "--parts", paramLabel = "PART", split = ",")
    private List<BookletPart> chosen = new ArrayList<>();

    @Option(names = "--leave-out", paramLabel = "PART", split = ",")
    private List<BookletPart> leftOut = new ArrayList<>();

    @Option(names = "--workbook", paramLabel = "appendix|FILE.pdf", converter = PathConverter.class)
    private Path workbook;

    /**
     * The files to make.
     *
     * @param pattern the parts of the pattern, with those of the workbook that go into the same file
     * @param workbook the parts of the second file, if there is one
     */
    record Files(BookletParts pattern, Optional<Second> workbook) {}

    /** A second file, and what it is made of. */
    record Second(Path file, BookletParts parts) {}

    /**
     * What was chosen.
     *
     * @throws BadInput if a part is there twice, the cover is not the first, or no part is left for a file
     */
    Files files(Edition edition, Messages says) {
        requireOnceAndCoverFirst(chosen, says);
        boolean second = workbook != null && !isAppendix();
        List<BookletPart> all = new ArrayList<>(new BookletParts(chosen, workbook != null).inOrder(edition));
        all.removeAll(leftOut);
        if (second && chosen.isEmpty() && edition != Edition.LARGE_PRINT) {
            all.remove(BookletPart.CONTENTS);
        }
        List<BookletPart> apart = new ArrayList<>();
        if (second) {
            all.stream().filter(BookletPart::isOfWorkbook).forEach(apart::add);
            all.removeAll(apart);
        }
        if (all.isEmpty()) {
            throw new BadInput(says.text("parts-none"));
        }
        if (second && apart.isEmpty()) {
            throw new BadInput(says.text("parts-noWorkbook"));
        }
        return new Files(
                new BookletParts(all, false),
                second ? Optional.of(new Second(workbook, new BookletParts(apart, false))) : Optional.empty());
    }

    /** @throws BadInput if a part is there twice, or the cover is not the first */
    static void requireOnceAndCoverFirst(List<BookletPart> chosen, Messages says) {
        for (int i = 0; i < chosen.size(); i++) {
            String name = name(chosen.get(i));
            if (chosen.indexOf(chosen.get(i)) < i) {
                throw new BadInput(says.text("parts-twice", arg("part", name)));
            }
            if (i > 0 && chosen.get(i) == BookletPart.COVER) {
                throw new BadInput(says.text("parts-cover", arg("first", name(chosen.get(0)))));
            }
        }
    }

    private boolean isAppendix() {
        return workbook.toString().equalsIgnoreCase(APPENDIX);
    }

    /** A part as it is called here. */
    static String name(BookletPart part) {
        return part.name().toLowerCase(Locale.ROOT);
    }
}
