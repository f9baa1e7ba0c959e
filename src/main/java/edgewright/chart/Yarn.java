package edgewright.chart;

/**
 * A yarn of the chart.
 *
 * @param id letters or digits, 1 to 8 of them; unique in a chart
 * @param name what the designer calls it
 */
public record Yarn(String id, String name, Colour colour, Extras extras) {
    /** The longest id of a yarn, in characters. */
    public static final int LONGEST_ID = 8;

    public Yarn {
        if (!isId(id)) {
            throw new IllegalArgumentException("'" + id + "': expected a yarn id of 1 to 8 letters or digits");
        }
    }

    /** A yarn with no unknown members. */
    public Yarn(String id, String name, Colour colour) {
        this(id, name, colour, Extras.NONE);
    }

    /** Whether this can be the id of a yarn: 1 to 8 letters or digits of any script. */
    public static boolean isId(String text) {
        return !text.isEmpty()
                && text.codePointCount(0, text.length()) <= LONGEST_ID
                && text.codePoints().allMatch(Character::isLetterOrDigit);
    }

    /** This yarn under another name. */
    public Yarn withName(String newName) {
        return new Yarn(id, newName, colour, extras);
    }

    /** This yarn in another colour. */
    public Yarn withColour(Colour newColour) {
        return new Yarn(id, name, newColour, extras);
    }
}
