package edgewright.words.others;

import edgewright.words.grammar.AsideReader;
import edgewright.words.grammar.BodyNotes;
import edgewright.words.grammar.BodyReader;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Item;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Lexicon;
import edgewright.words.grammar.LineKind;
import edgewright.words.grammar.Remark;
import edgewright.words.grammar.RoundTitle;
import edgewright.words.grammar.StatedCount;
import edgewright.words.grammar.Stopped;
import edgewright.words.grammar.TalkReader;
import edgewright.words.setup.Facts;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;

/** Reads the rounds of a text, each by its number, and those that are told as others. */
final class RoundsReader {
    static final int MOST_ROUNDS = 2000;

    private final Lexicon lexicon;
    private final Facts facts;
    private final Account.Builder account;
    private final List<Remark> remarks;
    private final TalkReader talk;
    private final RoundBodies bodies = new RoundBodies();
    private final TreeMap<Integer, RoundWords> rounds = new TreeMap<>();
    /** The yarn that was taken up for the next round. */
    private Optional<Lexeme> nextYarn = Optional.empty();

    RoundsReader(Lexicon lexicon, Facts facts, Account.Builder account, List<Remark> remarks, TalkReader talk) {
        this.lexicon = lexicon;
        this.facts = facts;
        this.account = account;
        this.remarks = remarks;
        this.talk = talk;
    }

    /** The rounds by their numbers. */
    Map<Integer, RoundWords> rounds() {
        return rounds;
    }

    /** Once every round is read: rounds that were talked about have their words, and the last says its loops if it must. */
    void close() {
        facts.mentioned.stream()
                .filter(round -> !rounds.containsKey(round.number()))
                .findFirst()
                .ifPresent(round -> remarks.add(Remark.of(Remark.Kind.REFUSED, round, "wordsOfRound", round.number())));
        facts.depths.stream()
                .filter(depth -> !rounds.isEmpty() && depth.number() != rounds.lastKey())
                .findFirst()
                .ifPresent(
                        depth -> remarks.add(Remark.of(Remark.Kind.FINDING, depth, "roundsInAll", rounds.lastKey())));
        if (!facts.loopsOfLast || rounds.isEmpty()) {
            return;
        }
        RoundWords last = rounds.lastEntry().getValue();
        try {
            bodies.requireLoops(last.as().map(Lexeme::number).orElse(last.number()), talk);
        } catch (Stopped stopped) {
            remarks.add(stopped.remark());
        }
    }

    /** Takes the yarn for the next round from words between two rounds. */
    boolean takeYarnBetween(List<Lexeme> sentence) {
        BodyNotes notes = new BodyNotes();
        Cursor cursor = new Cursor(sentence);
        AsideReader asides = new AsideReader(cursor, notes, talk);
        boolean any = false;
        while (!cursor.atEnd() && (asides.takeYarn(true) || asides.takeTechnique())) {
            any = true;
            cursor.skip(Concept.PARTING);
        }
        if (!any || !cursor.atEnd()) {
            return false;
        }
        nextYarn = notes.nextYarn.or(() -> notes.yarn).or(() -> nextYarn);
        return true;
    }

    /** Takes the lines of a round, or of several that stand in one. */
    void take(Chunk chunk) {
        for (List<Lexeme> words : split(lexicon.read(chunk.tokens()))) {
            try {
                takeRound(words);
            } catch (Stopped stopped) {
                remarks.add(stopped.remark());
                account.set(stopped.remark().line(), LineKind.REFUSED);
                skipTitle(words);
            }
        }
    }

    /** A round that could not be read is one problem; those after it are not missing one. */
    private void skipTitle(List<Lexeme> words) {
        Cursor cursor = new Cursor(words);
        if (!cursor.are(Concept.ROUND, Concept.NUMBER)) {
            return;
        }
        try {
            RoundTitle title = RoundTitle.take(cursor, next(), new BodyNotes(), talk);
            for (Lexeme number : title.numbers()) {
                rounds.putIfAbsent(
                        number.number(),
                        new RoundWords(
                                title.at(),
                                number.number(),
                                Optional.empty(),
                                List.of(),
                                Optional.empty(),
                                new BodyNotes()));
            }
        } catch (Stopped stopped) {
            // The title itself is what could not be read; it has its remark.
        }
    }

    private int next() {
        return rounds.isEmpty() ? 1 : rounds.lastKey() + 1;
    }

    /** Rounds that stand in one line, one after the other. */
    private static List<List<Lexeme>> split(List<Lexeme> words) {
        List<List<Lexeme>> rounds = new ArrayList<>(List.of(new ArrayList<>()));
        for (int i = 0; i < words.size(); i++) {
            if (i > 0 && beginsWithin(words, i)) {
                rounds.add(new ArrayList<>());
            }
            rounds.get(rounds.size() - 1).add(words.get(i));
        }
        return rounds;
    }

    private static boolean beginsWithin(List<Lexeme> words, int at) {
        Cursor cursor = new Cursor(words);
        cursor.reset(at);
        boolean ended = EnumSet.of(Concept.STOP, Concept.CLOSE, Concept.SEMICOLON)
                .contains(cursor.peek(-1).concept());
        if (!ended || !cursor.are(Concept.ROUND, Concept.NUMBER)) {
            return false;
        }
        for (int i = 2; i < 16; i++) {
            if (cursor.peek(i).is(Concept.COLON)) {
                return true;
            }
            if (cursor.peek(i).is(Concept.STOP) || cursor.peek(i).is(Concept.END)) {
                return false;
            }
        }
        return false;
    }

    private void takeRound(List<Lexeme> words) {
        Cursor cursor = new Cursor(words);
        if (cursor.is(Concept.REPEAT)) {
            repeatRounds(cursor, words);
            return;
        }
        BodyNotes notes = new BodyNotes();
        RoundTitle title = RoundTitle.take(cursor, next(), notes, talk);
        List<Lexeme> yarns = RoundYarns.take(cursor, title, notes, talk);
        List<Lexeme> as = takeAs(cursor, title.numbers().size());
        int times = as.isEmpty() ? 1 : takeTimes(cursor);
        List<Lexeme> told = words.subList(cursor.mark(), words.size());
        List<Lexeme> body = TwoLengths.apart(told);
        List<Item> items = takeItems(body.equals(told) ? cursor : new Cursor(body), notes, as);
        requireAsMany(title.numbers().size(), as, times);
        add(title, words, index -> {
            Lexeme number = title.numbers().get(index);
            bodies.put(number.number(), body);
            return new RoundWords(
                    number,
                    number.number(),
                    title.yarn(index)
                            .or(() -> RoundYarns.told(
                                    yarns, index, title.numbers().size()))
                            .or(() -> notes.yarn)
                            .or(() -> nextYarn),
                    items,
                    as.isEmpty() ? Optional.empty() : Optional.of(as.get(index % as.size())),
                    counted(notes, title, index));
        });
        nextYarn = notes.nextYarn;
        notes.asides.forEach(account::aside);
        facts.mentioned.addAll(notes.mentioned);
    }

    private void add(RoundTitle title, List<Lexeme> words, IntFunction<RoundWords> round) {
        for (int i = 0; i < title.numbers().size(); i++) {
            add(round.apply(i), words);
        }
    }

    private List<Item> takeItems(Cursor cursor, BodyNotes notes, List<Lexeme> as) {
        List<Item> items = new BodyReader(cursor, notes, Optional.of(facts.usual), talk).read();
        if (as.isEmpty() && items.isEmpty()) {
            throw cursor.stop("work");
        }
        if (as.isEmpty()) {
            return items;
        }
        Optional<Item> other =
                items.stream().filter(item -> !(item instanceof Item.Alike)).findFirst();
        if (other.isPresent()) {
            throw Cursor.stop(other.get().at(), "nothingAfterAs", "");
        }
        return List.of();
    }

    private static void requireAsMany(int rounds, List<Lexeme> as, int times) {
        boolean wrongTimes = times > 1 && rounds != as.size() * times;
        if (!as.isEmpty() && (rounds % as.size() != 0 || wrongTimes)) {
            throw Cursor.stop(as.get(as.size() - 1), "asMany", rounds);
        }
    }

    /** Two numbers for two rounds are one for each, unless the sides have two lengths. */
    private boolean isForRounds(StatedCount count, int rounds) {
        boolean lengths = facts.base.stream()
                .anyMatch(base ->
                        base.of() == StatedCount.Of.TWO_LENGTHS || !base.sides().isEmpty());
        boolean row = count.of() == StatedCount.Of.TWO_LENGTHS
                || count.of() == StatedCount.Of.FOUR_LENGTHS
                || count.of() == StatedCount.Of.ROUNDS;
        return row && count.values().size() == rounds && !lengths;
    }

    /** In a title for several rounds a count that is told for each is told in their order, unless it says after which it is. */
    private BodyNotes counted(BodyNotes notes, RoundTitle title, int index) {
        int rounds = title.numbers().size();
        requireRounds(notes, title);
        if (facts.bracketsForSides) {
            notes.counts.replaceAll(StatedCount::ofTwoLengths);
        }
        if (rounds == 1) {
            return notes;
        }
        BodyNotes own = new BodyNotes();
        own.everyCorner = notes.everyCorner;
        own.chainsBelow.addAll(notes.chainsBelow);
        if (index == rounds - 1) {
            own.growths.addAll(notes.growths);
        }
        boolean told =
                notes.counts.stream().anyMatch(count -> count.afterRound().isPresent());
        if (told) {
            int number = title.numbers().get(index).number();
            notes.counts.stream()
                    .filter(count -> count.afterRound()
                            .map(round -> round.number() == number)
                            .orElse(index == rounds - 1))
                    .forEach(own.counts::add);
        } else if (notes.counts.size() == 1 && isForRounds(notes.counts.get(0), rounds)) {
            own.counts.add(notes.counts.get(0).ofRound(index));
        } else if (notes.counts.size() == rounds) {
            own.counts.add(notes.counts.get(index));
        } else if (index == rounds - 1) {
            own.counts.addAll(notes.counts);
        }
        return own;
    }

    /** A count that is told for a round stands among the words of that round. */
    private static void requireRounds(BodyNotes notes, RoundTitle title) {
        List<Integer> numbers = title.numbers().stream().map(Lexeme::number).toList();
        for (StatedCount count : notes.counts) {
            count.afterRound()
                    .filter(round -> !numbers.contains(round.number()))
                    .ifPresent(round -> {
                        throw Cursor.stop(round, "roundOfCount", numbers.get(numbers.size() - 1));
                    });
        }
    }

    /** 'As round 3', 'repeat rounds 1 to 4': the rounds that are meant. */
    private static List<Lexeme> takeAs(Cursor cursor, int rounds) {
        List<Lexeme> as = new ArrayList<>();
        int mark = cursor.mark();
        cursor.take(Concept.AS);
        cursor.take(Concept.REPEAT);
        cursor.take(Concept.AS);
        if (cursor.are(Concept.ROUND, Concept.NUMBER)) {
            cursor.next();
            int number = cursor.mark();
            RoundTitle.takeNumbers(cursor, as);
            if (as.size() > rounds && cursor.atEnd()) {
                // 'As 1st round - 51': what stands behind the dash is a count.
                cursor.reset(number + 1);
                as.subList(1, as.size()).clear();
            }
            return as;
        }
        cursor.reset(mark);
        return as;
    }

    /** 'Repeat rounds 2 and 3 twice more.' */
    private void repeatRounds(Cursor cursor, List<Lexeme> words) {
        Lexeme at = cursor.next();
        cursor.next();
        List<Lexeme> models = new ArrayList<>();
        RoundTitle.takeNumbers(cursor, models);
        cursor.take(Concept.COMMA);
        int times = takeTimes(cursor);
        BodyNotes notes = new BodyNotes();
        List<Item> rest = new BodyReader(cursor, notes, Optional.of(facts.usual), talk).read();
        if (!rest.isEmpty()) {
            throw Cursor.stop(rest.get(0).at(), "endOfRepeat", "");
        }
        if ((long) models.size() * times > MOST_ROUNDS) {
            throw Cursor.stop(at, "number", "");
        }
        for (int i = 0; i < models.size() * times; i++) {
            Lexeme model = models.get(i % models.size());
            boolean last = i == models.size() * times - 1;
            add(
                    new RoundWords(
                            at,
                            next(),
                            Optional.empty(),
                            List.of(),
                            Optional.of(model),
                            last ? notes : new BodyNotes()),
                    words);
        }
        notes.asides.forEach(account::aside);
    }

    private static int takeTimes(Cursor cursor) {
        int times = 1;
        if (cursor.take(Concept.ONCE)) {
            times = 1;
        } else if (cursor.take(Concept.TWICE)) {
            times = 2;
        } else if (cursor.take(Concept.THRICE)) {
            times = 3;
        } else if (cursor.is(Concept.NUMBER)
                && (cursor.peek(1).is(Concept.TIMES) || cursor.peek(1).is(Concept.MORE))) {
            times = cursor.number();
            cursor.take(Concept.MORE);
            cursor.take(Concept.TIMES);
        } else if (cursor.is(Concept.TIMES) && cursor.peek(1).is(Concept.NUMBER)) {
            cursor.next();
            times = cursor.number();
        }
        if (times < 1) {
            throw cursor.stop("number");
        }
        if (!cursor.take(Concept.MORE)) {
            cursor.take(Concept.AGAIN);
        }
        return times;
    }

    private void add(RoundWords round, List<Lexeme> words) {
        if (round.number() > MOST_ROUNDS || round.number() < 1) {
            throw Cursor.stop(round.at(), "number", "");
        }
        if (rounds.containsKey(round.number())) {
            throw Cursor.stop(round.at(), "otherRound", next());
        }
        rounds.put(round.number(), round);
        words.forEach(word -> account.round(word.line(), round.number()));
    }
}
