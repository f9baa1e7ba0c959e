package edgewright.words.grammar;

import edgewright.chart.Stitch;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** The words for one stitch, gathered: its name, its loops, and how far down it is worked. Says which stitch of a border it is. */
final class StitchWords {
    private static final Set<Concept> LOOPS = EnumSet.of(Concept.BACK_ONLY, Concept.FRONT_ONLY, Concept.BOTH_LOOPS);
    private static final Set<Concept> BEFORE_LOOPS =
            EnumSet.of(Concept.IN, Concept.OF, Concept.EACH, Concept.NEXT, Concept.DASH);

    private Optional<Lexeme> name = Optional.empty();
    private Optional<Lexeme> loops = Optional.empty();
    private Optional<Lexeme> below = Optional.empty();
    private int roundsBelow;

    Optional<Lexeme> name() {
        return name;
    }

    /** Takes the name of a stitch. */
    boolean takeName(Cursor cursor) {
        if (name.isEmpty() && cursor.isOne(Concept.STITCHES)) {
            name = Optional.of(cursor.next());
            return true;
        }
        return false;
    }

    /** Takes words about loops, or about how far down. */
    boolean takeMore(Cursor cursor) {
        return takeLoops(cursor) || takeBelow(cursor) || takeSameYarn(cursor) || takeBehind(cursor);
    }

    private boolean takeLoops(Cursor cursor) {
        int mark = cursor.mark();
        cursor.skip(BEFORE_LOOPS);
        boolean named = cursor.isOne(LOOPS);
        if (!named || loops.isPresent()) {
            cursor.reset(mark);
            return false;
        }
        loops = Optional.of(cursor.next());
        return true;
    }

    private boolean takeBelow(Cursor cursor) {
        int mark = cursor.mark();
        cursor.skip(EnumSet.of(Concept.IN, Concept.OF, Concept.FROM));
        cursor.take(Concept.STITCH);
        cursor.skip(EnumSet.of(Concept.IN, Concept.OF, Concept.FROM));
        Lexeme at = cursor.peek();
        boolean told = cursor.is(Concept.NUMBER)
                && (cursor.peek(1).is(Concept.ROUND) || cursor.peek(1).is(Concept.ROW))
                && cursor.peek(2).is(Concept.BELOW);
        boolean directly = cursor.are(Concept.ROUND, Concept.BELOW) || cursor.are(Concept.ROW, Concept.BELOW);
        if ((!told && !directly) || below.isPresent()) {
            cursor.reset(mark);
            return false;
        }
        below = Optional.of(at);
        roundsBelow = told ? at.number() : 1;
        for (int i = 0; i < (told ? 3 : 2); i++) {
            cursor.next();
        }
        return true;
    }

    private static boolean takeSameYarn(Cursor cursor) {
        int mark = cursor.mark();
        cursor.skip(EnumSet.of(Concept.OF, Concept.IN));
        if (cursor.takeAll(Concept.SAME, Concept.YARN)) {
            return true;
        }
        cursor.reset(mark);
        return false;
    }

    /** 'Missing the st behind', between commas, which every long stitch does. */
    private static boolean takeBehind(Cursor cursor) {
        int mark = cursor.mark();
        cursor.take(Concept.COMMA);
        cursor.take(Concept.OPEN);
        if (cursor.take(Concept.MISS)
                && (cursor.take(Concept.STITCH) || cursor.take(Concept.SHORT))
                && cursor.take(Concept.BEHIND)) {
            if (!cursor.take(Concept.CLOSE)) {
                cursor.take(Concept.COMMA);
            }
            return true;
        }
        cursor.reset(mark);
        return false;
    }

    /**
     * The stitch that was said.
     *
     * @param usual what a short stitch is where nothing is said of its loops; empty if they must be said
     */
    Stitch stitch(Optional<Stitch> usual) {
        Lexeme said = name.orElseThrow();
        Stitch stitch = switch (said.concept()) {
            case CHAIN -> Stitch.CHAIN;
            case STITCH_NAME -> said.stitch().orElseThrow();
            case SHORT -> shortStitch(said, usual);
            case TALL -> tallStitch(said);
            case UNCLEAR_NAME -> throw Cursor.stop(said, "clearName", "");
            default -> throw Cursor.stop(said, "stitch", "");
        };
        requireBelow(stitch);
        requireLoops(stitch);
        return stitch;
    }

    private Stitch shortStitch(Lexeme name, Optional<Stitch> usual) {
        return loops.map(Lexeme::concept)
                .map(said -> switch (said) {
                    case BACK_ONLY -> Stitch.BACK_LOOP;
                    case BOTH_LOOPS -> Stitch.PLAIN;
                    default -> throw Cursor.stop(loops.get(), "loopsOfShort", "");
                })
                .or(() -> usual)
                .orElseThrow(() -> Cursor.stop(name, "loopsOfLast", ""));
    }

    private Stitch tallStitch(Lexeme said) {
        boolean front = loops.map(Lexeme::concept).equals(Optional.of(Concept.FRONT_ONLY));
        if (!front && below.isEmpty()) {
            throw Cursor.stop(said, "tall", "");
        }
        return Stitch.LONG;
    }

    private void requireBelow(Stitch stitch) {
        if (below.isPresent() && roundsBelow != stitch.roundsDown()) {
            throw Cursor.stop(below.get(), stitch == Stitch.LONG ? "twoBelow" : "oneBelow", "");
        }
    }

    private void requireLoops(Stitch stitch) {
        if (loops.isEmpty()) {
            return;
        }
        Concept takes = switch (stitch) {
            case BACK_LOOP -> Concept.BACK_ONLY;
            case LONG -> Concept.FRONT_ONLY;
            case PLAIN, CHAIN -> Concept.BOTH_LOOPS;
        };
        if (!loops.get().is(takes)) {
            throw Cursor.stop(loops.get(), "otherLoops", "");
        }
    }
}
