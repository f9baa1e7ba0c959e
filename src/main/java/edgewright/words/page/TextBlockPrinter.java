package edgewright.words.page;

/** Whoever puts a written pattern on a page or a screen. */
public interface TextBlockPrinter {
    void prose(TextBlock.Prose prose);

    void entry(TextBlock.Entry entry);

    void round(TextBlock.RoundWords round);

    void rounds(TextBlock.RoundsTable table);

    void counts(TextBlock.CountsTable table);

    void technique(TextBlock.Technique technique);
}
