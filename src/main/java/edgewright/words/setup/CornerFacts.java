package edgewright.words.setup;

import edgewright.chart.Corner;
import edgewright.chart.Counting;
import edgewright.chart.Stitch;
import edgewright.words.grammar.BodyNotes;
import edgewright.words.grammar.BodyReader;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.CornerGroup;
import edgewright.words.grammar.CornerSentence;
import edgewright.words.grammar.CountingWords;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Item;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Remark;
import edgewright.words.grammar.Stopped;
import java.util.ArrayList;
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
    private static final Set<Concept> NOT_OF_CORNER = EnumSet.of(
            Concept.BASE_ROUND, Concept.STITCH, Concept.WITHOUT_CORNERS, Concept.WITH_CORNERS, Concept.BETWEEN);
    private static final Set<Concept> NOT_OF_COUNTING =
            EnumSet.of(Concept.TALL, Concept.STITCH_NAME, Concept.STAR, Concept.BACK_ONLY, Concept.FRONT_ONLY);
    private static final Set<Concept> SAY_COUNTING =
            EnumSet.of(Concept.STITCH_COUNT, Concept.COUNTED, Concept.WITH_CORNERS);
    private static final Set<Concept> WITH_SIDES =
            EnumSet.of(Concept.STITCH_COUNT, Concept.COUNTED, Concept.WITH_CORNERS, Concept.FIRST, Concept.LAST);
    private static final Set<Concept> ARMS =
            EnumSet.of(Concept.SHORT, Concept.STITCH, Concept.FIRST, Concept.LAST, Concept.COUNTED, Concept.CHAIN);
    private static final Set<Concept> SAYS_NOTHING =
            EnumSet.of(Concept.WORD, Concept.AS, Concept.DEFINED_AS, Concept.OTHER_SIGN, Concept.STOP);

    private final Facts facts;
    private final SetUpWords words;

    CornerFacts(Facts facts, SetUpWords words) {
        this.facts = facts;
        this.words = words;
    }

    /** 'Corner: (1 st, 2 ch, 1 st) in corner space.' */
    boolean takeGroup(List<Lexeme> clause) {
        if (!Clause.has(clause, Concept.CORNER)
                || !Clause.has(clause, Concept.CHAIN)
                || Clause.has(clause, Concept.BASE_ROUND)) {
            return false;
        }
        List<Lexeme> said = new ArrayList<>(clause);
        said.removeIf(word -> SAYS_NOTHING.contains(word.concept()));
        BodyNotes notes = new BodyNotes();
        List<Item> items;
        try {
            items = new BodyReader(new Cursor(said), notes, Optional.of(facts.usual), words.talk()).read();
        } catch (Stopped stopped) {
            return false;
        }
        Optional<Item.Turn> told = told(items, notes);
        boolean others = items.stream()
                .anyMatch(item ->
                        !(item instanceof Item.Turn || item instanceof Item.Chains || item instanceof Item.Alike));
        if (told.isEmpty() || others) {
            return false;
        }
        Optional<Integer> known = facts.corner.flatMap(Item.Turn::chains);
        if (known.isPresent() && !known.equals(told.get().chains())) {
            throw new Stopped(Remark.of(Remark.Kind.FINDING, told.get().at(), "chainsOfCorner", known.get()));
        }
        if (known.isEmpty() || told.get().before().isPresent()) {
            facts.corner = told;
        }
        facts.baseChains.addAll(notes.chainsBelow);
        return true;
    }

    private static Optional<Item.Turn> told(List<Item> items, BodyNotes notes) {
        return items.stream()
                .filter(Item.Turn.class::isInstance)
                .map(Item.Turn.class::cast)
                .filter(turn -> turn.chains().isPresent())
                .findFirst()
                .or(() -> notes.everyCorner.filter(turn -> turn.chains().isPresent()))
                .or(() -> chainsAlone(items));
    }

    private static Optional<Item.Turn> chainsAlone(List<Item> items) {
        return items.stream()
                .filter(Item.Chains.class::isInstance)
                .map(Item.Chains.class::cast)
                .findFirst()
                .map(chains -> CornerGroup.of(chains.at(), List.of(chains), true));
    }

    /** Takes a corner that was found in a sentence; one that is told again must be the same. */
    void tell(CornerSentence said) {
        Optional<Integer> known = facts.corner.flatMap(Item.Turn::chains);
        Item.Turn turn = said.turn();
        if (known.isPresent() && turn.chains().isPresent() && !known.equals(turn.chains())) {
            throw new Stopped(Remark.of(Remark.Kind.FINDING, turn.at(), "chainsOfCorner", known.get()));
        }
        said.chainsBelow().ifPresent(facts.baseChains::add);
        facts.corner = Optional.of(
                new Item.Turn(turn.at(), turn.before(), turn.chains().or(() -> known), turn.after(), false));
    }

    /**
     * Of the stitches that go into a corner: 'these are counted with the sides', 'they are the first and the last of a side', 'the
     * two of a corner are not counted'.
     */
    boolean takeSpare(List<Lexeme> clause) {
        boolean small = Clause.numbers(clause).stream().allMatch(word -> word.number() <= 2);
        boolean ofCorner = Clause.has(clause, Concept.STITCH)
                && Clause.hasOne(clause, EnumSet.of(Concept.CORNER, Concept.FIRST, Concept.LAST));
        boolean those = ofCorner
                || Clause.has(clause, Concept.SHORT)
                || clause.stream().anyMatch(CornerFacts::isBack)
                || words.those().anyIn(clause);
        boolean counted = Clause.hasOne(clause, SAY_COUNTING)
                || words.notCounted().anyIn(clause)
                || (Clause.has(clause, Concept.SIDE) && Clause.hasOne(clause, EnumSet.of(Concept.FIRST, Concept.LAST)))
                || words.belong().anyIn(clause);
        if (!small
                || Clause.hasOne(clause, EnumSet.of(Concept.YARN_NAME, Concept.ODD, Concept.EVEN))
                || !those
                || !counted
                || !Clause.saysOnly(
                        clause, EnumSet.of(Concept.NUMBER, Concept.SHORT, Concept.AS, Concept.STITCH_NAME))) {
            return false;
        }
        boolean not = Clause.has(clause, Concept.WITHOUT_CORNERS);
        facts.betweenCorners |= not;
        facts.armsInSides = Optional.of(!not);
        return true;
    }

    /** 'They take in the dc at each end but not the corner chains': what is left out are the chains alone. */
    boolean takeArmsNotChains(List<Lexeme> clause) {
        int not = Clause.find(clause, Concept.WITHOUT_CORNERS);
        if (not < 0 || !Clause.numbers(clause).isEmpty()) {
            return false;
        }
        List<Lexeme> before = clause.subList(0, not);
        List<Lexeme> after = clause.subList(not, clause.size());
        boolean arms = Clause.has(before, Concept.SHORT) || before.stream().anyMatch(CornerFacts::isBack);
        boolean in = Clause.hasOne(before, EnumSet.of(Concept.WITH, Concept.WITH_CORNERS, Concept.COUNTED))
                || words.takeIn().anyIn(before);
        boolean chains = Clause.has(after, Concept.CHAIN)
                && !Clause.has(after, Concept.SHORT)
                && after.stream().noneMatch(CornerFacts::isBack);
        if (!arms || !in || !chains || Clause.hasOne(clause, NOT_OF_COUNTING)) {
            return false;
        }
        facts.armsInSides = Optional.of(true);
        return true;
    }

    private static boolean isBack(Lexeme word) {
        return word.stitch().filter(Stitch::standsInStitchBelow).isPresent();
    }

    /** 'Corner: 2 ch', 'ch 2 at each corner', '2ch corners': the chains of every corner. */
    boolean takeChains(List<Lexeme> clause) {
        Optional<Lexeme> chains = chainNumber(clause);
        boolean others = !Clause.saysOnly(clause, EnumSet.of(Concept.NUMBER, Concept.CHAIN, Concept.AS))
                || Clause.numbers(clause).stream()
                        .anyMatch(word -> !word.equals(chains.orElse(null)) && word.number() > 1);
        if (chains.isEmpty()
                || !Clause.has(clause, Concept.CORNER)
                || Clause.hasOne(clause, NEVER)
                || others
                || Clause.hasOne(clause, NOT_OF_CORNER)) {
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
            if (isOfChains(cursor)) {
                return Optional.of(cursor.peek());
            }
            cursor.next();
        }
        return Optional.empty();
    }

    /** Whether the number that stands here is one of chains: '2 ch', 'ch-2'. */
    static boolean isOfChains(Cursor cursor) {
        boolean before = cursor.peek(1).is(Concept.CHAIN)
                || (cursor.peek(1).is(Concept.DASH) && cursor.peek(2).is(Concept.CHAIN));
        boolean after = cursor.peek(-1).is(Concept.CHAIN)
                || (cursor.peek(-1).is(Concept.DASH) && cursor.peek(-2).is(Concept.CHAIN));
        return cursor.is(Concept.NUMBER) && (before || after);
    }

    /** 'Corner chains are not counted', 'counts include one corner chain at each end', 'the stitches between the corners'. */
    boolean takeCounting(List<Lexeme> clause) {
        if (Clause.has(clause, Concept.BETWEEN)
                && Clause.has(clause, Concept.CORNER)
                && !Clause.hasOne(clause, Concept.STITCHES)) {
            return takeBetween(clause);
        }
        Optional<Lexeme> chains = chainNumber(clause);
        boolean numbers = Clause.numbers(clause).stream()
                .anyMatch(word -> word.number() > 1 && !chains.equals(Optional.of(word)));
        boolean left = Clause.isSimple(clause)
                && (words.notCounted().anyIn(clause) || Clause.has(clause, Concept.WITHOUT_CORNERS));
        boolean worked = chains.isPresent() && !isThere(clause, chains.get()) && !left;
        if (numbers || worked || Clause.hasOne(clause, NOT_OF_COUNTING)) {
            return false;
        }
        chains.ifPresent(facts.baseChains::add);
        if (Clause.has(clause, Concept.ONE_CHAIN_EACH_END)) {
            return counting(Counting.WITH_CHAINS);
        }
        if (Clause.has(clause, Concept.BETWEEN) && Clause.has(clause, Concept.CORNER)) {
            facts.betweenCorners = true;
            return true;
        }
        boolean not =
                Clause.has(clause, Concept.WITHOUT_CORNERS) || words.except().anyIn(clause);
        return (not && Clause.hasOne(clause, ABOUT_CORNERS)) ? takeLeftOut(clause) : takeWayOfCounting(clause);
    }

    private boolean takeBetween(List<Lexeme> clause) {
        facts.betweenCorners = true;
        List<Lexeme> base = Clause.numbers(clause);
        base.forEach(number -> facts.base.add(BaseFacts.base(number, number.number())));
        return base.size() <= 1;
    }

    private boolean takeLeftOut(List<Lexeme> clause) {
        if (Clause.has(clause, Concept.SHORT)
                && Clause.has(clause, Concept.CORNER)
                && !Clause.has(clause, Concept.COUNTED)) {
            facts.betweenCorners = true;
            return true;
        }
        return facts.betweenCorners || counting(Counting.STITCHES);
    }

    private boolean takeWayOfCounting(List<Lexeme> clause) {
        for (int i = 0; i < clause.size(); i++) {
            Cursor cursor = new Cursor(clause);
            cursor.reset(i);
            Optional<Counting> said = CountingWords.take(cursor);
            if (said.isPresent() && Clause.hasOne(clause, SAY_COUNTING)) {
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
        Optional<Lexeme> chains = chainNumber(clause);
        boolean small = Clause.numbers(clause).stream()
                .allMatch(word -> word.number() <= 2 || chains.equals(Optional.of(word)));
        if (chains.isPresent() && isThere(clause, chains.get())) {
            facts.baseChains.add(chains.get());
        } else if (chains.isPresent() && !isToldAlready(chains.get())) {
            return false;
        }
        boolean taken = isAboutArms(clause)
                && loopsAreOfCorner(clause)
                && small
                && !twoInOne(clause)
                && !Clause.hasOne(clause, NEVER)
                && !Clause.has(clause, Concept.REPEAT)
                && !Clause.has(clause, Concept.WITHOUT_CORNERS);
        if (taken && Clause.hasOne(clause, WITH_SIDES)) {
            facts.armsInSides = Optional.of(true);
        }
        return taken;
    }

    /** Loops that are told in a part of their own must be those of the corner. */
    private static boolean loopsAreOfCorner(List<Lexeme> clause) {
        return Clause.split(clause, Clause.PARTING).stream()
                .filter(part -> Clause.has(part, Concept.BACK_ONLY))
                .allMatch(part -> !Clause.has(part, Concept.SHORT) || Clause.hasOne(part, ABOUT_CORNERS));
    }

    private boolean isToldAlready(Lexeme chains) {
        return facts.corner.flatMap(Item.Turn::chains).equals(Optional.of(chains.number()));
    }

    private static boolean isAboutArms(List<Lexeme> clause) {
        boolean about = Clause.hasOne(clause, ABOUT_CORNERS)
                || Clause.hasOne(clause, EnumSet.of(Concept.SIDE, Concept.COUNTED, Concept.EACH_SIDE))
                || (Clause.has(clause, Concept.STITCH_COUNT) && Clause.has(clause, Concept.SHORT));
        return about && Clause.hasOne(clause, ARMS);
    }

    private static boolean twoInOne(List<Lexeme> clause) {
        Cursor cursor = new Cursor(clause);
        boolean counted = Clause.has(clause, Concept.COUNTED);
        while (!cursor.atEnd()) {
            boolean two =
                    cursor.are(Concept.NUMBER, Concept.SHORT) && cursor.peek().number() == 2 && !counted;
            if (two || cursor.are(Concept.SHORT, Concept.NUMBER)) {
                return true;
            }
            cursor.next();
        }
        return false;
    }
}
