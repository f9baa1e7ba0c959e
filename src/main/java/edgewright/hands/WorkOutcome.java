package edgewright.hands;

/** How the work ended. */
public sealed interface WorkOutcome {
    /** What came off the hook; what was made up to the stop, if there was one. */
    Fabric fabric();

    /** Every round was made as the words say. */
    record Finished(Fabric fabric) implements WorkOutcome {}

    /** The words could not be followed any further. */
    record Stopped(Fabric fabric, Stop stop) implements WorkOutcome {}
}
