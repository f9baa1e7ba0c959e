package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.List;
import java.util.stream.IntStream;

/** Names rounds, with their yarns. */
final class TitleWording {
    private final Messages phrases;

    TitleWording(Language language) {
        this.phrases = language.messages("words/phrases");
    }

    /**
     * The title of a round, or of some that stand together.
     *
     * @param first the number of the first
     * @param yarns what the yarn of each is called, at least one
     */
    String of(int first, List<String> yarns) {
        return switch (yarns.size()) {
            case 1 -> phrases.text("round-title", number("round", first), arg("yarn", yarns.get(0)));
            case 2 ->
                phrases.text(
                        "rounds-two", number("first", first), number("last", first + 1), arg("yarns", yarns(yarns)));
            default ->
                phrases.text(
                        "rounds-more",
                        number("first", first),
                        number("last", first + yarns.size() - 1),
                        arg("yarns", yarns(yarns)));
        };
    }

    /** One for all rounds, those that come in turn, or one for each round. */
    private String yarns(List<String> yarns) {
        int turn = named(yarns);
        String listed = phrases.list("yarns-next", yarns.subList(0, turn));
        return turn > 1 && turn < yarns.size() ? phrases.text("in-turn", arg("yarns", listed)) : listed;
    }

    /** How many of the yarns are named: those that come at least twice in turn, or all. */
    static int named(List<String> yarns) {
        return IntStream.rangeClosed(1, yarns.size() / 2)
                .filter(turn -> IntStream.range(turn, yarns.size())
                        .allMatch(i -> yarns.get(i).equals(yarns.get(i - turn))))
                .findFirst()
                .orElse(yarns.size());
    }
}
