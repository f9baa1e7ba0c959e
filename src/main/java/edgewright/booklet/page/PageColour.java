package edgewright.booklet.page;

import edgewright.booklet.choice.Edition;
import edgewright.chart.Colour;

/** The few colours of the page itself; yarns bring their own. Every one can be read on white. */
public final class PageColour {
    /** Text. */
    public static final Colour INK = Colour.parse("#000000");

    /** What nothing is printed on. */
    public static final Colour PAPER = Colour.parse("#ffffff");

    /** Running matter and notes under pictures; 8.6 to 1 on white. */
    public static final Colour SOFT = Colour.parse("#4a4f52");

    /** Hairlines that part things. */
    public static final Colour LINE = Colour.parse("#9aa0a3");

    /** The ground of table heads and boxes. */
    public static final Colour WASH = Colour.parse("#eef1f0");

    /** Headings and rules of the first page; 7.9 to 1 on white. */
    public static final Colour MARSH = Colour.parse("#1f5560");

    private PageColour() {}

    /** What a colour of the page, not of a yarn, comes to in an edition: where there is but one ink, black or nothing. */
    public static Colour printed(Colour colour, Edition edition) {
        if (edition == Edition.STANDARD) {
            return colour;
        }
        if (colour.equals(SOFT) || colour.equals(LINE) || colour.equals(MARSH)) {
            return INK;
        }
        return colour.equals(WASH) ? PAPER : colour;
    }
}
