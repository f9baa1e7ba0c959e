package edgewright.desk.work;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Counting;
import edgewright.chart.SideShape;
import edgewright.fit.GuideSentences;
import edgewright.fit.SideMultiple;
import edgewright.texts.Language;
import edgewright.texts.Messages;

/** Says in the trade's way how many stitches a side can have. */
public final class SideCountTexts {
    private SideCountTexts() {}

    /** The base round of a border of this shape, in this way of counting and saying so. */
    public static String ofBaseRound(SideShape shape, Counting counting, Language language) {
        Messages says = language.messages("desk/work");
        return says.text(
                "counts-base", arg("counts", new GuideSentences(language).of(SideMultiple.of(shape, 0, counting))));
    }
}
