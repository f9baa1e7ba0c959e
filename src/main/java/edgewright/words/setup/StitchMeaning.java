package edgewright.words.setup;

import edgewright.chart.Stitch;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What stitch the words of a meaning describe: its name, its loops and how far down it is worked. */
final class StitchMeaning {
    static final Set<Concept> LOOPS = EnumSet.of(Concept.BACK_ONLY, Concept.FRONT_ONLY, Concept.BOTH_LOOPS);
    private static final Set<Concept> NAMES = EnumSet.of(
            Concept.SHORT, Concept.TALL, Concept.STITCH_NAME, Concept.OTHER_STITCH, Concept.CHAIN, Concept.SLIP);
    private static final Set<Concept> NO_STITCH = EnumSet.of(Concept.OTHER_STITCH, Concept.SLIP, Concept.CHAIN);

    private static final Set<Concept> OF_MISSED = EnumSet.of(
            Concept.NUMBER,
            Concept.SHORT,
            Concept.STITCH,
            Concept.NEXT,
            Concept.BEHIND,
            Concept.OF,
            Concept.STITCH_NAME);

    private final List<Concept> names;
    private final List<Concept> loops;
    private final List<Integer> below;
    private final boolean otherNumbers;
    private final boolean named;

    private StitchMeaning(List<Lexeme> meaning) {
        this.names = distinct(meaning, NAMES);
        this.loops = distinct(meaning, LOOPS);
        this.below = roundsBelow(meaning);
        this.otherNumbers = meaning.stream()
                        .filter(word -> word.is(Concept.NUMBER) && word.number() != 1)
                        .count()
                > below.size();
        this.named = meaning.stream().anyMatch(word -> word.stitch().equals(Optional.of(Stitch.LONG)));
    }

    private static List<Concept> distinct(List<Lexeme> meaning, Set<Concept> concepts) {
        return meaning.stream()
                .map(Lexeme::concept)
                .filter(concepts::contains)
                .distinct()
                .toList();
    }

    /** The stitch that is described; empty if it is none of a border, or too little is said of it. */
    static Optional<Stitch> of(List<Lexeme> said) {
        List<Lexeme> meant = withoutMissed(said);
        StitchMeaning meaning = new StitchMeaning(meant);
        Optional<Stitch> stitch = meaning.isOneStitch() ? meaning.stitch() : Optional.empty();
        int colon = Clause.find(meant, Concept.COLON);
        // 'Long dc: treble into the front loop': what is told after its other name is what counts.
        boolean restated = colon >= 0 && !Clause.has(meant.subList(0, colon), Concept.STOP);
        return stitch.isPresent() || !restated ? stitch : of(meant.subList(colon + 1, meant.size()));
    }

    private boolean isOneStitch() {
        return !names.isEmpty()
                && loops.size() <= 1
                && below.size() <= 1
                && !otherNumbers
                && names.stream().noneMatch(NO_STITCH::contains);
    }

    private Optional<Stitch> stitch() {
        if (isLong()) {
            return Optional.of(Stitch.LONG);
        }
        boolean one = below.isEmpty() || below.get(0) == 1;
        if (!one || named || names.contains(Concept.TALL)) {
            return Optional.empty();
        }
        if (loops.equals(List.of(Concept.BACK_ONLY))) {
            return Optional.of(Stitch.BACK_LOOP);
        }
        return loops.equals(List.of(Concept.BOTH_LOOPS)) ? Optional.of(Stitch.PLAIN) : Optional.empty();
    }

    private boolean isLong() {
        boolean two = below.isEmpty() || below.get(0) == 2;
        boolean front = loops.equals(List.of(Concept.FRONT_ONLY));
        boolean asNamed = named && (front || loops.isEmpty());
        boolean byLoop = names.equals(List.of(Concept.TALL)) && (front || (!below.isEmpty() && loops.isEmpty()));
        // A short stitch drawn up from the front loop two rounds below is long as well.
        boolean drawnUp = names.equals(List.of(Concept.SHORT)) && front && !below.isEmpty();
        return two && (asNamed || byLoop || drawnUp);
    }

    /** The meaning without 'missing the st behind it', which every long stitch does. */
    private static List<Lexeme> withoutMissed(List<Lexeme> said) {
        int miss = Clause.find(said, Concept.MISS);
        int behind = Clause.find(said, Concept.BEHIND);
        if (miss < 0) {
            return said;
        }
        int from = Math.min(miss, behind < 0 ? miss : behind - 1);
        // 'St behind left unworked': the stitch stands before, 'miss st behind' and 'miss 1 st': it stands after.
        List<Lexeme> meaning = new ArrayList<>(said.subList(0, Math.max(0, from)));
        int to = Math.max(miss, behind);
        for (Lexeme word : said.subList(Math.max(0, from), to + 1)) {
            if (word.is(Concept.NUMBER) && word.number() != 1) {
                meaning.add(word);
            }
        }
        int after = to + 1;
        if (behind < 0) {
            while (after < said.size()
                    && OF_MISSED.contains(said.get(after).concept())
                    && said.get(after).number() <= 1) {
                after++;
            }
        }
        meaning.addAll(said.subList(after, said.size()));
        return meaning;
    }

    private static List<Integer> roundsBelow(List<Lexeme> meaning) {
        List<Integer> below = new ArrayList<>();
        Cursor cursor = new Cursor(meaning);
        while (!cursor.atEnd()) {
            if (cursor.is(Concept.NUMBER)
                    && (cursor.peek(1).is(Concept.ROUND) || cursor.peek(1).is(Concept.ROW))
                    && cursor.peek(2).is(Concept.BELOW)) {
                below.add(cursor.peek().number());
            }
            cursor.next();
        }
        return below;
    }
}
