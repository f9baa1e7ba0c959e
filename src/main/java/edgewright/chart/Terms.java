package edgewright.chart;

/** The terms in which a pattern names its stitches. The same abbreviation can mean different stitches in the two. */
public enum Terms {
    UK,
    US
}
