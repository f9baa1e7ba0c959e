package edgewright.assist.vary;

import java.util.Random;

/** Fields of squares that are filled or not, by chance: figures that a border may have. All go round the repeat. */
final class Figure {
    private final Random random;
    private final int rounds;
    private final int width;
    private final boolean mirrored;

    /** @param mirrored whether each figure is to be the same in a mirror */
    Figure(Random random, int rounds, int width, boolean mirrored) {
        this.random = random;
        this.rounds = rounds;
        this.width = width;
        this.mirrored = mirrored;
    }

    /** The next figure, by round from 0 and column from 0. */
    boolean[][] next() {
        boolean[][] field = switch (random.nextInt(4)) {
            case 0 -> rings();
            case 1 -> chevrons();
            case 2 -> strokes();
            default -> shapes();
        };
        return mirrored || random.nextInt(3) > 0 ? mirrored(field) : field;
    }

    /** A period of the figure: the repeat or a part of it in which it comes out even. */
    private int period() {
        int parts = 1 + random.nextInt(3);
        return width % parts == 0 && width / parts >= 3 ? width / parts : width;
    }

    /** Diamonds or boxes within each other. */
    private boolean[][] rings() {
        int period = period();
        double across = period / 2.0 - (random.nextBoolean() ? 0 : 0.5);
        int middle = random.nextInt(rounds);
        int thick = 1 + random.nextInt(3);
        int slope = 1 + random.nextInt(2);
        boolean boxes = random.nextInt(3) == 0;
        int phase = random.nextInt(2 * thick);
        boolean[][] field = new boolean[rounds][width];
        for (int r = 0; r < rounds; r++) {
            for (int i = 0; i < width; i++) {
                double dx = Math.abs(i % period - across);
                double dy = Math.abs(r - middle) / (double) slope;
                int ring = (int) (boxes ? Math.max(dx, dy) : dx + dy);
                field[r][i] = (ring + phase) / thick % 2 == 0;
            }
        }
        return field;
    }

    /** Slanting lines, all to one hand or turning back. */
    private boolean[][] chevrons() {
        int period = period();
        int cycle = random.nextBoolean() ? period : Math.max(3, period / 2);
        int slope = 1 + random.nextInt(3);
        int filled = 1 + random.nextInt(Math.max(1, cycle - 1));
        int turnsAt = random.nextInt(2) == 0 ? rounds : 3 + random.nextInt(rounds);
        boolean[][] field = new boolean[rounds][width];
        for (int r = 0; r < rounds; r++) {
            int step = r / turnsAt % 2 == 0 ? r % turnsAt : turnsAt - r % turnsAt;
            for (int i = 0; i < width; i++) {
                field[r][i] = Math.floorMod(i % period + step / slope, cycle) < filled;
            }
        }
        return field;
    }

    /** Lines that wander from round to round. */
    private boolean[][] strokes() {
        boolean[][] field = new boolean[rounds][width];
        for (int strokes = 1 + random.nextInt(3); strokes > 0; strokes--) {
            int column = random.nextInt(width);
            int thick = 1 + random.nextInt(3);
            int last = rounds - random.nextInt(1 + rounds / 3);
            int lean = random.nextInt(3) - 1;
            for (int r = random.nextInt(1 + rounds / 3); r < last; r++) {
                lean = random.nextInt(4) == 0 ? random.nextInt(3) - 1 : lean;
                for (int i = 0; i < thick; i++) {
                    field[r][Math.floorMod(column + i, width)] = true;
                }
                column += r % 2 == 0 ? lean : 0;
            }
        }
        return field;
    }

    /** Shapes with soft outlines: chance, made even with its neighbours. */
    private boolean[][] shapes() {
        boolean[][] field = new boolean[rounds][width];
        int filled = 35 + random.nextInt(30);
        for (boolean[] row : field) {
            for (int i = 0; i < width; i++) {
                row[i] = random.nextInt(100) < filled;
            }
        }
        boolean[][] start = mirrored ? mirrored(field) : field;
        return evened(evened(start));
    }

    private boolean[][] evened(boolean[][] field) {
        boolean[][] evened = new boolean[rounds][width];
        for (int r = 0; r < rounds; r++) {
            for (int i = 0; i < width; i++) {
                int sum = 0;
                int of = 0;
                for (int y = Math.max(0, r - 1); y <= Math.min(rounds - 1, r + 1); y++) {
                    for (int x = -1; x <= 1; x++) {
                        of++;
                        sum += field[y][Math.floorMod(i + x, width)] ? 1 : 0;
                    }
                }
                evened[r][i] = 2 * sum > of;
            }
        }
        return evened;
    }

    private boolean[][] mirrored(boolean[][] field) {
        int axis = width - 1;
        boolean[][] both = new boolean[rounds][width];
        for (int r = 0; r < rounds; r++) {
            for (int i = 0; i < width; i++) {
                both[r][i] = field[r][Math.min(i, axis - i)];
            }
        }
        return both;
    }
}
