package edgewright.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * What came of a text that should be a motif: the motif, or what is wrong with the text. A motif is written as lines of
 * letters, the outermost round first, as {@link Motif#text} writes it; blanks around a line and empty lines are passed over.
 */
public sealed interface MotifText {
    /** The text was a motif. */
    record Read(Motif motif) implements MotifText {}

    /** There are no letters at all. */
    record Empty() implements MotifText {}

    /**
     * A letter that stands for no stitch.
     *
     * @param line from 1, empty lines counted
     */
    record UnknownLetter(int line, String letter) implements MotifText {}

    /**
     * A line that is longer or shorter than the first.
     *
     * @param line from 1, empty lines counted
     * @param expected the letters of the first line
     */
    record OtherLength(int line, int letters, int expected) implements MotifText {}

    /**
     * A line that has its corner elsewhere than the first, or more than one.
     *
     * @param line from 1, empty lines counted
     */
    record OtherCorner(int line) implements MotifText {}

    /** Reads a text. */
    static MotifText of(String text) {
        List<String> rounds = new ArrayList<>();
        int number = 0;
        for (String line : text.lines().map(String::strip).toList()) {
            number++;
            if (line.isEmpty()) {
                continue;
            }
            Optional<MotifText> fault = fault(line, rounds.isEmpty() ? line : rounds.get(0), number);
            if (fault.isPresent()) {
                return fault.get();
            }
            rounds.add(line);
        }
        Collections.reverse(rounds);
        return rounds.isEmpty() ? new Empty() : new Read(new Motif(rounds));
    }

    /** The motif, if it was one. */
    default Optional<Motif> found() {
        return this instanceof Read read ? Optional.of(read.motif()) : Optional.empty();
    }

    private static Optional<MotifText> fault(String line, String first, int number) {
        for (int i = 0; i < line.length(); i = line.offsetByCodePoints(i, 1)) {
            if (!Motif.isKnown(line.charAt(i))) {
                return Optional.of(new UnknownLetter(number, Character.toString(line.codePointAt(i))));
            }
        }
        if (line.length() != first.length()) {
            return Optional.of(new OtherLength(number, line.length(), first.length()));
        }
        return Motif.isLike(line, first) ? Optional.empty() : Optional.of(new OtherCorner(number));
    }
}
