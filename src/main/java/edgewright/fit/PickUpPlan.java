package edgewright.fit;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * The base round along the four edges of a bare piece: as many stitches as lie flat there, or the nearest number that
 * closes.
 *
 * @param targets round 0; what was counted is what lies flat
 * @param sides one a side in working order
 */
public record PickUpPlan(Targets targets, List<PickUp> sides) implements PickUpAnswer {
    public PickUpPlan {
        Objects.requireNonNull(targets);
        sides = List.copyOf(sides);
    }

    /** The base round for a design, or that an edge is too short for its corner sections. */
    public static PickUpAnswer of(SideShape shape, Edges edges, Ties ties) {
        PerSide natural = Sides.each(side -> edges.of(side).natural());
        int fewest = shape.fewestStitches(0);
        List<Side> shorts = Sides.where(side -> natural.of(side) < fewest);
        if (!shorts.isEmpty()) {
            return new FitRefusal.TooSmall(
                    FitQuestion.of(0, natural, Counting.STITCHES).with(ties), fewest, shorts);
        }
        Targets targets = Targets.closest(shape, 0, natural, ties);
        return new PickUpPlan(
                targets,
                Arrays.stream(Side.values())
                        .map(side -> new PickUp(
                                side, edges.of(side), targets.wanted().of(side)))
                        .toList());
    }

    /** What is picked up on this side. */
    public PickUp on(Side side) {
        return sides.get(side.ordinal());
    }
}
