package edgewright.desk.command;

/** Where the key of a command counts. */
public enum Scope {
    /** In the whole window. */
    WINDOW,
    /** Only while the chart has the keys: a letter alone is a text elsewhere. */
    CHART
}
