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
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads what a round says of the stitches on a side. What is said in two ways of counting must agree; all is turned into
 * stitches, corner chains not counted.
 */
final class SizeReader {
    private static final String SIDE = "side.";

    private final TokenCursor cursor;
    private final boolean mayStateFewest;

    SizeReader(TokenCursor cursor, boolean mayStateFewest) {
        this.cursor = cursor;
        this.mayStateFewest = mayStateFewest;
    }

    /**
     * What was read.
     *
     * @param counting the way of counting that came first
     */
    record Said(SideSize size, OptionalInt fewest, Counting counting) {}

    /** What is said here; empty if nothing is. */
    Optional<Said> read() {
        if (cursor.isSign("(")) {
            return parenthesis();
        }
        if (isSideName()) {
            return Optional.of(counts(eachSideByName()));
        }
        if (cursor.take("eachSide")) {
            cursor.skip(":");
            int stitches = count();
            return Optional.of(counts(PerSide.all(stitches)));
        }
        if (!cursor.is("side") && !cursor.is("multiple") && !cursor.is("any")) {
            return Optional.empty();
        }
        cursor.take("side");
        Counting way = way(",").orElse(Counting.STITCHES);
        cursor.skip(":");
        if (cursor.isNumber()) {
            int stitches = count();
            return Optional.of(counts(PerSide.all(stitches)));
        }
        return Optional.of(multiples(way));
    }

    /** '(41 sts)', with or without the way of counting. */
    private Optional<Said> parenthesis() {
        cursor.requireSign("(", "close");
        int stitches = cursor.number(0, "count");
        cursor.require("stitches", "sts");
        cursor.take("perSide");
        Counting way = way(",;").orElse(Counting.STITCHES);
        cursor.requireSign(")", "close");
        return Optional.of(new Said(
                new SideSize(Optional.empty(), Optional.of(sides(PerSide.all(stitches), way))),
                OptionalInt.empty(),
                way));
    }

    private PerSide<Integer> sides(PerSide<Integer> shown, Counting way) {
        if (shown.stream().anyMatch(count -> way.stitches(count) < 0)) {
            throw cursor.stop("count");
        }
        return shown.map(way::stitches);
    }

    private PerSide<Integer> eachSideByName() {
        Map<Side, Integer> counts = new EnumMap<>(Side.class);
        while (counts.size() < Side.values().length) {
            List<Side> named = new ArrayList<>();
            do {
                named.add(sideName(counts.keySet()));
            } while (cursor.take("and"));
            cursor.skip(":");
            int stitches = count();
            named.forEach(side -> counts.put(side, stitches));
            int mark = cursor.mark();
            cursor.skip(",;");
            if (!isSideName()) {
                cursor.reset(mark);
                break;
            }
        }
        if (counts.size() < Side.values().length) {
            throw cursor.stop("fourSides");
        }
        return PerSide.each(counts::get);
    }

    private boolean isSideName() {
        return Stream.of(Side.values()).anyMatch(side -> cursor.is(SIDE + side));
    }

    /** @param said the sides that have their counts */
    private Side sideName(Set<Side> said) {
        for (Side side : Side.values()) {
            if (cursor.is(SIDE + side)) {
                if (said.contains(side)) {
                    throw cursor.stop("otherSide");
                }
                cursor.take(SIDE + side);
                return side;
            }
        }
        throw cursor.stop("fourSides");
    }

    private int count() {
        int count = cursor.number(0, "count");
        cursor.take("stitches");
        return count;
    }

    private Said counts(PerSide<Integer> shown) {
        Counting way = way(",;").orElse(Counting.STITCHES);
        PerSide<Integer> counts = sides(shown, way);
        Optional<Multiple> multiple = Optional.empty();
        if (cursor.takeSign("(")) {
            Stated stated = stated(way, "multiple", 0);
            cursor.requireSign(")", "close");
            multiple = Optional.of(Multiple.containing(stated.of(), stated.plus()));
        }
        return new Said(new SideSize(multiple, Optional.of(counts)), OptionalInt.empty(), way);
    }

    /** A multiple as it was said in one way of counting, but in stitches; and where its parts were said. */
    private record Stated(
            Token start,
            int of,
            int plus,
            Token examplesStart,
            List<Integer> examples,
            Token fewestStart,
            OptionalInt fewest) {}

    private Said multiples(Counting way) {
        Stated first = stated(way, "multiple", 0);
        List<Integer> examples = first.examples();
        OptionalInt fewest = first.fewest();
        int mark = cursor.mark();
        Optional<Counting> otherWay = way(",;");
        if (otherWay.isEmpty()) {
            cursor.reset(mark);
        } else {
            cursor.skip(":");
            Stated second = stated(otherWay.get(), "plus", first.of());
            requireSame(otherWay.get(), first, second);
            examples = examples.isEmpty() ? second.examples() : examples;
            fewest = fewest.isPresent() ? fewest : second.fewest();
        }
        Multiple multiple = Multiple.containing(first.of(), first.plus()).withExamples(examples);
        return new Said(new SideSize(Optional.of(multiple), Optional.empty()), fewest, way);
    }

    /** What is said a second time, in the other way of counting, must be the same. */
    private void requireSame(Counting way, Stated first, Stated second) {
        if (second.of() != first.of() || second.plus() != first.plus()) {
            throw cursor.stopAt(
                    second.start(), "example", first.of(), Math.floorMod(way.shown(first.plus()), first.of()));
        }
        boolean oneHasNone = first.examples().isEmpty() || second.examples().isEmpty();
        if (!oneHasNone && !first.examples().equals(second.examples())) {
            throw cursor.stopAt(
                    second.examplesStart(),
                    "otherWay",
                    first.examples().stream()
                            .map(way::shown)
                            .map(String::valueOf)
                            .collect(Collectors.joining(", ")));
        }
        if (first.fewest().isPresent()
                && second.fewest().isPresent()
                && !first.fewest().equals(second.fewest())) {
            throw cursor.stopAt(
                    second.fewestStart(), "otherWay", way.shown(first.fewest().getAsInt()));
        }
    }

    /**
     * Reads a multiple with its examples.
     *
     * @param ofBefore the multiple that need not be said again; 0 if there is none
     */
    private Stated stated(Counting way, String expected, int ofBefore) {
        Token start = cursor.peek();
        int of;
        int shownPlus = 0;
        if (cursor.take("any")) {
            of = 1;
        } else if (ofBefore > 0 && cursor.is("plus")) {
            of = ofBefore;
        } else {
            cursor.require("multiple", expected);
            of = cursor.number(1, "number");
        }
        if (cursor.take("plus")) {
            shownPlus = cursor.number(0, "count");
        }
        int plus = Math.floorMod(way.stitches(shownPlus), of);
        Token examplesStart = cursor.peek();
        List<Integer> examples = examples(way, of, plus);
        cursor.skip(mayStateFewest && cursor.isFollowedBy(",", "atLeast") ? "," : "");
        Token fewestStart = cursor.peek();
        return new Stated(start, of, plus, examplesStart, examples, fewestStart, fewest(way));
    }

    private List<Integer> examples(Counting way, int of, int plus) {
        List<Integer> examples = new ArrayList<>();
        if (cursor.takeSign("(")) {
            do {
                Token token = cursor.peek();
                int stitches = way.stitches(cursor.number(0, "count"));
                if (stitches < 0 || Math.floorMod(stitches, of) != plus) {
                    throw cursor.stopAt(token, "example", of, Math.floorMod(way.shown(plus), of));
                }
                examples.add(stitches);
            } while (cursor.takeSign(","));
            cursor.requireSign(")", "close");
        }
        return examples;
    }

    private OptionalInt fewest(Counting way) {
        return mayStateFewest && cursor.take("atLeast")
                ? OptionalInt.of(way.stitches(cursor.number(way.shown(0), "count")))
                : OptionalInt.empty();
    }

    /** The way of counting, if it is said here or after these signs. */
    private Optional<Counting> way(String signs) {
        int mark = cursor.mark();
        cursor.skip(signs);
        for (Counting way : Counting.values()) {
            if (cursor.take("way." + way)) {
                return Optional.of(way);
            }
        }
        cursor.reset(mark);
        return Optional.empty();
    }
}
