package edgewright.assist.picture;

import edgewright.chart.Rules;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Pictures by chance, the same for the same seed: noise, and blots with smooth edges as people draw them. */
final class RandomPictures {
    private static final List<String> LETTERS = List.of("A", "B", "C");

    private final Random random;

    RandomPictures(long seed) {
        this.random = new Random(seed);
    }

    /** A task of a size between these, both ends included. */
    PictureTask task(int leastRounds, int mostRounds, int leastWidth, int mostWidth, Rules rules) {
        int rounds = between(leastRounds, mostRounds);
        int width = between(leastWidth, mostWidth);
        List<String> yarns = LETTERS.subList(0, between(2, 3));
        WantedPicture picture = random.nextBoolean() ? noise(rounds, width, yarns) : blots(rounds, width, yarns);
        return new PictureTask(picture, order(rounds, yarns), rules);
    }

    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    private List<String> order(int rounds, List<String> yarns) {
        if (random.nextInt(4) > 0) {
            return YarnOrder.inTurn(yarns, rounds);
        }
        List<String> order = new ArrayList<>();
        for (int r = 1; r <= rounds; r++) {
            order.add(yarns.get(random.nextInt(yarns.size())));
        }
        return order;
    }

    private WantedPicture noise(int rounds, int width, List<String> yarns) {
        return WantedPicture.of(
                rounds,
                width,
                place -> random.nextInt(6) == 0
                        ? Wanted.NEVER_MIND
                        : Wanted.of(yarns.get(random.nextInt(yarns.size()))).withWeight(between(1, 3)));
    }

    private WantedPicture blots(int rounds, int width, List<String> yarns) {
        double across = random.nextDouble();
        double up = random.nextDouble();
        double slant = random.nextDouble() - 0.5;
        return WantedPicture.of(rounds, width, place -> {
            double wave = Math.sin(across * place.place() + slant * place.round()) + Math.sin(up * place.round());
            return Wanted.of(yarns.get((int) Math.floor((wave + 2) / 4.001 * yarns.size())));
        });
    }
}
