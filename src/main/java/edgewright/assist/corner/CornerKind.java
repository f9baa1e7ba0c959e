package edgewright.assist.corner;

/** How a tile is carried on to a corner. */
public enum CornerKind {
    /** It runs on in the direction of work on both arms, and the diagonal cuts it. */
    TURNING,
    /** The arm from the corner is that to the corner in a mirror; it turns back where the repeat begins. */
    MIRROR_FROM,
    /** The arm to the corner is that from the corner in a mirror; it turns back where the repeat ends. */
    MIRROR_TO
}
