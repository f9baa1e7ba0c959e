package edgewright.desk.work;

/** How the desk looks: its colours and its letters. */
public record Looks(Theme theme, TypeSize size) {}
