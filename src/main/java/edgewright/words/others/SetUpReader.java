package edgewright.words.others;

import edgewright.chart.Stitch;
import edgewright.words.grammar.BodyNotes;
import edgewright.words.grammar.BodyReader;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.CornerGroup;
import edgewright.words.grammar.CountReader;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Item;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.LineKind;
import edgewright.words.grammar.StatedCount;
import edgewright.words.grammar.Stopped;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads sentences that hold for all rounds. A sentence that says something to hands and is none of these is refused; only one
 * that says nothing to hands is prose.
 */
final class SetUpReader {
    private static final Set<Concept> SIDES = EnumSet.of(
            Concept.EACH_SIDE,
            Concept.THREE_MORE_SIDES,
            Concept.SIDE,
            Concept.TOP,
            Concept.BOTTOM,
            Concept.LEFT,
            Concept.RIGHT,
            Concept.LONG_EDGE,
            Concept.SHORT_EDGE);
    /** Words that are used in any sentence; only beside a stitch do they say something to hands. */
    private static final Set<Concept> SOFT = EnumSet.of(
            Concept.AS,
            Concept.ALTERNATE,
            Concept.NOT_OURS,
            Concept.CHANGE,
            Concept.ONCE,
            Concept.TWICE,
            Concept.REPEAT,
            Concept.UNLESS,
            Concept.MISS);

    private static final Set<Concept> MILD = EnumSet.of(Concept.AS, Concept.CHANGE, Concept.ONCE);
    private static final Set<Concept> MEASURED =
            EnumSet.of(Concept.STITCH, Concept.ROUND, Concept.ROW, Concept.CORNER, Concept.CHAIN, Concept.TIMES);

    /** What parts a sentence into clauses, one kind after the other. */
    private static final List<Set<Concept>> SPLITS = List.of(
            EnumSet.of(Concept.SEMICOLON, Concept.DASH, Concept.OPEN, Concept.CLOSE, Concept.STOP),
            EnumSet.of(Concept.COMMA),
            EnumSet.of(Concept.AND, Concept.COLON),
            EnumSet.noneOf(Concept.class));

    private final Facts facts;
    private final CornerFacts cornerFacts;

    SetUpReader(Facts facts) {
        this.facts = facts;
        this.cornerFacts = new CornerFacts(facts);
    }

    /**
     * Takes a sentence.
     *
     * @return what it was taken as: set-up or prose
     */
    LineKind take(List<Lexeme> sentence, Part part) {
        if (sentence.isEmpty()) {
            return LineKind.BLANK;
        }
        boolean any = false;
        List<List<Lexeme>> open = new ArrayList<>(List.of(sentence));
        for (Set<Concept> signs : SPLITS) {
            List<List<Lexeme>> rest = new ArrayList<>();
            for (List<Lexeme> clause : open) {
                if (takeWhole(clause, part)) {
                    any = true;
                } else if (forHands(clause, part).isPresent()) {
                    rest.addAll(split(clause, signs));
                }
            }
            open = rest;
        }
        if (!open.isEmpty()) {
            throw Cursor.stop(forHands(open.get(0), part).orElse(open.get(0).get(0)), "statement", "");
        }
        return any ? LineKind.SET_UP : LineKind.PROSE;
    }

    private boolean takeWhole(List<Lexeme> clause, Part part) {
        return takeMultiple(clause)
                || takeTurns(clause)
                || takeUsual(clause)
                || takeYarnsInTurn(clause)
                || takeAlike(clause)
                || takeCorner(clause)
                || cornerFacts.takeChains(clause)
                || cornerFacts.takeCounting(clause)
                || takeBase(clause, part)
                || takeShown(clause, part)
                || describesStitch(clause)
                || cornerFacts.takeArms(clause);
    }

    private static boolean isHyphen(List<Lexeme> clause, Lexeme word) {
        int at = clause.indexOf(word);
        return word.is(Concept.DASH) && at > 0 && clause.get(at - 1).end() == word.column();
    }

    private static List<List<Lexeme>> split(List<Lexeme> clause, Set<Concept> signs) {
        List<List<Lexeme>> parts = new ArrayList<>(List.of(new ArrayList<>()));
        for (Lexeme word : clause) {
            if (signs.contains(word.concept()) && !isHyphen(clause, word)) {
                parts.add(new ArrayList<>());
            } else {
                parts.get(parts.size() - 1).add(word);
            }
        }
        parts.removeIf(List::isEmpty);
        return parts;
    }

    /** 'Counts are for 43', 'ours has 27', '41 to begin', 'n = 5': the size that the counts are for. */
    private boolean takeShown(List<Lexeme> clause, Part part) {
        List<Lexeme> numbers =
                clause.stream().filter(word -> word.is(Concept.NUMBER)).toList();
        Set<Concept> others = EnumSet.copyOf(Concept.FOR_HANDS);
        others.removeAll(EnumSet.of(Concept.NUMBER, Concept.AS, Concept.TIMES));
        boolean row = numbers.size() == 2
                && clause.stream()
                        .allMatch(word -> word.is(Concept.NUMBER) || word.is(Concept.SLASH) || word.is(Concept.COMMA));
        if (row) {
            facts.base.add(new StatedCount(
                    numbers.get(0),
                    StatedCount.Of.TWO_LENGTHS,
                    Set.of(),
                    numbers.stream().map(Lexeme::number).toList(),
                    Optional.empty(),
                    Optional.empty()));
            return true;
        }
        boolean free = part == Part.TENSION || part == Part.FINISHING;
        if (free
                || has(clause, Concept.BETWEEN)
                || has(clause, Concept.ONE_CHAIN_EACH_END)
                || numbers.size() != 1
                || numbers.get(0).number() < 4
                || hasOne(clause, others)
                || has(clause, Concept.ROUND)
                || clause.stream().anyMatch(word -> word.text().matches("(?i)mm|cm|g|grams?|m|inch(es)?|%"))) {
            return false;
        }
        Lexeme number = numbers.get(0);
        int at = clause.indexOf(number);
        boolean of = at >= 2
                && clause.get(at - 1).is(Concept.EQUALS)
                && clause.get(at - 2).text().equals("n");
        boolean shown = clause.size() == 1
                || hasOne(clause, SIDES)
                || has(clause, Concept.STITCH_COUNT)
                || has(clause, Concept.BASE_ROUND)
                || clause.stream()
                        .anyMatch(
                                word -> word.text()
                                        .matches(
                                                "(?i)sample|example|here|begin|began|ours|mine|my|had|show|reckoned|figures|numbers|for"));
        if (!of && (facts.multiple.isEmpty() || !shown)) {
            return false;
        }
        if (of && facts.multiple.isPresent()) {
            int stitches = facts.multiple.get().of() * number.number()
                    + facts.multiple.get().plus();
            facts.base.add(base(number, stitches));
            return true;
        }
        facts.base.add(base(number, number.number()));
        return !of;
    }

    static StatedCount base(Lexeme at, int stitches) {
        return new StatedCount(
                at, StatedCount.Of.SIDE, Set.of(), List.of(stitches), Optional.empty(), Optional.empty());
    }

    /** The first word of a sentence for which it cannot be prose. */
    private static Optional<Lexeme> forHands(List<Lexeme> sentence, Part part) {
        boolean free = part == Part.TENSION || part == Part.MATERIALS || part == Part.SIZE || part == Part.FINISHING;
        boolean round = has(sentence, Concept.ROUND) && sentence.stream().anyMatch(word -> word.is(Concept.NUMBER));
        if (sentence.get(0).is(Concept.TO) && has(sentence, Concept.ROUND)) {
            return Optional.of(sentence.get(0));
        }
        boolean instructs = hasOne(
                        sentence, EnumSet.of(Concept.SHORT, Concept.TALL, Concept.STITCH_NAME, Concept.UNCLEAR_NAME))
                && (hasOne(sentence, SIDES)
                        || hasOne(
                                sentence,
                                EnumSet.of(Concept.BACK_ONLY, Concept.FRONT_ONLY, Concept.BOTH_LOOPS, Concept.CORNER)));
        if (part == Part.TENSION || (free && !round && !instructs)) {
            return Optional.empty();
        }
        boolean measured =
                sentence.stream().anyMatch(word -> MEASURED.contains(word.concept()) || SIDES.contains(word.concept()));
        boolean onlyNumbers = sentence.stream()
                .filter(word -> Concept.FOR_HANDS.contains(word.concept()) && !SOFT.contains(word.concept()))
                .allMatch(word -> word.is(Concept.NUMBER));
        boolean digits = sentence.stream()
                .anyMatch(word ->
                        word.is(Concept.NUMBER) && Character.isDigit(word.text().charAt(0)));
        List<Concept> said = sentence.stream()
                .map(Lexeme::concept)
                .filter(Concept.FOR_HANDS::contains)
                .toList();
        long words = sentence.stream().filter(word -> word.is(Concept.WORD)).count();
        boolean names = said.equals(List.of(Concept.SHORT)) && words > 4 && !measured;
        if (names || MILD.containsAll(said)) {
            return Optional.empty();
        }
        boolean sides = hasOne(sentence, SIDES) || has(sentence, Concept.MULTIPLE);
        if (onlyNumbers && (!measured || (!digits && !sides))) {
            return Optional.empty();
        }
        return sentence.stream()
                .filter(word -> Concept.FOR_HANDS.contains(word.concept()))
                .findFirst();
    }

    private static boolean has(List<Lexeme> sentence, Concept concept) {
        return sentence.stream().anyMatch(word -> word.is(concept));
    }

    private static boolean hasOne(List<Lexeme> sentence, Set<Concept> concepts) {
        return sentence.stream().anyMatch(word -> concepts.contains(word.concept()));
    }

    private static int find(List<Lexeme> sentence, Concept concept) {
        for (int i = 0; i < sentence.size(); i++) {
            if (sentence.get(i).is(concept)) {
                return i;
            }
        }
        return -1;
    }

    /** 'A multiple of 8 plus 3', '8n + 3', '8s + 3', 'eights plus three', 'an odd number'. */
    private boolean takeMultiple(List<Lexeme> sentence) {
        Cursor cursor = new Cursor(sentence);
        boolean odd = false;
        while (!cursor.atEnd() && !isMultiple(cursor)) {
            odd |= cursor.is(Concept.ODD);
            cursor.next();
        }
        if (cursor.atEnd()) {
            return odd && hasOne(sentence, SIDES) && takeOdd(sentence);
        }
        cursor.take(Concept.MULTIPLE);
        cursor.skip(EnumSet.of(Concept.OF, Concept.COLON));
        Lexeme of = cursor.peek();
        int each = of.is(Concept.NUMBER_EACH) ? cursor.next().number() : cursor.number();
        if (each < 1) {
            throw Cursor.stop(of, "number", "");
        }
        while (cursor.isOne(EnumSet.of(
                        Concept.STITCH,
                        Concept.WORD,
                        Concept.COMMA,
                        Concept.TIMES,
                        Concept.ANY_NUMBER,
                        Concept.WITH,
                        Concept.AND,
                        Concept.IN))
                || (cursor.isOne(SIDES) && plusComes(cursor))) {
            cursor.next();
        }
        int plus = 0;
        boolean over = cursor.is(Concept.NUMBER) && cursor.peek(1).text().equals("over");
        if (cursor.take(Concept.PLUS) || over) {
            plus = cursor.number();
        }
        List<Lexeme> rest = sentence.subList(cursor.mark(), sentence.size());
        facts.multiple = Optional.of(new Facts.SaidMultiple(of, each, plus, List.of()));
        takeRest(rest);
        return true;
    }

    private static boolean plusComes(Cursor cursor) {
        for (int i = 1; i < 5; i++) {
            if (cursor.peek(i).is(Concept.PLUS)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isMultiple(Cursor cursor) {
        boolean number = cursor.is(Concept.NUMBER);
        Lexeme after = cursor.peek(1);
        boolean marked = number
                && (after.text().equals("n") || after.text().equals("s"))
                && after.column() == cursor.peek().end();
        boolean times = number
                && ((after.is(Concept.TIMES) && cursor.peek(2).is(Concept.ANY_NUMBER))
                        || (after.is(Concept.STITCH)
                                && cursor.peek(2).is(Concept.TIMES)
                                && cursor.peek(3).is(Concept.ANY_NUMBER)));
        return cursor.is(Concept.MULTIPLE) || cursor.is(Concept.NUMBER_EACH) || marked || times;
    }

    private boolean takeOdd(List<Lexeme> sentence) {
        int at = find(sentence, Concept.ODD);
        facts.multiple = Optional.of(new Facts.SaidMultiple(sentence.get(at), 2, 1, List.of()));
        takeRest(sentence.subList(at + 1, sentence.size()));
        return true;
    }

    /** What a sentence says after its multiple, clause by clause. */
    private void takeRest(List<Lexeme> rest) {
        for (List<Lexeme> clause : split(
                rest,
                EnumSet.of(
                        Concept.SEMICOLON, Concept.COMMA, Concept.OPEN, Concept.CLOSE, Concept.STOP, Concept.COLON))) {
            if (clause.stream()
                    .anyMatch(word -> word.is(Concept.NUMBER)
                            || word.is(Concept.CHAIN)
                            || word.is(Concept.ALTERNATE)
                            || word.is(Concept.NUMBER_EACH))) {
                take(clause, Part.SET_UP);
            }
        }
    }

    /** 'All four sides are alike.' */
    private static boolean takeAlike(List<Lexeme> sentence) {
        boolean sides = has(sentence, Concept.EACH_SIDE)
                || has(sentence, Concept.THREE_MORE_SIDES)
                || has(sentence, Concept.SIDE);
        boolean alike = has(sentence, Concept.ALIKE) || has(sentence, Concept.REPEAT) || has(sentence, Concept.SAME);
        Set<Concept> others = EnumSet.copyOf(Concept.FOR_HANDS);
        others.removeAll(EnumSet.of(Concept.REPEAT, Concept.AS));
        boolean four = sentence.stream().allMatch(word -> !word.is(Concept.NUMBER) || word.number() == 4);
        others.remove(Concept.NUMBER);
        return sides && alike && four && !hasOne(sentence, others);
    }

    /** 'All st are worked in the back loop only unless stated otherwise', 'st: back loop only, always'. */
    private boolean takeUsual(List<Lexeme> sentence) {
        boolean back = has(sentence, Concept.BACK_ONLY);
        boolean both = has(sentence, Concept.BOTH_LOOPS);
        Set<Concept> others = EnumSet.copyOf(Concept.FOR_HANDS);
        others.removeAll(
                EnumSet.of(Concept.BACK_ONLY, Concept.BOTH_LOOPS, Concept.UNLESS, Concept.SHORT, Concept.CHAIN));
        int at = find(sentence, Concept.SHORT);
        boolean named =
                at >= 0 && !(at + 1 < sentence.size() && sentence.get(at + 1).is(Concept.BACK_ONLY));
        boolean until = has(sentence, Concept.TO) || (has(sentence, Concept.CHAIN) && !has(sentence, Concept.CORNER));
        boolean excepted = back
                && both
                && hasOne(sentence, EnumSet.of(Concept.NOT_OURS, Concept.UNLESS))
                && find(sentence, Concept.BACK_ONLY) < find(sentence, Concept.BOTH_LOOPS);
        if (excepted && at >= 0) {
            facts.usual = Stitch.BACK_LOOP;
            return true;
        }
        if (back == both || hasOne(sentence, others) || until || !(named || has(sentence, Concept.UNLESS))) {
            return false;
        }
        facts.usual = back ? Stitch.BACK_LOOP : Stitch.PLAIN;
        return true;
    }

    /** 'Rounds are worked in A and B in turn', 'odd rounds A, even rounds B'. */
    private boolean takeYarnsInTurn(List<Lexeme> sentence) {
        List<Lexeme> named =
                sentence.stream().filter(word -> word.is(Concept.YARN_NAME)).toList();
        boolean parity = has(sentence, Concept.ODD) && has(sentence, Concept.EVEN);
        boolean turn = has(sentence, Concept.ALTERNATE);
        Set<Concept> others = EnumSet.copyOf(Concept.FOR_HANDS);
        others.removeAll(EnumSet.of(Concept.ALTERNATE, Concept.CHANGE));
        if ((!parity && !turn) || named.size() < 2 || hasOne(sentence, others)) {
            return false;
        }
        List<Lexeme> inTurn = new ArrayList<>(named.subList(0, 2));
        if (parity && find(sentence, Concept.EVEN) < find(sentence, Concept.ODD)) {
            inTurn = List.of(named.get(1), named.get(0));
        }
        if (named.size() == 3 && turn) {
            inTurn = List.of(
                    named.get(2), named.get(2).text().equals(named.get(0).text()) ? named.get(1) : named.get(0));
        } else if (named.size() > 2) {
            return false;
        }
        facts.yarnsInTurn = List.copyOf(inTurn);
        return true;
    }

    /** 'Each side grows by 2 sts in every round', which is true of every border. */
    private static boolean takeTurns(List<Lexeme> sentence) {
        List<Lexeme> numbers =
                sentence.stream().filter(word -> word.is(Concept.NUMBER)).toList();
        boolean grows = sentence.stream()
                        .anyMatch(word -> word.is(Concept.WORD) && word.text().matches("(?i)grows?|gains?|longer"))
                || (has(sentence, Concept.MORE) && has(sentence, Concept.STITCH));
        return grows
                && numbers.size() == 1
                && numbers.get(0).number() == 2
                && hasOne(sentence, SIDES)
                && has(sentence, Concept.ROUND)
                && !hasOne(sentence, Concept.STITCHES);
    }

    /** 'Corner: (1 st, 2 ch, 1 st) in corner space.' */
    private boolean takeCorner(List<Lexeme> sentence) {
        if (!has(sentence, Concept.CORNER) || !has(sentence, Concept.CHAIN) || has(sentence, Concept.BASE_ROUND)) {
            return false;
        }
        List<Lexeme> words = new ArrayList<>(sentence);
        words.removeIf(word -> word.is(Concept.WORD)
                || word.is(Concept.AS)
                || word.is(Concept.DEFINED_AS)
                || word.is(Concept.OTHER_SIGN)
                || word.is(Concept.STOP));
        BodyNotes notes = new BodyNotes();
        List<Item> items;
        try {
            items = new BodyReader(new Cursor(words), notes, facts.usual).read();
        } catch (Stopped stopped) {
            return false;
        }
        Optional<Item.Turn> told = items.stream()
                .filter(Item.Turn.class::isInstance)
                .map(Item.Turn.class::cast)
                .filter(turn -> turn.chains().isPresent())
                .findFirst()
                .or(() -> notes.everyCorner.filter(turn -> turn.chains().isPresent()))
                .or(() -> chainsAlone(items));
        boolean others = items.stream()
                .anyMatch(item ->
                        !(item instanceof Item.Turn || item instanceof Item.Chains || item instanceof Item.Alike));
        if (told.isEmpty() || others) {
            return false;
        }
        facts.corner = told;
        facts.baseChains.addAll(notes.chainsBelow);
        return true;
    }

    private static Optional<Item.Turn> chainsAlone(List<Item> items) {
        return items.stream()
                .filter(Item.Chains.class::isInstance)
                .map(Item.Chains.class::cast)
                .findFirst()
                .map(chains -> CornerGroup.of(chains.at(), List.of(chains), true));
    }

    /** The counts of the base round, and the chains of its corners. */
    private boolean takeBase(List<Lexeme> sentence, Part part) {
        boolean base = has(sentence, Concept.BASE_ROUND);
        boolean plain = part != Part.TENSION
                && part != Part.MATERIALS
                && part != Part.FINISHING
                && hasOne(sentence, SIDES)
                && !hasOne(
                        sentence,
                        EnumSet.of(
                                Concept.TALL,
                                Concept.STITCH_NAME,
                                Concept.BACK_ONLY,
                                Concept.STAR,
                                Concept.REPEAT,
                                Concept.ROUND));
        if (!base && !plain) {
            return false;
        }
        List<StatedCount> found = new ArrayList<>();
        Cursor cursor = new Cursor(sentence);
        List<Lexeme> numbers = new ArrayList<>(
                sentence.stream().filter(word -> word.is(Concept.NUMBER)).toList());
        while (!cursor.atEnd()) {
            int mark = cursor.mark();
            List<StatedCount> counts = CountReader.read(cursor, true);
            if (counts.isEmpty()) {
                cursor.reset(mark);
                takeBaseChains(cursor, numbers);
                cursor.next();
            } else {
                for (int i = mark; i < cursor.mark(); i++) {
                    numbers.remove(sentence.get(i));
                }
                found.addAll(counts);
            }
        }
        numbers.removeIf(number -> number.number() == 1 || number.number() == 0);
        if (found.isEmpty() && (!base || !numbers.isEmpty())) {
            return false;
        }
        if (!numbers.isEmpty()) {
            throw Cursor.stop(numbers.get(0), "statement", "");
        }
        facts.base.addAll(found);
        return true;
    }

    private void takeBaseChains(Cursor cursor, List<Lexeme> numbers) {
        boolean before = cursor.is(Concept.NUMBER)
                && (cursor.peek(1).is(Concept.CHAIN)
                        || (cursor.peek(1).is(Concept.DASH) && cursor.peek(2).is(Concept.CHAIN)));
        boolean after = cursor.is(Concept.NUMBER)
                && (cursor.peek(-1).is(Concept.CHAIN)
                        || (cursor.peek(-1).is(Concept.DASH) && cursor.peek(-2).is(Concept.CHAIN)));
        if (before || after) {
            facts.baseChains.add(cursor.peek());
            numbers.remove(cursor.peek());
        }
    }

    /** A sentence about how a stitch is worked, which agrees with what the stitch is. */
    private static boolean describesStitch(List<Lexeme> sentence) {
        boolean behind = has(sentence, Concept.MISS) && has(sentence, Concept.BEHIND);
        Set<Concept> others = EnumSet.copyOf(Concept.FOR_HANDS);
        others.removeAll(EnumSet.of(
                Concept.MISS, Concept.STITCH_NAME, Concept.TALL, Concept.FRONT_ONLY, Concept.NUMBER, Concept.SHORT));
        boolean two = sentence.stream().filter(word -> word.is(Concept.NUMBER)).allMatch(word -> word.number() <= 2);
        if (behind && two && !hasOne(sentence, others)) {
            return true;
        }
        if (restates(sentence)) {
            return true;
        }
        Optional<Lexeme> name =
                sentence.stream().filter(word -> word.is(Concept.STITCH_NAME)).findFirst();
        Optional<Stitch> said = Abbreviations.stitch(sentence);
        return name.isPresent()
                && said.isPresent()
                && said.equals(name.get().stitch())
                && (has(sentence, Concept.FRONT_ONLY)
                        || has(sentence, Concept.BACK_ONLY)
                        || has(sentence, Concept.BELOW));
    }

    /** The same thing said twice: 'ch., chain', 'st back loop = st in the back loop only', 'DTR is our dropped stitch'. */
    private static boolean restates(List<Lexeme> clause) {
        List<Lexeme> words =
                clause.stream().filter(word -> !word.is(Concept.COMMA)).toList();
        boolean twice = words.size() == 2
                && words.get(0).concept() == words.get(1).concept()
                && !words.get(0).is(Concept.NUMBER)
                && !words.get(0).is(Concept.WORD);
        List<Optional<Stitch>> named = clause.stream()
                .filter(word -> word.is(Concept.STITCH_NAME))
                .map(Lexeme::stitch)
                .distinct()
                .toList();
        List<Lexeme> forHands = clause.stream()
                .filter(word -> Concept.FOR_HANDS.contains(word.concept()))
                .toList();
        boolean same = named.size() == 1 && forHands.stream().allMatch(word -> word.is(Concept.STITCH_NAME));
        boolean none = has(clause, Concept.WITHOUT_CORNERS)
                && forHands.stream().allMatch(word -> word.is(Concept.OTHER_STITCH));
        Set<Concept> ofBack = EnumSet.of(Concept.SHORT, Concept.BACK_ONLY, Concept.STITCH_NAME);
        boolean begins = clause.size() > 2
                && (clause.get(0).is(Concept.STITCH_NAME)
                        || (clause.get(0).is(Concept.SHORT) && clause.get(1).is(Concept.BACK_ONLY)));
        boolean back = begins
                && !has(clause, Concept.TO)
                && Abbreviations.stitch(clause).equals(Optional.of(Stitch.BACK_LOOP))
                && forHands.stream().allMatch(word -> ofBack.contains(word.concept()))
                && hasOne(clause, EnumSet.of(Concept.EQUALS, Concept.COLON, Concept.DASH, Concept.DEFINED_AS));
        boolean listed = clause.size() <= 4
                && clause.stream()
                        .allMatch(word -> word.is(Concept.WORD) || word.is(Concept.SHORT) || word.is(Concept.TALL));
        return twice || same || none || back || listed;
    }
}
