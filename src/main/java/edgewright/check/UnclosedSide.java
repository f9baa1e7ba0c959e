package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
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
final class UnclosedSide implements Rule {
    @Override
    public String id() {
        return "unclosed-side";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    /** One flag for each side that does not close, in the order in which they are worked. */
    List<Violation> flags(SideShape shape, PerSide<Integer> baseStitches) {
        List<Violation> flags = new ArrayList<>();
        for (Side side : Side.values()) {
            int stitches = baseStitches.get(side);
            if (!shape.closes(0, stitches)) {
                flags.add(new Violation(
                        this,
                        FindingPlace.onSide(side),
                        List.of(
                                stitches,
                                shape.w(),
                                shape.fewestStitches(0),
                                shape.toLose(0, stitches),
                                shape.toAdd(0, stitches))));
            }
        }
        return flags;
    }

    /** Columns beside the repeat put in or taken out, so that A + B fits the count of this side and opens no other side. */
    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        SideShape shape = verdict.chart().shape();
        int stitches =
                verdict.baseStitches().orElseThrow().get(flag.where().side().orElseThrow());
        int more = Math.floorMod(stitches - shape.fewestStitches(0), shape.w());
        List<Stream<Remedy>> remedies = new ArrayList<>();
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

    private static Stream<Remedy> widened(SideShape shape, int moreOfA, int moreOfB) {
        int a = shape.a() + moreOfA;
        int b = shape.b() + moreOfB;
        if (!isWidth(a) || !isWidth(b)) {
            return Stream.of();
        }
        return Stream.of(new Remedy(
                "change-corners", List.of(a, b), chart -> Edits.changeToCorner(Edits.changeFromCorner(chart, a), b)));
    }

    private static boolean isWidth(int stitches) {
        return stitches >= 0 && stitches < Chart.MOST_STITCHES;
    }
}
