package edgewright.assist.stack;

import edgewright.assist.stack.SurroundAnswer.Change;
import edgewright.assist.stack.SurroundAnswer.Closes;
import edgewright.assist.stack.SurroundAnswer.Limit;
import edgewright.assist.stack.SurroundAnswer.NeverCloses;
import edgewright.assist.stack.SurroundAnswer.TooLarge;
import edgewright.chart.Chart;
import edgewright.chart.Extras;
import edgewright.chart.Heading;
import edgewright.chart.PatternDetails;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitches;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.core.ArithmeticUtils;

/**
 * One border worked round another on the same piece, as one chart: the inner rounds, plain rounds, the outer rounds.
 *
 * <p>The plain rounds are back-loop throughout, in the yarn of the last inner round: it is on the hook. They are as few as let
 * both close ({@link BaseCounts}); if there would be none, but a long stitch of the outer border would land on a stitch of the
 * inner that cannot take it, as few as do both.
 *
 * <p>The repeat is the least common multiple of both. Each side has the very stitches that its two charts give it; the corner
 * sections are as short as that allows, and where there is a choice the one from the corner is the longer. Corner, terms and
 * technique are those of the inner chart; whatever either chart allows is allowed.
 */
public final class Surround {
    private final Chart inner;
    private final Chart outer;
    private final Heading heading;

    private Surround(Chart inner, Chart outer, Heading heading) {
        this.inner = inner;
        this.outer = outer;
        this.heading = heading;
    }

    /**
     * Works one border round another.
     *
     * @param inner without errors, as the outer; what the checker finds in either would be found in both as one
     * @param heading what stands over both as one
     */
    public static SurroundAnswer of(Chart inner, Chart outer, Heading heading) {
        if (Checker.check(inner).hasErrors() || Checker.check(outer).hasErrors()) {
            throw new IllegalArgumentException("a border with errors is not worked round another");
        }
        return new Surround(inner, outer, heading).answer();
    }

    private SurroundAnswer answer() {
        OptionalInt fewest =
                BaseCounts.fewestBetween(inner.shape(), inner.rounds().size(), outer.shape());
        if (fewest.isEmpty()) {
            return neverCloses();
        }
        SurroundAnswer answer = with(fewest.getAsInt());
        if (answer instanceof Closes closes && Checker.check(closes.chart()).hasErrors()) {
            return with(fewest.getAsInt() + BaseCounts.period(inner.shape(), outer.shape()));
        }
        return answer;
    }

    private SurroundAnswer with(int between) {
        int before = inner.rounds().size() + between;
        long rounds = (long) before + outer.rounds().size();
        if (rounds > Chart.MOST_ROUNDS) {
            return new TooLarge(Limit.ROUNDS, rounds, Chart.MOST_ROUNDS);
        }
        SideShape one = inner.shape();
        SideShape two = outer.shape();
        long w = ArithmeticUtils.lcm((long) one.w(), (long) two.w());
        if (w > Chart.MOST_STITCHES) {
            return new TooLarge(Limit.REPEAT, w, Chart.MOST_STITCHES);
        }
        YarnMerge yarns = YarnMerge.of(inner, outer);
        if (yarns.yarns().size() > Chart.MOST_YARNS) {
            return new TooLarge(Limit.YARNS, yarns.yarns().size(), Chart.MOST_YARNS);
        }
        SideShape whole = shape(before, (int) w);
        int longest = 1 + Math.max(whole.a(), whole.b());
        if (longest > Chart.MOST_STITCHES) {
            return new TooLarge(Limit.CORNER, longest, Chart.MOST_STITCHES);
        }
        return closes(between, whole, yarns);
    }

    /** The shape of both as one: sections as short as each needs, and a sum with which both close. */
    private SideShape shape(int before, int w) {
        SideShape one = inner.shape();
        SideShape two = outer.shape();
        int a = Math.max(one.a(), two.a() - before);
        int b = Math.max(one.b(), two.b() - before);
        Congruence both = BaseCounts.of(one, 0).and(BaseCounts.of(two, before)).orElseThrow();
        int more = (int) Math.floorMod(both.remainder() - a - b, both.modulus());
        return new SideShape(a + (more + 1) / 2, w, b + more / 2);
    }

    private Closes closes(int between, SideShape whole, YarnMerge yarns) {
        int before = inner.rounds().size() + between;
        List<Round> rounds = new ArrayList<>();
        Reframing inside = framed(inner, 0, whole);
        for (int r = 1; r <= inner.rounds().size(); r++) {
            rounds.add(inside.round(r));
        }
        Yarn plain = inner.yarnOf(inner.rounds().size());
        for (int r = rounds.size() + 1; r <= before; r++) {
            rounds.add(new Round(
                    plain.id(),
                    Stitches.backLoops(whole.a() + r),
                    Stitches.backLoops(whole.w()),
                    Stitches.backLoops(whole.b() + r)));
        }
        Reframing outside = framed(outer, before, whole);
        for (int r = 1; r <= outer.rounds().size(); r++) {
            Round round = outside.round(r);
            rounds.add(round.withYarn(yarns.renamed().get(round.yarn())));
        }
        Chart chart = new Chart(heading, inner.corner(), rules(), yarns.yarns(), rounds, making(), Extras.NONE);
        Map<String, String> renamed = new HashMap<>(yarns.renamed());
        renamed.entrySet().removeIf(entry -> entry.getKey().equals(entry.getValue()));
        return new Closes(chart, between, plain, renamed);
    }

    /** The technique of the inner border; where its rounds start is found anew, and a back layer must be wanted by both. */
    private PatternDetails making() {
        PatternDetails making = inner.making().withStart(Optional.empty()).withSizes(List.of());
        return outer.making().back().isPresent() ? making : making.withBack(Optional.empty());
    }

    private static Reframing framed(Chart chart, int before, SideShape whole) {
        return new Reframing(
                chart,
                whole.a() + before - chart.shape().a(),
                whole.w(),
                whole.b() + before - chart.shape().b());
    }

    private Rules rules() {
        Rules one = inner.rules();
        Rules two = outer.rules();
        return one.withLandOnCornerChain(one.landOnCornerChain() || two.landOnCornerChain())
                .withStackLongStitches(one.stackLongStitches() || two.stackLongStitches())
                .withLooseRun(Math.max(one.looseRun(), two.looseRun()));
    }

    private NeverCloses neverCloses() {
        List<Change> changes = new ArrayList<>();
        for (int by : new int[] {1, -1}) {
            for (Section section : List.of(Section.FROM_CORNER, Section.TO_CORNER)) {
                add(changes, false, section, by);
                add(changes, true, section, by);
            }
        }
        changes.sort(Comparator.comparingInt(Change::between));
        return new NeverCloses(
                ArithmeticUtils.gcd(inner.shape().w(), outer.shape().w()),
                inner.shape().fewestStitches(0) % 2 == 0,
                changes);
    }

    private void add(List<Change> changes, boolean ofInner, Section section, int by) {
        SideShape shape = (ofInner ? inner : outer).shape();
        int now = shape.length(section, 0);
        if (now + by < 0 || now + by >= Chart.MOST_STITCHES) {
            return;
        }
        SideShape changed = section == Section.FROM_CORNER
                ? new SideShape(now + by, shape.w(), shape.b())
                : new SideShape(shape.a(), shape.w(), now + by);
        BaseCounts.fewestBetween(
                        ofInner ? changed : inner.shape(), inner.rounds().size(), ofInner ? outer.shape() : changed)
                .ifPresent(between -> changes.add(new Change(ofInner, section, now, now + by, between)));
    }
}
