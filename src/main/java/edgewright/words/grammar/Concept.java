package edgewright.words.grammar;

import java.util.EnumSet;
import java.util.Set;

/** What a word, a few words, a number or a sign can be for in a pattern text. The words themselves lie in the lexicon. */
public enum Concept {
    ROUND,
    BASE_ROUND,
    NEXT_ROUND,
    REPEAT,
    FROM,
    BETWEEN,
    TIMES,
    ONCE,
    TWICE,
    THRICE,
    MORE,
    AGAIN,
    AFTER,
    CORNER,
    TO,
    BEFORE,
    LAST,
    REMAIN,
    EACH,
    IN,
    OF,
    NEXT,
    FIRST,
    ANY,
    SAME,
    STITCH,
    AROUND,
    ACROSS,
    TOP,
    BOTTOM,
    LEFT,
    RIGHT,
    LONG_EDGE,
    SHORT_EDGE,
    SIDE,
    EACH_SIDE,
    ALIKE,
    THREE_MORE_SIDES,
    SPACE,
    MISS,
    BACK_ONLY,
    FRONT_ONLY,
    BOTH_LOOPS,
    BELOW,
    ROW,
    YARN,
    WITH,
    CHANGE,
    ALTERNATE,
    ODD,
    EVEN,
    AS,
    WITH_CORNERS,
    WITHOUT_CORNERS,
    COUNTED,
    TOTAL,
    STITCH_COUNT,
    MULTIPLE,
    PLUS,
    AND,
    OR,
    ONE_CHAIN_EACH_END,
    STANDING,
    /** 'Ordinary', before a stitch whose loops are said. */
    ORDINARY,
    BORDER_OVER,
    DEFINED_AS,
    NOT_OURS,
    UNLESS,
    BEHIND,
    NOISE,
    /** 'That makes': a count follows. */
    GIVES,
    ANY_NUMBER,
    NONE,
    /** A number of stitches that is worked over and over: 'fives'. */
    NUMBER_EACH,
    /** The short stitch of a border, both loops or one. */
    SHORT,
    /** The stitch that is long enough to be dropped past a round. */
    TALL,
    CHAIN,
    SLIP,
    /** A stitch that borders are not made of. */
    OTHER_STITCH,
    /** A name that says the whole stitch, loops and round below. */
    STITCH_NAME,
    /** A name from the text's own list, whose meaning is no stitch of a border. */
    UNCLEAR_NAME,
    YARN_NAME,
    NUMBER,
    STAR,
    TWO_STARS,
    OPEN,
    CLOSE,
    COMMA,
    SEMICOLON,
    COLON,
    STOP,
    DASH,
    EQUALS,
    SLASH,
    OTHER_SIGN,
    WORD,
    END;

    /** Signs and words that part one thing from the next. */
    public static final Set<Concept> PARTING = EnumSet.of(COMMA, SEMICOLON, COLON, STOP, AND);

    /** The names of stitches. */
    public static final Set<Concept> STITCHES =
            EnumSet.of(SHORT, TALL, CHAIN, SLIP, OTHER_STITCH, STITCH_NAME, UNCLEAR_NAME);

    /** The names of the edges of a piece. */
    private static final Set<Concept> EDGES = EnumSet.of(TOP, BOTTOM, LEFT, RIGHT, LONG_EDGE, SHORT_EDGE);

    /** These concepts and the names of all edges of a piece. */
    public static Set<Concept> andEdges(Concept first, Concept... more) {
        EnumSet<Concept> all = EnumSet.of(first, more);
        all.addAll(EDGES);
        return all;
    }

    /**
     * What makes a sentence one that hands might have to follow. A sentence without any of these is prose; one with some of
     * them must be understood.
     */
    public static final Set<Concept> FOR_HANDS = EnumSet.of(
            REPEAT,
            TIMES,
            ONCE,
            TWICE,
            THRICE,
            MISS,
            BACK_ONLY,
            FRONT_ONLY,
            BOTH_LOOPS,
            CHANGE,
            ALTERNATE,
            AS,
            MULTIPLE,
            NOT_OURS,
            UNLESS,
            SHORT,
            TALL,
            CHAIN,
            SLIP,
            OTHER_STITCH,
            STITCH_NAME,
            UNCLEAR_NAME,
            NUMBER,
            STAR,
            TWO_STARS,
            NEXT_ROUND);
}
