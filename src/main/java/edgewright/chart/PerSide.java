package edgewright.chart;

import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One value for each of the four sides: stitches, how often the repeat is worked, words, an edge. The values never change;
 * none is null.
 *
 * <p>Wherever all four are taken one after the other they come in the order of {@link Side}: top, left, bottom, right.
 */
public record PerSide<T>(T top, T left, T bottom, T right) {
    /** The most that {@link #parse} takes for a side. */
    public static final int MOST_TYPED = 1_000_000;

    public PerSide {
        Objects.requireNonNull(top);
        Objects.requireNonNull(left);
        Objects.requireNonNull(bottom);
        Objects.requireNonNull(right);
    }

    /** These four, in the order in which a right-handed maker comes to the sides. */
    public static <T> PerSide<T> of(T top, T left, T bottom, T right) {
        return new PerSide<>(top, left, bottom, right);
    }

    /** The same on every side. */
    public static <T> PerSide<T> all(T value) {
        return new PerSide<>(value, value, value, value);
    }

    /** The same on opposite sides. */
    public static <T> PerSide<T> pairs(T topAndBottom, T leftAndRight) {
        return new PerSide<>(topAndBottom, leftAndRight, topAndBottom, leftAndRight);
    }

    /** What each side answers; the sides are asked in their order. */
    public static <T> PerSide<T> each(Function<Side, ? extends T> answer) {
        return new PerSide<>(
                answer.apply(Side.TOP), answer.apply(Side.LEFT), answer.apply(Side.BOTTOM), answer.apply(Side.RIGHT));
    }

    /**
     * The numbers written with commas between them: four in the order top, left, bottom, right, or two for top and bottom,
     * then left and right. Blanks around a number do not matter.
     *
     * @throws IllegalArgumentException if there are not two or four whole numbers of 0 to {@link #MOST_TYPED}
     */
    public static PerSide<Integer> parse(String text) {
        String[] parts = text.split(",", -1);
        if (parts.length != 2 && parts.length != 4) {
            throw new IllegalArgumentException(
                    "'" + text + "': expected four numbers (top, left, bottom, right) or two");
        }
        return each(side -> number(parts[side.ordinal() % parts.length].strip()));
    }

    private static int number(String part) {
        if (!part.matches("[0-9]{1,7}") || Integer.parseInt(part) > MOST_TYPED) {
            throw new IllegalArgumentException("'" + part + "': expected a whole number from 0 to 1,000,000");
        }
        return Integer.parseInt(part);
    }

    /** The value of this side. */
    public T get(Side side) {
        return switch (side) {
            case TOP -> top;
            case LEFT -> left;
            case BOTTOM -> bottom;
            case RIGHT -> right;
        };
    }

    /** The same but for this side. */
    public PerSide<T> with(Side side, T value) {
        return each(other -> other == side ? value : get(other));
    }

    /** Each value changed in the same way. */
    public <U> PerSide<U> map(Function<? super T, ? extends U> change) {
        return each(side -> change.apply(get(side)));
    }

    /** Numbers as {@link #parse} reads them: two where opposite sides are alike, else one for each side. */
    public static String typed(PerSide<Integer> numbers) {
        int few = numbers.oppositeSidesAreAlike() ? Side.values().length / 2 : Side.values().length;
        return numbers.stream().limit(few).map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** The values, one for each side. */
    public Stream<T> stream() {
        return Stream.of(top, left, bottom, right);
    }

    /** Whether top and bottom are alike, and left and right too. */
    public boolean oppositeSidesAreAlike() {
        return top.equals(bottom) && left.equals(right);
    }

    /** Whether all four are alike. */
    public boolean allSidesAreAlike() {
        return oppositeSidesAreAlike() && top.equals(left);
    }

    /** Four numbers together. On the largest piece they are more than an {@code int} holds. */
    public static long sum(PerSide<Integer> numbers) {
        return numbers.stream().mapToLong(Integer::longValue).sum();
    }
}
