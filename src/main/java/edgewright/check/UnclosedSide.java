package edgewright.check;

import edgewright.chart.BorderShape;
import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A side with a count in the base round that is not A + B and a whole number of repeats: the last repeat does not come out
 * before the corner, or there are not even A + B stitches.
 */
final class UnclosedSide implements Rule<Violation.UnclosedSide> {
    @Override
    public String id() {
        return "unclosed-side";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    /** One breach for each side that does not close, in the order in which they are worked. */
    List<RuleBreach<?>> breaches(BorderShape border, PerSide<Integer> baseStitches) {
        List<RuleBreach<?>> breaches = new ArrayList<>();
        for (Side side : Side.values()) {
            int stitches = baseStitches.get(side);
            SideShape shape = border.on(side);
            if (!shape.closes(0, stitches)) {
                breaches.add(new RuleBreach<>(this, new Violation.UnclosedSide(side, stitches, shape)));
            }
        }
        return breaches;
    }

    /** Columns beside the repeat put in or taken out, so that A + B fits the count of this side and opens no other side. */
    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.UnclosedSide unclosed) {
        SideShape shape = unclosed.shape();
        int more = Math.floorMod(unclosed.stitches() - shape.fewestStitches(0), shape.w());
        List<Stream<RemedyEdit>> remedies = new ArrayList<>();
        for (int change : new int[] {more, more - shape.w()}) {
            int atStart = Math.floorDiv(change, 2);
            remedies.add(Stream.of(
                            change % 2 == 0 ? change / 2 : 0, // alike at both corners, where that can be
                            change,
                            atStart)
                    .flatMap(ofA -> widened(shape, ofA, change - ofA)));
        }
        return remedies;
    }

    private static Stream<RemedyEdit> widened(SideShape shape, int moreOfA, int moreOfB) {
        int a = shape.a() + moreOfA;
        int b = shape.b() + moreOfB;
        return isWidth(a) && isWidth(b) ? Stream.of(new RemedyEdit.ChangeCorners(a, b)) : Stream.of();
    }

    private static boolean isWidth(int stitches) {
        return stitches >= 0 && stitches < Chart.MOST_STITCHES;
    }
}
