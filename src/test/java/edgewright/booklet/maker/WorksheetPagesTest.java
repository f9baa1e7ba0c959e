package edgewright.booklet.maker;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.OffThePage;
import edgewright.booklet.Published;
import edgewright.booklet.ReadBack;
import edgewright.booklet.ReadBack.Heard;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.HookSize;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Swatch;
import edgewright.fit.ChangeRounds;
import edgewright.texts.English;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The worksheet, read back. */
class WorksheetPagesTest {
    @SuppressWarnings("UnusedVariable") // read by @FieldSource
    private static final List<String> SAMPLES =
            List.of("tide-steps", "mooring-rope", "sluice-gate", "first-try-unfinished");

    private static final BookletParts WORKSHEET = BookletParts.WITH_WORKBOOK;
    private static final PerSide<Integer> SIZE = PerSide.pairs(5, 4);

    private static BookletOptions options(Chart chart) {
        return BookletOptions.of(chart, English.LANGUAGE).withDraft(true).withParts(WORKSHEET);
    }

    /** What is heard of the worksheet. */
    private static List<Heard> sheet(ReadBack read) {
        List<Heard> sheet = new ArrayList<>();
        for (Heard heard : read.heard()) {
            if (!sheet.isEmpty() || (heard.role().equals("H2") && heard.text().equals("Worksheet"))) {
                sheet.add(heard);
            }
        }
        return sheet;
    }

    private static List<String> texts(List<Heard> sheet, String role) {
        return sheet.stream()
                .filter(heard -> heard.role().equals(role))
                .map(heard -> heard.text().strip())
                .toList();
    }

    /** What is heard under a heading, to the next one. */
    private static List<Heard> under(List<Heard> sheet, String heading) {
        int from = IntStream.range(0, sheet.size())
                .filter(i -> sheet.get(i).text().equals(heading))
                .findFirst()
                .orElseThrow();
        int to = IntStream.range(from + 1, sheet.size())
                .filter(i -> sheet.get(i).role().matches("H[23]"))
                .findFirst()
                .orElse(sheet.size());
        return sheet.subList(from + 1, to);
    }

    private static Chart made(Chart chart) {
        return chart.withMaking(chart.making()
                .withHook(Optional.of(HookSize.ofMm(5)))
                .withBack(Optional.of(Back.DEFAULT))
                .withSwatch(Optional.of(new Swatch(16, 20))));
    }

    @ParameterizedTest
    @FieldSource("SAMPLES")
    void targetsOfAChosenSizeStandInTheCountingAndTheCheckingRound(String sample) throws IOException {
        Chart chart = Published.sample(sample);
        ChangeRounds rounds = ChangeRounds.of(chart);
        int counting = rounds.counting().orElse(0);
        int checking = rounds.checking().orElse(rounds.changing());
        for (Counting way : Counting.values()) {
            try (ReadBack read =
                    Published.read(chart, options(chart).withRepeats(SIZE).withCounting(way))) {
                List<Heard> sheet = sheet(read);
                List<String> lines = texts(sheet, "P");
                SideShape shape = chart.shape(Side.FIRST);
                int top = way.shown(shape.stitches(counting, 5));
                int left = way.shown(shape.stitches(counting, 4));
                int topAgain = way.shown(shape.stitches(checking, 5));
                assertThat(lines)
                        .contains("top counted − target " + top + " = change lose add")
                        .contains("left counted − target " + left + " = change lose add")
                        .contains("top counted target " + topAgain + " comes out");
                OffThePage.assertNothing(read.document());
            }
        }
    }

    @ParameterizedTest
    @FieldSource("SAMPLES")
    void theLinesToWriteOnStandOnOnePage(String sample) throws IOException {
        Chart chart = Published.sample(sample);
        for (Paper paper : Paper.values()) {
            try (ReadBack read = Published.read(chart, options(chart).withPaper(paper))) {
                List<Heard> lines = sheet(read).stream()
                        .filter(heard -> heard.text().matches("(top|left|bottom|right) counted.*"))
                        .toList();
                assertThat(lines).hasSize(12);
                assertThat(lines.stream().map(Heard::page).distinct()).hasSize(1);
            }
        }
    }

    @ParameterizedTest
    @FieldSource("SAMPLES")
    void everyCountInTheTableComesOutEven(String sample) throws IOException {
        Chart chart = Published.sample(sample);
        int round = ChangeRounds.of(chart).counting().orElse(0);
        String named = round == 0 ? "the base round" : "round " + round;
        for (boolean sized : List.of(true, false)) {
            BookletOptions options = sized ? options(chart).withRepeats(PerSide.pairs(23, 17)) : options(chart);
            try (ReadBack read = Published.read(chart, options)) {
                List<Integer> counts = texts(under(sheet(read), "Counts that come out even in " + named), "TD").stream()
                        .map(Integer::valueOf)
                        .toList();
                assertThat(counts)
                        .hasSizeGreaterThanOrEqualTo(12)
                        .allMatch(count -> chart.shape(Side.FIRST).closes(round, count));
                if (sized) {
                    assertThat(counts)
                            .contains(
                                    chart.shape(Side.FIRST).stitches(round, 23),
                                    chart.shape(Side.FIRST).stitches(round, 17));
                }
            }
        }
    }

    @Test
    void aSwatchGivesCentimetresAndARatioForEachNumberOfRows() throws IOException {
        Chart chart = made(Published.sample("tide-steps"));
        try (ReadBack read = Published.read(chart, options(chart).withRepeats(SIZE))) {
            List<Heard> sheet = sheet(read);
            SideShape shape = chart.shape(Side.FIRST);
            int rounds = chart.rounds().size();
            List<String> row = texts(under(sheet, "Counts and measures"), "TD");
            // 16 stitches in 10 cm are 6.25 mm each, 20 rounds in 10 cm are 5 mm each.
            String piece = String.format(Locale.ROOT, "%.1f", shape.stitches(0, 4) * 0.625);
            String whole = String.format(Locale.ROOT, "%.1f", shape.stitches(0, 4) * 0.625 + rounds);
            assertThat(row).containsSequence(piece, whole);
            assertThat(texts(under(sheet, "Finished size"), "P").get(0))
                    .startsWith("The swatch has 16 stitches and 20 rounds in 10 cm (4 in). The border is "
                            + String.format(Locale.ROOT, "%.1f", rounds * 0.5) + " cm (3\u00bc in) wide.");
            // 16 stitches to 12 rows are 4 in 3, to 20 rows 4 in 5.
            assertThat(texts(under(sheet, "Picking up the base round"), "TD")).contains("4 in 3", "1 in 1", "4 in 5");
        }
    }

    @Test
    void theBackLayerStandsBesideTheFrontRoundsThatItMatches() throws IOException {
        Chart chart = made(Published.sample("tide-steps"));
        SideShape shape = chart.shape(Side.FIRST);
        try (ReadBack read = Published.read(chart, options(chart).withRepeats(SIZE))) {
            List<Heard> back = under(sheet(read), "Back layer");
            assertThat(texts(back, "P")).contains("Hook for the back layer: 4.5 mm.");
            List<String> expected = new ArrayList<>();
            int front = chart.rounds().size();
            for (int round = 1; round <= (front + 1) / 2; round++) {
                int matched = Math.min(front, 2 * round);
                expected.add(Integer.toString(matched));
                SIZE.stream().forEach(m -> expected.add(Integer.toString(shape.stitches(matched, m))));
            }
            assertThat(texts(back, "TD")).isEqualTo(expected);
        }
        Chart single = Published.sample("reed-bank");
        try (ReadBack read =
                Published.read(single.withMaking(single.making().withBack(Optional.empty())), options(single))) {
            assertThat(texts(sheet(read), "H3")).doesNotContain("Back layer");
        }
    }

    @Test
    void theExampleOfADivisionIsRightAndLeavesTheCornersAlone() throws IOException {
        Chart chart = Published.sample("reed-bank");
        try (ReadBack read = Published.read(chart, options(chart))) {
            String example = texts(sheet(read), "P").stream()
                    .filter(text -> text.startsWith("For example"))
                    .findFirst()
                    .orElseThrow();
            List<Integer> numbers = Pattern.compile("\\d+")
                    .matcher(example)
                    .results()
                    .map(found -> Integer.valueOf(found.group()))
                    .toList();
            int counted = numbers.get(0);
            int changes = numbers.get(2);
            assertThat(numbers.get(1)).isEqualTo(counted + changes);
            assertThat(numbers.get(3)).isEqualTo(counted);
            assertThat(numbers.get(4)).isEqualTo(changes + 1);
            int every = counted / (changes + 1);
            assertThat(numbers.get(5)).isEqualTo(every);
            assertThat(numbers.subList(6, numbers.size()))
                    .isEqualTo(IntStream.rangeClosed(1, changes)
                            .mapToObj(i -> i * every)
                            .toList())
                    .allMatch(place -> place > 2 && place < counted - 1);
        }
    }

    @Test
    void inLargePrintNothingRunsOffThePageAndEveryStepIsThere() throws IOException {
        Chart chart = made(Published.sample("tide-steps"));
        BookletOptions options =
                options(chart).withParts(BookletParts.WITH_WORKBOOK).withEdition(Edition.LARGE_PRINT);
        try (ReadBack read = Published.read(chart, options)) {
            OffThePage.assertNothing(read.document());
            List<Heard> sheet = sheet(read);
            assertThat(texts(sheet, "P"))
                    .contains("top counted − target = change lose add", "right counted target comes out");
            assertThat(texts(under(sheet, "Counts that come out even in round 1"), "TD"))
                    .contains("5", "13", "21", "125");
        }
    }

    @Test
    void aLeftHandedMakerComesToTheRightSideBeforeTheBottom() throws IOException {
        Chart chart = made(Published.sample("tide-steps"));
        BookletOptions options =
                options(chart).withRepeats(PerSide.of(5, 4, 3, 2)).withHand(HookHand.LEFT);
        try (ReadBack read = Published.read(chart, options)) {
            List<Heard> sheet = sheet(read);
            assertThat(texts(under(sheet, "3. Count again in round 3"), "P").stream()
                            .filter(line -> line.contains("counted"))
                            .map(line -> line.substring(0, line.indexOf(' '))))
                    .containsExactly("top", "right", "bottom", "left");
            assertThat(texts(under(sheet, "Back layer"), "TD").subList(0, 5))
                    .containsExactly(
                            "2",
                            Integer.toString(chart.shape(Side.FIRST).stitches(2, 5)),
                            Integer.toString(chart.shape(Side.FIRST).stitches(2, 2)),
                            Integer.toString(chart.shape(Side.FIRST).stitches(2, 3)),
                            Integer.toString(chart.shape(Side.FIRST).stitches(2, 4)));
        }
    }

    @Test
    void aPatternWithoutTheWorksheetHasNone() throws IOException {
        Chart chart = Published.sample("tide-steps");
        try (ReadBack read = Published.read(chart, options(chart).withParts(BookletParts.USUAL))) {
            assertThat(read.texts("H2")).doesNotContain("Worksheet");
        }
    }
}
