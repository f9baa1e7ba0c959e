package edgewright.booklet.page;

/** The faces of one document. Figures stand in columns, so tables are set in the tabular ones. */
public record Typefaces(FaceMetrics text, FaceMetrics bold, FaceMetrics figures, FaceMetrics boldFigures) {}
