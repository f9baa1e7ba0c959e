package edgewright.words.grammar;

import edgewright.chart.Side;
import java.util.EnumSet;
import java.util.Set;

/** Reads which sides are meant. */
public final class SideNames {
    private static final Set<Concept> BETWEEN =
            EnumSet.of(Concept.AND, Concept.COMMA, Concept.SLASH, Concept.SIDE, Concept.PLUS, Concept.IN, Concept.EACH);

    private SideNames() {}

    /** The sides that are named here, one or several; empty, and nothing taken, if none is. */
    public static Set<Side> take(Cursor cursor) {
        Set<Side> sides = EnumSet.noneOf(Side.class);
        int mark = cursor.mark();
        cursor.skip(EnumSet.of(Concept.IN, Concept.EACH, Concept.ACROSS));
        while (!of(cursor.peek()).isEmpty()) {
            sides.addAll(of(cursor.next()));
            mark = cursor.mark();
            cursor.skip(BETWEEN);
        }
        cursor.reset(mark);
        if (!sides.isEmpty()) {
            cursor.take(Concept.SIDE);
        }
        return sides;
    }

    private static Set<Side> of(Lexeme lexeme) {
        return switch (lexeme.concept()) {
            case TOP -> EnumSet.of(Side.TOP);
            case BOTTOM -> EnumSet.of(Side.BOTTOM);
            case LEFT -> EnumSet.of(Side.LEFT);
            case RIGHT -> EnumSet.of(Side.RIGHT);
            case LONG_EDGE -> EnumSet.of(Side.TOP, Side.BOTTOM);
            case SHORT_EDGE -> EnumSet.of(Side.LEFT, Side.RIGHT);
            default -> EnumSet.noneOf(Side.class);
        };
    }
}
