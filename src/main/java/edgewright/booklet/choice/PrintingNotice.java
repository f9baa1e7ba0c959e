package edgewright.booklet.choice;

/**
 * What the publisher says of this printing, as it is to stand on the first page; never made from a clock.
 *
 * @param version such as {@code 2}; blank if nothing is to be said
 * @param date such as {@code May 2026}; blank if nothing is to be said
 */
public record PrintingNotice(String version, String date) {
    /** Nothing is said. */
    public static final PrintingNotice NONE = new PrintingNotice("", "");

    public PrintingNotice {
        version = version.strip();
        date = date.strip();
    }
}
