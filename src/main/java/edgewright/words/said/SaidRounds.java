package edgewright.words.said;

import edgewright.chart.Side;
import edgewright.words.tree.StretchPlace;
import edgewright.words.tree.WrittenRound;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The words of rounds that stand under one title, or in one row of a table.
 *
 * @param rounds those of the title, in working order; at least one
 * @param label how they are named at the beginning of the first line
 * @param workedAs later ones that are worked as these, and say so
 * @param lines the words line by line, the title in the first; of a row as they are listed where there is no room for a table
 * @param cells the cells of a row; none for rounds in sentences
 */
public record SaidRounds(
        List<WrittenRound> rounds,
        String label,
        List<WrittenRound> workedAs,
        List<SaidText> lines,
        List<SaidText> cells) {
    /**
     * A piece of the words of rounds.
     *
     * @param line in which it stands, counted from 0
     */
    public record Piece(int line, SaidSpan span) {}

    public SaidRounds {
        rounds = List.copyOf(rounds);
        Objects.requireNonNull(label);
        workedAs = List.copyOf(workedAs);
        lines = List.copyOf(lines);
        cells = List.copyOf(cells);
    }

    /** The number of the first round. */
    public int first() {
        return rounds.get(0).number();
    }

    /** The number of the last round of the title. */
    public int last() {
        return rounds.get(rounds.size() - 1).number();
    }

    /** The rounds that a piece of these words is about: those of the title, and those that are worked as them. */
    Stream<WrittenRound> about(Said said) {
        return said instanceof Said.WholeRound ? rounds.stream() : Stream.concat(rounds.stream(), workedAs.stream());
    }

    /** All pieces of a line that say a stitch, an outer one before those within it. */
    public List<SaidSpan> around(int line, Side side, StretchPlace place) {
        return lines.get(line).spans().stream()
                .filter(span -> span.said().says(side, place))
                .toList();
    }

    /** The smallest piece of the lines that says a stitch; empty if none does. */
    public Optional<Piece> saying(Side side, StretchPlace place) {
        return IntStream.range(0, lines.size())
                .boxed()
                .flatMap(line -> lines.get(line).saying(side, place).stream().map(span -> new Piece(line, span)))
                .findFirst();
    }
}
