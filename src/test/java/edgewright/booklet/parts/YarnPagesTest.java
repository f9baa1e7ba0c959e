package edgewright.booklet.parts;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.Published;
import edgewright.booklet.ReadBack;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletParts;
import edgewright.chart.Ball;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.PerSide;
import edgewright.fit.PatternSize;
import edgewright.texts.English;
import edgewright.yarn.Amounts;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The yarn of a published pattern, read back. */
class YarnPagesTest {
    private static final Chart REED_BANK = Published.sample("reed-bank");
    private static final PerSide<Integer> SIZE = PerSide.pairs(4, 3);

    private static BookletOptions all(Chart chart) {
        return BookletOptions.of(chart, English.LANGUAGE).withParts(BookletParts.WITH_WORKBOOK);
    }

    private static BookletOptions sized(Chart chart) {
        return all(chart).withRepeats(SIZE);
    }

    @Test
    void aPatternOfOneSizeTellsMetresYardsAndBallsOfEachYarn() throws IOException {
        Chart chart = REED_BANK.withYarns(List.of(
                REED_BANK.yarns().get(0).withBall(Optional.of(new Ball(100, 50))),
                REED_BANK.yarns().get(1)));
        Amounts amounts = Amounts.of(chart, SIZE);
        long metres = (long) Math.ceil(amounts.yarns().get(0).metres());
        long yards = (long) Math.ceil(amounts.yarns().get(0).metres() / 0.9144);
        assertThat(heard(chart, sized(chart), "What you need", "From the designer"))
                .contains(metres + " m or " + yards + " yd, 2 balls of 100 m (109 yd) and 50 g")
                .contains("They are estimates");
    }

    @Test
    void aPatternForNamedSizesTellsTheAmountsOfEachAndTheSameSizesEverywhere() throws IOException {
        BookletOptions options = all(REED_BANK);
        List<String> lengths = options.sizes().stream()
                .map(size -> Amounts.of(REED_BANK, size).yarns().get(0).metres())
                .map(metres ->
                        String.format(Locale.ROOT, "%.0f m or %.0f yd", Math.ceil(metres), Math.ceil(metres / 0.9144)))
                .toList();
        assertThat(heard(REED_BANK, options, "What you need", "From the designer"))
                .contains(lengths.get(0) + " (" + lengths.get(1) + ", " + lengths.get(2) + ")");
        assertThat(heard(REED_BANK, options, "Stitch counts", "Finishing"))
                .contains("Cot: Top,bottom Cot: Left,right Lap: Top,bottom");
        assertThat(heardToTheEnd(REED_BANK, options, "How much yarn")).contains("Cot, m", "Lap, m", "Bed, m");
        assertThat(heard(REED_BANK, options, "How the words were proved", "Round guide"))
                .contains("131", "161", "191", "227", "287");
    }

    @Test
    void everyRoundStandsWithWhatItTakesAndWhatWasUsedBefore() throws IOException {
        List<String> rows = new ArrayList<>();
        for (Amounts.OfRound round : Amounts.of(REED_BANK, SIZE).rounds()) {
            rows.add(String.format(
                    Locale.ROOT,
                    "%d %s %.1f %.1f",
                    round.round().number(),
                    round.round().yarn(),
                    round.metres(),
                    round.metresSoFar()));
        }
        assertThat(heardToTheEnd(REED_BANK, sized(REED_BANK), "How much yarn"))
                .contains("Round Yarn Metres Metres so far " + String.join(" ", rows));
    }

    @Test
    void aPatternForAnySizeTellsTheMetresOfThreeExamples() throws IOException {
        List<Integer> repeats = CountsPages.repeats(REED_BANK);
        StringBuilder row = new StringBuilder("A Peat");
        for (int example : List.of(repeats.get(0), repeats.get(repeats.size() / 2), repeats.get(repeats.size() - 1))) {
            Amounts amounts = Amounts.of(REED_BANK, PerSide.all(example));
            row.append(' ').append((long) Math.ceil(amounts.yarns().get(0).metres()));
        }
        assertThat(heardToTheEnd(REED_BANK, all(REED_BANK).withSize(PatternSize.any()), "How much yarn"))
                .contains(repeats.get(0) + " repeats, m")
                .contains(row + " B Chalk");
    }

    @Test
    void aBuyerReadsAdviceOnColoursAndNoDoubts() throws IOException {
        Chart pale = REED_BANK.withYarns(List.of(
                REED_BANK.yarns().get(0).withColour(Colour.parse("#e4dccb")),
                REED_BANK.yarns().get(1)));
        assertThat(heard(pale, all(pale), "What you need", "Worksheet"))
                .contains("Photograph the yarns side by side in black and white")
                .doesNotContain("hard to tell apart", "ruffle");
    }

    private static String heardToTheEnd(Chart chart, BookletOptions options, String from) throws IOException {
        return heard(chart, options, from, "");
    }

    /** What is heard from one heading to another, blanks of every kind as one. */
    private static String heard(Chart chart, BookletOptions options, String from, String to) throws IOException {
        try (ReadBack pattern = new ReadBack(Published.bytes(chart, options))) {
            String aloud = pattern.aloud().replaceAll("[\\s\\p{Z}]+", " ");
            int start = aloud.lastIndexOf(from);
            return aloud.substring(start, to.isEmpty() ? aloud.length() : aloud.indexOf(to, start));
        }
    }
}
