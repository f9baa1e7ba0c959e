package edgewright.hands;

/** One of the two strands at the top of a stitch or a chain. */
enum Loop {
    FRONT,
    BACK
}
