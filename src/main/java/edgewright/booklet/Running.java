package edgewright.booklet;

import edgewright.chart.Chart;
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
    private final PrintedTerms terms;
    private final boolean draft;

    Running(TextSetter setter, Chart chart, BookletOptions options, boolean draft) {
        this.setter = setter;
        this.title = chart.title();
        this.designer = chart.designer();
        this.terms = options.telling().terms();
        this.draft = draft;
    }

    @Override
    public List<Ink> around(int page, int pages, Sheet sheet) {
        double head = HEAD_BASELINE_MM * Sheet.PT_PER_MM;
        double foot = sheet.pageHeightPt() - FOOT_BASELINE_MM * Sheet.PT_PER_MM;
        List<Ink> around = new ArrayList<>();
        if (draft) {
            around.addAll(draftMark(head, sheet));
        }
        if (sheet.oneColumn()) {
            // Who reads large print reads no heads and feet, but looks for the number of the page.
            around.add(setter.words(
                    0, foot, Texts.of("page", page, pages), setter.styles().text()));
            return around;
        }
        Style small = setter.styles().small();
        double half = sheet.widthPt() * (draft ? 0.38 : 0.7);
        if (page > 1) {
            around.add(setter.words(0, head, setter.fitted(title, small, half), small));
        }
        Style strong = setter.styles().smallStrong();
        around.add(setter.wordsTo(sheet.widthPt(), head, Texts.of("terms." + terms), strong));
        around.add(setter.words(0, foot, setter.fitted(designer, small, sheet.widthPt() * 0.7), small));
        around.add(setter.wordsTo(sheet.widthPt(), foot, Texts.of("page", page, pages), small));
        return around;
    }

    private List<Ink> draftMark(double baselinePt, Sheet sheet) {
        double size = Math.max(12, setter.styles().smallStrong().sizePt());
        Style style = Style.on(sheet, setter.styles().strong().face(), size, sheet.linePt(), Tone.INK);
        Ink.Words words = setter.words(0, baselinePt, Texts.of("draft"), style);
        double left = (sheet.widthPt() - words.widthPt()) / 2;
        Ink.Box box = new Ink.Box(
                left - 8,
                baselinePt - 1.04 * size,
                words.widthPt() + 16,
                1.42 * size,
                Optional.empty(),
                Optional.of(Tone.INK),
                1.2);
        return List.of(box, words.moved(left, 0));
    }
}
