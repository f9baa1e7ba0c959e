package edgewright.words.setup;

import edgewright.chart.Stitch;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Lexeme;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads what a clause says of how a stitch is worked, where that agrees with what the stitch is. */
final class StitchFacts {
    private static final Set<Concept> OF_COVERED = EnumSet.of(
            Concept.MISS, Concept.STITCH_NAME, Concept.TALL, Concept.FRONT_ONLY, Concept.NUMBER, Concept.SHORT);
    private static final Set<Concept> WHERE = EnumSet.of(Concept.FRONT_ONLY, Concept.BACK_ONLY, Concept.BELOW);
    private static final Set<Concept> OF_BACK = EnumSet.of(Concept.SHORT, Concept.BACK_ONLY, Concept.STITCH_NAME);
    private static final Set<Concept> MEANS =
            EnumSet.of(Concept.EQUALS, Concept.COLON, Concept.DASH, Concept.DEFINED_AS);
    private static final Set<Concept> LISTED = EnumSet.of(Concept.WORD, Concept.SHORT, Concept.TALL);
    private static final int LONGEST_LISTED = 4;

    private StitchFacts() {}

    /** Whether a clause says no more than what is known of its stitch already. */
    static boolean take(List<Lexeme> clause) {
        return coversStitch(clause) || restates(clause) || describes(clause);
    }

    /** 'The st behind it is missed', as it is behind every long stitch. */
    private static boolean coversStitch(List<Lexeme> clause) {
        boolean two = Clause.numbers(clause).stream().allMatch(word -> word.number() <= 2);
        return Clause.has(clause, Concept.MISS)
                && Clause.has(clause, Concept.BEHIND)
                && two
                && Clause.saysOnly(clause, OF_COVERED);
    }

    private static boolean describes(List<Lexeme> clause) {
        Optional<Lexeme> name =
                clause.stream().filter(word -> word.is(Concept.STITCH_NAME)).findFirst();
        Optional<Stitch> said = StitchMeaning.of(clause);
        return name.isPresent() && said.isPresent() && said.equals(name.get().stitch()) && Clause.hasOne(clause, WHERE);
    }

    /** The same thing said twice: 'ch., chain', 'st back loop = st in the back loop only', 'DTR is our dropped stitch'. */
    private static boolean restates(List<Lexeme> clause) {
        return isTwice(clause) || isSameName(clause) || isNone(clause) || isOfBack(clause) || isList(clause);
    }

    private static boolean isTwice(List<Lexeme> clause) {
        List<Lexeme> words =
                clause.stream().filter(word -> !word.is(Concept.COMMA)).toList();
        return words.size() == 2
                && words.get(0).concept() == words.get(1).concept()
                && !words.get(0).is(Concept.NUMBER)
                && !words.get(0).is(Concept.WORD);
    }

    private static boolean isSameName(List<Lexeme> clause) {
        long named = clause.stream()
                .filter(word -> word.is(Concept.STITCH_NAME))
                .map(Lexeme::stitch)
                .distinct()
                .count();
        return named == 1 && Clause.saysOnly(clause, EnumSet.of(Concept.STITCH_NAME));
    }

    private static boolean isNone(List<Lexeme> clause) {
        return Clause.has(clause, Concept.WITHOUT_CORNERS) && Clause.saysOnly(clause, EnumSet.of(Concept.OTHER_STITCH));
    }

    private static boolean isOfBack(List<Lexeme> clause) {
        boolean begins = clause.size() > 2
                && (clause.get(0).is(Concept.STITCH_NAME)
                        || (clause.get(0).is(Concept.SHORT) && clause.get(1).is(Concept.BACK_ONLY)));
        return begins
                && !Clause.has(clause, Concept.TO)
                && StitchMeaning.of(clause).equals(Optional.of(Stitch.BACK_LOOP))
                && Clause.saysOnly(clause, OF_BACK)
                && Clause.hasOne(clause, MEANS);
    }

    private static boolean isList(List<Lexeme> clause) {
        return clause.size() <= LONGEST_LISTED && clause.stream().allMatch(word -> LISTED.contains(word.concept()));
    }
}
