package edgewright.words;

import edgewright.chart.Stitch;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Says in which rounds the counts of a side are put right. It names the same rounds as {@link edgewright.fit.ChangeRounds},
 * but finds them in the words, since words that were read have no chart.
 */
final class ChangingAdvice {
    private final Texts texts = Texts.ofPattern();
    private final List<WrittenRound> rounds;

    ChangingAdvice(List<WrittenRound> rounds) {
        this.rounds = rounds;
    }

    /** One paragraph. */
    Block paragraph() {
        int past = rounds.size() + 1;
        int firstLong = first(round -> has(round, Stitch.LONG), past);
        int firstPatterned = first(round -> !isPlain(round), past);
        int changing = Math.min(firstLong - 2, firstPatterned - 1);
        if (changing <= 0) {
            return new Block.Prose(texts.text("setUp.rightAtOnce"));
        }
        boolean isNextPlain = changing < rounds.size() && isPlain(rounds.get(changing));
        return new Block.Prose(texts.text(
                "setUp.right",
                name(changing - 1),
                name(changing),
                isNextPlain ? name(changing + 1) : texts.text("setUp.thatRound")));
    }

    private String name(int round) {
        return round == 0 ? texts.text("roundNamed.base") : texts.text("roundNamed.number", round);
    }

    private int first(Predicate<WrittenRound> said, int otherwise) {
        return IntStream.rangeClosed(1, rounds.size())
                .filter(r -> said.test(rounds.get(r - 1)))
                .findFirst()
                .orElse(otherwise);
    }

    /** Whether its repeat is one stitch throughout, worked into the stitch below. */
    private static boolean isPlain(WrittenRound round) {
        boolean isOneStitch =
                round.group().stream().anyMatch(group -> group.runs().size() == 1);
        return isOneStitch && !has(round, Stitch.LONG) && !has(round, Stitch.CHAIN);
    }

    private static boolean has(WrittenRound round, Stitch stitch) {
        return Stream.of(
                        round.before().stream(),
                        round.group().stream().flatMap(group -> group.runs().stream()),
                        round.after().stream())
                .flatMap(runs -> runs)
                .anyMatch(run -> run.stitch() == stitch);
    }
}
