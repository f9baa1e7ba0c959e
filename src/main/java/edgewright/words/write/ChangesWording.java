package edgewright.words.write;

import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.words.terms.Phrasebook;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.Run;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts a round into words in which stitches are added or lost. */
final class ChangesWording {
    private final Phrasebook texts = Phrasebook.ofPattern();
    private final Phrasebook terms;
    private final HookHand hand;
    private final Function<Run, String> runs;

    /** @param runs how a run is said */
    ChangesWording(Terms terms, HookHand hand, Function<Run, String> runs) {
        this.terms = Phrasebook.of(terms);
        this.hand = hand;
        this.runs = runs;
    }

    /**
     * What the round is for, then a line for each side in working order.
     *
     * @param corner what is said of each corner
     */
    List<String> lines(PerSide<List<ChangingStep>> changes, String corner) {
        return Stream.concat(
                        Stream.of(texts.text("round.putsRight")),
                        hand.workingOrder().stream().map(side -> line(side, changes.get(side), corner)))
                .toList();
    }

    private String line(Side side, List<ChangingStep> work, String corner) {
        return texts.text("round.along", texts.text("edge." + side)) + " " + list(work) + "; " + corner + ".";
    }

    private String list(List<ChangingStep> work) {
        return work.stream().map(this::step).collect(Collectors.joining(", "));
    }

    private String step(ChangingStep step) {
        if (step instanceof ChangingStep.Work work) {
            return runs.apply(work.run());
        }
        if (step instanceof ChangingStep.TwoInOne two) {
            String next = texts.text("round.inNext");
            return two.first() == two.second()
                    ? runs.apply(new Run(2, two.first())) + " " + next
                    : texts.text(
                                    "round.oneAndOne",
                                    runs.apply(new Run(1, two.first())),
                                    runs.apply(new Run(1, two.second())))
                            + " " + next;
        }
        if (step instanceof ChangingStep.Together both) {
            return together(both.stitch());
        }
        ChangingStep.Times times = (ChangingStep.Times) step;
        return texts.text("round.times", list(times.steps()), times.times());
    }

    private String together(Stitch stitch) {
        return terms.of(stitch, "together").replace(' ', Phrasebook.NO_BREAK);
    }
}
