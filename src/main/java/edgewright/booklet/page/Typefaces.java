package edgewright.booklet.page;

/** The faces of one document. Figures stand in columns, so tables are set in the tabular ones. */
public record Typefaces(Face text, Face bold, Face figures, Face boldFigures) {}
