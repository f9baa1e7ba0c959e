package edgewright.proof;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Edits;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.hands.HouseRules;
import edgewright.hands.Maker;
import edgewright.hands.WorkOutcome;
import edgewright.texts.English;
import edgewright.words.page.PlainText;
import edgewright.words.read.PatternReader;
import edgewright.words.read.ReadingResult;
import edgewright.words.tree.Instructions;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What it takes to work a border of 60 rounds on a piece with about 400 stitches a side, some 110,000 stitches, beside only
 * reading its words. Read the ratio of the two, not the times.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ProofBenchmark {
    private Chart chart;
    private PerSide<Integer> repeats;
    private String text;
    private Instructions pattern;
    private PerSide<Integer> base;

    /** A chart with a long stitch in every third column, none of them over another. */
    @Setup
    public void write() {
        SideShape shape = new SideShape(6, 12, 7);
        List<Yarn> yarns = List.of(
                new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));
        chart = Chart.blank("Reed Bank", shape, 60, yarns);
        List<Place> longs = new ArrayList<>();
        for (int r = 3; r <= 60; r++) {
            for (int i = 1 + r % 3; i <= shape.w(); i += 3) {
                longs.add(new Place(r, Section.REPEAT, i));
            }
        }
        chart = Edits.setStitches(chart, longs, Stitch.LONG);
        int times = (400 - shape.fewestStitches(0)) / shape.w();
        repeats = PerSide.all(times);
        base = PerSide.all(shape.stitches(0, times));
        text = PlainText.of(PatternWriter.write(chart, WordingOptions.of(chart, English.LANGUAGE)));
        pattern = ((ReadingResult.Understood) PatternReader.read(text, English.LANGUAGE)).pattern();
        if (!new Prover(chart, English.LANGUAGE).prove(text, repeats).agrees()) {
            throw new IllegalStateException("the words do not make the chart");
        }
    }

    @Benchmark
    public String writeTheWords() {
        return PlainText.of(PatternWriter.write(chart, WordingOptions.of(chart, English.LANGUAGE)));
    }

    /** The same with which piece says which stitches: no more than 1.2 times as long. */
    @Benchmark
    public String writeTheWordsAndWhatTheySay() {
        return PlainText.of(PatternWriter.said(chart, WordingOptions.of(chart, English.LANGUAGE))
                .text());
    }

    @Benchmark
    public ReadingResult readTheWords() {
        return PatternReader.read(text, English.LANGUAGE);
    }

    @Benchmark
    public WorkOutcome workTheTree() {
        return new Maker(HouseRules.ALL_ALLOWED).work(pattern, base);
    }

    @Benchmark
    public ProofResult readWorkAndCompare() {
        return new Prover(chart, English.LANGUAGE).prove(text, repeats);
    }
}
