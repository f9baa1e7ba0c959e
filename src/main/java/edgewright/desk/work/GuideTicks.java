package edgewright.desk.work;

import edgewright.chart.Side;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a maker has ticked off, round by round. Kept as long as the window is; another chart begins with none. */
public final class GuideTicks {
    /** What can be ticked in a round. */
    public enum Tick {
        TOP(Side.TOP),
        LEFT(Side.LEFT),
        BOTTOM(Side.BOTTOM),
        RIGHT(Side.RIGHT),
        /** The sides of the round are counted. */
        COUNTED(null);

        private final Side side;

        Tick(Side side) {
            this.side = side;
        }

        /** The side that is done; empty for the count. */
        Optional<Side> side() {
            return Optional.ofNullable(side);
        }
    }

    private final Map<Integer, Set<Tick>> ticked = new HashMap<>();

    public boolean isTicked(int round, Tick tick) {
        return ticked.getOrDefault(round, Set.of()).contains(tick);
    }

    public void tick(int round, Tick tick, boolean done) {
        Set<Tick> ofRound = ticked.computeIfAbsent(round, r -> EnumSet.noneOf(Tick.class));
        if (done) {
            ofRound.add(tick);
        } else {
            ofRound.remove(tick);
        }
    }

    /** How many of the rounds 1 to {@code rounds} have everything ticked. */
    public int finished(int rounds) {
        List<Integer> finished = new ArrayList<>();
        for (int round = 1; round <= rounds; round++) {
            if (ticked.getOrDefault(round, Set.of()).size() == Tick.values().length) {
                finished.add(round);
            }
        }
        return finished.size();
    }

    public void clear() {
        ticked.clear();
    }
}
