package edgewright.draw.fabric;

/** What is seen of the two loops at the top of a stitch once the rounds after it are worked. */
public enum LoopsOnTop {
    /** The front loop, which a back-loop stitch above has left free: a bar that lies level. */
    FRONT,
    /** Both, since the chain above passes the stitch by. */
    BOTH,
    /** Both, on the last round: a chain of Vs along the edge, with nothing beyond. */
    EDGE,
    /** None: a plain stitch above has taken both and hides them. */
    NONE
}
