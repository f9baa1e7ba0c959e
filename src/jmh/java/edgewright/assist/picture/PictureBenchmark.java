package edgewright.assist.picture;

import edgewright.chart.Rules;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long the stitches of a picture of 200 rounds of 200 stitches take: noise, in which no two columns are alike, and a drawing.
 * While somebody draws at the desk this must lie below 16 ms, one frame of a screen.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PictureBenchmark {
    private static final int SIZE = 200;

    @Param({"noise", "drawing", "solid"})
    private String kind;

    @Param({"false", "true"})
    private boolean stacking;

    private PictureTask task;

    /** Makes the picture, the same every time. */
    @Setup
    public void draw() {
        Random random = new Random(14);
        WantedPicture picture = WantedPicture.of(SIZE, SIZE, place -> {
            boolean dark = switch (kind) {
                case "noise" -> random.nextBoolean();
                case "drawing" -> Math.sin(place.place() / 7.0) * 40 + 100 > place.round();
                default -> true;
            };
            return Wanted.of(dark ? "A" : "B");
        });
        task = new PictureTask(
                picture, YarnOrder.inTurn(List.of("A", "B"), SIZE), Rules.DEFAULT.withStackLongStitches(stacking));
    }

    /** All of it anew. */
    @Benchmark
    public PictureAnswer nearest() {
        return PictureStitcher.nearest(task);
    }
}
