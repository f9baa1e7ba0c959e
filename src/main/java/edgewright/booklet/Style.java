package edgewright.booklet;

import edgewright.chart.Colour;

/**
 * How a line of text looks.
 *
 * @param leadingPt from baseline to baseline; a multiple of half a line
 */
record Style(Face face, double sizePt, double leadingPt, Colour colour) {

    /** How far under the top of its line a baseline lies, so that capitals stand in the middle of it. */
    double baselinePt() {
        return (leadingPt + Face.CAP_HEIGHT * sizePt) / 2;
    }

    Style toned(Colour other) {
        return new Style(face, sizePt, leadingPt, other);
    }
}
