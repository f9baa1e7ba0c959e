package edgewright.booklet.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.BookletStandardsTest;
import edgewright.booklet.EditionsTest;
import edgewright.booklet.Published;
import edgewright.booklet.ReadBack;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.ChartKind;
import edgewright.booklet.choice.ChartPaper;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.texts.English;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A chart that is too long to be heard in one is told sheet by sheet. */
class ChartInWordsTest {
    private static final Chart LONG = Chart.blank(
            "Tide Steps",
            new SideShape(2, 5, 1),
            160,
            List.of(new Yarn("A", "Peat", new Colour(0x2b2a33)), new Yarn("B", "Chalk", new Colour(0xf2ead8))));

    @ParameterizedTest
    @EnumSource(
            value = ChartPaper.class,
            names = {"SAME", "POSTER"})
    void eachRoundIsHeardOnceWithASheetThatShowsIt(ChartPaper paper) throws Exception {
        BookletOptions options = EditionsTest.on(paper, BookletOptions.of(LONG, English.LANGUAGE))
                .withParts(BookletParts.USUAL);
        try (ReadBack read = Published.read(LONG, options)) {
            String heard = String.join(
                    " ",
                    read.heard().stream()
                            .filter(each -> each.role().equals("Figure"))
                            .map(ReadBack.Heard::text)
                            .toList());
            for (int round = 1; round <= LONG.rounds().size(); round++) {
                String words = PatternWriter.round(LONG, round, WordingOptions.of(LONG, English.LANGUAGE))
                        .lines()
                        .get(0);
                assertThat(heard.split(Pattern.quote(words.replace('\u00a0', ' ')), -1))
                        .as(words)
                        .hasSize(2);
            }
        }
        BookletStandardsTest.assertKeeps(BookletStandardsTest.STANDARDS, Published.bytes(LONG, options));
    }

    @Test
    void aSheetSaysWhichOfItsRoundsWereToldBeforeAndWhichStandElsewhere() {
        ChartInWords words = new ChartInWords(LONG, BookletOptions.of(LONG, English.LANGUAGE), ChartKind.CORNER);
        String first = words.ofSheet(1, 3, List.of(4, 5, 6, 9));
        assertThat(first)
                .startsWith(
                        "Sheet 1 of 3 of the chart of one corner of Tide Steps. It shows stitches of rounds 4 to 6, 9. "
                                + "Round 4 (Chalk):")
                .contains("Round 5 (Peat):", "Round 6 (Chalk):", "Round 9 (Peat):");
        assertThat(words.ofSheet(2, 3, List.of(5, 6, 7)))
                .startsWith(
                        "Sheet 2 of 3 of the chart of one corner of Tide Steps. It shows stitches of rounds 5 to 7. "
                                + "Given with a sheet before this one: rounds 5 to 6. Round 7 (Peat):");
        Chart longer = Chart.blank("Tide Steps", LONG.shape(), 400, LONG.yarns());
        List<Integer> all = IntStream.rangeClosed(1, 400).boxed().toList();
        String third = new ChartInWords(longer, BookletOptions.of(longer, English.LANGUAGE), ChartKind.CORNER)
                .ofSheet(3, 3, all);
        assertThat(third).contains("Given with the rounds in words: rounds ");
        // ISO 19005-2, 6.1.13: a string of at most 32,767 bytes.
        assertThat(third.getBytes(StandardCharsets.UTF_16)).hasSizeLessThan(32_767);
    }

    @Test
    void aChartOfFewRoundsIsToldInOne() throws IOException {
        Chart few = LONG.withRounds(LONG.rounds().subList(0, 10));
        ChartInWords words = new ChartInWords(few, BookletOptions.of(few, English.LANGUAGE), ChartKind.CORNER);
        assertThat(words.inOne()).isEqualTo(words.ofWhole(2)).contains("Round 1 (Peat):", "Round 10 (Chalk):");
        assertThat(words.ofSheet(1, 2, List.of(1, 2)))
                .isEqualTo(
                        "Sheet 1 of 2 of the chart of one corner of Tide Steps. The picture of the whole corner comes "
                                + "before it, with all rounds in words.");
    }
}
