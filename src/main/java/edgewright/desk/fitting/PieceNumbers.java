package edgewright.desk.fitting;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.RoundCounts;
import edgewright.chart.Side;
import edgewright.chart.Swatch;
import edgewright.fit.Ratio;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The numbers typed for the four sides. A side left empty is taken to be like the one opposite.
 *
 * @param values what could be read
 * @param mistakes a sentence for each side where something cannot be read or cannot be
 */
record PieceNumbers(Map<Side, Double> values, Map<Side, String> mistakes) {
    private static final double MOST_CM = 100_000;

    /** The numbers of a piece in the way in which its sides are taken. */
    static PieceNumbers of(Piece piece) {
        Map<Side, Double> values = new EnumMap<>(Side.class);
        Map<Side, String> mistakes = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            String text = piece.typed(side).strip();
            boolean borrowed = text.isEmpty();
            if (borrowed) {
                text = piece.typed(side.opposite()).strip();
            }
            if (text.isEmpty()) {
                continue;
            }
            Optional<Double> number = piece.way() == Piece.Way.MEASURED
                    ? decimal(text, MOST_CM)
                    : whole(text).map(Integer::doubleValue);
            Optional<String> mistake = mistake(piece, number);
            if (mistake.isPresent() && !borrowed) {
                mistakes.put(
                        side,
                        piece.says()
                                .text(
                                        "piece-mistake-" + mistake.get(),
                                        arg("side", PieceTexts.sideName(piece, side)),
                                        arg("typed", text)));
            }
            number.ifPresent(value -> values.put(side, value));
        }
        return new PieceNumbers(values, mistakes);
    }

    /** Whether a number is there for each side. */
    boolean isWhole() {
        return values.size() == Side.values().length;
    }

    /** The sides for which nothing is typed, here or opposite. */
    List<Side> missing() {
        List<Side> missing = new ArrayList<>(List.of(Side.values()));
        missing.removeAll(values.keySet());
        missing.removeAll(mistakes.keySet());
        return missing;
    }

    /** The numbers as whole ones. */
    PerSide<Integer> counts() {
        return PerSide.each(this::count);
    }

    private int count(Side side) {
        return values.get(side).intValue();
    }

    /** A whole number of at most ten thousand. */
    static Optional<Integer> whole(String text) {
        return text.strip().matches("[0-9]{1,7}")
                ? Optional.of(Integer.valueOf(text.strip())).filter(number -> number <= RoundCounts.MOST_STITCHES)
                : Optional.empty();
    }

    /** A number above 0, with a point or a comma. */
    static Optional<Double> decimal(String text, double most) {
        String number = text.strip().replace(',', '.');
        return number.matches("[0-9]{1,6}(\\.[0-9]{0,4})?|\\.[0-9]{1,4}")
                ? Optional.of(Double.valueOf(number)).filter(value -> value > 0 && value <= most)
                : Optional.empty();
    }

    /** The swatch, if both its numbers can be read. */
    static Optional<Swatch> swatch(Piece piece) {
        Optional<Double> stitches = decimal(piece.swatchStitches(), 1_000);
        Optional<Double> rounds = decimal(piece.swatchRounds(), 1_000);
        return stitches.flatMap(across -> rounds.map(down -> new Swatch(across, down)));
    }

    /** The ratio in which stitches are picked up along rows, if both its numbers can be read. */
    static Optional<Ratio> ratio(Piece piece) {
        Optional<Integer> stitches = whole(piece.ratioStitches()).filter(number -> number > 0 && number <= 100);
        Optional<Integer> rows = whole(piece.ratioRows()).filter(number -> number > 0 && number <= 100);
        return stitches.flatMap(some -> rows.map(of -> new Ratio(some, of)));
    }

    /** What was counted on the front, in stitches without corner chains; empty if that cannot be read. */
    static Optional<PerSide<Integer>> front(Piece piece) {
        try {
            return Optional.of(PerSide.parse(piece.frontCounts()).map(piece.counting()::stitches))
                    .filter(front -> front.stream()
                            .allMatch(stitches -> stitches >= 0 && stitches <= RoundCounts.MOST_STITCHES));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** What is wrong with a number, as the key of its text ends; empty if nothing is. */
    private static Optional<String> mistake(Piece piece, Optional<Double> number) {
        if (number.isEmpty()) {
            return Optional.of(piece.way() == Piece.Way.MEASURED ? "length" : "number");
        }
        boolean withChains = piece.counting() == Counting.WITH_CHAINS;
        if (piece.way() == Piece.Way.COUNTED && withChains && number.get() < Counting.WITH_CHAINS.shown(0)) {
            return Optional.of("chains");
        }
        return piece.way() == Piece.Way.ROWS && number.get() < 1 ? Optional.of("none") : Optional.empty();
    }
}
