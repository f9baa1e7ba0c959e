package edgewright.booklet.maker;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.FormLine;
import edgewright.booklet.page.LabelledEntries;
import edgewright.booklet.page.PageColour;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.TableSetter;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyle;
import edgewright.booklet.page.TextStyles;
import edgewright.chart.HookHand;
import edgewright.chart.Side;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.texts.Messages;
import edgewright.words.page.RoundParts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Sets what the guide says of one round, under a hairline, with boxes to tick. */
final class GuideBlock {
    private static final double TICK_STEP_PT = 66;
    private static final int TICKS_IN_ONE_COLUMN = 3;

    private final TextSetter setter;
    private final Messages says;
    private final TextStyles styles;
    private final PageLayout sheet;
    private final LabelledEntries entries;
    private final HookHand hand;

    GuideBlock(TextSetter setter, HookHand hand) {
        this.setter = setter;
        this.says = setter.says();
        this.styles = setter.styles();
        this.sheet = setter.sheet();
        this.entries = new LabelledEntries(setter);
        this.hand = hand;
    }

    /**
     * What is worked in a round, in one of the terms.
     *
     * @param tag of BCP 47
     */
    record Told(Terms terms, String tag, RoundParts parts) {}

    /** @param told in each of the terms, at least one; what is the same in all of them is set once */
    List<ColumnSlice> set(Tag parent, GuideFacts.RoundFacts facts, List<Told> told) {
        List<ColumnSlice> strips = new ArrayList<>(head(parent, facts));
        Tag list = parent.child(StructureRole.LIST);
        if (told.get(0).parts() instanceof RoundParts.OfAllSides) {
            strips.addAll(ofAllSides(list, told));
        } else {
            told.forEach(each -> strips.addAll(ofEachSide(list, (RoundParts.OfEachSide) each.parts())));
        }
        strips.addAll(prose(list, says.text("guide-seen"), facts.seen()));
        strips.addAll(prose(list, says.text("guide-back"), facts.back()));
        strips.addAll(counts(parent, facts));
        strips.addAll(ticks(parent));
        // Where the type is large a block may be higher than a page, and then ends between two parts.
        strips.replaceAll(strip ->
                strip.breaking(sheet.oneColumn() && strip.below() == Break.FREE ? Break.UNWELCOME : Break.NEVER));
        strips.set(0, strips.get(0).breaking(Break.NEVER).spaced(sheet.halfLinePt()));
        int last = strips.size() - 1;
        strips.set(last, strips.get(last).breaking(Break.FREE));
        return strips;
    }

    private List<ColumnSlice> ofAllSides(Tag list, List<Told> told) {
        boolean alone = ((RoundParts.OfAllSides) told.get(0).parts()).isGroupAlone();
        List<ColumnSlice> strips = new ArrayList<>();
        strips.addAll(row(list, says.text("guide-start"), told, false, RoundParts.OfAllSides::start));
        strips.addAll(row(list, says.text("guide-fromCorner"), told, true, RoundParts.OfAllSides::fromCorner));
        strips.addAll(row(
                list, says.text(alone ? "guide-eachSide" : "guide-repeat"), told, true, RoundParts.OfAllSides::repeat));
        strips.addAll(row(list, says.text("guide-toCorner"), told, true, RoundParts.OfAllSides::toCorner));
        strips.addAll(row(list, says.text("guide-corner"), told, true, RoundParts.OfAllSides::corner));
        return strips;
    }

    /** A row that says the same in all terms, or one for each. */
    private List<ColumnSlice> row(
            Tag list, String label, List<Told> told, boolean stitches, Function<RoundParts.OfAllSides, String> of) {
        List<String> texts = told.stream()
                .map(each -> of.apply((RoundParts.OfAllSides) each.parts()))
                .toList();
        if (texts.stream().distinct().count() == 1) {
            return row(list, label, texts.get(0), stitches);
        }
        List<ColumnSlice> strips = new ArrayList<>();
        for (int i = 0; i < told.size(); i++) {
            Told each = told.get(i);
            String words = says.text("guide-inTerms-" + each.terms(), arg("words", texts.get(i)));
            strips.addAll(row(list.inLanguage(each.tag()), label, words, stitches));
        }
        return strips;
    }

    /** Round, yarn and hook on one line; where there is but one column on a line each. */
    private List<ColumnSlice> head(Tag parent, GuideFacts.RoundFacts facts) {
        TextStyle label = styles.label();
        TextStyle bold = styles.strong();
        double baseline = sheet.halfLinePt() + label.baselinePt();
        Yarn yarn = facts.yarn();
        String named = says.text("guide-yarn", arg("id", yarn.id()), arg("name", yarn.name()));
        Optional<String> hook = facts.hook();
        List<Piece> pieces = new ArrayList<>();
        pieces.add(Piece.ornament(
                PageItem.Box.filled(0, 0, sheet.widthPt(), 0.6, PageColour.LINE),
                setter.chips().of(yarn, 0, sheet.halfLinePt())));
        String round = says.text("guide-round", number("round", facts.round()));
        pieces.add(Piece.of(
                parent.child(StructureRole.H3), setter.words(setter.chips().indentPt(), baseline, round, label)));
        List<ColumnSlice> strips = new ArrayList<>();
        if (sheet.oneColumn()) {
            strips.add(
                    ColumnSlice.of(sheet.halfLinePt() + sheet.linePt(), pieces).breaking(Break.NEVER));
            strips.addAll(setter.paragraph(
                    parent,
                    hook.map(size -> says.text("guide-yarnAndHook", arg("yarn", named), arg("hook", size)))
                            .orElse(named)));
            return strips;
        }
        Optional<PageItem.Words> hookWords =
                hook.map(words -> setter.wordsTo(sheet.widthPt(), baseline, words, styles.small()));
        double hookPt = hookWords
                .map(words -> words.widthPt() + setter.chips().indentPt())
                .orElse(0.0);
        pieces.add(Piece.of(
                parent.child(StructureRole.PARAGRAPH),
                setter.words(sheet.labelPt(), baseline, setter.fitted(named, bold, sheet.textPt() - hookPt), bold)));
        hookWords.ifPresent(words -> pieces.add(Piece.of(parent.child(StructureRole.PARAGRAPH), words)));
        strips.add(ColumnSlice.of(sheet.halfLinePt() + sheet.linePt(), pieces));
        return strips;
    }

    /** The words for each side in a round that puts the counts right. */
    private List<ColumnSlice> ofEachSide(Tag list, RoundParts.OfEachSide parts) {
        Tag item = list.child(StructureRole.ITEM);
        Tag body = item.child(StructureRole.BODY);
        return entries.entry(
                item.child(StructureRole.LABEL),
                says.text("guide-sides"),
                styles.smallStrong(),
                List.of(),
                0,
                parts.lines().stream()
                        .map(line -> new LabelledEntries.Line(
                                body.child(StructureRole.PARAGRAPH), line, styles.text(), true))
                        .toList());
    }

    private List<ColumnSlice> prose(Tag list, String label, String text) {
        return row(list, label, text, false);
    }

    /** Nothing where there is nothing to say. */
    private List<ColumnSlice> row(Tag list, String label, String text, boolean stitches) {
        if (text.isEmpty()) {
            return List.of();
        }
        Tag item = list.child(StructureRole.ITEM);
        Tag labelTag = item.child(StructureRole.LABEL);
        LabelledEntries.Line line =
                new LabelledEntries.Line(item.child(StructureRole.BODY), text, styles.text(), stitches);
        return sheet.oneColumn()
                ? entries.runIn(labelTag, says.text("guide-runIn", arg("label", label)), styles.smallStrong(), line)
                : entries.entry(labelTag, label, styles.smallStrong(), List.of(), 0, List.of(line));
    }

    private List<ColumnSlice> counts(Tag parent, GuideFacts.RoundFacts facts) {
        TableSetter tables = new TableSetter(setter);
        List<ColumnSlice> table = tables.tables(
                parent,
                facts.counted(),
                List.of(facts.counts()),
                sheet.labelPt() - tables.indentPt(),
                sheet.textPt() + 2 * tables.indentPt());
        List<ColumnSlice> strips = new ArrayList<>();
        for (ColumnSlice strip : table) {
            // Blocks are kept whole, so no head need come again.
            strips.add(strip.repeating(List.of()));
        }
        return labelled(parent, says.text("guide-count"), styles.smallStrong().baselinePt(), strips);
    }

    /** A box for each side as it is done, and one for the round when it is counted; in columns. */
    private List<ColumnSlice> ticks(Tag parent) {
        TextStyle small = styles.small();
        Tag list = parent.child(StructureRole.LIST);
        List<String> done = new ArrayList<>();
        for (Side side : hand.workingOrder()) {
            done.add(says.text("side-" + side));
        }
        done.add(says.text("guide-counted"));
        double tick = FormLine.tickPt(sheet);
        double height = sheet.linePt() + sheet.halfLinePt();
        double baseline = sheet.halfLinePt() + small.baselinePt();
        double top = FormLine.besidePt(sheet, baseline);
        int inLine = sheet.oneColumn() ? TICKS_IN_ONE_COLUMN : done.size();
        double left = sheet.oneColumn() ? sheet.widthPt() / (inLine + 1) : sheet.labelPt();
        double step = sheet.oneColumn() ? left : TICK_STEP_PT;
        List<ColumnSlice> strips = new ArrayList<>();
        for (int first = 0; first < done.size(); first += inLine) {
            List<Piece> pieces = new ArrayList<>();
            for (int i = first; i < Math.min(first + inLine, done.size()); i++) {
                double x = left + (i - first) * step;
                Tag item = list.child(StructureRole.ITEM).child(StructureRole.BODY);
                pieces.add(Piece.ornament(FormLine.tick(sheet, x, top)));
                pieces.add(Piece.of(item, setter.words(x + 1.5 * tick, baseline, done.get(i), small)));
            }
            strips.add(ColumnSlice.of(height, pieces).breaking(Break.NEVER));
        }
        return beside(parent, says.text("guide-done"), baseline, strips);
    }

    /** With a label at the left of the first line, or over it where there is but one column. */
    private List<ColumnSlice> labelled(Tag parent, String label, double baselinePt, List<ColumnSlice> strips) {
        if (!sheet.oneColumn()) {
            return beside(parent, label, baselinePt, strips);
        }
        List<ColumnSlice> labelled = new ArrayList<>();
        setter.paragraph(parent.child(StructureRole.PARAGRAPH), label, styles.smallStrong(), 0, sheet.widthPt())
                .forEach(line -> labelled.add(line.breaking(Break.NEVER)));
        labelled.addAll(strips);
        return labelled;
    }

    /** With a label at the left of the first line. */
    private List<ColumnSlice> beside(Tag parent, String label, double baselinePt, List<ColumnSlice> strips) {
        List<ColumnSlice> labelled = new ArrayList<>(strips);
        Tag tag = parent.child(StructureRole.PARAGRAPH);
        ColumnSlice first = strips.get(0);
        List<Piece> pieces = new ArrayList<>();
        pieces.add(Piece.of(tag, setter.words(0, baselinePt, label, styles.smallStrong())));
        pieces.addAll(first.pieces());
        labelled.set(
                0,
                ColumnSlice.of(first.heightPt(), pieces)
                        .spaced(first.spaceAbovePt())
                        .breaking(first.below()));
        return labelled;
    }
}
