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
import java.util.stream.IntStream;

/**
 * Reads what a round says of the stitches on a side. What is said in two ways of counting must agree; all is turned into
 * stitches, corner chains not counted.
 */
final class SizeReader {
    /** Multiples in two ways of counting, then in one, then counts, the longest form first. */
    private static final List<String> FORMS = List.of(
            "size-both-STITCHES",
            "size-both-WITH_CHAINS",
            "size-in-brackets",
            "size-counts-of",
            "size-counts-way",
            "size-counts-bare-of",
            "size-counts",
            "size-side-count",
            "size-two-ways",
            "size-multiple",
            "size-one-way");

    /** Forms in which it must be said how a side is counted. */
    private static final List<String> WITH_WAY = List.of("size-counts-of", "size-counts-way");

    private final TokenCursor cursor;
    private final boolean mayStateFewest;
    private final SizesReader sizes;

    private final Map<Side, List<Integer>> shown = new EnumMap<>(Side.class);
    private Optional<ReadingStopped> notOfEachSize = Optional.empty();
    private Optional<Counting> way = Optional.empty();
    private Optional<Counting> otherWay = Optional.empty();
    private Optional<MultipleReader.ShownMultiple> first = Optional.empty();
    private Optional<MultipleReader.ShownMultiple> second = Optional.empty();

    SizeReader(TokenCursor cursor, boolean mayStateFewest) {
        this.cursor = cursor;
        this.mayStateFewest = mayStateFewest;
        this.sizes = new SizesReader(cursor);
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
            notOfEachSize = Optional.empty();
            first = Optional.empty();
            second = Optional.empty();
            way = implied(form, Counting.STITCHES, Counting.WITH_CHAINS);
            otherWay = implied(form, Counting.WITH_CHAINS, Counting.STITCHES);
            boolean wayIsOptional = !WITH_WAY.contains(form);
            if (cursor.take(form, gap -> take(gap, wayIsOptional))) {
                return Optional.of(shown.isEmpty() ? multiples() : counts());
            }
        }
        return Optional.empty();
    }

    /** The counts of all sides in one round, with nothing else said of them; empty if none stand here. */
    Optional<Said> readCounts() {
        return takeCounts() ? Optional.of(counts()) : Optional.empty();
    }

    private static Optional<Counting> implied(String form, Counting ofStitches, Counting ofChains) {
        return switch (form) {
            case "size-both-STITCHES" -> Optional.of(ofStitches);
            case "size-both-WITH_CHAINS" -> Optional.of(ofChains);
            default -> Optional.empty();
        };
    }

    private boolean take(String gap, boolean wayIsOptional) {
        return switch (gap) {
            case "counts" -> takeCounts();
            case "sts" -> showOnAll(sizes.take());
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

    private Optional<MultipleReader.ShownMultiple> takeMultiple(boolean again) {
        return new MultipleReader(cursor, mayStateFewest).take(again);
    }

    /** A number for each size on all four sides, where they are alike without their names. */
    private boolean takeCounts() {
        shown.clear();
        int mark = cursor.mark();
        if (!takeSideCount()) {
            // A number alone could belong to a stitch.
            return showOnAll(sizes.take() && cursor.hasTakenWord(mark));
        }
        while (shown.size() < Side.values().length) {
            mark = cursor.mark();
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
        boolean taken = cursor.take("side-count", gap -> switch (gap) {
            case "sides" -> takeSides(named);
            case "sts" -> sizes.take();
            default -> throw Phrase.unknown(gap);
        });
        if (taken) {
            show(named);
        }
        return taken;
    }

    /** Each of these sides has the numbers that were taken last. Whether they are counts at all is known when all is read. */
    private void show(List<Side> named) {
        List<Integer> numbers = sizes.numbers();
        int expected = shown.values().stream()
                .findFirst()
                .map(List::size)
                .orElse(cursor.counted().sizes());
        if (expected > 0 && numbers.size() != expected && notOfEachSize.isEmpty()) {
            notOfEachSize = Optional.of(cursor.stopAt(sizes.tokens().get(0), Expectation.of("eachSize", expected)));
        }
        named.forEach(side -> shown.put(side, numbers));
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

    private boolean showOnAll(boolean taken) {
        if (taken) {
            show(List.of(Side.values()));
        }
        return taken;
    }

    private Said counts() {
        if (notOfEachSize.isPresent()) {
            throw notOfEachSize.get();
        }
        Counting counted = way.orElse(cursor.counted().counting());
        if (shown.values().stream().flatMap(List::stream).anyMatch(count -> counted.stitches(count) < 0)) {
            throw cursor.stop("count");
        }
        List<PerSide<Integer>> counts = IntStream.range(0, shown.get(Side.TOP).size())
                .mapToObj(size ->
                        PerSide.each(side -> counted.stitches(shown.get(side).get(size))))
                .toList();
        Optional<Multiple> multiple = first.map(each -> each.in(counted, cursor).withExamples(List.of()));
        return new Said(new SideSize.Counted(counts, multiple), OptionalInt.empty(), counted);
    }

    private Said multiples() {
        Counting counted = way.orElse(cursor.counted().counting());
        MultipleReader.ShownMultiple said = first.orElseThrow();
        Multiple multiple = said.in(counted, cursor);
        OptionalInt fewest = said.fewest(counted);
        if (second.isPresent()) {
            Counting other = otherWay.orElseThrow();
            MultipleReader.ShownMultiple again = second.get();
            Multiple same = again.after(multiple.of()).in(other, cursor);
            again.requireSame(multiple, same, fewest, other, cursor);
            multiple = multiple.examples().isEmpty() ? same : multiple;
            fewest = fewest.isPresent() ? fewest : again.fewest(other);
        }
        return new Said(SideSize.of(multiple), fewest, counted);
    }
}
