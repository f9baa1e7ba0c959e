package edgewright.booklet;

import edgewright.booklet.Strip.Break;
import edgewright.booklet.Strip.Piece;
import edgewright.chart.Side;
import edgewright.chart.Yarn;
import edgewright.words.RoundParts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** Sets what the guide says of one round, under a hairline, with boxes to tick. */
final class GuideBlock {
    private static final double TICK_PT = 9.5;
    private static final double TICK_STEP_PT = 66;
    private static final double UNDER_RULE_PT = 6;

    private final TextSetter setter;
    private final Styles styles;
    private final Sheet sheet;
    private final Entries entries;

    GuideBlock(TextSetter setter) {
        this.setter = setter;
        this.styles = setter.styles();
        this.sheet = setter.sheet();
        this.entries = new Entries(setter);
    }

    List<Strip> set(Tag parent, GuideFacts.RoundFacts facts, RoundParts parts) {
        List<Strip> strips = new ArrayList<>(List.of(head(parent, facts)));
        Tag list = parent.child(StandardStructureTypes.L);
        strips.addAll(stitches(list, "guide.start", parts.start().isEmpty() ? facts.start() : parts.start()));
        boolean alike = parts.fromCorner().isEmpty() && parts.toCorner().isEmpty();
        strips.addAll(stitches(list, "guide.fromCorner", parts.fromCorner()));
        strips.addAll(stitches(list, alike ? "guide.eachSide" : "guide.repeat", parts.repeat()));
        strips.addAll(stitches(list, "guide.toCorner", parts.toCorner()));
        strips.addAll(stitches(list, "guide.corner", afterColon(parts.corner()) + ". " + parts.sides()));
        strips.addAll(stitches(list, "guide.end", parts.end()));
        strips.addAll(prose(list, "guide.seen", facts.seen()));
        strips.addAll(prose(list, "guide.back", facts.back()));
        List<Strip> counts = counts(parent, facts);
        counts.set(0, counts.get(0).spaced(sheet.halfLinePt() / 2));
        strips.addAll(counts);
        strips.add(ticks(parent));
        strips.replaceAll(strip -> strip.breaking(Break.NEVER));
        int last = strips.size() - 1;
        strips.set(last, strips.get(last).breaking(Break.FREE));
        strips.set(0, strips.get(0).spaced(sheet.linePt() - UNDER_RULE_PT));
        return strips;
    }

    /** What stands beside the label needs no name of its own. */
    private static String afterColon(String named) {
        return named.substring(named.indexOf(':') + 1).strip();
    }

    private Strip head(Tag parent, GuideFacts.RoundFacts facts) {
        Yarn yarn = facts.yarn();
        Style label = styles.label();
        Style bold = styles.strong();
        List<Piece> pieces = new ArrayList<>();
        pieces.add(Piece.ornament(
                Ink.Box.filled(0, 0, sheet.widthPt(), 0.6, Tone.LINE),
                setter.chips().of(yarn, 0, UNDER_RULE_PT)));
        double baseline = UNDER_RULE_PT + label.baselinePt();
        pieces.add(Piece.of(
                parent.child(StandardStructureTypes.H3),
                setter.words(setter.chips().indentPt(), baseline, Texts.of("guide.round", facts.round()), label)));
        String named = Texts.of("guide.yarn", yarn.id(), yarn.name());
        double hookPt = 0;
        List<Piece> hook = new ArrayList<>();
        if (facts.hook().isPresent()) {
            Ink.Words words = setter.wordsTo(
                    sheet.widthPt(),
                    baseline,
                    Texts.of("guide.hook", facts.hook().get()),
                    styles.small());
            hookPt = words.widthPt() + setter.chips().indentPt();
            hook.add(Piece.of(parent.child(StandardStructureTypes.P), words));
        }
        pieces.add(Piece.of(
                parent.child(StandardStructureTypes.P),
                setter.words(sheet.labelPt(), baseline, setter.fitted(named, bold, sheet.textPt() - hookPt), bold)));
        pieces.addAll(hook);
        return Strip.of(UNDER_RULE_PT + sheet.linePt(), pieces);
    }

    private List<Strip> stitches(Tag list, String label, String text) {
        return row(list, label, text, true);
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
        return entries.entry(
                item.child(StandardStructureTypes.LBL),
                Texts.of(label),
                styles.smallStrong(),
                List.of(),
                0,
                List.of(new Entries.Line(item.child(StandardStructureTypes.L_BODY), text, styles.text(), stitches)));
    }

    private List<Strip> counts(Tag parent, GuideFacts.RoundFacts facts) {
        List<Strip> table = new TableSetter(setter)
                .table(
                        parent,
                        facts.counted(),
                        List.of(facts.counts()),
                        sheet.labelPt() - TableSetter.INDENT_PT,
                        sheet.textPt());
        List<Strip> strips = new ArrayList<>();
        for (Strip strip : table) {
            // Blocks are kept whole, so no head need come again.
            strips.add(strip.repeating(List.of()));
        }
        strips.set(0, labelled(parent, "guide.count", styles.smallStrong().baselinePt(), strips.get(0)));
        return strips;
    }

    /** A box for each side as it is done, and one for the round when it is counted. */
    private Strip ticks(Tag parent) {
        Style small = styles.small();
        Tag list = parent.child(StandardStructureTypes.L);
        List<String> done = new ArrayList<>();
        for (Side side : Side.values()) {
            done.add(Texts.of("side." + side));
        }
        done.add(Texts.of("guide.counted"));
        List<Piece> pieces = new ArrayList<>();
        double height = sheet.linePt() + sheet.halfLinePt();
        double top = (height - TICK_PT) / 2 + 1;
        double baseline = sheet.halfLinePt() / 2 + 1 + small.baselinePt();
        for (int i = 0; i < done.size(); i++) {
            double x = sheet.labelPt() + i * TICK_STEP_PT;
            Tag item = list.child(StandardStructureTypes.LI).child(StandardStructureTypes.L_BODY);
            pieces.add(Piece.ornament(tick(x, top)));
            pieces.add(Piece.of(item, setter.words(x + TICK_PT + 5, baseline, done.get(i), small)));
        }
        return labelled(parent, "guide.done", baseline, Strip.of(height, pieces));
    }

    private Strip labelled(Tag parent, String label, double baselinePt, Strip strip) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(Piece.of(
                parent.child(StandardStructureTypes.P),
                setter.words(0, baselinePt, Texts.of(label), styles.smallStrong())));
        pieces.addAll(strip.pieces());
        return Strip.of(strip.heightPt(), pieces);
    }

    /** An empty box. */
    static Ink.Box tick(double xPt, double yPt) {
        return new Ink.Box(xPt + 0.5, yPt, TICK_PT, TICK_PT, Optional.empty(), Optional.of(Tone.INK), 0.8);
    }
}
