package edgewright.proof;

import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.words.grammar.Remark;
import edgewright.words.others.OthersReader;
import edgewright.words.others.OthersReading;
import edgewright.words.read.PatternReader;
import edgewright.words.read.ReadingProblem;
import edgewright.words.read.ReadingResult;
import edgewright.words.tree.Instructions;
import java.util.List;
import java.util.Optional;

/**
 * A pattern text as it was understood. The strict reader of our own words is the first try; if it reads the text, nothing else
 * is asked. Otherwise the text is read as one that somebody else wrote.
 *
 * @param own what the strict reader made of it
 * @param others what the tolerant reader made of it; empty if the strict one read it, or the language is not read so
 */
public record TextReading(ReadingResult own, Optional<OthersReading> others) {

    /**
     * Reads a text.
     *
     * @param terms the answer to the question which terms it is in, if somebody has been asked
     * @param sides the stitches of each side in the base round, if they are known
     */
    public static TextReading of(
            String text, Language language, Optional<Terms> terms, Optional<PerSide<Integer>> sides) {
        ReadingResult own = PatternReader.read(text, language);
        boolean read = own instanceof ReadingResult.Understood || !OthersReader.reads(language);
        return new TextReading(
                own, read ? Optional.empty() : Optional.of(OthersReader.read(text, language, terms, sides)));
    }

    /** The instructions, if all of the text was understood; what is stated in it need not come out. */
    public Optional<Instructions> pattern() {
        return own instanceof ReadingResult.Understood understood
                ? Optional.of(understood.pattern())
                : others.flatMap(OthersReading::pattern);
    }

    /** The stitches of each side in the base round, in the first size that the text tells. */
    public Optional<PerSide<Integer>> firstSize() {
        return others.flatMap(reading -> reading.sizes().stream().findFirst());
    }

    /** What was not understood, or does not come out, in one sentence each without its full stop. */
    public List<String> sentences(Language language) {
        if (own instanceof ReadingResult.Understood) {
            return List.of();
        }
        List<ReadingProblem> strict = ((ReadingResult.Refused) own).problems();
        List<Remark> remarks = others.map(OthersReading::remarks).orElse(List.of());
        boolean strictGotFurther =
                pattern().isEmpty() && (remarks.isEmpty() || isBefore(remarks.get(0), strict.get(0)));
        return strictGotFurther
                ? strict.stream().map(problem -> problem.sentence(language)).toList()
                : remarks.stream().map(remark -> remark.sentence(language)).toList();
    }

    /** Whether the tolerant reader stopped before the strict one, or at the same place. */
    private static boolean isBefore(Remark remark, ReadingProblem problem) {
        return remark.line() < problem.line()
                || (remark.line() == problem.line() && remark.column() <= problem.column());
    }
}
