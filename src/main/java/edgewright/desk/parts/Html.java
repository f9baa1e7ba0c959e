package edgewright.desk.parts;

/** Text for the few components that wrap only when it is written as HTML. */
public final class Html {
    private Html() {}

    /** Plain text as HTML that wraps at the width of its component. */
    public static String wrapped(String text) {
        return "<html>" + escaped(text) + "</html>";
    }

    /** Plain text as HTML that wraps at that many pixels. */
    public static String wrapped(String text, int widthPx) {
        return "<html><div style='width:" + widthPx + "px'>" + escaped(text) + "</div></html>";
    }

    /** Plain text with all that HTML would take for its own made harmless. */
    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\n", "<br>");
    }
}
