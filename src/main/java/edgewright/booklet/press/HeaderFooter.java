package edgewright.booklet.press;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.booklet.page.PageColour;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyle;
import edgewright.chart.Chart;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What stands around the column on every page: title and terms at the head; at the foot the line of copyright, or the designer
 * where there is none, version, date and page; and that it is a draft if it is one.
 */
public final class HeaderFooter implements Press.RunningMatter {
    private static final double HEAD_BASELINE_MM = 15;
    private static final double FOOT_BASELINE_MM = 12;

    private final TextSetter setter;
    private final Messages says;
    private final String title;
    private final String foot;
    private final PrintedTerms terms;
    private final boolean draft;

    public HeaderFooter(TextSetter setter, Chart chart, BookletOptions options, boolean draft) {
        this.setter = setter;
        this.says = setter.says();
        this.title = chart.title();
        this.foot = foot(setter, chart, options);
        this.terms = options.telling().terms();
        this.draft = draft;
    }

    private static String foot(TextSetter setter, Chart chart, BookletOptions options) {
        String owner = options.matter()
                .imprint()
                .map(imprint -> imprint.imprint().copyright())
                .filter(copyright -> !copyright.isEmpty())
                .orElse(chart.designer());
        String version = options.imprint().version().isEmpty()
                ? ""
                : setter.says()
                        .text("foot-version", arg("version", options.imprint().version()));
        return setter.language()
                .commas(Stream.of(owner, version, options.imprint().date())
                        .filter(text -> !text.isEmpty())
                        .toList());
    }

    @Override
    public List<PageItem> around(int page, int pages, PageLayout sheet) {
        double head = HEAD_BASELINE_MM * PageLayout.PT_PER_MM;
        double foot = sheet.pageHeightPt() - FOOT_BASELINE_MM * PageLayout.PT_PER_MM;
        List<PageItem> around = new ArrayList<>();
        if (draft) {
            around.addAll(draftMark(head, sheet));
        }
        if (sheet.oneColumn()) {
            // Who reads large print reads no heads and feet, but looks for the number of the page.
            around.add(setter.words(
                    0,
                    foot,
                    says.text("page", number("page", page), count("pages", pages)),
                    setter.styles().text()));
            return around;
        }
        TextStyle small = setter.styles().small();
        double half = sheet.widthPt() * (draft ? 0.38 : 0.7);
        if (page > 1) {
            around.add(setter.words(0, head, setter.fitted(title, small, half), small));
        }
        TextStyle strong = setter.styles().smallStrong();
        around.add(setter.wordsTo(sheet.widthPt(), head, says.text("terms-" + terms), strong));
        around.add(setter.words(0, foot, setter.fitted(this.foot, small, sheet.widthPt() * 0.7), small));
        around.add(setter.wordsTo(
                sheet.widthPt(), foot, says.text("page", number("page", page), count("pages", pages)), small));
        return around;
    }

    private List<PageItem> draftMark(double baselinePt, PageLayout sheet) {
        double size = Math.max(12, setter.styles().smallStrong().sizePt());
        TextStyle style = TextStyle.on(sheet, setter.styles().strong().face(), size, sheet.linePt(), PageColour.INK);
        PageItem.Words words = setter.words(0, baselinePt, says.text("draft"), style);
        double left = (sheet.widthPt() - words.widthPt()) / 2;
        PageItem.Box box = new PageItem.Box(
                left - 8,
                baselinePt - 1.04 * size,
                words.widthPt() + 16,
                1.42 * size,
                Optional.empty(),
                Optional.of(PageColour.INK),
                1.2);
        return List.of(box, words.moved(left, 0));
    }
}
