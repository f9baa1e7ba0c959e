package edgewright.draw.marks;

import edgewright.chart.Stitch;

/** What a mark means, and the layer it lies in. */
public enum MarkKind {
    /** The paper itself. */
    PAPER(Layer.PAPER),

    /** What is deep under worked stitches, so that nothing lighter shows where two of them meet. */
    FABRIC_GROUND(Layer.FABRIC),
    /** The yarn that shows in the cell of a stitch. */
    FABRIC_STITCH(Layer.FABRIC),
    /** The yarn of the corner chains. */
    FABRIC_CORNER(Layer.FABRIC),
    /** The base round, already on the piece; it has no yarn of the chart. */
    FABRIC_BASE(Layer.FABRIC),
    /** The cell of a stitch that a ragged chart lacks. */
    FABRIC_MISSING(Layer.FABRIC),
    /** The piece that the border goes round. */
    FABRIC_PIECE(Layer.FABRIC),

    /** Where an area of one yarn ends, in one ink. */
    AREA_LINE(Layer.GRID),
    /** A line between cells. */
    GRID_LINE(Layer.GRID),
    /** A short line after every tenth stitch of a round, counted from a corner. */
    TENTH_LINE(Layer.GRID),
    /** The edge of the border. */
    OUTLINE(Layer.GRID),
    /** Where a repeat begins or ends. */
    REPEAT_LINE(Layer.GRID),

    /** A back-loop stitch. */
    BACK_LOOP(Layer.MARKS),
    /** A plain stitch. */
    PLAIN(Layer.MARKS),
    /** A long stitch, from its own cell to where it lands. */
    LONG(Layer.MARKS),
    /** A chain inside a side. */
    CHAIN(Layer.MARKS),
    /** The chains of a corner. */
    CORNER_CHAINS(Layer.MARKS),
    /** A stitch or a corner of the base round. */
    BASE_STITCH(Layer.MARKS),
    /** A stitch that a ragged chart lacks. */
    MISSING(Layer.MARKS),
    /** A strand of yarn, a tool or a piece in a figure that shows how something is worked. */
    TECHNIQUE(Layer.MARKS),

    /** Stitches that a ragged chart has too many, which have no cell. */
    SURPLUS(Layer.LABELS),
    /** The number of a round. */
    ROUND_NUMBER(Layer.LABELS),
    /** The id of a round's yarn. */
    YARN_LETTER(Layer.LABELS),
    /** The way of working. */
    DIRECTION(Layer.LABELS),
    /** How many stitches from the corner there are, in tens, beside the outermost round. */
    RULER(Layer.LABELS),
    /** The bracket round one repeat. */
    REPEAT(Layer.LABELS),
    /** Words beside the chart. */
    CAPTION(Layer.LABELS),
    /** A row of the legend. */
    LEGEND(Layer.LABELS),
    /** The number of a step, or an arrow, in a figure that shows how something is worked. */
    STEP(Layer.LABELS),

    /** A ring round a flagged stitch, with its numbers; or the numbers alone, beside a round. */
    FLAG(Layer.FLAGS);

    private final Layer layer;

    MarkKind(Layer layer) {
        this.layer = layer;
    }

    /** The layer these marks lie in. */
    public Layer layer() {
        return layer;
    }

    /** The mark that says what to do for a stitch. */
    public static MarkKind of(Stitch stitch) {
        return switch (stitch) {
            case BACK_LOOP -> BACK_LOOP;
            case PLAIN -> PLAIN;
            case LONG -> LONG;
            case CHAIN -> CHAIN;
        };
    }
}
