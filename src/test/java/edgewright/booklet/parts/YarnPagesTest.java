package edgewright.booklet.parts;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.Published;
import edgewright.booklet.ReadBack;
import edgewright.booklet.choice.BookletOptions;
import edgewright.chart.Ball;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.PerSide;
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

    private static BookletOptions sized(Chart chart) {
        return BookletOptions.of(chart, English.LANGUAGE).withRepeats(SIZE);
    }

    @Test
    void aPatternOfOneSizeTellsMetresGramsAndBallsOfEachYarn() throws IOException {
        Chart chart = REED_BANK.withYarns(List.of(
                REED_BANK.yarns().get(0).withBall(Optional.of(new Ball(100, 50))),
                REED_BANK.yarns().get(1)));
        Amounts amounts = Amounts.of(chart, SIZE);
        long metres = (long) Math.ceil(amounts.yarns().get(0).metres());
        long grams = (long) Math.ceil(amounts.yarns().get(0).grams().orElseThrow());
        long other = (long) Math.ceil(amounts.yarns().get(1).metres());
        assertThat(heard(chart, sized(chart), "How much yarn", "From the designer"))
                .contains("Yarn Metres Grams Balls A Peat " + metres + " " + grams + " 2 B Chalk " + other
                        + " \u2013 \u2013")
                .contains("These lengths are estimates")
                .contains("As charted, all yarns that lie side by side can be told apart.");
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
        assertThat(heard(REED_BANK, sized(REED_BANK), "Yarn round by round", "Worksheet"))
                .contains("Round Yarn Metres So far " + String.join(" ", rows));
    }

    @Test
    void aPatternForAnySizeTellsTheMetresOfThreeExamples() throws IOException {
        List<Integer> repeats = CountsPages.repeats(REED_BANK);
        StringBuilder row = new StringBuilder("A Peat");
        for (int example : List.of(repeats.get(0), repeats.get(repeats.size() / 2), repeats.get(repeats.size() - 1))) {
            Amounts amounts = Amounts.of(REED_BANK, PerSide.all(example));
            row.append(' ').append((long) Math.ceil(amounts.yarns().get(0).metres()));
        }
        assertThat(heard(
                        REED_BANK,
                        BookletOptions.of(REED_BANK, English.LANGUAGE),
                        "How much yarn",
                        "From the designer"))
                .contains(repeats.get(0) + " repeats, m")
                .contains(row + " B Chalk");
    }

    @Test
    void yarnsThatAreHardToTellApartAreNamed() throws IOException {
        Chart pale = REED_BANK.withYarns(List.of(
                REED_BANK.yarns().get(0).withColour(Colour.parse("#e4dccb")),
                REED_BANK.yarns().get(1)));
        assertThat(heard(pale, BookletOptions.of(pale, English.LANGUAGE), "How much yarn", "From the designer"))
                .contains("Peat and Chalk are hard to tell apart: ratio 1.1");
    }

    /** What is heard from one heading to another, blanks of every kind as one. */
    private static String heard(Chart chart, BookletOptions options, String from, String to) throws IOException {
        try (ReadBack pattern = new ReadBack(Published.bytes(chart, options))) {
            String aloud = pattern.aloud().replaceAll("[\\s\\p{Z}]+", " ");
            int start = aloud.lastIndexOf(from);
            return aloud.substring(start, aloud.indexOf(to, start));
        }
    }
}
