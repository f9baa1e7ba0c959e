package edgewright.words.grammar;

import edgewright.chart.Stitch;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads one step: a stitch with its number before it, after it or in its place, and how far it is worked. */
final class StepReader {
    private static final Set<Concept> NOT_AFTER_NUMBER =
            EnumSet.of(Concept.TIMES, Concept.MORE, Concept.ROUND, Concept.ROW, Concept.CORNER, Concept.DASH);
    private static final Set<Concept> MISSED_FROM = EnumSet.of(Concept.NEXT, Concept.OF, Concept.EACH);

    private final Cursor cursor;
    private Optional<Stitch> usual;
    private final StitchWords words = new StitchWords();
    private Optional<Lexeme> count = Optional.empty();
    private Optional<Lexeme> places = Optional.empty();
    private boolean oneInEach;
    private boolean inCorner;
    private boolean inEach;
    private Optional<Extent> extent = Optional.empty();

    private StepReader(Cursor cursor, Optional<Stitch> usual) {
        this.cursor = cursor;
        this.usual = usual;
    }

    /**
     * The step that begins here; empty, and nothing taken, if none does.
     *
     * @param usual what a short stitch is where nothing is said of its loops; empty if they must be said
     */
    static Optional<Item> read(Cursor cursor, Optional<Stitch> usual) {
        int mark = cursor.mark();
        Optional<Item> step = new StepReader(cursor, usual).step();
        if (step.isEmpty()) {
            cursor.reset(mark);
        }
        return step;
    }

    private Optional<Item> step() {
        Lexeme at = cursor.peek();
        cursor.take(Concept.STANDING);
        if (cursor.is(Concept.NUMBER)) {
            cursor.number();
            count = Optional.of(cursor.peek(-1));
        }
        cursor.take(Concept.STANDING);
        if (cursor.is(Concept.ORDINARY) && cursor.peek(1).is(Concept.SHORT)) {
            // Whether it is the usual one of this text or of the trade, its loops tell.
            cursor.next();
            usual = Optional.empty();
        }
        words.takeMore(cursor);
        if (!words.takeName(cursor) || words.name().get().is(Concept.SLIP)) {
            return Optional.empty();
        }
        boolean more = true;
        while (more) {
            more = takePlace() || words.takeMore(cursor) || takeNumber() || takeExtent();
        }
        Stitch stitch = words.stitch(usual);
        return Optional.of(stitch == Stitch.CHAIN ? chains(at) : item(at, stitch));
    }

    private boolean takeNumber() {
        if (count.isPresent() || places.isPresent() || extent.isPresent() || inEach) {
            return false;
        }
        int mark = cursor.mark();
        boolean times = cursor.take(Concept.TIMES);
        if (cursor.is(Concept.NUMBER)
                && (times || !NOT_AFTER_NUMBER.contains(cursor.peek(1).concept()))
                && !Concept.STITCHES.contains(cursor.peek(1).concept())) {
            cursor.number();
            count = Optional.of(cursor.peek(-1));
            cursor.take(Concept.STITCH);
            return true;
        }
        cursor.reset(mark);
        return false;
    }

    private boolean takePlace() {
        int mark = cursor.mark();
        if (!inCorner && isIn()) {
            Optional<CornerPlace> corner = CornerPlace.take(cursor);
            if (corner.isPresent()) {
                inCorner = true;
                return true;
            }
        }
        boolean in = cursor.take(Concept.IN);
        cursor.take(Concept.OF);
        boolean each = cursor.take(Concept.EACH);
        cursor.take(Concept.OF);
        boolean told = cursor.take(Concept.NEXT) || cursor.take(Concept.LAST) || cursor.take(Concept.FIRST);
        if (in && cursor.is(Concept.SAME)) {
            throw cursor.stop("oneInOne");
        }
        if (told && places.isEmpty() && !inEach) {
            oneInEach |= each;
            takePlaces();
            return true;
        }
        if (each && !inEach && cursor.take(Concept.STITCH)) {
            inEach = true;
            oneInEach = true;
            extent = extent.or(() -> ExtentReader.take(cursor));
            return true;
        }
        if (each && !inEach && in && cursor.is(Concept.NUMBER) && cursor.peek(1).is(Concept.STITCH)) {
            oneInEach = true;
            takePlaces();
            return true;
        }
        if (in && !each && !told && cursor.are(Concept.NUMBER, Concept.STITCH)) {
            takePlaces();
            return true;
        }
        cursor.reset(mark);
        return false;
    }

    private boolean isIn() {
        return cursor.is(Concept.IN) || cursor.are(Concept.CORNER);
    }

    private void takePlaces() {
        Lexeme at = cursor.peek();
        if (cursor.is(Concept.NUMBER)) {
            cursor.number();
            places = Optional.of(at);
            if (!cursor.take(Concept.STITCH) && !cursor.takeOne(EnumSet.of(Concept.SHORT, Concept.STITCH_NAME))) {
                // 'in each of next 5' says enough.
                cursor.take(Concept.STITCH);
            }
        } else if (cursor.take(Concept.STITCH)) {
            places = Optional.of(
                    new Lexeme(Concept.NUMBER, at.text(), 1, Optional.empty(), at.line(), at.column(), at.end()));
        } else {
            throw cursor.stop("sts");
        }
    }

    private boolean takeExtent() {
        if (extent.isPresent() || (count.isPresent() && !inEach)) {
            return false;
        }
        extent = ExtentReader.take(cursor);
        return extent.isPresent();
    }

    private Item item(Lexeme at, Stitch stitch) {
        if (inEach || extent.isPresent()) {
            requireOne();
            Extent how = extent.orElse(new Extent(cursor.peek(-1), Extent.Kind.CORNER, 0));
            return new Item.Open(at, List.of(new Item.Work(at, 1, stitch, false)), how);
        }
        if (oneInEach) {
            requireOne();
        }
        int said = count.map(Lexeme::number).orElse(1);
        int many = places.map(Lexeme::number).orElse(said);
        if (count.isPresent() && said != 1 && said != many) {
            throw Cursor.stop(count.get(), "asManyAsPlaces", many);
        }
        if (many < 1) {
            throw Cursor.stop(count.or(() -> places).orElse(at), "number", "");
        }
        return new Item.Work(at, many, stitch, inCorner);
    }

    private void requireOne() {
        if (count.isPresent() && count.get().number() != 1) {
            throw Cursor.stop(count.get(), "oneInOne", "");
        }
    }

    /** Chains over stitches that are missed, or those of a corner. */
    private Item chains(Lexeme at) {
        int many = count.map(Lexeme::number).orElse(1);
        if (places.isPresent() || extent.isPresent() || inEach) {
            throw Cursor.stop(at, "miss", many);
        }
        int mark = cursor.mark();
        cursor.skip(EnumSet.of(Concept.COMMA, Concept.AND, Concept.SEMICOLON));
        if (cursor.take(Concept.MISS)) {
            cursor.skip(MISSED_FROM);
            Lexeme missed = cursor.peek();
            int stitches = cursor.is(Concept.NUMBER) ? cursor.number() : 1;
            cursor.take(Concept.STITCH);
            if (stitches != many || many < 1) {
                throw Cursor.stop(missed, "missed", many);
            }
            return new Item.Work(at, many, Stitch.CHAIN, false);
        }
        cursor.reset(mark);
        return inCorner
                ? new Item.Turn(at, Optional.empty(), Optional.of(many), Optional.empty(), false)
                : new Item.Chains(at, many);
    }
}
