package edgewright.booklet.maker;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.FormLine;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.chart.Side;
import edgewright.fit.FitPlan;
import edgewright.fit.FitSentences;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The worksheet of one piece: filled in as far as its counts are known, with lines for the counts that are yet to come. */
final class PieceSheet {
    private final TextSetter setter;
    private final Messages says;
    private final BookletOptions options;
    private final FitPlan plan;
    private final FitSentences sentences;

    /** @param plan how the piece of the pattern is put right */
    PieceSheet(TextSetter setter, BookletOptions options, FitPlan plan) {
        this.setter = setter;
        this.says = setter.says();
        this.options = options;
        this.sentences = new FitSentences(options.language());
        this.plan = plan.in(options.counting());
    }

    List<ColumnSlice> set(Tag parent, Anchor anchor) {
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        strips.addAll(setter.paragraph(parent, says.text("worksheet-how-piece")));
        strips.addAll(counted(parent));
        strips.addAll(change(parent));
        strips.addAll(check(parent));
        return strips;
    }

    private List<ColumnSlice> counted(Tag parent) {
        String where = name(plan.question().round());
        List<ColumnSlice> strips = stage(parent, says.text("worksheet-counted-piece", arg("where", where)));
        strips.addAll(SizePages.wide(setter, parent, says.text("counts-caption-" + options.counting())));
        for (Side side : options.hand().workingOrder()) {
            int change = plan.targets().change(side);
            strips.addAll(line(side)
                    .field(
                            says.text("worksheet-counted"),
                            written(plan.question().counts().get(side)),
                            numberPt())
                    .field(
                            says.text("worksheet-minusTarget"),
                            written(shown(plan.targets().wanted().get(side))),
                            numberPt())
                    .field(says.text("worksheet-equalsChange"), written(Math.abs(change)), numberPt())
                    .say(change == 0 ? "" : says.text(change < 0 ? "worksheet-lose" : "worksheet-add"))
                    .set(parent));
        }
        return kept(strips);
    }

    private List<ColumnSlice> change(Tag parent) {
        List<ColumnSlice> strips = stage(parent, says.text("worksheet-changeIn", arg("where", name(plan.changing()))));
        for (Side side : options.hand().workingOrder()) {
            if (plan.targets().change(side) != 0) {
                strips.addAll(SizePages.apart(setter, parent, sentences.way(plan, side)));
            }
        }
        return kept(strips);
    }

    private List<ColumnSlice> check(Tag parent) {
        List<ColumnSlice> strips = stage(parent, says.text("worksheet-check", arg("where", name(plan.changing()))));
        for (Side side : options.hand().workingOrder()) {
            strips.addAll(line(side)
                    .field(says.text("worksheet-counted"), numberPt())
                    .field(
                            says.text("worksheet-target"),
                            written(shown(plan.stitchesAfterwards().get(side))),
                            numberPt())
                    .tick(says.text("worksheet-right"))
                    .set(parent));
        }
        return kept(strips);
    }

    private int shown(int stitches) {
        return options.counting().shown(stitches);
    }

    private String name(int round) {
        return WorksheetPlan.name(round, says);
    }

    private Optional<String> written(int count) {
        return Optional.of(options.language().count(count));
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
