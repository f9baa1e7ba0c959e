package edgewright.words.page;

import java.util.List;

/**
 * What a part of a written pattern is made of. A line holds no line breaks; where a number must not be parted from its
 * stitch, a no-break space (U+00A0) stands between them.
 */
public sealed interface TextBlock {
    /** Hands this block to whoever prints it; a printer that forgets a kind of block does not compile. */
    void printOn(TextBlockPrinter printer);

    /** A paragraph. */
    record Prose(String text) implements TextBlock {
        @Override
        public void printOn(TextBlockPrinter printer) {
            printer.prose(this);
        }
    }

    /** A word or a yarn and what is to be said of it; {@code text} may be empty. */
    record Entry(String word, String text) implements TextBlock {
        @Override
        public void printOn(TextBlockPrinter printer) {
            printer.entry(this);
        }
    }

    /**
     * The words of one round: a line that names the round, its yarn and its counts, then the lines of what to do.
     *
     * @param round its number; 0 for the base round
     */
    record RoundWords(int round, List<String> lines) implements TextBlock {
        public RoundWords {
            lines = List.copyOf(lines);
        }

        /** What names the round and its yarn: the first line as far as its first full stop, which is left out. */
        public String name() {
            String first = lines.get(0);
            int end = first.indexOf(". ");
            return end < 0 ? first.replaceAll("\\.$", "") : first.substring(0, end);
        }

        /** What the first line says after the {@link #name}; may be empty. */
        public String afterName() {
            String first = lines.get(0);
            int end = first.indexOf(". ");
            return end < 0 ? "" : first.substring(end + 2).strip();
        }

        @Override
        public void printOn(TextBlockPrinter printer) {
            printer.round(this);
        }
    }

    /**
     * The counts of all rounds.
     *
     * @param caption says which way they are counted
     * @param columns the heads of the columns
     * @param rows one a round, from the base round on; each as long as {@code columns}
     */
    record CountsTable(String caption, List<String> columns, List<List<String>> rows) implements TextBlock {
        public CountsTable {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }

        @Override
        public void printOn(TextBlockPrinter printer) {
            printer.counts(this);
        }
    }
}
