package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.choice;

import edgewright.chart.Technique;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.TextBlock;
import java.util.ArrayList;
import java.util.List;

/** How a round is begun and closed, in the technique that the designer chose. */
final class JoiningWording {
    private final Messages says;
    private final Messages phrases;
    private final Technique technique;

    JoiningWording(Language language, Technique technique) {
        this.says = language.messages("words/write");
        this.phrases = language.messages("words/phrases");
        this.technique = technique;
    }

    /**
     * A paragraph on beginning and one on closing, for each of the places.
     *
     * @param atCorner whether some rounds begin at a corner
     * @param alongSide whether some begin along a side
     */
    List<TextBlock> blocks(boolean atCorner, boolean alongSide) {
        List<TextBlock> blocks = new ArrayList<>();
        String join = says.text("joining-" + technique.join());
        String ends = says.text("joining-ends");
        if (!alongSide) {
            blocks.add(paragraph(says.text("joining-atCorner"), join, says.text("joining-apart")));
            blocks.add(paragraph(close(false), ends));
            return blocks;
        }
        blocks.add(paragraph(
                says.text("joining-alongSide"),
                says.text("joinAlong-" + technique.join()),
                says.text("joining-around")));
        if (atCorner) {
            blocks.add(paragraph(says.text("joining-someAtCorner"), join));
        }
        blocks.add(paragraph(close(true), ends));
        if (atCorner) {
            blocks.add(paragraph(says.text("joining-closeSomeAtCorner")));
        }
        return blocks;
    }

    private String close(boolean alongSide) {
        var where = arg("where", says.text(alongSide ? "closeAt-SIDE" : "closeAt-CORNER"));
        return technique.close() == Technique.Close.SLIP
                ? says.text("close-SLIP", where)
                : says.text(
                        "close-INVISIBLE",
                        where,
                        arg("last", says.text(alongSide ? "close-lastStitch" : "close-lastChain")),
                        choice("join", technique.join()));
    }

    private TextBlock paragraph(String... sentences) {
        return new TextBlock.Prose(phrases.list("sentences-next", List.of(sentences)));
    }
}
