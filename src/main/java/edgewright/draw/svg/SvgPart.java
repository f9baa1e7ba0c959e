package edgewright.draw.svg;

import java.util.List;

/**
 * A part of a path of SVG; lengths in micrometres.
 *
 * @param x how far right it starts
 * @param y how far down it starts
 * @param steps from there on, relative
 * @param endX how far right of its start the pen stands after it
 * @param endY how far below its start the pen stands after it
 */
record SvgPart(long x, long y, String steps, long endX, long endY) {

    /** Parts after one another, each reached from where the pen stands. */
    static String joined(List<SvgPart> parts) {
        StringBuilder path = new StringBuilder();
        long penX = 0;
        long penY = 0;
        for (SvgPart part : parts) {
            path.append(path.isEmpty() ? 'M' : 'm').append(SvgNumbers.pair(part.x - penX, part.y - penY));
            path.append(part.steps);
            penX = part.x + part.endX;
            penY = part.y + part.endY;
        }
        return path.toString();
    }
}
