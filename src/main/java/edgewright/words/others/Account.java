package edgewright.words.others;

import edgewright.chart.Stitch;
import edgewright.words.grammar.BodyNotes;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.LineKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What each line of a text was taken as.
 *
 * @param lines every line of the text, in order
 */
public record Account(List<Line> lines) {
    /**
     * One line.
     *
     * @param number from 1
     * @param text as it stands
     * @param rounds the rounds that its words make; empty if it makes none
     * @param words what a word on it was taken for, if it explains one
     * @param asides parts of it that say nothing about stitches, though the rest does
     */
    public record Line(
            int number, String text, LineKind kind, List<Integer> rounds, List<Explained> words, List<Aside> asides) {
        public Line {
            rounds = List.copyOf(rounds);
            words = List.copyOf(words);
            asides = List.copyOf(asides);
        }
    }

    /**
     * A word that the text explains.
     *
     * @param stitch what it was taken for; empty if it is no stitch of a border
     */
    public record Explained(String word, Optional<Stitch> stitch) {}

    /**
     * Words without a stitch within a line of instructions.
     *
     * @param column from 1
     * @param text as it stands on the line
     * @param kind prose, or how yarn is handled
     */
    public record Aside(int column, String text, LineKind kind) {}

    public Account {
        lines = List.copyOf(lines);
    }

    /** Gathers what each line was taken as, while the text is read. */
    static final class Builder {
        private final List<Page.Line> page;
        private final List<LineKind> kinds = new ArrayList<>();
        private final List<List<Integer>> rounds = new ArrayList<>();
        private final List<List<Explained>> words = new ArrayList<>();
        private final List<List<Aside>> asides = new ArrayList<>();

        Builder(Page page) {
            this.page = page.lines();
            for (Page.Line line : this.page) {
                kinds.add(line.isBlank() || line.isRule() ? LineKind.BLANK : LineKind.PROSE);
                rounds.add(new ArrayList<>());
                words.add(new ArrayList<>());
                asides.add(new ArrayList<>());
            }
        }

        void set(int line, LineKind kind) {
            if (kinds.get(line - 1) != LineKind.REFUSED && kinds.get(line - 1) != LineKind.BLANK) {
                kinds.set(line - 1, kind);
            }
        }

        /** Sets the kind unless the line says something of more weight already. */
        void atLeast(int line, LineKind kind) {
            if (kinds.get(line - 1) == LineKind.PROSE) {
                kinds.set(line - 1, kind);
            }
        }

        void round(int line, int number) {
            set(line, LineKind.ROUND);
            if (!rounds.get(line - 1).contains(number)) {
                rounds.get(line - 1).add(number);
            }
        }

        void explain(int line, String word, Optional<Stitch> stitch) {
            words.get(line - 1).add(new Explained(word, stitch));
        }

        /** Notes the words of an aside as they stand, on each line that they stand on. */
        void aside(BodyNotes.Aside aside) {
            Map<Integer, List<Lexeme>> byLine = aside.words().stream()
                    .collect(Collectors.groupingBy(Lexeme::line, TreeMap::new, Collectors.toList()));
            byLine.forEach((line, words) -> {
                int from = words.get(0).column();
                int to = words.get(words.size() - 1).end();
                String text = page.get(line - 1).raw().substring(from - 1, to - 1);
                asides.get(line - 1).add(new Aside(from, text, aside.kind()));
            });
        }

        Account build() {
            List<Line> lines = new ArrayList<>();
            for (int i = 0; i < page.size(); i++) {
                lines.add(new Line(i + 1, page.get(i).raw(), kinds.get(i), rounds.get(i), words.get(i), asides.get(i)));
            }
            return new Account(lines);
        }
    }
}
