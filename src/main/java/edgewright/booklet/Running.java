package edgewright.booklet;

import edgewright.chart.Terms;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands around the column on every page: title and terms at the head, designer and page at the foot, and that it is a
 * draft if it is one.
 */
final class Running implements Press.RunningMatter {
    private static final double HEAD_BASELINE_MM = 15;
    private static final double FOOT_BASELINE_MM = 12;

    private final TextSetter setter;
    private final String title;
    private final String designer;
    private final Terms terms;
    private final boolean draft;

    Running(TextSetter setter, String title, String designer, Terms terms, boolean draft) {
        this.setter = setter;
        this.title = title;
        this.designer = designer;
        this.terms = terms;
        this.draft = draft;
    }

    @Override
    public List<Ink> around(int page, int pages) {
        Sheet sheet = setter.sheet();
        Style small = setter.styles().small();
        Style strong = setter.styles().smallStrong();
        double head = HEAD_BASELINE_MM * Sheet.PT_PER_MM;
        double foot = sheet.pageHeightPt() - FOOT_BASELINE_MM * Sheet.PT_PER_MM;
        double half = sheet.widthPt() * (draft ? 0.38 : 0.7);
        List<Ink> around = new ArrayList<>();
        if (page > 1) {
            around.add(setter.words(0, head, setter.fitted(title, small, half), small));
        }
        around.add(setter.wordsTo(sheet.widthPt(), head, Texts.of("terms." + terms), strong));
        if (draft) {
            around.addAll(draftMark(head));
        }
        around.add(setter.words(0, foot, setter.fitted(designer, small, sheet.widthPt() * 0.7), small));
        around.add(setter.wordsTo(sheet.widthPt(), foot, Texts.of("page", page, pages), small));
        return around;
    }

    private List<Ink> draftMark(double baselinePt) {
        Style style =
                new Style(setter.styles().strong().face(), 12, setter.sheet().linePt(), Tone.INK);
        Ink.Words words = setter.words(0, baselinePt, Texts.of("draft"), style);
        double left = (setter.sheet().widthPt() - words.widthPt()) / 2;
        Ink.Box box = new Ink.Box(
                left - 8, baselinePt - 12.5, words.widthPt() + 16, 17, Optional.empty(), Optional.of(Tone.INK), 1.2);
        return List.of(box, words.moved(left, 0));
    }
}
