package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.said.Said;
import edgewright.words.said.SpanMarks;
import edgewright.words.terms.TradeTerms;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.Run;
import edgewright.words.tree.StartMark.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Puts a round into words in which stitches are added or lost. */
final class ChangesWording {
    private final Language language;
    private final Messages phrases;
    private final TradeTerms trade;
    private final HookHand hand;
    private final SpanMarks marks;

    ChangesWording(Language language, TradeTerms trade, HookHand hand, SpanMarks marks) {
        this.language = language;
        this.phrases = language.messages("words/phrases");
        this.trade = trade;
        this.hand = hand;
        this.marks = marks;
    }

    /**
     * What the round is for, then a line for each side in working order.
     *
     * @param corner what is said of each corner
     */
    List<String> lines(PerSide<List<ChangingStep>> changes, String corner) {
        PerSide<String> steps = PerSide.each(side -> {
            List<ChangingStep> work = changes.get(side);
            return list(work, Said.Stitches.of(Optional.of(side), Part.BEFORE, made(work)));
        });
        return Stream.concat(Stream.of(phrases.text("puts-right")), eachSide(steps, corner).stream())
                .toList();
    }

    /** What is worked along each side and at its corner, a line for each in working order. */
    List<String> eachSide(PerSide<String> steps, String corner) {
        return hand.workingOrder().stream()
                .map(side -> along(side, steps.get(side), corner))
                .toList();
    }

    private String along(Side side, String steps, String corner) {
        return phrases.text(
                "along", arg("edge", phrases.text("edge-" + side)), arg("steps", steps), arg("corner", corner));
    }

    /** How many stitches stand on the side when this is worked. */
    private static long made(List<ChangingStep> work) {
        return work.stream().mapToLong(ChangesWording::made).sum();
    }

    private static long made(ChangingStep step) {
        if (step instanceof ChangingStep.Work work) {
            return work.run().count();
        }
        if (step instanceof ChangingStep.Times times) {
            return times.times() * made(times.steps());
        }
        return step instanceof ChangingStep.TwoInOne ? 2 : 1;
    }

    /** @param all the stitches that are made by these steps */
    private String list(List<ChangingStep> work, Said.Stitches all) {
        List<String> steps = new ArrayList<>();
        long told = 0;
        for (ChangingStep step : work) {
            Said.Stitches here = all.within(told, made(step));
            steps.add(marks.put(step(step, here), here));
            told += made(step);
        }
        return phrases.list("runs-next", steps);
    }

    private String step(ChangingStep step, Said.Stitches here) {
        if (step instanceof ChangingStep.Work work) {
            return run(work.run());
        }
        if (step instanceof ChangingStep.TwoInOne two) {
            return two.first() == two.second()
                    ? phrases.text("two-in-one", arg("run", run(new Run(2, two.first()))))
                    : phrases.text(
                            "one-and-one",
                            arg("first", run(new Run(1, two.first()))),
                            arg("second", run(new Run(1, two.second()))));
        }
        if (step instanceof ChangingStep.Together both) {
            return together(both.stitch());
        }
        ChangingStep.Times times = (ChangingStep.Times) step;
        return phrases.text(
                "bracket",
                arg("steps", list(times.steps(), here.once(times.times()))),
                arg("times", phrases.text("times", number("count", times.times()))));
    }

    private String run(Run run) {
        return RoundWording.run(language, trade, run);
    }

    private String together(Stitch stitch) {
        return trade.together(stitch).replace(' ', Language.NO_BREAK);
    }
}
