package edgewright.cli;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.WordsFormat;
import edgewright.booklet.choice.BookletPart;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Of which parts a pattern in words is. */
final class WordsPartsOption {
    @Option(names = "--parts", paramLabel = "PART", split = ",")
    private List<BookletPart> chosen = new ArrayList<>();

    @Option(names = "--leave-out", paramLabel = "PART", split = ",")
    private List<BookletPart> leftOut = new ArrayList<>();

    /**
     * The parts in their order; all that words can have if none were chosen.
     *
     * @throws BadInput if a part is there twice, the cover is not the first, a part is none of words, or none is left
     */
    List<BookletPart> inOrder(Messages says) {
        PartsOption.requireOnceAndCoverFirst(chosen, says);
        for (BookletPart part : chosen) {
            if (!WordsFormat.PARTS.contains(part)) {
                throw new BadInput(says.text("parts-notOfWords", arg("part", PartsOption.name(part))));
            }
        }
        List<BookletPart> all = new ArrayList<>(chosen.isEmpty() ? WordsFormat.PARTS : chosen);
        all.removeAll(leftOut);
        if (all.isEmpty()) {
            throw new BadInput(says.text("parts-noWords"));
        }
        return all;
    }
}
