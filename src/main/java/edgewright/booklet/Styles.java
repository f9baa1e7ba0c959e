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

    static Styles of(Type type, Sheet sheet) {
        return sheet.oneColumn() ? large(type, sheet) : usual(type, sheet);
    }

    private static Styles usual(Type type, Sheet sheet) {
        double line = sheet.linePt();
        return new Styles(
                Style.on(sheet, type.bold(), 30, 2.5 * line, Tone.INK),
                Style.on(sheet, type.bold(), 17, 2 * line, Tone.MARSH),
                Style.on(sheet, type.bold(), 11.5, line, Tone.INK),
                Style.on(sheet, type.boldFigures(), sheet.textSizePt(), line, Tone.INK),
                Style.on(sheet, type.text(), sheet.textSizePt(), line, Tone.INK),
                Style.on(sheet, type.bold(), sheet.textSizePt(), line, Tone.INK),
                Style.on(sheet, type.text(), 9, line, Tone.SOFT),
                Style.on(sheet, type.bold(), 9, line, Tone.INK),
                Style.on(sheet, type.figures(), 10, line, Tone.INK),
                Style.on(sheet, type.boldFigures(), 9, line, Tone.INK));
    }

    private static Styles large(Type type, Sheet sheet) {
        double line = sheet.linePt();
        Style text = Style.on(sheet, type.text(), sheet.textSizePt(), line, Tone.INK);
        Style strong = Style.on(sheet, type.bold(), sheet.textSizePt(), line, Tone.INK);
        return new Styles(
                Style.on(sheet, type.bold(), 36, 1.5 * line, Tone.INK),
                Style.on(sheet, type.bold(), 28, 1.5 * line, Tone.INK),
                Style.on(sheet, type.bold(), 24, line, Tone.INK),
                Style.on(sheet, type.boldFigures(), sheet.textSizePt(), line, Tone.INK),
                text,
                strong,
                text,
                strong,
                Style.on(sheet, type.figures(), sheet.textSizePt(), line, Tone.INK),
                Style.on(sheet, type.boldFigures(), sheet.textSizePt(), line, Tone.INK));
    }
}
