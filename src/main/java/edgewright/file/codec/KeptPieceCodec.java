package edgewright.file.codec;

import edgewright.chart.Chart;
import edgewright.chart.Extras;
import edgewright.chart.KeptPiece;
import edgewright.chart.PerSide;
import edgewright.chart.RoundCounts;
import edgewright.file.fault.ChartFault;
import edgewright.file.fault.Problem;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The piece that the border is worked on, with what was counted on it. */
final class KeptPieceCodec extends RecordCodec<KeptPiece> {
    private final Member<KeptPiece, List<RoundCounts>> front =
            optional("front", new Layer(0), List.of(), KeptPiece::front);
    private final Member<KeptPiece, List<RoundCounts>> back =
            optional("back", new Layer(1), List.of(), KeptPiece::back);

    /** A round and what was counted on its sides: top, left, bottom, right. */
    private static final class OfRound extends RecordCodec<RoundCounts> {
        private static final int SIDES = 4;

        private static final Codec<PerSide<Integer>> COUNTS =
                new ListCodec.InOneLine<>(ValueCodecs.whole(0, RoundCounts.MOST_STITCHES), SIDES, SIDES) {
                    /** Fewer are not four sides; that one is missing or wrong has been noted. */
                    @Override
                    public Optional<List<Integer>> read(Reading in) {
                        return super.read(in).filter(counts -> counts.size() == SIDES);
                    }
                }.as(
                        counts -> PerSide.of(counts.get(0), counts.get(1), counts.get(2), counts.get(3)),
                        sides -> sides.stream().toList());

        private final Member<RoundCounts, Integer> round;
        private final Member<RoundCounts, PerSide<Integer>> sides;

        /** @param first the first round of the layer: 0 on the front, which has a base round, 1 on the back */
        OfRound(int first) {
            round = required("round", ValueCodecs.whole(first, Chart.MOST_ROUNDS), RoundCounts::round);
            sides = required("sides", COUNTS, RoundCounts::stitches);
        }

        @Override
        RoundCounts make(FoundMembers found) {
            return new RoundCounts(found.get(round), found.get(sides), found.extras());
        }

        @Override
        Extras extras(RoundCounts counts) {
            return counts.extras();
        }
    }

    /** The counted rounds of a layer, no round twice. */
    private static final class Layer extends ListCodec.InOneLine<RoundCounts> {
        Layer(int first) {
            super(new OfRound(first), 0, Chart.MOST_ROUNDS + 1);
        }

        @Override
        public Optional<List<RoundCounts>> read(Reading in) {
            int line = in.json().line();
            String path = in.json().path();
            return super.read(in).filter(rounds -> {
                Set<Integer> numbers = new HashSet<>();
                Optional<Integer> again = rounds.stream()
                        .map(RoundCounts::round)
                        .filter(round -> !numbers.add(round))
                        .findFirst();
                again.ifPresent(round -> in.note(Problem.atMember(new ChartFault.SameRound(round), line, path)));
                return again.isEmpty();
            });
        }
    }

    @Override
    KeptPiece make(FoundMembers found) {
        return new KeptPiece(found.get(front), found.get(back), found.extras());
    }

    @Override
    Extras extras(KeptPiece piece) {
        return piece.extras();
    }
}
