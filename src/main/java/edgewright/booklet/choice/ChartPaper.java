package edgewright.booklet.choice;

/** What the chart is printed on. */
public enum ChartPaper {
    /** The paper of the rest; a chart that is larger is divided into sheets, each with its own numbers. */
    SAME,
    /** ISO 216 A3, upright or level, whichever takes fewer sheets. */
    A3,
    /** One picture over several sheets of the same paper, which overlap and are glued together by their marks. */
    POSTER
}
