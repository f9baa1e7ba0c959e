package edgewright.words.grammar;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Reads how often something is worked, after brackets, after an asterisk, or for a whole side. */
final class RepeatReader {
    /** A border has no more stitches than this on a side. */
    private static final int MOST_TIMES = 100_000;

    /** How often: a number for each size, and whether the first time is counted in it. */
    private record HowOften(Lexeme at, List<Integer> numbers, boolean more) {}

    private final Cursor cursor;

    RepeatReader(Cursor cursor) {
        this.cursor = cursor;
    }

    /** Whether a number of times, or a number that could be one, stands here. */
    boolean timesFollow() {
        return cursor.isOne(EnumSet.of(Concept.NUMBER, Concept.TIMES, Concept.TWICE, Concept.THRICE));
    }

    /** Brackets that have been closed, with what follows them. */
    Item afterBracket(Lexeme at, List<Item> items) {
        cursor.take(Concept.COMMA);
        boolean repeat = cursor.take(Concept.REPEAT);
        if (repeat) {
            cursor.skip(EnumSet.of(Concept.FROM, Concept.BETWEEN, Concept.OPEN, Concept.CLOSE));
        }
        Optional<Extent> extent = ExtentReader.take(cursor);
        if (extent.isPresent()) {
            return new Item.Open(at, items, extent.get());
        }
        HowOften often = howOften().orElseThrow(() -> cursor.stop("times"));
        return times(at, items, often, often.more() || repeat, repeat && !often.more());
    }

    /**
     * What follows the items after an asterisk: the second asterisk with a number, or 'rep from *' with its extent. Where the
     * last repeat ends otherwise than the others, it stands behind them.
     *
     * @param step reads a step
     */
    List<Item> afterStar(Lexeme at, List<Item> inside, Supplier<Optional<Item>> step) {
        boolean closed = cursor.take(Concept.STAR) || cursor.take(Concept.TWO_STARS);
        cursor.skip(EnumSet.of(Concept.COMMA, Concept.SEMICOLON, Concept.STOP));
        boolean repeat = cursor.take(Concept.REPEAT);
        if (!closed && !repeat) {
            throw cursor.stop("repeatFromStar");
        }
        if (repeat) {
            takeStars(closed);
        }
        cursor.take(Concept.COMMA);
        List<Item> items =
                inside.stream().filter(item -> !(item instanceof Item.EndMark)).toList();
        Optional<Extent> extent = ExtentReader.take(cursor);
        Optional<List<Item>> last = extent.flatMap(to -> lastRepeat(inside, step));
        if (extent.isPresent() && last.isPresent()) {
            List<Item> all = new ArrayList<>();
            all.add(new Item.Open(at, items, new Extent(extent.get().at(), Extent.Kind.LAST, Extent.UNTOLD)));
            all.addAll(last.get());
            return all;
        }
        Optional<Item> mark =
                inside.stream().filter(Item.EndMark.class::isInstance).findFirst();
        if (mark.isPresent()) {
            throw Cursor.stop(mark.get().at(), "endsAtMark", "");
        }
        return List.of(extent.<Item>map(to -> new Item.Open(at, items, to)).orElseGet(() -> times(at, items, repeat)));
    }

    private Item times(Lexeme at, List<Item> items, boolean repeat) {
        boolean turns = items.stream().anyMatch(Item::turns);
        if (turns && takeOnSides()) {
            return new Item.Open(at, items, new Extent(at, Extent.Kind.AROUND, 0));
        }
        Optional<HowOften> often = howOften();
        if (often.isEmpty() && turns) {
            return new Item.Open(at, items, new Extent(at, Extent.Kind.AROUND, 0));
        }
        HowOften said = often.orElseThrow(() -> cursor.stop("upTo"));
        return times(at, items, said, repeat, repeat && !said.more());
    }

    /** 'Ending last rep at **', 'ending last rep 3 st': what is worked of the last repeat. */
    private Optional<List<Item>> lastRepeat(List<Item> inside, Supplier<Optional<Item>> step) {
        int mark = cursor.mark();
        cursor.take(Concept.COMMA);
        cursor.take(Concept.AND);
        if (!cursor.takeAll(Concept.TO, Concept.LAST, Concept.REPEAT)) {
            cursor.reset(mark);
            return Optional.empty();
        }
        cursor.skip(EnumSet.of(Concept.IN, Concept.WITH));
        if (cursor.is(Concept.TWO_STARS)) {
            Lexeme stars = cursor.next();
            int end = 0;
            while (end < inside.size() && !(inside.get(end) instanceof Item.EndMark)) {
                end++;
            }
            if (end == inside.size()) {
                throw Cursor.stop(stars, "markInside", "");
            }
            return Optional.of(inside.subList(0, end));
        }
        Lexeme at = cursor.peek();
        Optional<Item> other = step.get();
        boolean same = other.isPresent()
                && other.get() instanceof Item.Work worked
                && inside.get(inside.size() - 1) instanceof Item.Work last
                && worked.stitch() == last.stitch();
        if (!same) {
            throw Cursor.stop(at, "lastOfRepeat", "");
        }
        List<Item> all = new ArrayList<>(inside.subList(0, inside.size() - 1));
        all.add(other.get());
        return Optional.of(all);
    }

    private void takeStars(boolean closed) {
        boolean from = cursor.take(Concept.FROM) || cursor.take(Concept.BETWEEN);
        boolean star = cursor.take(Concept.STAR) || cursor.take(Concept.TWO_STARS);
        if (!star && from) {
            throw cursor.stop("star");
        }
        if (star
                && (cursor.is(Concept.TO) || cursor.is(Concept.AND))
                && cursor.peek(1).is(Concept.STAR)) {
            cursor.next();
            cursor.next();
        } else if (star && cursor.is(Concept.TO) && cursor.peek(1).is(Concept.TWO_STARS)) {
            if (!closed) {
                throw cursor.stop("upTo");
            }
            cursor.next();
            cursor.next();
        } else if (star && closed) {
            cursor.take(Concept.STAR);
        }
    }

    private boolean takeOnSides() {
        int mark = cursor.mark();
        cursor.skip(EnumSet.of(Concept.IN));
        if (cursor.take(Concept.EACH_SIDE) || cursor.take(Concept.THREE_MORE_SIDES)) {
            return true;
        }
        cursor.reset(mark);
        return false;
    }

    /** 'Repeat around', 'repeat on all sides', 'rep 3 more times' of everything before it. */
    Item ofAll() {
        Lexeme at = cursor.next();
        int begins = cursor.mark();
        cursor.skip(EnumSet.of(Concept.IN, Concept.ACROSS));
        if (takeOnSides() || cursor.take(Concept.AROUND)) {
            cursor.takeAll(Concept.IN, Concept.EACH, Concept.ROUND);
            return new Item.Alike(at);
        }
        cursor.reset(begins);
        int mark = cursor.mark();
        Optional<HowOften> often = howOften();
        if (often.isPresent() && often.get().numbers().equals(List.of(3))) {
            cursor.skip(EnumSet.of(Concept.AROUND));
            return new Item.Alike(at);
        }
        cursor.reset(mark);
        throw cursor.stop("onAllSides");
    }

    private static Item times(Lexeme at, List<Item> items, HowOften often, boolean more, boolean unclear) {
        List<Integer> times = new ArrayList<>();
        for (int number : often.numbers()) {
            int total = number + (more ? 1 : 0);
            if (total < 1 || total > MOST_TIMES) {
                throw Cursor.stop(often.at(), "number", "");
            }
            times.add(total);
        }
        return new Item.Times(at, items, times, unclear);
    }

    /** '3 times', 'x 3', 'twice', '3 more times', '5 (8) times'. */
    private Optional<HowOften> howOften() {
        int mark = cursor.mark();
        Lexeme at = cursor.peek();
        boolean times = cursor.take(Concept.TIMES);
        List<Integer> numbers = new ArrayList<>();
        if (!times && (cursor.is(Concept.ONCE) || cursor.is(Concept.TWICE) || cursor.is(Concept.THRICE))) {
            Concept word = cursor.next().concept();
            numbers.add(word == Concept.ONCE ? 1 : word == Concept.TWICE ? 2 : 3);
            return Optional.of(new HowOften(at, numbers, cursor.take(Concept.MORE)));
        }
        if (!cursor.is(Concept.NUMBER)) {
            cursor.reset(mark);
            return Optional.empty();
        }
        at = cursor.peek();
        numbers.add(cursor.number());
        takeOtherSizes(numbers);
        boolean more = cursor.take(Concept.MORE);
        boolean after = cursor.take(Concept.TIMES);
        more |= cursor.take(Concept.MORE);
        if (!times && !after) {
            cursor.reset(mark);
            return Optional.empty();
        }
        return Optional.of(new HowOften(at, numbers, more));
    }

    private void takeOtherSizes(List<Integer> numbers) {
        if (!cursor.is(Concept.OPEN) || !cursor.peek(1).is(Concept.NUMBER)) {
            return;
        }
        cursor.next();
        do {
            numbers.add(cursor.number());
        } while (cursor.take(Concept.COMMA) || cursor.take(Concept.SLASH));
        if (!cursor.take(Concept.CLOSE)) {
            throw cursor.stop("close");
        }
    }
}
