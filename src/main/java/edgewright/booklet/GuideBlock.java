package edgewright.booklet;

import edgewright.booklet.Strip.Break;
import edgewright.booklet.Strip.Piece;
import edgewright.chart.Hand;
import edgewright.chart.Side;
import edgewright.chart.Yarn;
import edgewright.words.RoundParts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** Sets what the guide says of one round, under a hairline, with boxes to tick. */
final class GuideBlock {
    private static final double TICK_STEP_PT = 66;
    private static final int TICKS_IN_ONE_COLUMN = 3;

    private final TextSetter setter;
    private final Styles styles;
    private final Sheet sheet;
    private final Entries entries;
    private final Hand hand;

    GuideBlock(TextSetter setter, Hand hand) {
        this.setter = setter;
        this.styles = setter.styles();
        this.sheet = setter.sheet();
        this.entries = new Entries(setter);
        this.hand = hand;
    }

    List<Strip> set(Tag parent, GuideFacts.RoundFacts facts, RoundParts parts) {
        List<Strip> strips = new ArrayList<>(head(parent, facts));
        Tag list = parent.child(StandardStructureTypes.L);
        strips.addAll(stitches(list, "guide.start", parts.start()));
        boolean alike = parts.fromCorner().isEmpty() && parts.toCorner().isEmpty();
        strips.addAll(stitches(list, "guide.fromCorner", parts.fromCorner()));
        strips.addAll(stitches(list, alike ? "guide.eachSide" : "guide.repeat", parts.repeat()));
        strips.addAll(stitches(list, "guide.toCorner", parts.toCorner()));
        if (parts.changes().isEmpty()) {
            strips.addAll(stitches(list, "guide.corner", afterColon(parts.corner())));
        }
        strips.addAll(changes(list, parts));
        strips.addAll(stitches(list, "guide.end", parts.end()));
        strips.addAll(prose(list, "guide.seen", facts.seen()));
        strips.addAll(prose(list, "guide.back", facts.back()));
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

    /** What stands beside the label needs no name of its own. */
    private static String afterColon(String named) {
        return named.substring(named.indexOf(':') + 1).strip();
    }

    /** Round, yarn and hook on one line; where there is but one column on a line each. */
    private List<Strip> head(Tag parent, GuideFacts.RoundFacts facts) {
        Style label = styles.label();
        Style bold = styles.strong();
        double baseline = sheet.halfLinePt() + label.baselinePt();
        Yarn yarn = facts.yarn();
        String named = Texts.of("guide.yarn", yarn.id(), yarn.name());
        Optional<String> hook = facts.hook().map(size -> Texts.of("guide.hook", size));
        List<Piece> pieces = new ArrayList<>();
        pieces.add(Piece.ornament(
                Ink.Box.filled(0, 0, sheet.widthPt(), 0.6, Tone.LINE),
                setter.chips().of(yarn, 0, sheet.halfLinePt())));
        pieces.add(Piece.of(
                parent.child(StandardStructureTypes.H3),
                setter.words(setter.chips().indentPt(), baseline, Texts.of("guide.round", facts.round()), label)));
        List<Strip> strips = new ArrayList<>();
        if (sheet.oneColumn()) {
            strips.add(Strip.of(sheet.halfLinePt() + sheet.linePt(), pieces).breaking(Break.NEVER));
            strips.addAll(setter.paragraph(
                    parent,
                    hook.map(size -> Texts.of("guide.yarnAndHook", named, size)).orElse(named)));
            return strips;
        }
        double hookPt = 0;
        Optional<Ink.Words> hookWords =
                hook.map(words -> setter.wordsTo(sheet.widthPt(), baseline, words, styles.small()));
        if (hookWords.isPresent()) {
            hookPt = hookWords.get().widthPt() + setter.chips().indentPt();
        }
        pieces.add(Piece.of(
                parent.child(StandardStructureTypes.P),
                setter.words(sheet.labelPt(), baseline, setter.fitted(named, bold, sheet.textPt() - hookPt), bold)));
        hookWords.ifPresent(words -> pieces.add(Piece.of(parent.child(StandardStructureTypes.P), words)));
        strips.add(Strip.of(sheet.halfLinePt() + sheet.linePt(), pieces));
        return strips;
    }

    private List<Strip> stitches(Tag list, String label, String text) {
        return row(list, label, text, true);
    }

    /** The words for each side in a round that puts the counts right. */
    private List<Strip> changes(Tag list, RoundParts parts) {
        if (parts.changes().isEmpty()) {
            return List.of();
        }
        Tag item = list.child(StandardStructureTypes.LI);
        Tag body = item.child(StandardStructureTypes.L_BODY);
        return entries.entry(
                item.child(StandardStructureTypes.LBL),
                Texts.of("guide.sides"),
                styles.smallStrong(),
                List.of(),
                0,
                parts.changes().stream()
                        .map(line -> new Entries.Line(body.child(StandardStructureTypes.P), line, styles.text(), true))
                        .toList());
    }

    private List<Strip> prose(Tag list, String label, String text) {
        return row(list, label, text, false);
    }

    /** Nothing where there is nothing to say. */
    private List<Strip> row(Tag list, String label, String text, boolean stitches) {
        if (text.isEmpty()) {
            return List.of();
        }
        Tag item = list.child(StandardStructureTypes.LI);
        Tag labelTag = item.child(StandardStructureTypes.LBL);
        Entries.Line line = new Entries.Line(item.child(StandardStructureTypes.L_BODY), text, styles.text(), stitches);
        return sheet.oneColumn()
                ? entries.runIn(labelTag, Texts.of("guide.runIn", Texts.of(label)), styles.smallStrong(), line)
                : entries.entry(labelTag, Texts.of(label), styles.smallStrong(), List.of(), 0, List.of(line));
    }

    private List<Strip> counts(Tag parent, GuideFacts.RoundFacts facts) {
        TableSetter tables = new TableSetter(setter);
        List<Strip> table = tables.tables(
                parent,
                facts.counted(),
                List.of(facts.counts()),
                sheet.labelPt() - tables.indentPt(),
                sheet.textPt() + 2 * tables.indentPt());
        List<Strip> strips = new ArrayList<>();
        for (Strip strip : table) {
            // Blocks are kept whole, so no head need come again.
            strips.add(strip.repeating(List.of()));
        }
        return labelled(parent, "guide.count", styles.smallStrong().baselinePt(), strips);
    }

    /** A box for each side as it is done, and one for the round when it is counted; in columns. */
    private List<Strip> ticks(Tag parent) {
        Style small = styles.small();
        Tag list = parent.child(StandardStructureTypes.L);
        List<String> done = new ArrayList<>();
        for (Side side : hand.workingOrder()) {
            done.add(Texts.of("side." + side));
        }
        done.add(Texts.of("guide.counted"));
        double tick = PencilLine.tickPt(sheet);
        double height = sheet.linePt() + sheet.halfLinePt();
        double baseline = sheet.halfLinePt() + small.baselinePt();
        double top = PencilLine.besidePt(sheet, baseline);
        int inLine = sheet.oneColumn() ? TICKS_IN_ONE_COLUMN : done.size();
        double left = sheet.oneColumn() ? sheet.widthPt() / (inLine + 1) : sheet.labelPt();
        double step = sheet.oneColumn() ? left : TICK_STEP_PT;
        List<Strip> strips = new ArrayList<>();
        for (int first = 0; first < done.size(); first += inLine) {
            List<Piece> pieces = new ArrayList<>();
            for (int i = first; i < Math.min(first + inLine, done.size()); i++) {
                double x = left + (i - first) * step;
                Tag item = list.child(StandardStructureTypes.LI).child(StandardStructureTypes.L_BODY);
                pieces.add(Piece.ornament(PencilLine.tick(sheet, x, top)));
                pieces.add(Piece.of(item, setter.words(x + 1.5 * tick, baseline, done.get(i), small)));
            }
            strips.add(Strip.of(height, pieces).breaking(Break.NEVER));
        }
        return beside(parent, "guide.done", baseline, strips);
    }

    /** With a label at the left of the first line, or over it where there is but one column. */
    private List<Strip> labelled(Tag parent, String label, double baselinePt, List<Strip> strips) {
        if (!sheet.oneColumn()) {
            return beside(parent, label, baselinePt, strips);
        }
        List<Strip> labelled = new ArrayList<>();
        setter.paragraph(
                        parent.child(StandardStructureTypes.P),
                        Texts.of(label),
                        styles.smallStrong(),
                        0,
                        sheet.widthPt())
                .forEach(line -> labelled.add(line.breaking(Break.NEVER)));
        labelled.addAll(strips);
        return labelled;
    }

    /** With a label at the left of the first line. */
    private List<Strip> beside(Tag parent, String label, double baselinePt, List<Strip> strips) {
        List<Strip> labelled = new ArrayList<>(strips);
        Tag tag = parent.child(StandardStructureTypes.P);
        Strip first = strips.get(0);
        List<Piece> pieces = new ArrayList<>();
        pieces.add(Piece.of(tag, setter.words(0, baselinePt, Texts.of(label), styles.smallStrong())));
        pieces.addAll(first.pieces());
        labelled.set(
                0,
                Strip.of(first.heightPt(), pieces).spaced(first.spaceAbovePt()).breaking(first.below()));
        return labelled;
    }
}
