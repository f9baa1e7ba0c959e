package edgewright.chart;

import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/** A number for each of the four sides: stitches, or how often the repeat is worked. */
public record PerSide(int top, int left, int bottom, int right) {

    /** The same number on every side. */
    public static PerSide all(int number) {
        return new PerSide(number, number, number, number);
    }

    /**
     * The numbers written with commas between them: four in the order top, left, bottom, right, or two for top and bottom,
     * then left and right. Blanks around a number do not matter.
     *
     * @throws IllegalArgumentException if there are not two or four whole numbers of 0 to 1,000,000
     */
    public static PerSide parse(String text) {
        String[] parts = text.split(",", -1);
        if (parts.length != 2 && parts.length != 4) {
            throw new IllegalArgumentException(
                    "'" + text + "': expected four numbers (top, left, bottom, right) or two");
        }
        int[] numbers = new int[4];
        for (int i = 0; i < 4; i++) {
            String part = parts[i % parts.length].strip();
            if (!part.matches("[0-9]{1,7}") || Integer.parseInt(part) > 1_000_000) {
                throw new IllegalArgumentException("'" + part + "': expected a whole number from 0 to 1,000,000");
            }
            numbers[i] = Integer.parseInt(part);
        }
        return new PerSide(numbers[0], numbers[1], numbers[2], numbers[3]);
    }

    /** The number of this side. */
    public int of(Side side) {
        return switch (side) {
            case TOP -> top;
            case LEFT -> left;
            case BOTTOM -> bottom;
            case RIGHT -> right;
        };
    }

    /** Each number changed in the same way. */
    public PerSide map(IntUnaryOperator change) {
        return new PerSide(
                change.applyAsInt(top), change.applyAsInt(left), change.applyAsInt(bottom), change.applyAsInt(right));
    }

    /** The four numbers in the order top, left, bottom, right. */
    public IntStream stream() {
        return IntStream.of(top, left, bottom, right);
    }

    /** All four together. */
    public int sum() {
        return stream().sum();
    }
}
