package edgewright.words.setup;

import edgewright.words.grammar.Concept;
import edgewright.words.grammar.CountReader;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.StatedCount;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the counts of the base round, and the size that a text takes as its example. */
final class BaseFacts {
    /** A border has more stitches than this on a side, or none. */
    private static final int FEWEST_SHOWN = 4;

    private static final Set<Concept> NOT_OF_BASE = EnumSet.of(
            Concept.TALL, Concept.STITCH_NAME, Concept.BACK_ONLY, Concept.STAR, Concept.REPEAT, Concept.AFTER);
    private static final Set<Concept> WHICH_ROUND =
            EnumSet.of(Concept.LAST, Concept.NEXT, Concept.EACH, Concept.FIRST, Concept.EACH_SIDE);
    /** What would be said of all rounds, if it stood in a clause of its own. */
    private static final Set<Concept> OF_LOOPS = EnumSet.of(
            Concept.BACK_ONLY,
            Concept.FRONT_ONLY,
            Concept.BOTH_LOOPS,
            Concept.TALL,
            Concept.STITCH_NAME,
            Concept.STAR,
            Concept.REPEAT,
            Concept.MISS,
            Concept.ALTERNATE,
            Concept.ALIKE);

    private static final Set<Concept> OF_BASE_ALONE = EnumSet.of(
            Concept.IN,
            Concept.WITH,
            Concept.YARN,
            Concept.YARN_NAME,
            Concept.COMMA,
            Concept.BACK_ONLY,
            Concept.BOTH_LOOPS);
    private static final Set<Part> NOT_ABOUT_BASE = EnumSet.of(Part.TENSION, Part.MATERIALS, Part.FINISHING);
    private static final Set<Part> NOT_SHOWN = EnumSet.of(Part.TENSION, Part.FINISHING);

    private final Facts facts;
    private final SetUpWords words;

    BaseFacts(Facts facts, SetUpWords words) {
        this.facts = facts;
        this.words = words;
    }

    static StatedCount base(Lexeme at, int stitches) {
        return StatedCount.plain(at, StatedCount.Of.SIDE, List.of(stitches));
    }

    /** 'Counts are for 43', 'ours has 27', '41 to begin', 'n = 5': the size that the counts are for. */
    boolean takeShown(List<Lexeme> clause, Part part) {
        List<Lexeme> numbers = Clause.numbers(clause);
        if (isPair(clause, numbers)) {
            List<Integer> two = numbers.stream().map(Lexeme::number).toList();
            facts.base.add(StatedCount.plain(numbers.get(0), StatedCount.Of.TWO_LENGTHS, two));
            return true;
        }
        if (NOT_SHOWN.contains(part) || !mayShow(clause, numbers)) {
            return false;
        }
        Lexeme number = numbers.get(0);
        if (isOfRepeats(clause, number)) {
            int stitches = facts.multiple
                    .map(said -> said.of() * number.number() + said.plus())
                    .orElse(number.number());
            facts.base.add(base(number, stitches));
            return facts.multiple.isPresent();
        }
        if (facts.multiple.isEmpty() || !shows(clause)) {
            return false;
        }
        facts.base.add(base(number, number.number()));
        return true;
    }

    private static boolean isPair(List<Lexeme> clause, List<Lexeme> numbers) {
        return numbers.size() == 2
                && numbers.stream().allMatch(number -> number.number() >= FEWEST_SHOWN)
                && clause.stream()
                        .allMatch(word -> word.is(Concept.NUMBER) || word.is(Concept.SLASH) || word.is(Concept.COMMA));
    }

    private boolean mayShow(List<Lexeme> clause, List<Lexeme> numbers) {
        return numbers.size() == 1
                && numbers.get(0).number() >= FEWEST_SHOWN
                && Clause.saysOnly(clause, EnumSet.of(Concept.NUMBER, Concept.AS, Concept.TIMES))
                && !Clause.hasOne(clause, EnumSet.of(Concept.BETWEEN, Concept.ONE_CHAIN_EACH_END))
                && (!namesRound(clause) || isOfPiece(clause))
                && !words.measures().anyIn(clause);
    }

    /** 'The count after each round is for one side of a 35-st base': the number is that of the base all the same. */
    private static boolean isOfPiece(List<Lexeme> clause) {
        int at = clause.indexOf(Clause.numbers(clause).get(0)) + 1;
        int stitch = at < clause.size() && clause.get(at).is(Concept.DASH) ? at + 1 : at;
        return Clause.has(clause, Concept.STITCH_COUNT)
                && stitch < clause.size()
                && clause.get(stitch).is(Concept.STITCH)
                && clause.get(at - 2).is(Concept.OF);
    }

    private boolean isOfRepeats(List<Lexeme> clause, Lexeme number) {
        int at = clause.indexOf(number);
        return at >= 2
                && clause.get(at - 1).is(Concept.EQUALS)
                && words.multiples().has(clause.get(at - 2));
    }

    private boolean shows(List<Lexeme> clause) {
        boolean bare = clause.size() == 2 && clause.get(1).is(Concept.STITCH);
        return clause.size() == 1
                || bare
                || Clause.hasOne(clause, Clause.SIDES)
                || Clause.hasOne(clause, EnumSet.of(Concept.STITCH_COUNT, Concept.BASE_ROUND))
                || words.examples().anyIn(clause);
    }

    /** 'Of two numbers the first is for top and bottom, the one in brackets for left and right.' */
    boolean takeBrackets(List<Lexeme> sentence) {
        int top = Clause.find(sentence, Concept.TOP);
        int left = Clause.find(sentence, Concept.LEFT);
        int longEdge = Clause.find(sentence, Concept.LONG_EDGE);
        int shortEdge = Clause.find(sentence, Concept.SHORT_EDGE);
        boolean inOrder = (top >= 0 && top < left) || (longEdge >= 0 && longEdge < shortEdge);
        boolean small = Clause.numbers(sentence).stream().allMatch(number -> number.number() <= 2);
        if (!inOrder
                || !words.brackets().anyIn(sentence)
                || !small
                || !Clause.saysOnly(sentence, EnumSet.of(Concept.NUMBER))) {
            return false;
        }
        facts.bracketsForSides = true;
        return true;
    }

    /** The counts of the base round, and the chains of its corners. */
    boolean take(List<Lexeme> sentence, Part part) {
        boolean base = part != Part.FINISHING && isOfBase(sentence);
        if (base && Clause.hasOne(sentence, OF_LOOPS) && !Clause.isSimple(sentence) && !isAllOfBase(sentence)) {
            return false;
        }
        boolean corners = Clause.has(sentence, Concept.COUNTED)
                && Clause.numbers(sentence).stream().allMatch(number -> number.number() <= 2);
        boolean plain = !NOT_ABOUT_BASE.contains(part)
                && !corners
                && Clause.hasOne(sentence, Clause.SIDES)
                && !Clause.hasOne(sentence, NOT_OF_BASE)
                && !namesRound(sentence);
        if (!base && !plain) {
            return false;
        }
        List<Lexeme> numbers = new ArrayList<>(Clause.numbers(sentence));
        List<StatedCount> found = counts(sentence, numbers);
        numbers.removeIf(number -> number.number() == 1 || number.number() == 0);
        boolean counting = Clause.hasOne(sentence, EnumSet.of(Concept.ONE_CHAIN_EACH_END, Concept.WITH_CORNERS))
                && found.stream().noneMatch(count -> count.counting().isPresent());
        if (counting || (found.isEmpty() && (!base || !numbers.isEmpty()))) {
            return false;
        }
        Optional<Lexeme> other =
                found.stream().flatMap(count -> count.afterRound().stream()).findFirst();
        if (other.isPresent() || !numbers.isEmpty()) {
            throw Cursor.stop(other.orElseGet(() -> numbers.get(0)), "statement", "");
        }
        facts.base.addAll(found);
        return true;
    }

    /** 'Work the base round in B, in back loops': the loops are those of the base round, for nothing else is spoken of. */
    private static boolean isAllOfBase(List<Lexeme> sentence) {
        return sentence.get(0).is(Concept.BASE_ROUND)
                && sentence.stream().skip(1).allMatch(word -> OF_BASE_ALONE.contains(word.concept()));
    }

    /** 'Base round', or 'a round of' short stitches. */
    static boolean isOfBase(List<Lexeme> sentence) {
        Cursor cursor = new Cursor(sentence);
        while (!cursor.atEnd()) {
            if (cursor.is(Concept.BASE_ROUND) || cursor.are(Concept.ROUND, Concept.OF, Concept.SHORT)) {
                return true;
            }
            cursor.next();
        }
        return false;
    }

    /** 'In round 3', 'in the last round'; 'a round of plain work' is none of the border's own. */
    private static boolean namesRound(List<Lexeme> sentence) {
        Cursor cursor = new Cursor(sentence);
        while (!cursor.atEnd()) {
            boolean which = cursor.peek(1).is(Concept.NUMBER)
                    || WHICH_ROUND.contains(cursor.peek(-1).concept());
            if (cursor.is(Concept.ROUND) && which) {
                return true;
            }
            cursor.next();
        }
        return false;
    }

    /** @param numbers all of the sentence; those that are read are taken out of it */
    private List<StatedCount> counts(List<Lexeme> sentence, List<Lexeme> numbers) {
        List<StatedCount> found = new ArrayList<>();
        Cursor cursor = new Cursor(sentence);
        while (!cursor.atEnd()) {
            int mark = cursor.mark();
            List<StatedCount> counts = alongSide(cursor).map(List::of).orElseGet(() -> CountReader.read(cursor, true));
            if (counts.isEmpty()) {
                cursor.reset(mark);
                takeChains(cursor, numbers);
                cursor.next();
            } else {
                numbers.removeAll(sentence.subList(mark, cursor.mark()));
                found.addAll(counts);
            }
        }
        return found;
    }

    /** '43 dc along each side'. */
    private static Optional<StatedCount> alongSide(Cursor cursor) {
        boolean each = cursor.peek(2).is(Concept.ACROSS)
                || cursor.peek(2).is(Concept.EACH_SIDE)
                || (cursor.peek(2).is(Concept.IN) && cursor.peek(3).is(Concept.EACH_SIDE));
        if (!cursor.are(Concept.NUMBER, Concept.SHORT) || !each) {
            return Optional.empty();
        }
        Lexeme number = cursor.next();
        cursor.next();
        cursor.skip(EnumSet.of(Concept.IN, Concept.ACROSS, Concept.EACH_SIDE));
        return Optional.of(base(number, number.number()));
    }

    private void takeChains(Cursor cursor, List<Lexeme> numbers) {
        if (CornerFacts.isOfChains(cursor)) {
            facts.baseChains.add(cursor.peek());
            numbers.remove(cursor.peek());
        }
    }
}
