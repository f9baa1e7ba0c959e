package edgewright.words.setup;

import edgewright.chart.Stitch;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Item;
import edgewright.words.grammar.Lexeme;
import java.util.ArrayList;
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
    private static final Set<Concept> LISTED = EnumSet.of(Concept.WORD, Concept.SHORT, Concept.TALL, Concept.IN);
    private static final Set<Concept> SIGNS = EnumSet.of(Concept.COMMA, Concept.DASH, Concept.EQUALS, Concept.COLON);
    private static final int LONGEST_LISTED = 4;

    private static final Set<Concept> EXCEPTION =
            EnumSet.of(Concept.NOT_OURS, Concept.UNLESS, Concept.STITCH_NAME, Concept.TALL, Concept.AS);
    private static final Set<Concept> OF_LANDING = EnumSet.of(
            Concept.STITCH_NAME, Concept.TALL, Concept.NUMBER, Concept.CHAIN, Concept.AS, Concept.FRONT_ONLY);

    private final Facts facts;
    private final SetUpWords words;

    StitchFacts(Facts facts, SetUpWords words) {
        this.facts = facts;
        this.words = words;
    }

    /** Whether a clause says no more than what is known of its stitch already. */
    boolean take(List<Lexeme> clause) {
        return coversStitch(clause)
                || restates(clause)
                || describes(clause)
                || exceptsLong(clause)
                || lands(clause)
                || isOfArms(clause)
                || isChainAsStitch(clause)
                || isChainOverOne(clause)
                || isIntoChain(clause)
                || isNotation(clause);
    }

    /** 'The st behind it is missed', 'leave the st behind it alone', as it is behind every long stitch. */
    private boolean coversStitch(List<Lexeme> clause) {
        boolean next = Clause.has(clause, Concept.NEXT)
                && Clause.has(clause, Concept.STITCH)
                && Clause.has(clause, Concept.ROUND)
                && !Clause.has(clause, Concept.NUMBER);
        boolean two = numbersAreOfRounds(clause);
        boolean not = Clause.has(clause, Concept.WITHOUT_CORNERS) && Clause.has(clause, Concept.STITCH);
        return (Clause.has(clause, Concept.MISS) || words.leave().anyIn(clause) || not)
                && (Clause.has(clause, Concept.BEHIND) || next)
                && two
                && Clause.saysOnly(clause, OF_COVERED);
    }

    /** Its numbers are 1, or those of rounds below. */
    private static boolean numbersAreOfRounds(List<Lexeme> clause) {
        Cursor cursor = new Cursor(clause);
        while (!cursor.atEnd()) {
            boolean ofRounds = cursor.peek().number() == 2
                    && (cursor.peek(1).is(Concept.ROUND) || cursor.peek(1).is(Concept.ROW));
            if (cursor.is(Concept.NUMBER) && cursor.peek().number() != 1 && !ofRounds) {
                return false;
            }
            cursor.next();
        }
        return true;
    }

    /** 'Except where a long stitch is called for'. */
    private static boolean exceptsLong(List<Lexeme> clause) {
        return Clause.hasOne(clause, EnumSet.of(Concept.NOT_OURS, Concept.UNLESS))
                && Clause.hasOne(clause, EnumSet.of(Concept.STITCH_NAME, Concept.TALL))
                && Clause.saysOnly(clause, EXCEPTION);
    }

    /** Where a long stitch lands: two rounds below, on another long one or in the chain of the corner. */
    private boolean lands(List<Lexeme> clause) {
        boolean isLong = clause.stream().anyMatch(word -> word.stitch().equals(Optional.of(Stitch.LONG)));
        if (!isLong || !Clause.saysOnly(clause, OF_LANDING)) {
            return false;
        }
        Cursor cursor = new Cursor(clause);
        boolean below = false;
        List<Lexeme> rounds = new ArrayList<>();
        while (!cursor.atEnd()) {
            boolean two = cursor.are(Concept.NUMBER, Concept.ROUND, Concept.BELOW)
                    && cursor.peek().number() == Stitch.LONG.roundsDown();
            boolean round = cursor.is(Concept.NUMBER) && cursor.peek(-1).is(Concept.ROUND);
            if (cursor.is(Concept.NUMBER) && !two && !round) {
                return false;
            }
            below |= two;
            if (round) {
                rounds.add(cursor.peek());
            }
            cursor.next();
        }
        facts.mentioned.addAll(below ? rounds : List.of());
        return below;
    }

    /** 'Every stitch of the corner groups is one into the back loop too.' */
    private boolean isOfArms(List<Lexeme> clause) {
        List<Stitch> named = clause.stream()
                .flatMap(word -> word.stitch().stream())
                .distinct()
                .toList();
        return Clause.has(clause, Concept.CORNER)
                && named.size() == 1
                && named.get(0).standsInStitchBelow()
                && Clause.saysOnly(clause, EnumSet.of(Concept.STITCH_NAME))
                && facts.corner
                        .flatMap(Item.Turn::before)
                        .map(arm -> arm == named.get(0))
                        .orElse(true);
    }

    /** 'One chain over one missed stitch', as it is in every border. */
    private static boolean isChainOverOne(List<Lexeme> clause) {
        return Clause.has(clause, Concept.CHAIN)
                && Clause.has(clause, Concept.MISS)
                && !Clause.hasOne(clause, EnumSet.of(Concept.CORNER, Concept.ROUND))
                && Clause.numbers(clause).stream().allMatch(number -> number.number() == 1)
                && Clause.saysOnly(clause, EnumSet.of(Concept.CHAIN, Concept.MISS, Concept.NUMBER));
    }

    /** 'A chain counts as a stitch in the next round', as it does in every border. */
    boolean isChainAsStitch(List<Lexeme> clause) {
        return Clause.has(clause, Concept.CHAIN)
                && Clause.has(clause, Concept.STITCH)
                && Clause.hasOne(clause, EnumSet.of(Concept.AS, Concept.COUNTED))
                && !Clause.hasOne(clause, EnumSet.of(Concept.CORNER, Concept.WITHOUT_CORNERS))
                && numbersAreOfChain(clause)
                && Clause.saysOnly(clause, EnumSet.of(Concept.CHAIN, Concept.AS, Concept.NEXT_ROUND, Concept.NUMBER));
    }

    /** 'A 1-ch space made in round 4': its numbers are one chain, or a round that has its words elsewhere. */
    private boolean numbersAreOfChain(List<Lexeme> clause) {
        List<Lexeme> rounds = new ArrayList<>();
        for (Lexeme number : Clause.numbers(clause)) {
            int at = clause.indexOf(number);
            if (at > 0 && clause.get(at - 1).is(Concept.ROUND)) {
                rounds.add(number);
            } else if (number.number() != 1) {
                return false;
            }
        }
        facts.mentioned.addAll(rounds);
        return true;
    }

    /** 'The dc above it is worked into the chain itself', as every stitch above a chain is. */
    private static boolean isIntoChain(List<Lexeme> clause) {
        int stitch = Clause.find(clause, Concept.SHORT);
        int chain = Clause.find(clause, Concept.CHAIN);
        return stitch >= 0
                && chain > stitch
                && Clause.has(clause.subList(stitch, chain), Concept.IN)
                && !Clause.hasOne(clause, Clause.SIDES)
                && !Clause.hasOne(
                        clause, EnumSet.of(Concept.CORNER, Concept.FIRST, Concept.LAST, Concept.WITHOUT_CORNERS))
                && Clause.saysOnly(clause, EnumSet.of(Concept.CHAIN, Concept.SHORT));
    }

    /** 'BL 4 means 1 BL in each of the next 4 sts': how numbers are written, which is read so anyway. */
    private static boolean isNotation(List<Lexeme> clause) {
        Cursor cursor = new Cursor(clause);
        Lexeme stitch = cursor.peek();
        boolean left = cursor.takeAll(Concept.STITCH_NAME, Concept.NUMBER)
                && cursor.takeOne(EnumSet.of(Concept.DEFINED_AS, Concept.EQUALS));
        if (!left) {
            return false;
        }
        int many = clause.get(1).number();
        boolean one = cursor.is(Concept.NUMBER) && cursor.peek().number() == 1;
        if (one) {
            cursor.next();
        }
        boolean same = cursor.is(Concept.STITCH_NAME) && cursor.next().stitch().equals(stitch.stitch());
        cursor.skip(EnumSet.of(Concept.IN, Concept.EACH, Concept.OF, Concept.NEXT));
        boolean places = cursor.is(Concept.NUMBER) && cursor.next().number() == many;
        return same && places && cursor.take(Concept.STITCH) && cursor.atEnd();
    }

    private static boolean describes(List<Lexeme> clause) {
        Optional<Lexeme> name =
                clause.stream().filter(word -> word.is(Concept.STITCH_NAME)).findFirst();
        Optional<Stitch> said = StitchMeaning.of(clause);
        return name.isPresent() && said.isPresent() && said.equals(name.get().stitch()) && Clause.hasOne(clause, WHERE);
    }

    /** The same thing said twice: 'ch., chain', 'st back loop = st in the back loop only', 'DTR is our dropped stitch'. */
    private boolean restates(List<Lexeme> clause) {
        return isTwice(clause)
                || (isSameName(clause) && words.talk().order(clause).isEmpty())
                || isNone(clause)
                || isOfBack(clause)
                || isList(clause);
    }

    private static boolean isTwice(List<Lexeme> clause) {
        List<Lexeme> words =
                clause.stream().filter(word -> !SIGNS.contains(word.concept())).toList();
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
        return clause.size() <= LONGEST_LISTED
                && Clause.hasOne(clause, EnumSet.of(Concept.SHORT, Concept.TALL))
                && clause.stream().allMatch(word -> LISTED.contains(word.concept()));
    }
}
