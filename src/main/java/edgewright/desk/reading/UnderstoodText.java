package edgewright.desk.reading;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.hands.Fabric;
import edgewright.proof.ChartFromWords;
import edgewright.proof.ProofResult;
import edgewright.proof.ProofSentences;
import edgewright.proof.Prover;
import edgewright.proof.TextReading;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.grammar.LineKind;
import edgewright.words.grammar.Remark;
import edgewright.words.others.Account;
import edgewright.words.others.OthersReading;
import edgewright.words.page.TextBlock;
import edgewright.words.tree.Instructions;
import edgewright.words.write.PatternWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A pattern text as it was understood: line by line, with what is wrong with it, and the chart that it makes. No window.
 *
 * @param lines every line of the text, in order
 * @param problems what was not understood, or does not come out, a sentence each
 * @param asksTerms whether it must be said first which terms the text is in
 * @param base the stitches of each side in the base round for which it was worked
 * @param saysBase whether the text itself tells them
 * @param chart what the words make; empty if they make no chart
 */
record UnderstoodText(
        List<Line> lines,
        List<String> problems,
        boolean asksTerms,
        Optional<Instructions> pattern,
        PerSide<Integer> base,
        boolean saysBase,
        Optional<Chart> chart) {

    /** The text has no pattern yet, and nothing is wrong with that. */
    static final UnderstoodText NOTHING = new UnderstoodText(
            List.of(), List.of(), false, Optional.empty(), PerSide.of(0, 0, 0, 0), false, Optional.empty());

    /**
     * One line.
     *
     * @param number from 1
     * @param understood in the words of the program
     * @param rounds the rounds that it makes; none if it makes no stitches
     */
    record Line(int number, String text, String understood, List<Integer> rounds, boolean refused) {
        Line {
            rounds = List.copyOf(rounds);
        }
    }

    UnderstoodText {
        lines = List.copyOf(lines);
        problems = List.copyOf(problems);
    }

    /**
     * Reads and works a text. It takes a while.
     *
     * @param terms the answer to the question which terms it is in; empty if nobody was asked
     * @param given the stitches of the base round, for a text that does not tell them
     */
    static UnderstoodText of(String text, Language language, Optional<Terms> terms, PerSide<Integer> given) {
        if (text.isBlank()) {
            return NOTHING;
        }
        TextReading reading = TextReading.of(text, language, terms, Optional.empty());
        boolean asks = asksTerms(reading);
        PerSide<Integer> base = reading.firstSize().orElse(given);
        List<String> problems = new ArrayList<>(problems(reading, language));
        Optional<Chart> chart = reading.pattern().flatMap(pattern -> new Drawing(language, problems).of(pattern, base));
        return new UnderstoodText(
                new LineByLine(language, reading).lines(text),
                problems,
                asks,
                reading.pattern(),
                base,
                reading.firstSize().isPresent(),
                chart);
    }

    /** As the lines are shown, so that what is told stands beside its line. */
    private static List<String> problems(TextReading reading, Language language) {
        List<Remark> remarks = reading.others().map(OthersReading::remarks).orElse(List.of());
        return remarks.isEmpty()
                ? reading.sentences(language)
                : remarks.stream().map(remark -> remark.sentence(language)).toList();
    }

    private static boolean asksTerms(TextReading reading) {
        return reading.others().stream()
                .flatMap(others -> others.remarks().stream())
                .anyMatch(remark ->
                        remark.kind() == Remark.Kind.QUESTION && remark.what().equals("terms"));
    }

    /** What it was understood as in one sentence: how many rounds, or the first thing that is wrong. */
    String summary(Messages says) {
        if (pattern.isEmpty()) {
            return problems.isEmpty() ? says.text("reading-empty") : problems.get(0);
        }
        int rounds = pattern.get().rounds().size();
        return problems.isEmpty()
                ? says.text("reading-understood", count("rounds", rounds))
                : says.text("reading-understoodBut", count("rounds", rounds), arg("problem", problems.get(0)));
    }

    /** The first line of the text that makes stitches, as it was understood. */
    Optional<String> firstRound() {
        return lines.stream()
                .filter(line -> pattern.isPresent()
                        && !line.rounds().isEmpty()
                        && !line.understood().isEmpty())
                .map(Line::understood)
                .findFirst();
    }

    /** Works a pattern and draws it; says what stands against it. */
    private record Drawing(Language language, List<String> problems) {
        Optional<Chart> of(Instructions pattern, PerSide<Integer> base) {
            ProofResult result = Prover.work(pattern, base);
            if (!(result instanceof ProofResult.Agrees)) {
                problems.addAll(new ProofSentences(language).of(result));
                return Optional.empty();
            }
            Fabric fabric = result.fabric().orElseThrow();
            ChartFromWords.Answer answer = ChartFromWords.of(pattern, fabric);
            if (answer instanceof ChartFromWords.Answer.Drawn drawn) {
                return Optional.of(drawn.chart());
            }
            Messages says = language.messages("desk/reading");
            problems.add(
                    answer instanceof ChartFromWords.Answer.NotOneChart not
                            ? says.text("noChart-" + not.why())
                            : says.text("noChart-limit"));
            return Optional.empty();
        }
    }

    /** Puts what each line was taken as into words. */
    private static final class LineByLine {
        private final Messages says;
        private final TextReading reading;
        private final Map<Integer, TextBlock.RoundWords> own = new HashMap<>();

        LineByLine(Language language, TextReading reading) {
            this.says = language.messages("desk/reading");
            this.reading = reading;
            // A line of others is told what is worked there, not that it is as another line.
            boolean inFull = reading.others().isPresent();
            reading.pattern()
                    .map(pattern -> inFull ? pattern.withEachRoundInFull() : pattern)
                    .ifPresent(pattern -> PatternWriter.write(pattern, language).parts().stream()
                            .flatMap(part -> part.blocks().stream())
                            .filter(TextBlock.RoundWords.class::isInstance)
                            .map(TextBlock.RoundWords.class::cast)
                            .forEach(round -> own.putIfAbsent(round.round(), round)));
        }

        List<Line> lines(String text) {
            return reading.others()
                    .map(others ->
                            others.account().lines().stream().map(this::line).toList())
                    .orElseGet(() -> ownLines(text));
        }

        private Line line(Account.Line line) {
            List<String> understood = new ArrayList<>();
            if (!line.rounds().isEmpty() && !own.isEmpty()) {
                line.rounds().forEach(round -> understood.add(words(round)));
            } else if (line.kind() != LineKind.BLANK) {
                understood.add(says.text("kind-" + line.kind()));
            }
            line.asides()
                    .forEach(aside -> understood.add(says.text(
                            "reading-aside",
                            arg("text", aside.text()),
                            arg("kind", says.text("kind-" + aside.kind())))));
            return new Line(
                    line.number(),
                    line.text(),
                    String.join(" ", understood),
                    line.rounds(),
                    line.kind() == LineKind.REFUSED);
        }

        private String words(int round) {
            TextBlock.RoundWords words = own.get(round);
            return words == null ? says.text("kind-ROUND") : String.join(" ", words.lines());
        }

        /** A text in the words of the program, which need not be told again: only which round a line begins. */
        private List<Line> ownLines(String text) {
            List<Line> lines = new ArrayList<>();
            List<Integer> current = List.of();
            for (String line : text.lines().toList()) {
                Optional<TextBlock.RoundWords> begun = own.values().stream()
                        .filter(round -> round.round() > 0 && line.startsWith(round.name()))
                        .findFirst();
                current = begun.map(round -> round.numbers().boxed().toList())
                        .orElse(line.isBlank() ? List.of() : current);
                String understood = current.isEmpty() || begun.isEmpty() ? "" : words(current.get(0));
                lines.add(new Line(lines.size() + 1, line, understood, current, false));
            }
            return lines;
        }
    }
}
