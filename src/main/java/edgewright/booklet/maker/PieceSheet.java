package edgewright.booklet.maker;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletTexts;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.FormLine;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.chart.Side;
import edgewright.fit.FitPlan;
import edgewright.fit.FitSentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The worksheet of one piece: filled in as far as its counts are known, with lines for the counts that are yet to come. */
final class PieceSheet {
    private final TextSetter setter;
    private final BookletOptions options;
    private final FitPlan plan;
    private final FitSentences says;

    /** @param plan how the piece of the pattern is put right */
    PieceSheet(TextSetter setter, BookletOptions options, FitPlan plan) {
        this.setter = setter;
        this.options = options;
        this.says = new FitSentences(options.language());
        this.plan = plan.in(options.counting());
    }

    List<ColumnSlice> set(Tag parent, Anchor anchor) {
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        strips.set(0, strips.get(0).onNewPage(true));
        strips.addAll(setter.paragraph(parent, BookletTexts.of("worksheet.how.piece")));
        strips.addAll(counted(parent));
        strips.addAll(change(parent));
        strips.addAll(check(parent));
        return strips;
    }

    private List<ColumnSlice> counted(Tag parent) {
        String where = WorksheetPlan.name(plan.question().round());
        List<ColumnSlice> strips = stage(parent, BookletTexts.of("worksheet.counted.piece", where));
        strips.addAll(SizePages.wide(setter, parent, BookletTexts.of("counts.caption." + options.counting())));
        for (Side side : options.hand().workingOrder()) {
            int change = plan.targets().change(side);
            strips.addAll(line(side)
                    .field(
                            BookletTexts.of("worksheet.counted"),
                            number(plan.question().counts().get(side)),
                            numberPt())
                    .field(
                            BookletTexts.of("worksheet.minusTarget"),
                            number(shown(plan.targets().wanted().get(side))),
                            numberPt())
                    .field(BookletTexts.of("worksheet.equalsChange"), number(Math.abs(change)), numberPt())
                    .say(change == 0 ? "" : BookletTexts.of(change < 0 ? "worksheet.lose" : "worksheet.add"))
                    .set(parent));
        }
        return kept(strips);
    }

    private List<ColumnSlice> change(Tag parent) {
        List<ColumnSlice> strips =
                stage(parent, BookletTexts.of("worksheet.changeIn", WorksheetPlan.name(plan.changing())));
        for (Side side : options.hand().workingOrder()) {
            if (plan.targets().change(side) != 0) {
                strips.addAll(SizePages.apart(setter, parent, says.way(plan, side)));
            }
        }
        return kept(strips);
    }

    private List<ColumnSlice> check(Tag parent) {
        List<ColumnSlice> strips =
                stage(parent, BookletTexts.of("worksheet.check", WorksheetPlan.name(plan.changing())));
        for (Side side : options.hand().workingOrder()) {
            strips.addAll(line(side)
                    .field(BookletTexts.of("worksheet.counted"), numberPt())
                    .field(
                            BookletTexts.of("worksheet.target"),
                            number(shown(plan.stitchesAfterwards().get(side))),
                            numberPt())
                    .tick(BookletTexts.of("worksheet.right"))
                    .set(parent));
        }
        return kept(strips);
    }

    private int shown(int stitches) {
        return options.counting().shown(stitches);
    }

    private static Optional<String> number(int count) {
        return Optional.of(Integer.toString(count));
    }

    private FormLine line(Side side) {
        return WorksheetPages.line(setter, side);
    }

    private double numberPt() {
        return WorksheetPages.numberPt(setter);
    }

    private List<ColumnSlice> stage(Tag parent, String heading) {
        return new ArrayList<>(setter.sectionHeading(parent, heading, Optional.empty()));
    }

    /** One column of large type has no room for a step as a whole. */
    private List<ColumnSlice> kept(List<ColumnSlice> strips) {
        return WorksheetPages.kept(setter, strips);
    }
}
