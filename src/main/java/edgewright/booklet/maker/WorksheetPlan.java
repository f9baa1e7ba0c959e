package edgewright.booklet.maker;

import static edgewright.texts.Arg.number;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.parts.CountsPages;
import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.fit.ChangeRounds;
import edgewright.texts.Messages;
import java.util.Optional;

/**
 * In which rounds the worksheet has the sides counted, changed and counted again. Where no plain round is left to do it in,
 * all three are the base round.
 *
 * @param size how often the repeat is worked on each side, if that is known
 */
record WorksheetPlan(Chart chart, BookletOptions options, ChangeRounds rounds, Optional<PerSide<Integer>> size) {
    static WorksheetPlan of(Chart chart, BookletOptions options) {
        return new WorksheetPlan(chart, options, ChangeRounds.of(chart), options.repeats());
    }

    /** Whether the base round is the only one in which counts can be put right. */
    boolean isInBaseRound() {
        return rounds.counting().isEmpty();
    }

    int counting() {
        return rounds.counting().orElse(0);
    }

    int checking() {
        return rounds.checking().orElse(rounds.changing());
    }

    /** What a side should count in a round, if its size is known. */
    Optional<String> target(Side side, int round) {
        return size.map(repeats -> options.language()
                .count(options.counting().shown(chart.shape(side).stitches(round, repeats.get(side)))));
    }

    /** What a side counts in a round when the repeat is worked that often, in the way of counting of the pattern. */
    String count(int round, int repeats) {
        return CountsPages.example(chart, options.counting(), options.language(), round, repeats);
    }

    /** The same of the first side as a number. */
    int stitches(int round, int repeats) {
        return options.counting().shown(chart.shape(Side.FIRST).stitches(round, repeats));
    }

    /** What a round is called in a sentence. */
    String name(int round) {
        return name(round, options.says());
    }

    /** The same in the words of a language. */
    static String name(int round, Messages says) {
        return round == 0 ? says.text("worksheet-base") : says.text("worksheet-round", number("round", round));
    }
}
