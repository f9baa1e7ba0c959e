package edgewright.words;

import edgewright.chart.Hand;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts a round into words in which stitches are added or lost. */
final class ChangesWording {
    private final Texts texts = Texts.ofPattern();
    private final Texts terms;
    private final Hand hand;
    private final Function<Run, String> runs;

    /** @param runs how a run is said */
    ChangesWording(Terms terms, Hand hand, Function<Run, String> runs) {
        this.terms = Texts.of(terms);
        this.hand = hand;
        this.runs = runs;
    }

    /**
     * What the round is for, then a line for each side in working order.
     *
     * @param corner what is said of each corner
     */
    List<String> lines(ChangedSides changes, String corner) {
        return Stream.concat(
                        Stream.of(texts.text("round.putsRight")),
                        hand.workingOrder().stream().map(side -> line(side, changes.of(side), corner)))
                .toList();
    }

    private String line(Side side, List<SideWork> work, String corner) {
        return texts.text("round.along", texts.text("edge." + side)) + " " + list(work) + "; " + corner + ".";
    }

    private String list(List<SideWork> work) {
        return work.stream().map(this::step).collect(Collectors.joining(", "));
    }

    private String step(SideWork step) {
        if (step instanceof SideWork.Work work) {
            return runs.apply(work.run());
        }
        if (step instanceof SideWork.TwoInOne two) {
            String next = texts.text("round.inNext");
            return two.first() == two.second()
                    ? runs.apply(new Run(2, two.first())) + " " + next
                    : texts.text(
                                    "round.oneAndOne",
                                    runs.apply(new Run(1, two.first())),
                                    runs.apply(new Run(1, two.second())))
                            + " " + next;
        }
        if (step instanceof SideWork.Together both) {
            return together(both.stitch());
        }
        SideWork.Times times = (SideWork.Times) step;
        return texts.text("round.times", list(times.steps()), times.times());
    }

    private String together(Stitch stitch) {
        return terms.of(stitch, "together").replace(' ', Texts.NO_BREAK);
    }
}
