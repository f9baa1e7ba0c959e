package edgewright.fit;

import edgewright.chart.BorderShape;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import java.util.List;
import java.util.Objects;

/**
 * The base round along the four edges of a bare piece: as many stitches as lie flat there, or the nearest number that
 * closes.
 *
 * @param targets round 0; what was counted is what lies flat
 * @param sides what is picked up on each side
 */
public record PickUpPlan(Targets targets, PerSide<PickUp> sides) implements PickUpAnswer {
    public PickUpPlan {
        Objects.requireNonNull(targets);
        Objects.requireNonNull(sides);
    }

    /** The base round for a design, or that an edge is too short for its corner sections. */
    public static PickUpAnswer of(BorderShape border, PerSide<Edge> edges, Ties ties) {
        PerSide<Integer> natural = edges.map(Edge::natural);
        int fewest = border.fewestStitches(0);
        List<Side> shorts = Side.where(side -> natural.get(side) < fewest);
        if (!shorts.isEmpty()) {
            return new FitRefusal.TooSmall(
                    FitQuestion.of(0, natural, Counting.STITCHES).with(ties), fewest, shorts);
        }
        Targets targets = Targets.closest(border, 0, natural, ties);
        return new PickUpPlan(
                targets,
                PerSide.each(side ->
                        new PickUp(side, edges.get(side), targets.wanted().get(side))));
    }

    /** What is picked up on this side. */
    public PickUp on(Side side) {
        return sides.get(side);
    }
}
