package edgewright.words.page;

import edgewright.words.technique.ToldTechnique;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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

    /**
     * A word or a yarn and what is to be said of it.
     *
     * @param text may be empty
     * @param line both in one line
     */
    record Entry(String word, String text, String line) implements TextBlock {
        @Override
        public void printOn(TextBlockPrinter printer) {
            printer.entry(this);
        }
    }

    /**
     * The words of one round, or of some that are worked alike, one after the other.
     *
     * @param round the number of the first; 0 for the base round
     * @param last the number of the last; that of the first where there is only one
     * @param name names the rounds and their yarns, with no full stop
     * @param label the name as it stands before the words
     * @param counts what is said of the stitches on a side; may be empty
     * @param opening the label and the first of the steps as one line
     * @param steps what to do and how many stitches a side has then, a line each; at least one
     */
    record RoundWords(int round, int last, String name, String label, String counts, String opening, List<String> steps)
            implements TextBlock {
        public RoundWords {
            if (last < round) {
                throw new IllegalArgumentException("rounds " + round + " to " + last);
            }
            Objects.requireNonNull(name);
            Objects.requireNonNull(label);
            Objects.requireNonNull(counts);
            Objects.requireNonNull(opening);
            steps = List.copyOf(steps);
        }

        /** The numbers of the rounds, rising. */
        public IntStream numbers() {
            return IntStream.rangeClosed(round, last);
        }

        /** All lines; the first begins with the name of the round. */
        public List<String> lines() {
            return Stream.concat(Stream.of(opening), steps.stream().skip(1)).toList();
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

    /**
     * The rounds in a table, a row each: the number, the yarn, what is worked from the corner, the repeat, what is worked to
     * the corner and, if any round says it, how many stitches a side has then.
     *
     * @param columns the heads of the columns, five or six
     */
    record RoundsTable(List<String> columns, List<RoundRow> rows) implements TextBlock {
        public RoundsTable {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }

        @Override
        public void printOn(TextBlockPrinter printer) {
            printer.rounds(this);
        }
    }

    /** A technique: its title, its figure where there are pictures, and its steps with their numbers. */
    record Technique(ToldTechnique told) implements TextBlock {
        public Technique {
            Objects.requireNonNull(told);
        }

        @Override
        public void printOn(TextBlockPrinter printer) {
            printer.technique(this);
        }
    }

    /**
     * One round in a table.
     *
     * @param name names the round and its yarn, with no full stop
     * @param across whether one cell of words takes the place of the three of the work
     * @param cells as many as there are columns, or two fewer where words run across
     * @param listed the same for where there is no room for columns: the name as it stands before words, then a line for each
     *     cell of the work and for the counts, each under its column's head
     */
    record RoundRow(int round, String name, boolean across, List<String> cells, List<String> listed) {
        public RoundRow {
            Objects.requireNonNull(name);
            cells = List.copyOf(cells);
            listed = List.copyOf(listed);
        }
    }
}
