package edgewright.words.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the words of a round say beside its stitches, gathered while they are read. */
public final class BodyNotes {
    /** The stated counts, in the order of the text. */
    public final List<StatedCount> counts = new ArrayList<>();
    /** The chains that a corner of the round below is said to have. */
    public final List<Lexeme> chainsBelow = new ArrayList<>();
    /** What was taken as prose, and what says how yarn is joined and cut. */
    public final List<Aside> asides = new ArrayList<>();
    /** The yarn that the words take up before the first stitch. */
    public Optional<Lexeme> yarn = Optional.empty();
    /** The yarn that they take up at the end, for the next round. */
    public Optional<Lexeme> nextYarn = Optional.empty();
    /** Corners told for all four at once. */
    public Optional<Item.Turn> everyCorner = Optional.empty();

    /**
     * Words without a stitch in them.
     *
     * @param kind how they were taken
     */
    public record Aside(LineKind kind, Lexeme at, String text) {}

    void aside(LineKind kind, List<Lexeme> words) {
        StringBuilder text = new StringBuilder();
        words.forEach(word -> text.append(text.isEmpty() ? "" : " ").append(word.text()));
        if (!words.isEmpty()) {
            asides.add(new Aside(kind, words.get(0), text.toString()));
        }
    }
}
