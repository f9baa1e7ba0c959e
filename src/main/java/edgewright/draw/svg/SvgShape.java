package edgewright.draw.svg;

import java.util.List;

/**
 * A shape as SVG has it, its place apart from its look, so that equal shapes can be told and written together.
 *
 * @param style attributes that say what it looks like, a blank before each
 * @param xMm how far right its path starts or its text is anchored
 * @param yMm how far down its path starts or its text is anchored
 * @param form the rest of it
 */
record SvgShape(String style, double xMm, double yMm, Form form) {
    /** What a shape is, wherever it is. */
    sealed interface Form {}

    /**
     * A path, from its first point on.
     *
     * @param steps relative
     * @param endX how far right of its start the pen stands after it, in micrometres
     * @param endY how far below its start the pen stands after it, in micrometres
     * @param isSquare whether it is a filled upright rectangle
     */
    record Path(String steps, long endX, long endY, boolean isSquare) implements Form {}

    /**
     * Letters.
     *
     * @param escaped as XML has them
     * @param length an attribute that says how long they are together; may be empty
     * @param degrees by which they are turned clockwise about their anchor
     */
    record Letters(String escaped, String length, int degrees) implements Form {}

    /** As an element of its own, moved left and up by so much. */
    String element(double leftMm, double upMm) {
        return form instanceof Letters letters
                ? letters(letters, style, leftMm, upMm)
                : "<path" + style + " d=\"" + SvgPart.joined(List.of(part((Path) form, leftMm, upMm))) + "\"/>";
    }

    boolean isSquare() {
        return form instanceof Path path && path.isSquare();
    }

    boolean isText() {
        return form instanceof Letters;
    }

    /** As an element in a group that has its style; for text only. */
    String letters() {
        return letters((Letters) form, "", 0, 0);
    }

    /** As a part of a path; for all but text. */
    SvgPart part() {
        return part((Path) form, 0, 0);
    }

    private SvgPart part(Path path, double leftMm, double upMm) {
        return new SvgPart(
                SvgNumbers.micrometres(xMm - leftMm),
                SvgNumbers.micrometres(yMm - upMm),
                path.steps(),
                path.endX(),
                path.endY());
    }

    private String letters(Letters letters, String attributes, double leftMm, double upMm) {
        String x = SvgNumbers.mm(xMm - leftMm);
        String y = SvgNumbers.mm(yMm - upMm);
        String turn =
                letters.degrees() == 0 ? "" : " transform=\"rotate(" + letters.degrees() + " " + x + " " + y + ")\"";
        return "<text" + attributes + " x=\"" + x + "\" y=\"" + y + "\"" + turn + letters.length() + ">"
                + letters.escaped() + "</text>";
    }
}
