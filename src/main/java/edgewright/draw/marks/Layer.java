package edgewright.draw.marks;

/** What a mark is for, from the lowest to the topmost; the marks of a drawing lie in this order. */
public enum Layer {
    /** The ground under everything. */
    PAPER,
    /** What shows: each cell in the yarn that is seen there when the border is done. */
    FABRIC,
    /** The squared paper: lines between cells, heavier ones to count by. */
    GRID,
    /** What to do: a mark for each stitch. */
    MARKS,
    /** Numbers, letters, brackets and words around the cells. */
    LABELS,
    /** Rings and numbers for what is to be looked at. */
    FLAGS
}
