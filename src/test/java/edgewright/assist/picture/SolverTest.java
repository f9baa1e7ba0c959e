package edgewright.assist.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.assist.picture.PictureAnswer.Stitched;
import edgewright.chart.Place;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import java.util.ArrayList;
import java.util.List;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Wide pictures, in which runs tie the columns together, held to a constraint solver that knows nothing of the program. */
class SolverTest {
    /** So many misses weigh as one long stitch less. */
    private static final int MISS = 1_000;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void noSolverFindsACheaperPictureWithoutLooseRuns(int looseRun) {
        int proved = 0;
        int dearer = 0;
        for (int seed = 0; seed < 40; seed++) {
            Rules rules = Rules.DEFAULT.withLooseRun(looseRun).withStackLongStitches(seed % 2 == 0);
            PictureTask task = new RandomPictures(1_000L * looseRun + seed).task(3, 6, 6, 12, rules);
            Stitched answer = (Stitched) PictureStitcher.withoutLooseRuns(task, () -> false);
            assertThat(units(answer.cost())).as("seed %d", seed).isGreaterThanOrEqualTo(least(task, true));
            if (answer.least()) {
                proved++;
                assertThat(units(answer.cost())).as("seed %d", seed).isEqualTo(least(task, true));
            }
            dearer += units(answer.cost()) > units(((Stitched) PictureStitcher.nearest(task)).cost()) ? 1 : 0;
        }
        assertThat(proved).isEqualTo(40);
        assertThat(dearer).as("pictures in which the condition costs something").isGreaterThan(looseRun < 4 ? 5 : 0);
    }

    @ParameterizedTest
    @ValueSource(ints = {9})
    void noSolverFindsACheaperPictureWhateverTheRuns(int looseRun) {
        for (int seed = 0; seed < 30; seed++) {
            Rules rules = Rules.DEFAULT.withLooseRun(looseRun).withStackLongStitches(seed % 2 == 0);
            PictureTask task = new RandomPictures(seed).task(4, 8, 10, 14, rules);
            Stitched answer = (Stitched) PictureStitcher.nearest(task);
            assertThat(units(answer.cost())).as("seed %d", seed).isEqualTo(least(task, false));
        }
    }

    private static int units(Cost cost) {
        return (int) (cost.weight() * MISS + cost.longs());
    }

    private static int least(PictureTask task, boolean noLooseRuns) {
        Model model = new Model();
        int rounds = task.picture().rounds();
        int width = task.picture().width();
        BoolVar[][] isLong = model.boolVarMatrix(rounds, width);
        IntVar[] costs = new IntVar[width];
        for (int j = 0; j < width; j++) {
            model.arithm(isLong[0][j], "=", 0).post();
            for (int i = 1; i < rounds; i++) {
                model.arithm(isLong[i][j], "+", isLong[i - 1][j], "<=", 1).post();
                if (i >= 2 && !task.rules().stackLongStitches()) {
                    model.arithm(isLong[i][j], "+", isLong[i - 2][j], "<=", 1).post();
                }
            }
            costs[j] = cost(model, task, isLong, j);
        }
        if (noLooseRuns) {
            int most = task.rules().looseRun();
            for (BoolVar[] row : isLong) {
                for (int j = 0; j < width; j++) {
                    int count = Math.min(most + 1, width);
                    BoolVar[] window = new BoolVar[count];
                    for (int k = 0; k < count; k++) {
                        window[k] = row[(j + k) % width];
                    }
                    model.sum(window, "<", count).post();
                }
            }
        }
        IntVar sum = model.intVar(0, MISS * 3 * rounds * width + rounds * width, true);
        model.sum(costs, "=", sum).post();
        Solution best = model.getSolver().findOptimalSolution(sum, false);
        return best.getIntVal(sum);
    }

    /** What a column costs, as a variable of its own: so that the solver sees that no column costs less than nothing. */
    private static IntVar cost(Model model, PictureTask task, BoolVar[][] isLong, int j) {
        int rounds = isLong.length;
        int constant = 0;
        List<IntVar> counted = new ArrayList<>();
        List<Integer> prices = new ArrayList<>();
        for (int i = 0; i < rounds; i++) {
            Wanted wanted = task.picture().at(new Place(i + 1, Section.REPEAT, j + 1));
            int own = price(wanted, task.yarns().get(i));
            int above = i + 1 < rounds ? price(wanted, task.yarns().get(i + 1)) : own;
            constant += own;
            counted.add(isLong[i][j]);
            prices.add(1);
            if (above != own) {
                counted.add(isLong[i + 1][j]);
                prices.add(above - own);
            }
        }
        IntVar cost = model.intVar(0, MISS * 3 * rounds + rounds, true);
        counted.add(cost);
        prices.add(-1);
        model.scalar(
                        counted.toArray(IntVar[]::new),
                        prices.stream().mapToInt(Integer::intValue).toArray(),
                        "=",
                        -constant)
                .post();
        return cost;
    }

    private static int price(Wanted wanted, String shows) {
        return wanted.isNeverMind() || wanted.yarn().equals(shows) ? 0 : MISS * wanted.weight();
    }
}
