package edgewright.words.write;

import edgewright.words.page.TextBlock;
import edgewright.words.terms.Phrasebook;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What a pattern for one piece says of that piece, beside its rounds: for which it is, and in which round it is put right. */
final class PieceWording {
    private final Phrasebook texts = Phrasebook.ofPattern();
    private final Instructions pattern;
    private final RoundWording rounds;
    private final WrittenRound changing;

    private PieceWording(Instructions pattern, RoundWording rounds, WrittenRound changing) {
        this.pattern = pattern;
        this.rounds = rounds;
        this.changing = changing;
    }

    /** Empty for a pattern in which no counts are put right. */
    static Optional<PieceWording> of(Instructions pattern, RoundWording rounds) {
        return pattern.rounds().stream()
                .filter(round -> round.changes().isPresent())
                .findFirst()
                .map(changing -> new PieceWording(pattern, rounds, changing));
    }

    /** For which piece the pattern is. */
    TextBlock heading() {
        int counting = changing.number() - 1;
        SideSize size = counting == 0
                ? pattern.base().side()
                : pattern.rounds().get(counting - 1).side();
        List<String> counts = new ArrayList<>();
        rounds.size(size, OptionalInt.empty(), counts);
        String named = counting == 0 ? texts.text("roundNamed.base") : texts.text("roundNamed.number", counting);
        return new TextBlock.Prose(texts.text("heading.piece", named, String.join(" ", counts), changing.number()));
    }

    /** What the changing round is for, and which rounds are worked on the sides as they are. */
    TextBlock note() {
        String note = texts.text("notes.piece", changing.number());
        return new TextBlock.Prose(
                changing.number() == 1
                        ? note
                        : note + " " + texts.counted("notes.piece.before", changing.number() - 1));
    }

    /**
     * How the changing round is begun, and what its words mean as far as it has them.
     *
     * @param example the short name of a stitch
     */
    TextBlock changes(String example) {
        List<String> said = new ArrayList<>(List.of(texts.text("notes.changes", changing.number())));
        if (hasStep(step -> step instanceof ChangingStep.TwoInOne two && two.first() == two.second())) {
            said.add(texts.text("notes.changes.two", example));
        }
        if (hasStep(step -> step instanceof ChangingStep.TwoInOne two && two.first() != two.second())) {
            said.add(texts.text("notes.changes.oneAndOne"));
        }
        if (hasStep(ChangingStep.Times.class::isInstance)) {
            said.add(texts.text("notes.changes.times"));
        }
        return new TextBlock.Prose(String.join(" ", said));
    }

    private boolean hasStep(Predicate<ChangingStep> said) {
        return changing.changes().orElseThrow().stream()
                .flatMap(List::stream)
                .flatMap(step -> step instanceof ChangingStep.Times times
                        ? Stream.concat(Stream.of(step), times.steps().stream())
                        : Stream.of(step))
                .anyMatch(said);
    }
}
