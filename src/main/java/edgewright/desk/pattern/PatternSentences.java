package edgewright.desk.pattern;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.said.Said;
import edgewright.words.said.SaidPattern;
import edgewright.words.said.SaidPattern.Saying;
import edgewright.words.said.SaidRounds;
import edgewright.words.said.SaidStitch;
import edgewright.words.tree.SideInstructions;

/** Says aloud what is read, in the words of the pattern. */
final class PatternSentences {
    private final Messages says;

    PatternSentences(Language language) {
        says = language.messages("desk/pattern");
    }

    /**
     * A stitch and the words that say it.
     *
     * @param words the piece in which it is told itself
     */
    String sentence(SaidPattern said, SaidStitch stitch, Saying words) {
        SaidRounds rounds = said.rounds().get(words.title());
        String text = rounds.lines()
                .get(words.piece().line())
                .words(words.piece().span())
                .replace(Language.NO_BREAK, ' ');
        SideInstructions side = rounds.rounds().get(0).stretch(stitch.side());
        boolean alone = side.before().isEmpty() && side.after().isEmpty();
        String where = alone
                ? says.text("all-along")
                : says.text("part-" + stitch.told().part());
        if (words.piece().span().said() instanceof Said.Stitches stitches && stitches.count() > 1) {
            return says.text(
                    "read-of",
                    number("round", stitch.place().round()),
                    arg("where", where),
                    arg("words", text),
                    number("nth", stitches.nth(stitch.told())),
                    number("of", stitches.count()));
        }
        return says.text("read", number("round", stitch.place().round()), arg("where", where), arg("words", text));
    }
}
