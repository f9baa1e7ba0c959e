package edgewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody gets who takes the remedies that are offered on a sample chart, one after the other. */
class SampleRemediesTest {

    @Test
    void first_remedies_taken_until_none_is_left_never_add_a_finding_and_change_as_many_cells_as_they_say() {
        Verdict verdict = Checker.check(sample("first-try-unfinished"));
        List<Integer> findings = new ArrayList<>(List.of(verdict.findings().size()));
        int said = 0;
        Optional<Remedy> first = firstRemedy(verdict);
        while (first.isPresent()) {
            Chart mended = first.get().applyTo(verdict.chart());
            assertThat(first.get().changedCells()).as(first.toString()).isEqualTo(shown(verdict.chart(), mended));
            said += first.get().changedCells();
            verdict = Checker.check(mended);
            findings.add(verdict.findings().size());
            first = firstRemedy(verdict);
        }
        assertThat(findings).as("findings left after each remedy").isSortedAccordingTo((a, b) -> b - a);
        assertThat(verdict.findings()).isEmpty();
        assertThat(said)
                .as("cells that change, 43 of them with the colour of a yarn")
                .isEqualTo(52);
    }

    /** The remedy that once made four rounds one black block. */
    @Test
    void no_remedy_works_round_15_in_the_yarn_of_the_round_below() {
        assertThat(Checker.check(sample("first-try-unfinished")).findings())
                .flatExtracting(Finding::remedies)
                .isNotEmpty()
                .noneMatch(remedy -> remedy.edit() instanceof RemedyEdit.ChangeYarn);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "heron-walk",
                "lantern-posts",
                "mooring-rope",
                "mud-ripple",
                "reed-bank",
                "saltings",
                "samphire",
                "sluice-gate",
                "tide-steps"
            })
    void every_long_stitch_of_a_finished_sample_is_seen(String name) {
        assertThat(Checker.check(sample(name)).findings())
                .extracting(Finding::rule)
                .doesNotContain("unseen-long");
    }

    private static Optional<Remedy> firstRemedy(Verdict verdict) {
        return verdict.findings().stream()
                .flatMap(finding -> finding.remedies().stream().limit(1))
                .findFirst();
    }

    private static int shown(Chart before, Chart after) {
        int changed = 0;
        for (int r = 1; r <= before.rounds().size(); r++) {
            for (Section section : Section.values()) {
                for (int i = 1; i <= before.round(r).section(section).length(); i++) {
                    Place cell = new Place(r, section, i);
                    changed += colour(before, cell).equals(colour(after, cell)) ? 0 : 1;
                }
            }
        }
        return changed;
    }

    private static Colour colour(Chart chart, Place cell) {
        return chart.yarnOf(chart.shownRound(cell)).colour();
    }

    private static Chart sample(String name) {
        return ((ReadResult.Read) ChartFiles.read(Path.of("sample-charts", name + ChartFiles.ENDING))).chart();
    }
}
