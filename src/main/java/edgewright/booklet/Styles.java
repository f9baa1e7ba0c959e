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

    static Styles of(Type type) {
        double line = Sheet.LINE_PT;
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
}
