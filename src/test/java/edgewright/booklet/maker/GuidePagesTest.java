package edgewright.booklet.maker;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.OffThePage;
import edgewright.booklet.Published;
import edgewright.booklet.ReadBack;
import edgewright.booklet.ReadBack.Heard;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.parts.CountsPages;
import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Start;
import edgewright.fit.GuideSentences;
import edgewright.fit.Landmarks;
import edgewright.fit.PatternSize;
import edgewright.fit.Starts;
import edgewright.texts.English;
import edgewright.words.page.RoundParts;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The round guide, read back. */
class GuidePagesTest {
    @SuppressWarnings("UnusedVariable") // read by @FieldSource
    private static final List<String> SAMPLES =
            List.of("tide-steps", "mooring-rope", "sluice-gate", "first-try-unfinished");

    private static final BookletParts GUIDE = BookletParts.WITH_WORKBOOK;

    private static BookletOptions options(Chart chart) {
        return BookletOptions.of(chart, English.LANGUAGE).withDraft(true).withParts(GUIDE);
    }

    /** Blanks of any kind are one blank, as they are to whoever listens. */
    private static String plain(String text) {
        return text.replaceAll("[\\s\\p{Z}]+", " ").strip();
    }

    /** What is heard of each round in the guide, with the pages on which it stands. */
    private static List<List<Heard>> blocks(ReadBack read, Chart chart) {
        List<List<Heard>> blocks = new ArrayList<>();
        boolean inGuide = false;
        for (Heard heard : read.heard()) {
            boolean heading = heard.role().equals("H2");
            inGuide = heading ? heard.text().equals("Round guide") : inGuide;
            if (inGuide && heard.role().equals("H3")) {
                blocks.add(new ArrayList<>());
            }
            if (inGuide && !blocks.isEmpty()) {
                blocks.get(blocks.size() - 1).add(heard);
            }
        }
        assertThat(blocks).hasSameSizeAs(chart.rounds());
        return blocks;
    }

    private static List<String> texts(List<Heard> block, String role) {
        return block.stream()
                .filter(heard -> heard.role().equals(role))
                .map(heard -> plain(heard.text()))
                .toList();
    }

    private static List<String> rows(List<Heard> block) {
        return texts(block, "LBody").subList(0, texts(block, "Lbl").size());
    }

    @ParameterizedTest
    @FieldSource("SAMPLES")
    void aRoundStandsOnOnePageWithItsWordsPartByPart(String sample) throws IOException {
        Chart chart = Published.sample(sample);
        BookletOptions options = options(chart);
        try (ReadBack read = Published.read(chart, options)) {
            List<List<Heard>> blocks = blocks(read, chart);
            for (int round = 1; round <= blocks.size(); round++) {
                List<Heard> block = blocks.get(round - 1);
                assertThat(block.stream().map(Heard::page).distinct())
                        .as("pages of round " + round)
                        .hasSize(1);
                assertThat(texts(block, "H3")).containsExactly("Round " + round);
                RoundParts.OfAllSides parts = (RoundParts.OfAllSides) PatternWriter.parts(
                        chart,
                        round,
                        new WordingOptions(English.LANGUAGE, options.terms(), options.counting(), options.repeats()));
                List<String> worded = Stream.of(parts.fromCorner(), parts.repeat(), parts.toCorner())
                        .filter(part -> !part.isEmpty())
                        .map(GuidePagesTest::plain)
                        .toList();
                assertThat(rows(block)).containsSubsequence(worded);
                assertThat(rows(block).stream()).contains(plain(parts.corner()));
            }
            OffThePage.assertNothing(read.document());
        }
    }

    @ParameterizedTest
    @FieldSource("SAMPLES")
    void whatAMakerShouldSeeIsSaidOfTheSizeThatIsWorked(String sample) throws IOException {
        Chart chart = Published.sample(sample);
        PerSide<Integer> repeats = PerSide.pairs(5, 4);
        GuideSentences sentences = new GuideSentences(English.LANGUAGE);
        for (Optional<PerSide<Integer>> size : List.of(Optional.of(repeats), Optional.<PerSide<Integer>>empty())) {
            BookletOptions options = size.map(options(chart)::withRepeats).orElse(options(chart));
            try (ReadBack read = Published.read(chart, options)) {
                List<List<Heard>> blocks = blocks(read, chart);
                for (int round = 1; round <= blocks.size(); round++) {
                    List<String> said = size.isPresent()
                            ? sentences.landmarks(Landmarks.of(chart, round, repeats), repeats)
                            : sentences.landmarks(Landmarks.of(chart, round));
                    assertThat(rows(blocks.get(round - 1)).contains(plain(String.join(" ", said))))
                            .as("round " + round)
                            .isEqualTo(!said.isEmpty());
                    // A round without long stitches has no line to look for, not even an empty one.
                    assertThat(texts(blocks.get(round - 1), "Lbl").contains("Look for"))
                            .as("round " + round)
                            .isEqualTo(!said.isEmpty());
                }
            }
        }
    }

    @Test
    void theCountsOfEverySideStandInEveryBlockInTheWayOfCounting() throws IOException {
        Chart chart = Published.sample("tide-steps");
        PerSide<Integer> repeats = PerSide.of(5, 4, 3, 2);
        for (Counting counting : Counting.values()) {
            try (ReadBack read =
                    Published.read(chart, options(chart).withRepeats(repeats).withCounting(counting))) {
                List<List<Heard>> blocks = blocks(read, chart);
                for (int round = 1; round <= blocks.size(); round++) {
                    List<Heard> block = blocks.get(round - 1);
                    // S(r) = A + B + 2r + m * w, and 2 more if a corner chain is counted at each end.
                    int corners = chart.shape(Side.FIRST).a()
                            + chart.shape(Side.FIRST).b()
                            + 2 * round;
                    int more = corners + (counting == Counting.STITCHES ? 0 : 2);
                    assertThat(texts(block, "TH"))
                            .containsExactly(
                                    "Side",
                                    "top",
                                    "left",
                                    "bottom",
                                    "right",
                                    counting == Counting.STITCHES ? "Stitches only" : "With corner chains");
                    assertThat(texts(block, "TD"))
                            .isEqualTo(repeats.stream()
                                    .map(m -> Integer.toString(
                                            more + m * chart.shape(Side.FIRST).w()))
                                    .toList());
                }
            }
        }
    }

    @Test
    void aPatternForAnySizeCountsItsExamplesInEveryBlock() throws IOException {
        Chart chart = Published.sample("reed-bank");
        List<Integer> examples = CountsPages.repeats(chart);
        try (ReadBack read = Published.read(chart, options(chart).withSize(PatternSize.any()))) {
            List<Heard> block = blocks(read, chart).get(6);
            assertThat(texts(block, "TH").subList(1, 1 + examples.size()))
                    .isEqualTo(examples.stream().map(String::valueOf).toList());
            assertThat(texts(block, "TD"))
                    .isEqualTo(examples.stream()
                            .map(m -> Integer.toString(chart.shape(Side.FIRST).stitches(7, m)))
                            .toList());
        }
    }

    @Test
    void thereIsABoxForEachSideAndOneForTheCount() throws IOException {
        Chart chart = Published.sample("tide-steps");
        try (ReadBack read = Published.read(chart, options(chart))) {
            for (List<Heard> block : blocks(read, chart)) {
                List<String> said = texts(block, "LBody");
                assertThat(said.subList(said.size() - 5, said.size()))
                        .containsExactly("top", "left", "bottom", "right", "counted");
            }
        }
    }

    @Test
    void startHookAndBackLayerAreSaidIfTheDesignerSaysThem() throws IOException {
        Chart bare = Published.sample("tide-steps");
        Start start = Start.inTurn(Side.BOTTOM);
        Chart chart = bare.withMaking(bare.making()
                .withStart(Optional.of(start))
                .withHook(Optional.of(HookSize.ofMm(4.5)))
                .withBack(Optional.of(Back.DEFAULT)));
        try (ReadBack read = Published.read(chart, options(chart))) {
            List<List<Heard>> blocks = blocks(read, chart);
            for (int round = 1; round <= blocks.size(); round++) {
                List<Heard> block = blocks.get(round - 1);
                int stitch = Starts.of(chart, start).get(round - 1).number();
                assertThat(texts(block, "Lbl")).contains("Start");
                assertThat(rows(block).get(0))
                        .contains(round % 2 == 1 ? "bottom" : "top")
                        .contains("stitch " + stitch);
                assertThat(texts(block, "P")).contains("hook 4.5 mm");
                assertThat(rows(block).contains("Round " + round / 2 + " of the back layer has the same counts."))
                        .isEqualTo(round % 2 == 0);
            }
        }
        try (ReadBack read = Published.read(bare.withMaking(PatternDetails.NONE), options(bare))) {
            for (List<Heard> block : blocks(read, bare)) {
                assertThat(texts(block, "Lbl")).doesNotContain("Start", "Back layer");
            }
        }
    }

    @Test
    void aPatternWithoutTheGuideHasNone() throws IOException {
        Chart chart = Published.sample("tide-steps");
        try (ReadBack read = Published.read(chart, options(chart).withParts(BookletParts.USUAL))) {
            assertThat(read.texts("H2")).doesNotContain("Round guide");
        }
    }
}
