package edgewright.check;

/** A rule as the rule book lists it. */
public record RuleEntry(String id, Severity severity) {}
