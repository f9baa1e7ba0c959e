package edgewright.fit;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Sides, rounds and counts as they stand within the sentences of this package. */
final class FitPhrases {
    private final Language language;
    private final Messages says;

    FitPhrases(Language language) {
        this.language = language;
        this.says = language.messages("fit");
    }

    /** The four sides with their counts. */
    String counts(PerSide<Integer> counts) {
        return language.commas(Stream.of(Side.values())
                .map(side -> sideCount(side, counts.get(side)))
                .toList());
    }

    /** A side with its count. */
    String sideCount(Side side, int stitches) {
        return says.text("plan-count", arg("side", side(side)), count("stitches", stitches));
    }

    String repeats(int number) {
        return number == 0 ? says.text("repeats-none") : says.text("repeats", count("repeats", number));
    }

    /** How many stitches. */
    String stitches(int stitches) {
        return says.text("stitches", count("stitches", stitches));
    }

    /** A round. */
    String round(int round) {
        return round == 0 ? says.text("round-base") : says.text("round-number", number("round", round));
    }

    /** A way of counting. */
    String way(Counting counting) {
        return says.text("counting-" + counting);
    }

    String sides(List<Side> sides) {
        return sides.size() == 1
                ? side(sides.get(0))
                : says.text("sides-" + sides.stream().map(Side::name).collect(Collectors.joining("-")));
    }

    /** A side. */
    String side(Side side) {
        return says.text("side-" + side);
    }

    /** The side at the beginning of a sentence. */
    String name(Side side) {
        return language.capital(side(side));
    }
}
