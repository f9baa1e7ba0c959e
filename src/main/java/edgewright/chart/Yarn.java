package edgewright.chart;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A yarn of the chart.
 *
 * @param id letters or digits, 1 to 8 of them; unique in a chart
 * @param name what the designer calls it, in one line as {@link CleanText#oneLine} leaves it
 * @param ball what the band of a ball says, if it is known
 * @param metresInHand how much of it is at hand, in metres; empty if nobody has said
 */
public record Yarn(
        String id, String name, Colour colour, Optional<Ball> ball, OptionalDouble metresInHand, Extras extras) {
    /** The longest id of a yarn, in characters. */
    public static final int LONGEST_ID = 8;

    public Yarn {
        if (!isId(id)) {
            throw new IllegalArgumentException("'" + id + "': expected a yarn id of 1 to 8 letters or digits");
        }
        name = CleanText.oneLine(name);
        Objects.requireNonNull(ball);
        Objects.requireNonNull(extras);
        if (metresInHand.isPresent()
                && !(metresInHand.getAsDouble() >= 0 && Double.isFinite(metresInHand.getAsDouble()))) {
            throw new IllegalArgumentException(metresInHand.getAsDouble() + " metres of yarn: expected 0 or more");
        }
    }

    /** A yarn of which only the looks are known. */
    public Yarn(String id, String name, Colour colour) {
        this(id, name, colour, Optional.empty(), OptionalDouble.empty(), Extras.NONE);
    }

    /** Whether this can be the id of a yarn: 1 to 8 letters or digits of any script. */
    public static boolean isId(String text) {
        return !text.isEmpty()
                && text.codePointCount(0, text.length()) <= LONGEST_ID
                && text.codePoints().allMatch(Character::isLetterOrDigit);
    }

    /** This yarn under another name. */
    public Yarn withName(String newName) {
        return new Yarn(id, newName, colour, ball, metresInHand, extras);
    }

    /** This yarn in another colour. */
    public Yarn withColour(Colour newColour) {
        return new Yarn(id, name, newColour, ball, metresInHand, extras);
    }

    /** This yarn in balls of another make. */
    public Yarn withBall(Optional<Ball> newBall) {
        return new Yarn(id, name, colour, newBall, metresInHand, extras);
    }

    /** This yarn with so many metres at hand. */
    public Yarn withMetresInHand(OptionalDouble metres) {
        return new Yarn(id, name, colour, ball, metres, extras);
    }
}
