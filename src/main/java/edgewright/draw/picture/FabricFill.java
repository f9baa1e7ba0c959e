package edgewright.draw.picture;

/** How the cells of the fabric layer are filled. */
public enum FabricFill {
    /** Each cell flat in the yarn that shows: calm under marks. */
    FLAT,
    /** Each stitch with its body, as the worked border looks from the right side. */
    WORKED
}
