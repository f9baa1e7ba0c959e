package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.WordsFormat;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.cli.CommandLineHelper.Ended;
import edgewright.file.BrokenCharts;
import edgewright.file.ChartText;
import edgewright.file.ReadResult;
import edgewright.texts.English;
import edgewright.words.page.PlainText;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.RoundsLayout;
import edgewright.words.write.WordingOptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WriteCommandTest {
    private static final Chart POSTS = ((ReadResult.Read) ChartText.fromJson(BrokenCharts.sound())).chart();

    private static final String REED_BANK = "sample-charts/reed-bank.border.json";

    @TempDir
    private Path folder;

    @Test
    void thePatternIsWrittenInTheTermsOfTheChart() throws IOException {
        assertThat(run("write", Charts.sound(folder)))
                .isEqualTo(new Ended(0, words(WordingOptions.of(POSTS, English.LANGUAGE)), ""));
    }

    @Test
    void otherTermsCanBeAskedForInAnyCase() throws IOException {
        Path chart = Charts.sound(folder);
        String us = words(WordingOptions.of(POSTS, English.LANGUAGE).withTerms(Terms.US));
        assertThat(us).isNotEqualTo(words(WordingOptions.of(POSTS, English.LANGUAGE)));
        assertThat(run("write", "--terms", "US", chart).out()).isEqualTo(us);
        assertThat(run("write", "--terms=us", chart).out()).isEqualTo(us);
    }

    @Test
    void sidesAndRepeatsSayTheSameSize() throws IOException {
        // A + B = 5 and w = 5: sides of 15 and 20 stitches have 2 and 3 repeats.
        Path chart = Charts.sound(folder);
        WordingOptions sized = new WordingOptions(
                English.LANGUAGE, Terms.UK, Counting.WITH_CHAINS, Optional.of(PerSide.pairs(2, 3)), false);
        assertThat(run("write", "--sides", "15,20,15,20", "--counting", "with-chains", chart)
                        .out())
                .isEqualTo(words(sized));
        assertThat(run("write", "--repeats", "2,3", "--counting", "with-chains", chart)
                        .out())
                .isEqualTo(words(sized));
    }

    @Test
    void aTableOfRoundsIsAskedForAndWorkedBackFromTextAndMarkdown() throws IOException {
        Path chart = Charts.sound(folder);
        String table = words(WordingOptions.of(POSTS, English.LANGUAGE).withLayout(RoundsLayout.TABLE));
        assertThat(table).containsPattern("(?m)^Round \\| Yarn +\\| From the corner +\\| Repeat");
        assertThat(run("write", "--layout", "table", chart).out()).isEqualTo(table);
        for (String name : List.of("table.txt", "table.md")) {
            Path words = folder.resolve(name);
            assertThat(run("write", "--layout", "table", "--to", words, chart).status())
                    .isZero();
            assertThat(run("work", "--from", words, "--repeats", "1,2,3,4", chart)
                            .status())
                    .as(Files.readString(words))
                    .isZero();
        }
        assertThat(run("write", "--layout", "table", "--format", "html", chart).out())
                .contains("<th scope=\"col\">From the corner</th>");
    }

    @Test
    void eachRoundByItselfIsAskedForAsSuch() {
        Path chart = Path.of("sample-charts/mooring-rope.border.json");
        assertThat(run("write", chart).out())
                .contains("\nRounds 1 to 3 (Tar, Hemp, Tar): ", "\nRound 10 (Hemp): as round 4. ");
        assertThat(run("write", "--each-round", chart).out())
                .contains("\nRound 1 (Tar): dc blo in every st", "\nRound 3 (Tar): ")
                .doesNotContain("Rounds 1", "as round");
    }

    @Test
    void aPatternForTheLeftHandIsAskedForAsSuch() throws IOException {
        String left = words(WordingOptions.of(POSTS, English.LANGUAGE).withHand(HookHand.LEFT));
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
        assertThat(ended.err()).endsWith("  and 10 more; the command check lists them" + System.lineSeparator());
    }

    @Test
    void aSizeIsStatedInOneWayOnly() throws IOException {
        Ended ended = run("write", "--repeats", "2,3", "--sides", "15,20", Charts.sound(folder));
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
        assertThat(run("write", "--draft", Charts.sound(folder)).out())
                .isEqualTo(words(WordingOptions.of(POSTS, English.LANGUAGE)));
    }

    @Test
    void sidesThatDoNotCloseAreNotWritten() throws IOException {
        Path chart = Charts.sound(folder);
        Ended ended = run("write", "--sides", "16,20", chart);
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
            assertThat(file)
                    .content()
                    .isEqualTo(format.write(POSTS, WordingOptions.of(POSTS, English.LANGUAGE), English.LANGUAGE));
            String name = format.name().toLowerCase(Locale.ROOT);
            assertThat(run("write", chart, "--format", name))
                    .isEqualTo(new Ended(
                            0, format.write(POSTS, WordingOptions.of(POSTS, English.LANGUAGE), English.LANGUAGE), ""));
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
                    .isEqualTo(new Ended(
                            0,
                            format.write(
                                    POSTS,
                                    WordingOptions.of(POSTS, English.LANGUAGE),
                                    List.of(Terms.UK, Terms.US),
                                    English.LANGUAGE),
                            ""));
        }
    }

    @Test
    void thePartsThatWereChosenStandUnderTheTitleInTheirOrderAndNoOther() throws IOException {
        String chart = Charts.sound(folder).toString();
        assertThat(headings(run("write", chart, "--parts", "words,facts", "--leave-out", "counts")))
                .containsExactly(
                        "Rounds",
                        "Terms",
                        "What you need",
                        "Notes",
                        "Abbreviations",
                        "Set-up",
                        "Joining and closing a round");
        assertThat(headings(run("write", chart, "--parts", "finishing"))).containsExactly("Finishing");
        assertThat(run("write", chart, "--parts", "guide").err())
                .isEqualTo(
                        "--parts: words have no part guide, expected parts of: cover, introduction, facts, chart, words, "
                                + "techniques, counts, finishing, sections\n");
        assertThat(run("write", chart, "--parts", "words", "--leave-out", "words"))
                .isEqualTo(new Ended(2, "", "--leave-out: no part is left, expected at least one\n"));
    }

    private static List<String> headings(Ended ended) {
        List<String> lines = ended.out().lines().toList();
        return IntStream.range(1, lines.size())
                .filter(i -> lines.get(i).matches("-+"))
                .mapToObj(i -> lines.get(i - 1))
                .toList();
    }

    private static String words(WordingOptions options) {
        return PlainText.of(PatternWriter.write(POSTS, options));
    }

    @Test
    void aPatternForOnePieceHasItsCountsAndTheRoundThatPutsThemRight() {
        Ended ended = run("write", REED_BANK, "--at-round", 2, "--counts", "60,41,58,36");
        assertThat(ended.status()).isZero();
        assertThat(ended.err()).isEmpty();
        // Read by a person. A multiple of 6 less 3 comes out even in round 2: 57 = 60 - 3, 39 = 36 + 3.
        assertThat(ended.out()).contains("""
                        For one piece only: the one with these sides in round 2. Top 60 sts, left 41 sts, bottom 58 sts, \
                        right
                          36 sts; corner chains not counted. The counts are put right in round 3.
                        """).contains("""
                        Round 3 (Peat): This round puts the counts right. Begin at the top edge.
                          Along the top edge, from the corner: 15 dc blo, dc2tog blo, (13 dc blo, dc2tog blo) twice, 15 dc blo;
                            corner.
                          Along the left-hand edge, from the corner: 14 dc blo, dc2tog blo, 12 dc blo, dc2tog blo, 13 dc blo;
                            corner.
                          Along the bottom edge, from the corner: 29 dc blo, dc2tog blo, 29 dc blo; corner.
                          Along the right-hand edge, from the corner: 9 dc blo, 2 dc blo in the next st, (8 dc blo, 2 dc blo in
                            the next st) twice, 10 dc blo; corner.
                          Top and bottom 59 sts, left and right 41 sts.
                        """);
    }

    @Test
    void whatIsWantedOfAPieceCanBeSaidInFourWays() {
        // 57 and 39 in round 2 are 53 and 35 in the base round, and 8 and 5 repeats.
        String asRepeats = piece("--repeats", "8,5");
        assertThat(asRepeats).isEqualTo(piece("--sides", "53,35")).isEqualTo(piece("--target", "57,39"));
        // Untied, the top of 60 goes up to 63 alone.
        assertThat(piece("--untie", "both"))
                .contains("Round 3 (Peat): ")
                .contains("Top 65 sts, left 41 sts, bottom 59 sts");
        assertThat(piece("--repeats", "9,5")).isNotEqualTo(asRepeats);
    }

    private static String piece(String option, String value) {
        Ended ended = run("write", REED_BANK, "--at-round", 2, "--counts", "60,41,58,40", option, value);
        assertThat(ended.status()).isZero();
        return ended.out();
    }

    @Test
    void aPieceCountedWithItsChainsIsTheSamePiece() {
        String chains = run("write", REED_BANK, "--at-round", 2, "--counts", "62,43", "--counting", "with-chains")
                .out();
        assertThat(chains)
                .contains(
                        "Top and bottom 62 sts, left and right 43 sts;\n  counted with one corner chain at each end.");
        assertThat(changes(chains))
                .hasSizeGreaterThan(4)
                .isEqualTo(changes(run("write", REED_BANK, "--at-round", 2, "--counts", "60,41")
                        .out()));
    }

    /** The words for each side. */
    private static List<String> changes(String words) {
        int begin = words.indexOf("Along the top");
        return words.substring(begin, words.indexOf("\n\n", begin))
                .lines()
                .takeWhile(line -> !line.contains(" sts"))
                .toList();
    }

    @Test
    void aPieceThatFitsGetsThePatternOfItsSize() {
        assertThat(run("write", REED_BANK, "--at-round", 2, "--counts", "57,39"))
                .isEqualTo(run("write", REED_BANK, "--repeats", "8,5"));
    }

    @Test
    void aPieceForWhichThereAreNoWordsIsRefusedWithTheReason() {
        Ended small = run("write", REED_BANK, "--at-round", 2, "--counts", "6,41,58,36");
        assertThat(small.status()).isEqualTo(1);
        assertThat(small.out()).isEmpty();
        assertThat(small.err()).isEqualTo("""
                The piece is too small for this border. In round 2 a side must have at least 9, stitches only.
                Top: 6, which is 3 too few.
                Pick up more stitches in the base round, or choose a border with shorter corners.
                """);
        Ended late = run("write", REED_BANK, "--at-round", 6, "--counts", "60,41,58,36");
        assertThat(late.status()).isEqualTo(1);
        assertThat(late.err()).contains("""
                It can be made to fit, but no pattern in words for this piece could be worked.
                Rounds 5, 6 and 7 already have a pattern, and on counts that are not right yet they do not come out even.
                """);
    }

    @Test
    void whatIsNotGoodAboutAPlanIsSaidBesideTheWords() {
        // 9 to lose of 26 are more than one in six.
        Ended ended = run("write", REED_BANK, "--at-round", 2, "--counts", "60,26", "--target", "57,21");
        assertThat(ended.status()).isZero();
        assertThat(ended.err()).startsWith("Left: 5 changes in 26 stitches are more than one in six.");
    }

    @Test
    void aPieceIsStatedWhole() {
        assertThat(run("write", REED_BANK, "--at-round", 2)).isEqualTo(new Ended(2, "", """
                found no --counts N,N,N,N; expected one; 'edgewright write --help' shows how
                """));
        assertThat(run("write", REED_BANK, "--untie", "both")).isEqualTo(new Ended(2, "", """
                --untie or --target: found without --at-round and --counts, expected these too: what was counted on the piece; \
                'edgewright write --help' shows how
                """));
        assertThat(run("write", REED_BANK, "--at-round", 99, "--counts", "60,41")
                        .status())
                .isEqualTo(2);
        assertThat(run(
                                "write",
                                REED_BANK,
                                "--at-round",
                                2,
                                "--counts",
                                "60,41",
                                "--repeats",
                                "8,5",
                                "--target",
                                "57,39")
                        .status())
                .isEqualTo(2);
    }
}
