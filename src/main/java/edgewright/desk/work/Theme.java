package edgewright.desk.work;

/** How the desk is coloured. */
public enum Theme {
    LIGHT,
    /** Light on dark, for the evening. */
    DARK,
    /** White and yellow on black: every text stands out at least seven times from its ground, as WCAG 2.2 asks at level AAA. */
    HIGH_CONTRAST
}
