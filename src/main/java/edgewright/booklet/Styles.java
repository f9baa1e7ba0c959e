package edgewright.booklet;

/** The few styles that a pattern is set in. */
record Styles(
        Style title,
        Style part,
        Style section,
        Style label,
        Style text,
        Style strong,
        Style small,
        Style smallStrong,
        Style figures,
        Style figuresHead) {

    /** What the advice for low vision asks for: 22 to 24 points, nothing smaller. */
    private static final double LARGE_PT = 22;

    static Styles of(Type type, Sheet sheet) {
        return sheet.oneColumn() ? large(type, sheet.linePt()) : usual(type, sheet.linePt());
    }

    private static Styles usual(Type type, double line) {
        return new Styles(
                new Style(type.bold(), 30, 2.5 * line, Tone.INK),
                new Style(type.bold(), 17, 2 * line, Tone.MARSH),
                new Style(type.bold(), 11.5, line, Tone.INK),
                new Style(type.boldFigures(), 10.5, line, Tone.INK),
                new Style(type.text(), 10.5, line, Tone.INK),
                new Style(type.bold(), 10.5, line, Tone.INK),
                new Style(type.text(), 9, line, Tone.SOFT),
                new Style(type.bold(), 9, line, Tone.INK),
                new Style(type.figures(), 10, line, Tone.INK),
                new Style(type.boldFigures(), 9, line, Tone.INK));
    }

    private static Styles large(Type type, double line) {
        Style text = new Style(type.text(), LARGE_PT, line, Tone.INK);
        Style strong = new Style(type.bold(), LARGE_PT, line, Tone.INK);
        return new Styles(
                new Style(type.bold(), 36, 1.5 * line, Tone.INK),
                new Style(type.bold(), 28, 1.5 * line, Tone.INK),
                new Style(type.bold(), 24, line, Tone.INK),
                new Style(type.boldFigures(), LARGE_PT, line, Tone.INK),
                text,
                strong,
                text,
                strong,
                new Style(type.figures(), LARGE_PT, line, Tone.INK),
                new Style(type.boldFigures(), LARGE_PT, line, Tone.INK));
    }
}
