package edgewright.words;

/** Whoever puts a written pattern on a page or a screen. */
public interface BlockPrinter {
    void prose(Block.Prose prose);

    void entry(Block.Entry entry);

    void round(Block.RoundWords round);

    void counts(Block.CountsTable table);
}
