package edgewright.desk.work;

import edgewright.chart.Counting;
import edgewright.chart.SideShape;
import edgewright.fit.GuideSentences;
import edgewright.fit.SideMultiple;
import edgewright.texts.Language;

/** Says in the trade's way how many stitches a side can have. */
public final class SideCountTexts {
    private SideCountTexts() {}

    /** The base round of a border of this shape, in this way of counting and saying so. */
    public static String ofBaseRound(SideShape shape, Counting counting, Language language) {
        return DeskTexts.of("counts.base", new GuideSentences(language).of(SideMultiple.of(shape, 0, counting)));
    }
}
