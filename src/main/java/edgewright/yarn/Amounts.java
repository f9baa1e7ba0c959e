package edgewright.yarn;

import edgewright.chart.Ball;
import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * How much yarn a border of one size takes, round by round and yarn by yarn. The base round is on the piece already and not
 * counted.
 *
 * @param rounds in the order in which they are worked
 * @param yarns every yarn of the chart in its order, those that no round is worked in among them
 * @param estimated the kinds of stitch that occur in the border and whose length was not measured
 */
public record Amounts(List<OfRound> rounds, List<OfYarn> yarns, List<YarnStitch> estimated) {
    /** The yarn left hanging at each end of a round, to be woven in. Source: http://crochet.about.com/od/skillstechniques/tp/Changing_Colors_SC.htm */
    public static final double TAIL_CM = 15;

    /** The ends of a round: it is started with new yarn and cut when it is closed. */
    public static final int TAILS = 2;

    /** What is added to the length of each yarn for hands, joins and mistakes. Source: the custom of the trade, from memory. */
    public static final double MARGIN = 0.10;

    /** Less than this is not missing, in metres: what is lost in computing. */
    static final double NOTHING = 1e-6;

    /**
     * What one round takes.
     *
     * @param metres its stitches and its tails, without the margin
     * @param metresSoFar this and all rounds before it that are worked in the same yarn, without the margin
     */
    public record OfRound(WorkedRound round, double metres, double metresSoFar) {}

    /**
     * What a border takes of one yarn.
     *
     * @param workedMetres all its rounds, without the margin
     */
    public record OfYarn(Yarn yarn, double workedMetres) {
        /** The length to have at hand: with the margin. */
        public double metres() {
            return workedMetres * (1 + MARGIN);
        }

        /** The weight of {@link #metres}; empty if the chart does not say what a ball weighs. */
        public OptionalDouble grams() {
            return yarn.ball()
                    .map(ball -> OptionalDouble.of(metres() / ball.metresInGram()))
                    .orElse(OptionalDouble.empty());
        }

        /** The balls that {@link #metres} needs; empty if the chart does not say how long a ball is. */
        public OptionalInt balls() {
            return yarn.ball()
                    .map(Ball::metres)
                    .map(length -> OptionalInt.of((int) Math.ceil(metres() / length - 1e-9)))
                    .orElse(OptionalInt.empty());
        }

        /** How many metres are missing, if it is known how many are at hand; 0 if there is enough. */
        public double missingMetres() {
            double missing = metres() - yarn.metresInHand().orElse(Double.POSITIVE_INFINITY);
            return missing > NOTHING ? missing : 0;
        }
    }

    public Amounts {
        rounds = List.copyOf(rounds);
        yarns = List.copyOf(yarns);
        estimated = List.copyOf(estimated);
    }

    /**
     * The amounts for one size.
     *
     * @param repeats how often the repeat is worked on each side
     */
    public static Amounts of(Chart chart, PerSide<Integer> repeats) {
        StitchLengths lengths = StitchLengths.of(chart.making());
        Map<String, Double> soFar = new HashMap<>();
        Set<YarnStitch> estimated = EnumSet.noneOf(YarnStitch.class);
        List<OfRound> rounds = new ArrayList<>();
        for (WorkedRound round : WorkedRound.of(chart, repeats)) {
            double metres = metres(round, lengths);
            rounds.add(new OfRound(round, metres, soFar.merge(round.yarn(), metres, Double::sum)));
            round.stitches().keySet().stream().filter(lengths::isEstimate).forEach(estimated::add);
        }
        List<OfYarn> yarns = chart.yarns().stream()
                .map(yarn -> new OfYarn(yarn, soFar.getOrDefault(yarn.id(), 0.0)))
                .toList();
        return new Amounts(rounds, yarns, List.copyOf(estimated));
    }

    /** All yarns together, with the margin. */
    public double metres() {
        return yarns.stream().mapToDouble(OfYarn::metres).sum();
    }

    /** The yarns of which less is at hand than the border takes. */
    public List<OfYarn> missing() {
        return yarns.stream().filter(yarn -> yarn.missingMetres() > 0).toList();
    }

    private static double metres(WorkedRound round, StitchLengths lengths) {
        double cm = TAILS * TAIL_CM;
        for (Map.Entry<YarnStitch, Long> kind : round.stitches().entrySet()) {
            cm += kind.getValue() * lengths.cm(kind.getKey());
        }
        return cm / 100;
    }
}
