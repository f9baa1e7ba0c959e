package edgewright.desk.work;

import edgewright.chart.Stitch;

/** The names of edits, as the menu and the status line say them. */
final class EditNames {
    private EditNames() {}

    /** The edit that works a stitch at so many places. */
    static String ofStitches(Stitch stitch, int stitches) {
        return DeskTexts.of("edit.stitches." + stitch.letter(), stitches);
    }
}
