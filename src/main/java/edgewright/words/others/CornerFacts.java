package edgewright.words.others;

import edgewright.chart.Corner;
import edgewright.chart.Counting;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.CountingWords;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Item;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Remark;
import edgewright.words.grammar.Stopped;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads what a clause says of the corners: their chains, the stitches that go into them, and which of these are counted. */
final class CornerFacts {
    private static final Set<Concept> NEVER = EnumSet.of(
            Concept.TALL,
            Concept.STITCH_NAME,
            Concept.OTHER_STITCH,
            Concept.UNCLEAR_NAME,
            Concept.STAR,
            Concept.TWO_STARS,
            Concept.MULTIPLE,
            Concept.NUMBER_EACH,
            Concept.FRONT_ONLY,
            Concept.BOTH_LOOPS,
            Concept.MISS,
            Concept.TIMES,
            Concept.TWICE,
            Concept.THRICE,
            Concept.NOT_OURS,
            Concept.SLIP,
            Concept.NEXT_ROUND);
    private static final Set<Concept> ABOUT_CORNERS = EnumSet.of(Concept.CORNER, Concept.CHAIN);

    private final Facts facts;

    CornerFacts(Facts facts) {
        this.facts = facts;
    }

    private static boolean hasOne(List<Lexeme> clause, Set<Concept> concepts) {
        return clause.stream().anyMatch(word -> concepts.contains(word.concept()));
    }

    private static boolean has(List<Lexeme> clause, Concept concept) {
        return clause.stream().anyMatch(word -> word.is(concept));
    }

    /** 'Corner: 2 ch', 'ch 2 at each corner', '2ch corners': the chains of every corner. */
    boolean takeChains(List<Lexeme> clause) {
        Optional<Lexeme> chains = chainNumber(clause);
        boolean others = clause.stream()
                .anyMatch(word -> word.is(Concept.NUMBER) && !word.equals(chains.orElse(null)) && word.number() > 1);
        boolean base = has(clause, Concept.BASE_ROUND) || has(clause, Concept.STITCH);
        if (chains.isEmpty()
                || !has(clause, Concept.CORNER)
                || hasOne(clause, NEVER)
                || others
                || base
                || has(clause, Concept.WITHOUT_CORNERS)
                || has(clause, Concept.WITH_CORNERS)) {
            return false;
        }
        int many = chains.get().number();
        if (!Corner.isTurnedWith(many)) {
            throw Cursor.stop(chains.get(), "cornerChains", "");
        }
        Optional<Integer> before = facts.corner.flatMap(Item.Turn::chains);
        if (before.isPresent() && before.get() != many) {
            throw new Stopped(Remark.of(Remark.Kind.FINDING, chains.get(), "chainsOfCorner", before.get()));
        }
        if (before.isEmpty()) {
            facts.corner = Optional.of(
                    new Item.Turn(chains.get(), Optional.empty(), Optional.of(many), Optional.empty(), false));
        }
        return true;
    }

    private static Optional<Lexeme> chainNumber(List<Lexeme> clause) {
        Cursor cursor = new Cursor(clause);
        while (!cursor.atEnd()) {
            boolean number = cursor.is(Concept.NUMBER);
            boolean before = number
                    && (cursor.peek(1).is(Concept.CHAIN)
                            || (cursor.peek(1).is(Concept.DASH)
                                    && cursor.peek(2).is(Concept.CHAIN)));
            boolean after = number
                    && (cursor.peek(-1).is(Concept.CHAIN)
                            || (cursor.peek(-1).is(Concept.DASH)
                                    && cursor.peek(-2).is(Concept.CHAIN)));
            if (before || after) {
                return Optional.of(cursor.peek());
            }
            cursor.next();
        }
        return Optional.empty();
    }

    /** 'Corner chains are not counted', 'counts include one corner chain at each end', 'the stitches between the corners'. */
    boolean takeCounting(List<Lexeme> clause) {
        if (has(clause, Concept.BETWEEN) && has(clause, Concept.CORNER) && !hasOne(clause, Concept.STITCHES)) {
            facts.betweenCorners = true;
            List<Lexeme> base =
                    clause.stream().filter(word -> word.is(Concept.NUMBER)).toList();
            base.forEach(number -> facts.base.add(SetUpReader.base(number, number.number())));
            return base.size() <= 1;
        }
        boolean numbers = clause.stream()
                .anyMatch(word -> word.is(Concept.NUMBER)
                        && word.number() > 1
                        && !chainNumber(clause).equals(Optional.of(word)));
        if (numbers
                || hasOne(
                        clause,
                        EnumSet.of(
                                Concept.TALL,
                                Concept.STITCH_NAME,
                                Concept.STAR,
                                Concept.BACK_ONLY,
                                Concept.FRONT_ONLY))) {
            return false;
        }
        Optional<Lexeme> chains = chainNumber(clause);
        if (chains.isPresent() && !isThere(clause, chains.get())) {
            return false;
        }
        chains.ifPresent(facts.baseChains::add);
        if (has(clause, Concept.ONE_CHAIN_EACH_END)) {
            return counting(Counting.WITH_CHAINS);
        }
        if (has(clause, Concept.BETWEEN) && has(clause, Concept.CORNER)) {
            facts.betweenCorners = true;
            return true;
        }
        boolean not = has(clause, Concept.WITHOUT_CORNERS)
                || clause.stream().anyMatch(word -> word.text().matches("(?i)without|but"));
        if (not && hasOne(clause, ABOUT_CORNERS)) {
            if (has(clause, Concept.SHORT) && has(clause, Concept.CORNER) && !has(clause, Concept.COUNTED)) {
                facts.betweenCorners = true;
                return true;
            }
            return facts.betweenCorners || counting(Counting.STITCHES);
        }
        for (int i = 0; i < clause.size(); i++) {
            Cursor cursor = new Cursor(clause);
            cursor.reset(i);
            Optional<Counting> said = CountingWords.take(cursor);
            if (said.isPresent()
                    && hasOne(clause, EnumSet.of(Concept.STITCH_COUNT, Concept.COUNTED, Concept.WITH_CORNERS))) {
                return counting(said.get());
            }
        }
        return false;
    }

    /** Whether the number stands with a hyphen, as in 'ch-2 corner': chains that are there already. */
    private static boolean isThere(List<Lexeme> clause, Lexeme number) {
        Cursor cursor = new Cursor(clause);
        cursor.reset(clause.indexOf(number));
        return cursor.peek(-1).is(Concept.DASH) || cursor.peek(1).is(Concept.DASH);
    }

    private boolean counting(Counting said) {
        facts.counting = Optional.of(said);
        return true;
    }

    /** 'The first and the last st of a side go into the corner chains below and count with it', as they do in every border. */
    boolean takeArms(List<Lexeme> clause) {
        boolean about = hasOne(clause, ABOUT_CORNERS)
                || has(clause, Concept.SIDE)
                || (has(clause, Concept.STITCH_COUNT) && has(clause, Concept.SHORT))
                || has(clause, Concept.COUNTED)
                || has(clause, Concept.EACH_SIDE);
        boolean arms = hasOne(
                clause,
                EnumSet.of(Concept.SHORT, Concept.STITCH, Concept.FIRST, Concept.LAST, Concept.COUNTED, Concept.CHAIN));
        boolean small = clause.stream()
                .filter(word -> word.is(Concept.NUMBER))
                .allMatch(word -> word.number() <= 2 || chainNumber(clause).equals(Optional.of(word)));
        Optional<Lexeme> chains = chainNumber(clause);
        if (chains.isPresent() && isThere(clause, chains.get())) {
            facts.baseChains.add(chains.get());
        } else if (chains.isPresent()
                && !facts.corner
                        .flatMap(Item.Turn::chains)
                        .equals(Optional.of(chains.get().number()))) {
            return false;
        }
        Cursor cursor = new Cursor(clause);
        boolean twoInOne = false;
        while (!cursor.atEnd()) {
            twoInOne |= cursor.is(Concept.NUMBER)
                    && cursor.peek().number() == 2
                    && cursor.peek(1).is(Concept.SHORT)
                    && !has(clause, Concept.COUNTED);
            twoInOne |= cursor.is(Concept.SHORT) && cursor.peek(1).is(Concept.NUMBER);
            cursor.next();
        }
        return about
                && arms
                && small
                && !twoInOne
                && !hasOne(clause, NEVER)
                && !has(clause, Concept.REPEAT)
                && !has(clause, Concept.WITHOUT_CORNERS);
    }
}
