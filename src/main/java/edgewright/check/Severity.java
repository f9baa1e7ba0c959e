package edgewright.check;

/** How much a finding weighs. */
public enum Severity {
    /** Hands cannot work the chart as it stands; it is published as a draft only. */
    ERROR,
    /** It can be worked, but the fabric may disappoint. */
    WARNING
}
