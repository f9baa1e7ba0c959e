package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.fit.ChangeRounds;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.tree.Multiple;
import edgewright.words.tree.Run;
import edgewright.words.tree.WrittenRound;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Says in which rounds the counts of a side are put right. What kind of round each is it finds in the words,
 * since words that were read have no chart.
 */
final class ChangingAdvice {
    private final Messages says;
    private final List<WrittenRound> rounds;
    private final Optional<Multiple> base;
    private final SizeWording sizes;

    /** @param base the numbers that a side of the base round may have, where the pattern says them */
    ChangingAdvice(Language language, List<WrittenRound> rounds, Optional<Multiple> base, SizeWording sizes) {
        this.says = language.messages("words/write");
        this.rounds = rounds;
        this.base = base;
        this.sizes = sizes;
    }

    /** One paragraph. */
    String paragraph() {
        ChangeRounds best = ChangeRounds.of(
                rounds.size(),
                (round, such) -> has(rounds.get(round - 1), such),
                round -> !isPlain(rounds.get(round - 1)));
        if (best.counting().isEmpty()) {
            return says.text("setUp-rightAtOnce");
        }
        return says.text(
                "setUp-right",
                arg("counting", name(best.counting().getAsInt())),
                arg("changing", name(best.changing())),
                arg(
                        "checking",
                        best.checking().isPresent() ? name(best.checking().getAsInt()) : says.text("setUp-thatRound")),
                arg("fits", fits(best.checking().orElse(best.changing()))));
    }

    /** How many stitches a side must have in this round. */
    private String fits(int round) {
        return base.filter(numbers -> numbers.of() > 1)
                .map(numbers -> Multiple.containing(numbers.of(), numbers.plus() + SideShape.growth(round)))
                .map(numbers -> says.text("setUp-fitsMultiple", arg("multiple", sizes.bare(numbers))))
                .orElseGet(() -> says.text("setUp-fits"));
    }

    private String name(int round) {
        return round == 0 ? says.text("roundNamed-base") : says.text("roundNamed-number", number("round", round));
    }

    /** Whether its repeat is one stitch throughout, worked into the stitch below. */
    private static boolean isPlain(WrittenRound round) {
        boolean isOneStitch = round.stretch().group().stream()
                .anyMatch(group -> group.steps().size() == 1 && group.steps().get(0) instanceof Run);
        return isOneStitch && !has(round, stitch -> !stitch.standsInStitchBelow());
    }

    private static boolean has(WrittenRound round, Predicate<Stitch> such) {
        return round.stretch().runs().anyMatch(run -> such.test(run.stitch()));
    }
}
