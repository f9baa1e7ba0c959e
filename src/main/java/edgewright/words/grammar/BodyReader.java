package edgewright.words.grammar;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the words of one round, after its title. */
public final class BodyReader {
    /** Brackets and asterisks within one another; the trade has two kinds of bracket, and some leeway. */
    private static final int DEEPEST = 5;

    private static final Set<Concept> PARTED = EnumSet.of(
            Concept.COMMA, Concept.SEMICOLON, Concept.COLON, Concept.STOP, Concept.AND, Concept.DASH, Concept.PLUS);

    /** Where a list of items ends. */
    private enum Until {
        END,
        BRACKET,
        STAR
    }

    private final Cursor cursor;
    private final BodyNotes notes;
    private final AsideReader asides;
    private final RepeatReader repeats;
    private final BodyCounts counts;
    private Optional<Stitch> usual;

    /**
     * A reader of the words of a round.
     *
     * @param usual what a short stitch is where nothing is said of its loops; empty if they must be said
     */
    public BodyReader(Cursor cursor, BodyNotes notes, Optional<Stitch> usual, TalkReader talk) {
        this.cursor = cursor;
        this.notes = notes;
        this.asides = new AsideReader(cursor, notes, talk);
        this.repeats = new RepeatReader(cursor);
        this.counts = new BodyCounts(cursor, notes, repeats);
        this.usual = usual;
    }

    /** All that the words say; stops where they cannot be understood. */
    public List<Item> read() {
        List<Item> items = items(0, Until.END);
        if (!cursor.atEnd()) {
            throw cursor.stop(cursor.is(Concept.CLOSE) ? "noClose" : "item");
        }
        return items;
    }

    private List<Item> items(int depth, Until until) {
        if (depth > DEEPEST) {
            throw cursor.stop("twoBrackets");
        }
        List<Item> items = new ArrayList<>();
        while (true) {
            cursor.skip(PARTED);
            boolean ends = cursor.atEnd()
                    || cursor.is(Concept.CLOSE)
                    || (until == Until.STAR
                            && (cursor.is(Concept.REPEAT)
                                    || (cursor.is(Concept.STAR) && !opensWithin())
                                    || (cursor.is(Concept.TWO_STARS) && !isEndMark())));
            if (ends) {
                return items;
            }
            takeItem(items, depth, until);
        }
    }

    private void takeItem(List<Item> items, int depth, Until until) {
        boolean top = depth == 0;
        Lexeme at = cursor.peek();
        if (cursor.is(Concept.TWO_STARS) && until == Until.STAR) {
            items.add(new Item.EndMark(cursor.next()));
        } else if (cursor.is(Concept.STAR) || cursor.is(Concept.TWO_STARS)) {
            items.addAll(star(depth));
        } else if (cursor.is(Concept.OPEN)) {
            bracket(depth).ifPresent(items::add);
        } else if (counts.take(items.isEmpty())) {
            return;
        } else if (top && takeSides(items)) {
            return;
        } else if (takeUsualLoops() || takeAlike(items, at)) {
            return;
        } else if (cornerBegins()) {
            corner(at, depth).ifPresent(items::add);
        } else if (top && cursor.is(Concept.REPEAT)) {
            items.add(repeats.ofAll());
        } else if (!asides.takeYarn(items.isEmpty()) && !asides.takeTechnique()) {
            Optional<Item> step = StepReader.read(cursor, usual);
            step.ifPresent(items::add);
            if (step.isEmpty() && !asides.takeProse(top && items.isEmpty())) {
                throw cursor.stop(until == Until.STAR ? "itemOrRepeat" : "item");
            }
        }
    }

    private boolean takeSides(List<Item> items) {
        int mark = cursor.mark();
        if ((cursor.are(Concept.SIDE, Concept.COLON) || cursor.are(Concept.EACH_SIDE, Concept.COLON))
                && items.isEmpty()) {
            cursor.next();
            cursor.next();
            return true;
        }
        Lexeme at = cursor.peek();
        Set<Side> sides = SideNames.take(cursor);
        if (sides.isEmpty()) {
            return false;
        }
        boolean parted = cursor.takeOne(EnumSet.of(Concept.COLON, Concept.COMMA, Concept.DASH, Concept.EQUALS));
        if (!parted
                && !cursor.is(Concept.STAR)
                && !cursor.is(Concept.NUMBER)
                && !cursor.is(Concept.OPEN)
                && !cursor.isOne(Concept.STITCHES)) {
            cursor.reset(mark);
            return false;
        }
        items.add(new Item.ForSides(at, sides));
        return true;
    }

    /** 'In back loops only:' at the beginning of what is said. */
    private boolean takeUsualLoops() {
        int mark = cursor.mark();
        cursor.take(Concept.IN);
        boolean back = cursor.take(Concept.BACK_ONLY);
        boolean both = !back && cursor.take(Concept.BOTH_LOOPS);
        if ((back || both) && (cursor.is(Concept.COMMA) || cursor.is(Concept.COLON) || cursor.is(Concept.STOP))) {
            usual = Optional.of(back ? Stitch.BACK_LOOP : Stitch.PLAIN);
            return true;
        }
        cursor.reset(mark);
        return false;
    }

    /** 'All four sides alike', 'on each side', 'same on the next three sides'. */
    private boolean takeAlike(List<Item> items, Lexeme at) {
        int mark = cursor.mark();
        boolean said = false;
        cursor.take(Concept.AS);
        while (cursor.isOne(EnumSet.of(
                Concept.IN,
                Concept.ALIKE,
                Concept.SAME,
                Concept.EACH_SIDE,
                Concept.THREE_MORE_SIDES,
                Concept.ACROSS))) {
            Lexeme word = cursor.next();
            said |= word.is(Concept.EACH_SIDE) || word.is(Concept.THREE_MORE_SIDES);
        }
        boolean label = said && cursor.take(Concept.COLON);
        boolean ends =
                label || cursor.atEnd() || cursor.isOne(PARTED) || cursor.is(Concept.OPEN) || cursor.is(Concept.CLOSE);
        if (!said || !ends) {
            cursor.reset(mark);
            return false;
        }
        items.add(new Item.Alike(at));
        return true;
    }

    private boolean cornerBegins() {
        int mark = cursor.mark();
        boolean corner = CornerPlace.take(cursor).isPresent();
        cursor.reset(mark);
        return corner;
    }

    /** A corner that is named first: 'corner', 'corner: 2 ch', 'in each corner (1 st, 2 ch, 1 st)'. */
    private Optional<Item> corner(Lexeme at, int depth) {
        CornerPlace place = CornerPlace.take(cursor).orElseThrow();
        note(place);
        int mark = cursor.mark();
        boolean parted = cursor.takeOne(EnumSet.of(Concept.COLON, Concept.EQUALS, Concept.DASH));
        boolean in = at.is(Concept.IN) && cursor.take(Concept.COMMA);
        if (cursor.is(Concept.OPEN)) {
            int before = cursor.mark();
            cursor.next();
            List<Item> group = items(depth + 1, Until.BRACKET);
            if (!group.isEmpty() && cursor.take(Concept.CLOSE)) {
                if (cursor.is(Concept.IN)) {
                    CornerPlace.take(cursor).ifPresent(this::note);
                }
                return turn(at, group, place.each());
            }
            cursor.reset(before);
        } else if (parted || in || at.is(Concept.IN)) {
            Optional<Item> plain = plainGroup(at, place.each());
            if (plain.isPresent()) {
                return plain;
            }
        }
        cursor.reset(mark);
        if (!at.is(Concept.IN) && !parted && cursor.is(Concept.IN)) {
            CornerPlace.take(cursor).ifPresentOrElse(this::note, () -> cursor.reset(mark));
        }
        if (at.is(Concept.IN) || parted) {
            throw cursor.stop("cornerGroup");
        }
        cursor.take(Concept.AS);
        cursor.take(Concept.BEFORE);
        return every(new Item.Turn(at, Optional.empty(), Optional.empty(), Optional.empty(), place.each()));
    }

    /** '2 ch', or '1 st, 2 ch, 1 st' without brackets. */
    private Optional<Item> plainGroup(Lexeme at, boolean each) {
        List<Item> group = new ArrayList<>();
        while (group.size() < 3) {
            cursor.skip(EnumSet.of(Concept.COMMA, Concept.AND));
            Optional<Item> step = StepReader.read(cursor, usual);
            if (step.isEmpty()) {
                break;
            }
            group.add(step.get());
            if (group.size() == 1 && step.get() instanceof Item.Chains) {
                break;
            }
        }
        return group.isEmpty() ? Optional.empty() : turn(at, group, each);
    }

    private Optional<Item> turn(Lexeme at, List<Item> group, boolean each) {
        return every(CornerGroup.of(at, group, each));
    }

    /** A corner that is told for all four is no item of its own. */
    private Optional<Item> every(Item.Turn turn) {
        if (!turn.each()) {
            return Optional.of(turn);
        }
        notes.everyCorner = Optional.of(turn);
        return Optional.empty();
    }

    private void note(CornerPlace place) {
        place.chains().ifPresent(notes.chainsBelow::add);
    }

    /** Whether the two stars that stand here mark where the last repeat ends: a stitch of the group goes on behind them. */
    private boolean isEndMark() {
        int after = 1;
        while (PARTED.contains(cursor.peek(after).concept())) {
            after++;
        }
        return beginsStitch(after);
    }

    /** Whether the asterisk that stands here, within a group, opens another one. */
    private boolean opensWithin() {
        return beginsStitch(1);
    }

    private boolean beginsStitch(int from) {
        Lexeme here = cursor.peek(from);
        Lexeme next = cursor.peek(from + 1);
        boolean number = here.is(Concept.NUMBER) && Concept.STITCHES.contains(next.concept());
        return number || here.is(Concept.OPEN) || Concept.STITCHES.contains(here.concept());
    }

    private List<Item> star(int depth) {
        Lexeme at = cursor.next();
        List<Item> items = items(depth + 1, Until.STAR);
        if (items.isEmpty()) {
            throw cursor.stop("item");
        }
        return repeats.afterStar(at, items, () -> StepReader.read(cursor, usual));
    }

    /** What stands in brackets: a count, prose, a corner, or items that are worked some times. */
    private Optional<Item> bracket(int depth) {
        Lexeme at = cursor.next();
        if (counts.takeInBrackets() || asides.takeProseInBrackets()) {
            return Optional.empty();
        }
        List<Item> items = items(depth + 1, Until.BRACKET);
        if (!cursor.take(Concept.CLOSE)) {
            throw cursor.stop("close");
        }
        if (items.isEmpty()) {
            return Optional.empty();
        }
        int after = cursor.mark();
        Optional<CornerPlace> corner = CornerPlace.take(cursor);
        if (corner.isPresent() && (cursor.peek(after - cursor.mark()).is(Concept.IN) || CornerGroup.is(items))) {
            note(corner.get());
            return turn(at, items, corner.get().each());
        }
        cursor.reset(after);
        if (CornerGroup.is(items) && !repeats.timesFollow()) {
            return turn(at, items, false);
        }
        return Optional.of(repeats.afterBracket(at, items));
    }
}
