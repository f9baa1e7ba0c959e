package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.plain;

import edgewright.texts.Language;
import edgewright.texts.Messages;
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
    private final Messages says;
    private final Messages phrases;
    private final Instructions pattern;
    private final SizeWording sizes;
    private final WrittenRound changing;

    private PieceWording(Language language, Instructions pattern, WrittenRound changing) {
        this.says = language.messages("words/write");
        this.phrases = language.messages("words/phrases");
        this.pattern = pattern;
        this.sizes = new SizeWording(language, pattern.counting(), pattern.hand());
        this.changing = changing;
    }

    /** Empty for a pattern in which no counts are put right. */
    static Optional<PieceWording> of(Language language, Instructions pattern) {
        return pattern.rounds().stream()
                .filter(round -> round.changes().isPresent())
                .findFirst()
                .map(changing -> new PieceWording(language, pattern, changing));
    }

    /** For which piece the pattern is. */
    String heading() {
        int counting = changing.number() - 1;
        SideSize size = counting == 0
                ? pattern.base().side()
                : pattern.rounds().get(counting - 1).side();
        String named = counting == 0
                ? says.text("roundNamed-base")
                : says.text("roundNamed-number", number("round", counting));
        return phrases.text(
                "piece",
                arg("round", named),
                arg("counts", sizes.base(size, OptionalInt.empty())),
                number("changing", changing.number()));
    }

    /** What the changing round is for, and which rounds are worked on the sides as they are. */
    String note() {
        String note = says.text("piece-note", number("round", changing.number()));
        return changing.number() == 1
                ? note
                : phrases.list(
                        "sentences-next",
                        List.of(note, says.text("piece-before", plain("last", changing.number() - 1))));
    }

    /**
     * How the changing round is begun, and what its words mean as far as it has them.
     *
     * @param example the short name of a stitch
     */
    String changes(String example) {
        List<String> said = new ArrayList<>(List.of(says.text("changes-begin", number("round", changing.number()))));
        if (hasStep(step -> step instanceof ChangingStep.TwoInOne two && two.first() == two.second())) {
            said.add(says.text("changes-two", arg("stitch", example)));
        }
        if (hasStep(step -> step instanceof ChangingStep.TwoInOne two && two.first() != two.second())) {
            said.add(says.text("changes-oneAndOne"));
        }
        return phrases.list("sentences-next", said);
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
