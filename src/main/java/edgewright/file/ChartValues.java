package edgewright.file;

import edgewright.chart.Extras;
import edgewright.file.Problem.Shape;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntConsumer;

/**
 * Takes the values of a chart file one by one from a {@link JsonWalk}, each as what it ought to be, and notes a problem for
 * each that is something else. A value that is not what it ought to be is passed over and comes back as empty.
 */
final class ChartValues {
    /** The largest measure that a chart may state, whatever its unit; far more than any border needs. */
    static final int LARGEST_MEASURE = 1_000_000;

    /** The smallest measure above 0, as fine as any is written back. */
    static final BigDecimal SMALLEST_MEASURE = new BigDecimal("0.01");

    private final JsonWalk json;
    private final List<Problem> problems = new ArrayList<>();

    /** Takes the member that the walk stands on if it knows it. */
    interface KnownMembers {
        /** Whether the member with this name is known, and so has been taken. */
        boolean take(String name);
    }

    /** What was found in an object. */
    record Members(Set<String> names, Extras extras, int line, String path) {
        /** Where a member of this object is, or would be. */
        String pathTo(String name) {
            return path.isEmpty() ? name : path + "." + name;
        }
    }

    ChartValues(JsonWalk json) {
        this.json = json;
    }

    /** All problems up to now, in the order of the file, at most {@link ChartFiles#MOST_PROBLEMS} of them. */
    List<Problem> problems() {
        return problems.stream()
                .sorted(Comparator.comparingInt(problem -> problem.line().orElse(0)))
                .toList();
    }

    /** Notes a problem. The first ones are enough for anybody; a hostile file could have millions. */
    void note(Problem problem) {
        if (problems.size() < ChartFiles.MOST_PROBLEMS) {
            problems.add(problem);
        }
    }

    /** Notes a problem of the current value. */
    void note(Fault fault) {
        note(Problem.atMember(fault, json.line(), json.path()));
    }

    /** Notes a problem if a member that every such object has is not there. */
    void require(Members members, String name, Shape expected) {
        if (!members.names().contains(name)) {
            note(Problem.atMember(new ChartFault.Missing(expected), members.line(), members.pathTo(name)));
        }
    }

    /**
     * The current value as an object.
     *
     * @param kept how the text of an unknown member is kept
     */
    Optional<Members> object(KnownMembers known, Function<String, String> kept) {
        if (!is(Shape.OBJECT, Shape.OBJECT)) {
            return Optional.empty();
        }
        int line = json.line();
        String path = json.path();
        Set<String> names = new HashSet<>();
        Map<String, String> unknown = new LinkedHashMap<>();
        json.object(name -> {
            names.add(name);
            if (!known.take(name)) {
                unknown.put(name, kept.apply(json.raw()));
            }
        });
        return Optional.of(new Members(names, new Extras(unknown), line, path));
    }

    /** The current value as a list, whose values are taken by the visitor, and how many there were. */
    OptionalInt list(IntConsumer visitor) {
        return is(Shape.LIST, Shape.LIST) ? OptionalInt.of(json.list(visitor)) : OptionalInt.empty();
    }

    /** The current value as a text. */
    Optional<String> text() {
        return is(Shape.TEXT, Shape.TEXT) ? Optional.of(json.text()) : Optional.empty();
    }

    /** The current value as true or false. */
    Optional<Boolean> truth() {
        return is(Shape.TRUE_OR_FALSE, Shape.TRUE_OR_FALSE)
                ? Optional.of(Boolean.valueOf(json.text()))
                : Optional.empty();
    }

    /**
     * The current value as a whole number, however it is written: 2, 2.0 and 0.2e1 are one number, as they are to a JSON
     * Schema.
     */
    Optional<Integer> whole(int least, int most) {
        Optional<BigDecimal> number = number();
        if (number.isEmpty()) {
            return Optional.empty();
        }
        boolean inRange = number.get().compareTo(BigDecimal.valueOf(least)) >= 0
                && number.get().compareTo(BigDecimal.valueOf(most)) <= 0;
        // Only a number in range is small enough to be looked at digit by digit: 1e999999999 is not.
        if (!inRange || !isWhole(number.get())) {
            note(new ChartFault.NotInRange(json.text(), least, most));
            return Optional.empty();
        }
        return Optional.of(number.get().intValueExact());
    }

    /** The current value as a number that is expected to be whole. */
    Optional<BigDecimal> number() {
        return number(Shape.WHOLE_NUMBER);
    }

    private Optional<BigDecimal> number(Shape expected) {
        if (!is(Shape.NUMBER, expected)) {
            return Optional.empty();
        }
        try {
            return Optional.of(new BigDecimal(json.text()));
        } catch (NumberFormatException e) {
            // More than ten digits in the exponent. Either far too large or next to nothing, and not whole in the
            // second case.
            return Optional.of(
                    new BigDecimal(json.text().contains("e-") || json.text().contains("E-") ? "0.5" : "1e99"));
        }
    }

    /** The current value as a measure: a number above 0 and up to {@value #LARGEST_MEASURE}, whole or not. */
    OptionalDouble measure() {
        return measure(SMALLEST_MEASURE);
    }

    /** The current value as a measure that may be 0. */
    OptionalDouble measureOrNone() {
        return measure(BigDecimal.ZERO);
    }

    private OptionalDouble measure(BigDecimal least) {
        Optional<BigDecimal> number = number(Shape.NUMBER);
        if (number.isEmpty()) {
            return OptionalDouble.empty();
        }
        boolean inRange =
                number.get().compareTo(least) >= 0 && number.get().compareTo(BigDecimal.valueOf(LARGEST_MEASURE)) <= 0;
        if (!inRange) {
            note(new ChartFault.NotAMeasure(json.text(), least.toPlainString(), LARGEST_MEASURE));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(number.get().doubleValue());
    }

    /** Whether there is nothing after the decimal point. Only for numbers of a sensible size. */
    static boolean isWhole(BigDecimal number) {
        return number.signum() == 0 || number.stripTrailingZeros().scale() <= 0;
    }

    /** The current value as one of the constants that a text can name. */
    <E extends Enum<E>> Optional<E> choice(E[] constants) {
        return choice(constants, Enum::name);
    }

    /** The current value as one of the constants, by the text that stands for each in the file. */
    <E extends Enum<E>> Optional<E> choice(E[] constants, Function<E, String> written) {
        Optional<String> text = text();
        Optional<E> chosen = text.flatMap(name -> Arrays.stream(constants)
                .filter(c -> written.apply(c).equals(name))
                .findFirst());
        if (text.isPresent() && chosen.isEmpty()) {
            note(new ChartFault.NoSuchChoice(
                    text.get(), Arrays.stream(constants).map(written).toList()));
        }
        return chosen;
    }

    private boolean is(Shape shape, Shape expected) {
        Shape found = json.shape();
        if (found != shape) {
            note(new ChartFault.WrongShape(found, expected));
            json.pass();
        }
        return found == shape;
    }
}
