package edgewright.words.read;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.words.tree.Multiple;
import edgewright.words.tree.SideSize;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Reads what a round says of the stitches on a side. What is said in two ways of counting must agree; all is turned into
 * stitches, corner chains not counted.
 */
final class SizeReader {
    /** The forms of the writer that name a multiple, then those that name counts, the longest first, then the typist's. */
    private static final List<String> FORMS = List.of(
            "bothWays-STITCHES",
            "bothWays-WITH_CHAINS",
            "size-in-brackets",
            "size-counts-of",
            "size-counts",
            "size-counts-bare-of",
            "size-counts-bare",
            "size-side-count",
            "size-two-ways",
            "size-one-way");

    private final TokenCursor cursor;
    private final boolean mayStateFewest;
    private final WorkReader work;

    private final Map<Side, Integer> shown = new EnumMap<>(Side.class);
    private Optional<Counting> way = Optional.empty();
    private Optional<Counting> otherWay = Optional.empty();
    private Optional<ShownMultiple> first = Optional.empty();
    private Optional<ShownMultiple> second = Optional.empty();

    SizeReader(TokenCursor cursor, boolean mayStateFewest) {
        this.cursor = cursor;
        this.mayStateFewest = mayStateFewest;
        this.work = new WorkReader(cursor);
    }

    /**
     * What was read.
     *
     * @param counting the way of counting that came first
     */
    record Said(SideSize size, OptionalInt fewest, Counting counting) {}

    /** What is said here; empty if nothing is. */
    Optional<Said> read() {
        if (cursor.atEnd()) {
            return Optional.empty();
        }
        for (String form : FORMS) {
            shown.clear();
            first = Optional.empty();
            second = Optional.empty();
            way = implied(form, Counting.STITCHES, Counting.WITH_CHAINS);
            otherWay = implied(form, Counting.WITH_CHAINS, Counting.STITCHES);
            boolean wayIsOptional = !form.startsWith("size-counts");
            if (cursor.take(form, gap -> take(gap, wayIsOptional))) {
                return Optional.of(shown.isEmpty() ? multiples() : counts());
            }
        }
        return Optional.empty();
    }

    private static Optional<Counting> implied(String form, Counting ofStitches, Counting ofChains) {
        return switch (form) {
            case "bothWays-STITCHES" -> Optional.of(ofStitches);
            case "bothWays-WITH_CHAINS" -> Optional.of(ofChains);
            default -> Optional.empty();
        };
    }

    private boolean take(String gap, boolean wayIsOptional) {
        return switch (gap) {
            case "counts" -> takeCounts();
            case "sts" -> takeCountOfAll();
            case "way" -> {
                way = takeWay();
                yield wayIsOptional || way.isPresent();
            }
            case "other" -> {
                otherWay = takeWay();
                yield otherWay.isPresent();
            }
            case "multiple", "first" -> {
                first = takeMultiple(false);
                yield first.isPresent();
            }
            case "second" -> {
                second = takeMultiple(true);
                yield second.isPresent();
            }
            default -> throw Phrase.unknown(gap);
        };
    }

    private Optional<Counting> takeWay() {
        for (Counting each : Counting.values()) {
            if (cursor.takeWord("counted-" + each) || cursor.takeWord("way-" + each)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    private Optional<ShownMultiple> takeMultiple(boolean again) {
        return new MultipleReader(cursor, mayStateFewest).take(again);
    }

    private boolean takeCounts() {
        shown.clear();
        if (!takeSideCount()) {
            return false;
        }
        while (shown.size() < Side.values().length) {
            int mark = cursor.mark();
            boolean goesOn = cursor.between("counts-next");
            int next = cursor.mark();
            if (!goesOn || !takeSideCount()) {
                cursor.reset(mark);
                throw cursor.hasMissedAfter(next) ? cursor.stopped() : cursor.stop("fourSides");
            }
        }
        return true;
    }

    private boolean takeSideCount() {
        List<Side> named = new ArrayList<>();
        int[] count = new int[1];
        boolean taken = cursor.take("side-count", gap -> switch (gap) {
            case "sides" -> takeSides(named);
            case "sts" -> {
                boolean number = work.takeStitches(0, "count");
                count[0] = cursor.number();
                yield number;
            }
            default -> throw Phrase.unknown(gap);
        });
        if (taken) {
            named.forEach(side -> shown.put(side, count[0]));
        }
        return taken;
    }

    private boolean takeSides(List<Side> named) {
        named.clear();
        if (cursor.takeWord("each-side")) {
            named.addAll(List.of(Side.values()));
            return true;
        }
        int mark = cursor.mark();
        while (takeSide(named)) {
            mark = cursor.mark();
            if (!cursor.between("sides-next")) {
                break;
            }
        }
        cursor.reset(mark);
        return !named.isEmpty();
    }

    private boolean takeSide(List<Side> named) {
        Token start = cursor.peek();
        for (Side side : Side.values()) {
            if (cursor.takeWord("sideName-" + side)) {
                if (shown.containsKey(side)) {
                    throw cursor.stopAt(start, Expectation.of("otherSide"));
                }
                named.add(side);
                return true;
            }
        }
        return false;
    }

    private boolean takeCountOfAll() {
        boolean taken = work.takeStitches(0, "count");
        if (taken) {
            Stream.of(Side.values()).forEach(side -> shown.put(side, cursor.number()));
        }
        return taken;
    }

    private Said counts() {
        Counting counted = way.orElse(Counting.STITCHES);
        if (shown.values().stream().anyMatch(count -> counted.stitches(count) < 0)) {
            throw cursor.stop("count");
        }
        PerSide<Integer> counts = PerSide.each(shown::get).map(counted::stitches);
        Optional<Multiple> multiple = first.map(each -> each.in(counted, cursor).withExamples(List.of()));
        return new Said(new SideSize(multiple, Optional.of(counts)), OptionalInt.empty(), counted);
    }

    private Said multiples() {
        Counting counted = way.orElse(Counting.STITCHES);
        ShownMultiple said = first.orElseThrow();
        Multiple multiple = said.in(counted, cursor);
        OptionalInt fewest = said.fewest(counted);
        if (second.isPresent()) {
            Counting other = otherWay.orElseThrow();
            ShownMultiple again = second.get();
            Multiple same = again.after(multiple.of()).in(other, cursor);
            again.requireSame(multiple, same, fewest, other, cursor);
            multiple = multiple.examples().isEmpty() ? same : multiple;
            fewest = fewest.isPresent() ? fewest : again.fewest(other);
        }
        return new Said(new SideSize(Optional.of(multiple), Optional.empty()), fewest, counted);
    }
}
