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

    /** Rounds that are talked about between the stitches; each must have its words elsewhere. */
    public final List<Lexeme> mentioned = new ArrayList<>();
    /** What is said of how much a side has grown. */
    public final List<Growth> growths = new ArrayList<>();

    /**
     * Words without a stitch in them.
     *
     * @param kind how they were taken
     * @param words in their order; at least one
     */
    public record Aside(LineKind kind, List<Lexeme> words) {
        public Aside {
            words = List.copyOf(words);
        }
    }

    /** A side is said to have grown by so many stitches since that round. */
    public record Growth(Lexeme by, Lexeme since) {}

    void aside(LineKind kind, List<Lexeme> words) {
        if (!words.isEmpty()) {
            asides.add(new Aside(kind, words));
        }
    }
}
