package edgewright.fit;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.Counting;
import edgewright.chart.Side;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What is said to a maker about fitting in a round of the back layer. The answer is that to {@link BackLayer#question}: counts
 * and places hold for the back round as they stand, rounds and corners are the back layer's own. Its rounds have no long
 * stitches, so nothing is said of these.
 */
public final class BackSentences {
    private final Messages says;
    private final FitSentences front;
    private final FitPhrases words;
    private final BackLayer layer;
    private final int round;

    /**
     * Speaks of sides that were counted in this round of the back layer.
     *
     * @throws IllegalArgumentException if the layer has no such round
     */
    public BackSentences(Language language, BackLayer layer, int round) {
        this.says = language.messages("fit");
        this.front = new FitSentences(language);
        this.words = new FitPhrases(language);
        this.layer = layer;
        this.round = layer.round(round).number();
    }

    /** A plan or a refusal in full, one sentence or a few to each element. */
    public List<String> of(FitAnswer answer) {
        FitQuestion question = answer.question();
        List<String> said = new ArrayList<>();
        said.add(says.text(
                "back-counted",
                number("round", round),
                arg("counting", words.way(question.counting())),
                arg("counts", words.counts(question.counts())),
                number("front", layer.round(round).frontRound())));
        if (answer instanceof FitPlan plan) {
            plan(plan, said);
        } else {
            List<String> refusal = front.of(answer);
            // But for a piece that is too small, the first sentence says the counts once more.
            said.addAll(answer instanceof FitRefusal.TooSmall ? refusal : refusal.subList(1, refusal.size()));
        }
        return List.copyOf(said);
    }

    /** What a side should have, where it is changed, and the way along it if it is. */
    public List<String> of(FitPlan plan, Side side) {
        return plan.change(side).change() == 0
                ? List.of(front.of(plan, side))
                : List.of(front.of(plan, side), way(plan, side));
    }

    /** In which round of the back layer the changes are made. */
    public String changing() {
        return says.text("back-changing", number("round", round + 1));
    }

    /** The warnings that hold for a back layer. */
    public List<String> warnings(FitPlan plan) {
        return plan.warnings().stream()
                .filter(FitWarning.Crowded.class::isInstance)
                .map(warning -> front.of(warning, plan.question()))
                .toList();
    }

    private void plan(FitPlan plan, List<String> said) {
        if (plan.isDone()) {
            said.add(says.text("plan-done"));
        }
        Stream.of(Side.values()).map(side -> front.of(plan, side)).forEach(said::add);
        plan.changes().stream()
                .filter(change -> change.change() != 0)
                .forEach(change -> said.add(way(plan, change.side())));
        if (!plan.isDone()) {
            said.add(changing());
        }
        said.addAll(warnings(plan));
    }

    /** The way along a side. A plan with changes has a round after the one that was counted, or it would be a refusal. */
    private String way(FitPlan plan, Side side) {
        BackStitch stitch = layer.round(round + 1).stitch();
        int stitches = plan.targets().wanted().get(side) + stitch.growth();
        return says.text(
                "back-way",
                arg("side", words.name(side)),
                number("round", round + 1),
                arg("arm", words.stitches(stitch.atEachArm())),
                arg("way", front.steps(plan.change(side), Counting.STITCHES)),
                count("stitches", plan.question().counting().shown(stitches)));
    }
}
