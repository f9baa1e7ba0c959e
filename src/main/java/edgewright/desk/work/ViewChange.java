package edgewright.desk.work;

/** What is looked at otherwise. */
public enum ViewChange {
    /** The cells have another size on the screen. */
    SIZE,
    /** Another side is at the top. */
    TURN,
    /** Other layers are shown. */
    LAYERS,
    /** The stitches of a side are counted in the other way. */
    COUNTING,
    /** The repeat is worked another number of times. */
    REPEATS,
    /** Another part of the border is drawn, for the other hand, or in other colours. */
    SEEING
}
