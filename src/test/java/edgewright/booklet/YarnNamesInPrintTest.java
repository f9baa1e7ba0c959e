package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.BookletOptions;
import edgewright.chart.Chart;
import edgewright.texts.English;
import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a yarn is called does not change what stands in the margin of a round and what beside it. */
class YarnNamesInPrintTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Peat",
                "Snow White, cotton",
                "Merino 50g: Sand",
                "Slack water No. 4. Grey",
                "Lichen, the one that was dyed in the long wet spring on the north shore"
            })
    void aRoundIsNamedInTheMarginAndItsCountsStandBesideIt(String name) throws IOException {
        Chart sample = Published.sample("reed-bank");
        Chart chart = sample.withYarns(sample.yarns().stream()
                .map(yarn -> yarn.id().equals(sample.round(1).yarn()) ? yarn.withName(name) : yarn)
                .toList());
        try (ReadBack read = Published.read(chart, BookletOptions.of(chart, English.LANGUAGE))) {
            String first = read.texts("H3").stream()
                    .filter(heading -> heading.startsWith("Rounds 1 "))
                    .findFirst()
                    .orElseThrow();
            assertThat(first)
                    .isIn("Rounds 1 to 4 (" + name + ", Chalk in turn)", "Rounds 1 to 4 (yarn A, Chalk in turn)");
            assertThat(read.texts("P")).anyMatch(text -> text.matches("(?s).*[0-9].*sts\\."));
            assertThat(read.texts("H3")).noneMatch(heading -> heading.endsWith("sts."));
        }
    }
}
