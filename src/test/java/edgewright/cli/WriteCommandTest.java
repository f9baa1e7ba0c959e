package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.WordsFormat;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.Hand;
import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.cli.CommandLineHelper.Ended;
import edgewright.file.BrokenCharts;
import edgewright.file.ChartText;
import edgewright.file.ReadResult;
import edgewright.words.Options;
import edgewright.words.PatternWriter;
import edgewright.words.PlainText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WriteCommandTest {
    private static final Chart POSTS = ((ReadResult.Read) ChartText.fromJson(BrokenCharts.sound())).chart();

    @TempDir
    private Path folder;

    @Test
    void thePatternIsWrittenInTheTermsOfTheChart() throws IOException {
        assertThat(run("write", Charts.sound(folder))).isEqualTo(new Ended(0, words(Options.of(POSTS)), ""));
    }

    @Test
    void otherTermsCanBeAskedForInAnyCase() throws IOException {
        Path chart = Charts.sound(folder);
        String us = words(Options.of(POSTS).withTerms(Terms.US));
        assertThat(us).isNotEqualTo(words(Options.of(POSTS)));
        assertThat(run("write", "--terms", "US", chart).out()).isEqualTo(us);
        assertThat(run("write", "--terms=us", chart).out()).isEqualTo(us);
    }

    @Test
    void sidesAndRepeatsSayTheSameSize() throws IOException {
        // A + B = 3 and w = 4: sides of 11 and 15 stitches have 2 and 3 repeats.
        Path chart = Charts.sound(folder);
        Options sized = new Options(Terms.UK, Counting.WITH_CHAINS, Optional.of(new PerSide(2, 3, 2, 3)), false);
        assertThat(run("write", "--sides", "11,15,11,15", "--counting", "with-chains", chart)
                        .out())
                .isEqualTo(words(sized));
        assertThat(run("write", "--repeats", "2,3", "--counting", "with-chains", chart)
                        .out())
                .isEqualTo(words(sized));
    }

    @Test
    void aPatternForTheLeftHandIsAskedForAsSuch() throws IOException {
        String left = words(Options.of(POSTS).withHand(Hand.LEFT));
        assertThat(left).contains("clockwise: top, right, bottom, left");
        assertThat(run("write", "--hand", "left", Charts.sound(folder)).out()).isEqualTo(left);
        assertThat(run("work", "--hand", "left", Charts.sound(folder), "--repeats", "1,2,3,4")
                        .status())
                .isZero();
    }

    @Test
    void ofManyFindingsTheFirstTenAreToldWhereTheyStandInTheWay() throws IOException {
        Ended ended = run("write", Path.of("sample-charts", "first-try-unfinished.border.json"));
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err().lines().filter(line -> line.matches("  (error|warning)  .*")))
                .hasSize(10);
        assertThat(ended.err()).endsWith("  and 10 more; the command check tells them" + System.lineSeparator());
    }

    @Test
    void aSizeIsStatedInOneWayOnly() throws IOException {
        Ended ended = run("write", "--repeats", "2,3", "--sides", "11,15", Charts.sound(folder));
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.err().lines())
                .singleElement()
                .asString()
                .contains("--sides")
                .contains("--repeats");
    }

    @Test
    void aChartThatCannotBeWorkedIsNotWritten() throws IOException {
        Path chart = Charts.unworkable(folder);
        Ended ended = run("write", chart);
        assertThat(ended).isEqualTo(new Ended(1, "", run("check", chart).out()));
    }

    @Test
    void aDraftIsWrittenAndSaysSo() throws IOException {
        Path chart = Charts.unworkable(folder);
        Ended ended = run("write", "--draft", chart);
        assertThat(ended.status()).isZero();
        assertThat(ended.out()).contains("DRAFT").contains("Round 2");
        assertThat(ended.err().lines()).singleElement().asString().contains("2 errors");
    }

    @Test
    void aDraftOfARaggedChartIsWritten() throws IOException {
        Ended ended = run("write", "--draft", Charts.ragged(folder));
        assertThat(ended.status()).isZero();
        assertThat(ended.out()).contains("DRAFT").contains("Round 2");
    }

    @Test
    void aChartThatCanBeWorkedIsNoDraft() throws IOException {
        assertThat(run("write", "--draft", Charts.sound(folder)).out()).isEqualTo(words(Options.of(POSTS)));
    }

    @Test
    void sidesThatDoNotCloseAreNotWritten() throws IOException {
        Path chart = Charts.sound(folder);
        Ended ended = run("write", "--sides", "12,15", chart);
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).contains("unclosed-side");
    }

    @Test
    void aBrokenFileIsOneLine() {
        Path none = folder.resolve("none.border.json");
        assertThat(run("write", none))
                .isEqualTo(new Ended(2, "", none + ": there is no such file; expected one to read\n"));
    }

    @Test
    void theWordsGoToAFileInTheFormatOfItsEnding() throws IOException {
        Path chart = Charts.sound(folder);
        for (WordsFormat format : WordsFormat.values()) {
            Path file = folder.resolve("posts" + format.ending());
            assertThat(run("write", chart, "--to", file)).isEqualTo(new Ended(0, "wrote " + file + "\n", ""));
            assertThat(file).content().isEqualTo(format.write(POSTS, Options.of(POSTS)));
            String name = format.name().toLowerCase(Locale.ROOT);
            assertThat(run("write", chart, "--format", name))
                    .isEqualTo(new Ended(0, format.write(POSTS, Options.of(POSTS)), ""));
        }
    }

    @Test
    void aFileOfAnotherFormatThanWasAskedForIsNotWritten() throws IOException {
        Path file = folder.resolve("posts.txt");
        Ended ended = run("write", Charts.sound(folder), "--format", "html", "--to", file);
        assertThat(ended).isEqualTo(new Ended(2, "", file + ": expected a file whose name ends in .html\n"));
        assertThat(file).doesNotExist();
    }

    @Test
    void bothTermsStandUnderOneTitleInEveryFormat() throws IOException {
        for (WordsFormat format : WordsFormat.values()) {
            String name = format.name().toLowerCase(Locale.ROOT);
            assertThat(run("write", Charts.sound(folder), "--format", name, "--terms", "both"))
                    .isEqualTo(new Ended(0, format.write(POSTS, Options.of(POSTS), List.of(Terms.UK, Terms.US)), ""));
        }
    }

    private static String words(Options options) {
        return PlainText.of(PatternWriter.write(POSTS, options));
    }
}
