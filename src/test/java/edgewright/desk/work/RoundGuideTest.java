package edgewright.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookSize;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Start;
import edgewright.chart.Terms;
import edgewright.desk.work.GuideTicks.Tick;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.texts.English;
import edgewright.words.write.WordingOptions;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RoundGuideTest {
    private static Chart sample(String name) {
        return ((ReadResult.Read) ChartFiles.read(Path.of("sample-charts", name + ChartFiles.ENDING))).chart();
    }

    private static WordingOptions options(Counting counting) {
        return new WordingOptions(English.LANGUAGE, Terms.UK, counting, Optional.of(PerSide.of(5, 4, 3, 2)));
    }

    private static List<String> said(RoundGuide guide) {
        return guide.rows().stream()
                .map(row -> row.name() + ": " + row.text().replace('\u00a0', ' '))
                .toList();
    }

    @Test
    void a_round_is_told_part_by_part_with_what_to_see() {
        Chart bare = sample("mooring-rope");
        Chart chart = bare.withMaking(bare.making().withStart(Optional.empty()).withBack(Optional.empty()));

        assertThat(said(RoundGuide.of(chart, 6, options(Counting.STITCHES), English.LANGUAGE)))
                .endsWith(
                        "guide.fromCorner: 1 dc blo",
                        "guide.repeat: *2 drop tr, 4 dc blo; rep from * to last 4 sts",
                        "guide.toCorner: 2 drop tr, 2 dc blo",
                        "guide.corner: 1 ch. Work this on all four sides.",
                        "guide.seen: The long stitches stand in groups of 2."
                                + " The first long stitch after a corner is stitch 2 (the one in the corner chain is 1): it goes into"
                                + " the corner chain two rounds below."
                                + " Long stitches: top 16, left 14, bottom 12, right 10.");
    }

    @Test
    void hook_start_and_back_layer_are_told_where_the_designer_says_them() {
        Chart bare = sample("tide-steps");
        Chart chart = bare.withMaking(bare.making()
                .withHook(Optional.of(HookSize.ofMm(4.5)))
                .withStart(Optional.of(Start.always(Side.LEFT)))
                .withBack(Optional.of(Back.DEFAULT)));

        List<String> second = said(RoundGuide.of(chart, 2, options(Counting.STITCHES), English.LANGUAGE));

        assertThat(second).contains("guide.hook: 4.5 mm", "guide.back: Round 1 of the back layer has the same counts.");
        assertThat(second).anyMatch(row -> row.startsWith("guide.start: Above the marker on the left-hand edge"));
        assertThat(said(RoundGuide.of(chart, 3, options(Counting.STITCHES), English.LANGUAGE)))
                .noneMatch(row -> row.startsWith("guide.back"));
    }

    @Test
    void counts_are_in_the_way_of_counting_that_was_asked_for() {
        Chart chart = sample("tide-steps");
        PerSide<Integer> stitches =
                PerSide.of(5, 4, 3, 2).map(m -> chart.shape().stitches(7, m));

        assertThat(RoundGuide.of(chart, 7, options(Counting.STITCHES), English.LANGUAGE)
                        .counts())
                .isEqualTo(stitches);
        assertThat(RoundGuide.of(chart, 7, options(Counting.WITH_CHAINS), English.LANGUAGE)
                        .counts())
                .isEqualTo(stitches.map(count -> count + 2));
    }

    @Test
    void a_round_is_finished_when_its_four_sides_and_its_count_are_ticked() {
        GuideTicks ticks = new GuideTicks();
        for (Tick tick : Tick.values()) {
            assertThat(ticks.finished(3)).isZero();
            ticks.tick(2, tick, true);
        }
        assertThat(ticks.finished(3)).isEqualTo(1);
        assertThat(ticks.isTicked(1, Tick.TOP)).isFalse();

        ticks.tick(2, Tick.LEFT, false);
        assertThat(ticks.finished(3)).isZero();
        assertThat(ticks.isTicked(2, Tick.TOP)).isTrue();

        ticks.clear();
        assertThat(ticks.isTicked(2, Tick.TOP)).isFalse();
    }
}
