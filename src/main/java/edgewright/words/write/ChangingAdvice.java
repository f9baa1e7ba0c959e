package edgewright.words.write;

import edgewright.chart.Stitch;
import edgewright.fit.ChangeRounds;
import edgewright.words.page.TextBlock;
import edgewright.words.terms.Phrasebook;
import edgewright.words.tree.WrittenRound;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Says in which rounds the counts of a side are put right. What kind of round each is it finds in the words,
 * since words that were read have no chart.
 */
final class ChangingAdvice {
    private final Phrasebook texts = Phrasebook.ofPattern();
    private final List<WrittenRound> rounds;

    ChangingAdvice(List<WrittenRound> rounds) {
        this.rounds = rounds;
    }

    /** One paragraph. */
    TextBlock paragraph() {
        ChangeRounds best = ChangeRounds.of(
                rounds.size(),
                round -> has(rounds.get(round - 1), Stitch::coversStitchBelow),
                round -> !isPlain(rounds.get(round - 1)));
        if (best.counting().isEmpty()) {
            return new TextBlock.Prose(texts.text("setUp.rightAtOnce"));
        }
        return new TextBlock.Prose(texts.text(
                "setUp.right",
                name(best.counting().getAsInt()),
                name(best.changing()),
                best.checking().isPresent() ? name(best.checking().getAsInt()) : texts.text("setUp.thatRound")));
    }

    private String name(int round) {
        return round == 0 ? texts.text("roundNamed.base") : texts.text("roundNamed.number", round);
    }

    /** Whether its repeat is one stitch throughout, worked into the stitch below. */
    private static boolean isPlain(WrittenRound round) {
        boolean isOneStitch =
                round.stretch().group().stream().anyMatch(group -> group.runs().size() == 1);
        return isOneStitch && !has(round, stitch -> !stitch.standsInStitchBelow());
    }

    private static boolean has(WrittenRound round, Predicate<Stitch> such) {
        return Stream.of(
                        round.stretch().before().stream(),
                        round.stretch().group().stream().flatMap(group -> group.runs().stream()),
                        round.stretch().after().stream())
                .flatMap(runs -> runs)
                .anyMatch(run -> such.test(run.stitch()));
    }
}
