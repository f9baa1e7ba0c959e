package edgewright.booklet.page;

import edgewright.chart.Colour;

/** The few styles that a pattern is set in. */
public record TextStyles(
        TextStyle title,
        TextStyle part,
        TextStyle section,
        TextStyle label,
        TextStyle text,
        TextStyle strong,
        TextStyle small,
        TextStyle smallStrong,
        TextStyle figures,
        TextStyle figuresHead) {

    public static TextStyles of(Typefaces type, PageLayout sheet) {
        return of(type, sheet, PageColour.MARSH);
    }

    /**
     * The same with an accent of the publisher's own.
     *
     * @param accent of headings and rules, on pages that are not in large print
     */
    public static TextStyles of(Typefaces type, PageLayout sheet, Colour accent) {
        return sheet.oneColumn() ? large(type, sheet) : usual(type, sheet, accent);
    }

    private static TextStyles usual(Typefaces type, PageLayout sheet, Colour accent) {
        double line = sheet.linePt();
        return new TextStyles(
                TextStyle.on(sheet, type.bold(), 30, 2.5 * line, PageColour.INK),
                TextStyle.on(sheet, type.bold(), 15, 2 * line, accent),
                TextStyle.on(sheet, type.bold(), 10.5, line, PageColour.INK),
                TextStyle.on(sheet, type.boldFigures(), sheet.textSizePt(), line, PageColour.INK),
                TextStyle.on(sheet, type.text(), sheet.textSizePt(), line, PageColour.INK),
                TextStyle.on(sheet, type.bold(), sheet.textSizePt(), line, PageColour.INK),
                TextStyle.on(sheet, type.text(), 8.5, line, PageColour.SOFT),
                TextStyle.on(sheet, type.bold(), 8.5, line, PageColour.INK),
                TextStyle.on(sheet, type.figures(), 9, line, PageColour.INK),
                TextStyle.on(sheet, type.boldFigures(), 8.5, line, PageColour.INK));
    }

    private static TextStyles large(Typefaces type, PageLayout sheet) {
        double line = sheet.linePt();
        TextStyle text = TextStyle.on(sheet, type.text(), sheet.textSizePt(), line, PageColour.INK);
        TextStyle strong = TextStyle.on(sheet, type.bold(), sheet.textSizePt(), line, PageColour.INK);
        return new TextStyles(
                TextStyle.on(sheet, type.bold(), 36, 1.5 * line, PageColour.INK),
                TextStyle.on(sheet, type.bold(), 28, 1.5 * line, PageColour.INK),
                TextStyle.on(sheet, type.bold(), 24, line, PageColour.INK),
                TextStyle.on(sheet, type.boldFigures(), sheet.textSizePt(), line, PageColour.INK),
                text,
                strong,
                text,
                strong,
                TextStyle.on(sheet, type.figures(), sheet.textSizePt(), line, PageColour.INK),
                TextStyle.on(sheet, type.boldFigures(), sheet.textSizePt(), line, PageColour.INK));
    }

    /** The same for one of two columns side by side, where lines are closer. */
    TextStyles inHalf(PageLayout sheet) {
        double line = sheet.linePt();
        double size = sheet.textSizePt();
        return new TextStyles(
                title,
                TextStyle.on(sheet, part.face(), 11.5, line, part.colour()),
                TextStyle.on(sheet, section.face(), size, line, section.colour()),
                TextStyle.on(sheet, label.face(), size, line, label.colour()),
                TextStyle.on(sheet, text.face(), size, line, text.colour()),
                TextStyle.on(sheet, strong.face(), size, line, strong.colour()),
                TextStyle.on(sheet, small.face(), small.sizePt(), line, small.colour()),
                TextStyle.on(sheet, smallStrong.face(), smallStrong.sizePt(), line, smallStrong.colour()),
                TextStyle.on(sheet, figures.face(), size, line, figures.colour()),
                TextStyle.on(sheet, figuresHead.face(), figuresHead.sizePt(), line, figuresHead.colour()));
    }
}
