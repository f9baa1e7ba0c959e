package edgewright.yarn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.testing.RandomCharts;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ColourSuggestionTest {
    private static final Colour PEAT = Colour.parse("#2b2a33");
    private static final Colour CHALK = Colour.parse("#f2ead8");
    private static final Colour FOG = Colour.parse("#e4dccb");

    @Test
    void a_colour_that_is_told_apart_stays() {
        assertThat(ColourSuggestion.nearest(CHALK, List.of(PEAT))).isEqualTo(Optional.of(CHALK));
        assertThat(ColourSuggestion.nearest(CHALK, List.of())).isEqualTo(Optional.of(CHALK));
    }

    @Test
    void what_is_suggested_is_told_apart_from_every_other() {
        Random random = new Random(8);
        int suggested = 0;
        for (int i = 0; i < 30; i++) {
            List<Colour> others = Stream.generate(() -> new Colour(random.nextInt(0x1000000)))
                    .limit(1 + random.nextInt(3))
                    .toList();
            Optional<Colour> nearest = ColourSuggestion.nearest(new Colour(random.nextInt(0x1000000)), others);
            if (nearest.isPresent()) {
                suggested++;
                assertThat(others)
                        .noneMatch(
                                other -> Contrast.between(nearest.get(), other).isLow());
            }
        }
        assertThat(suggested).isGreaterThan(20);
    }

    /** The judge: every colour in steps of three, straight from the definition. */
    @Test
    void no_other_colour_that_passes_is_nearer() {
        Random random = new Random(21);
        for (int i = 0; i < 4; i++) {
            Colour other = new Colour(random.nextInt(0x1000000));
            Colour wanted = Lab.of(other)
                    .withLightness(Math.max(0, Math.min(100, Lab.of(other).lightness() + random.nextInt(20) - 10)))
                    .toColour();
            Colour suggested = ColourSuggestion.nearest(wanted, List.of(other)).orElseThrow();
            double nearest = Double.MAX_VALUE;
            for (int rgb = 0; rgb < 0x1000000; rgb++) {
                if ((rgb & 0xff) % 3 == 0 && (rgb >> 8 & 0xff) % 3 == 0 && (rgb >> 16) % 3 == 0) {
                    Colour colour = new Colour(rgb);
                    double difference = Contrast.between(wanted, colour).difference();
                    if (difference < nearest && !Contrast.between(colour, other).isLow()) {
                        nearest = difference;
                    }
                }
            }
            assertThat(Contrast.between(wanted, suggested).difference()).isLessThanOrEqualTo(nearest + 1e-9);
        }
    }

    @Test
    void where_nothing_can_be_told_apart_from_all_nothing_is_suggested() {
        // From each third of a fine ladder of greys no colour is far enough.
        List<Colour> ladder = Stream.iterate(0, grey -> grey + 5)
                .limit(52)
                .map(grey -> new Colour(grey << 16 | grey << 8 | grey))
                .toList();
        assertThat(ColourSuggestion.nearest(FOG, ladder)).isEmpty();
    }

    @Test
    void a_grey_has_the_luminance_of_its_colour() {
        // #ff0000 is as light as #7f7f7f: luminance 0.2126 against 0.2122. Source: the formula of
        // https://www.w3.org/WAI/GL/wiki/Relative_luminance
        assertThat(Contrast.grey(Colour.parse("#ff0000"))).isEqualTo(Colour.parse("#7f7f7f"));
        Random random = new Random(5);
        for (int i = 0; i < 1000; i++) {
            Colour colour = new Colour(random.nextInt(0x1000000));
            Colour grey = Contrast.grey(colour);
            assertThat(Lab.of(grey).lightness()).isCloseTo(Lab.of(colour).lightness(), within(0.3));
            assertThat(grey.red() == grey.green() && grey.green() == grey.blue())
                    .isTrue();
        }
    }

    @Test
    void a_yarn_that_meets_one_it_is_hard_to_tell_from_gets_the_nearest_colour_that_is_not() {
        Yarn chalk = new Yarn("A", "Chalk", Colour.parse("#f2ead8"));
        Yarn fog = new Yarn("B", "Fog", Colour.parse("#e4dccb"));
        Yarn peat = new Yarn("C", "Peat", Colour.parse("#2b2a33"));
        Chart chart = Chart.blank("Stripes", new SideShape(1, 4, 1), 5, List.of(chalk, fog));
        Colour instead = YarnPair.suggestion(chart, fog).orElseThrow();
        assertThat(instead).isNotEqualTo(fog.colour());
        assertThat(Contrast.between(instead, chalk.colour()).isLow()).isFalse();
        assertThat(YarnPair.suggestion(chart, chalk)
                        .map(colour -> Contrast.between(colour, fog.colour()).isLow()))
                .contains(false);
        assertThat(YarnPair.suggestion(chart.withYarns(List.of(chalk, fog, peat)), peat))
                .contains(peat.colour());
    }

    @Test
    void yarns_meet_in_the_order_of_their_rounds_and_each_pair_once() {
        for (long seed = 0; seed < 200; seed++) {
            var chart = new RandomCharts(seed).any();
            List<YarnPair> meetings = YarnPair.of(chart);
            assertThat(meetings).isSortedAccordingTo((one, two) -> one.round() - two.round());
            assertThat(meetings).allSatisfy(meeting -> {
                assertThat(chart.yarnOf(meeting.round())).isEqualTo(meeting.outer());
                assertThat(chart.yarnOf(meeting.round() - 1)).isEqualTo(meeting.inner());
            });
            assertThat(meetings.stream().map(meeting -> Set.of(meeting.inner(), meeting.outer())))
                    .doesNotHaveDuplicates();
            for (Yarn yarn : chart.yarns()) {
                YarnPair.suggestion(chart, yarn)
                        .ifPresent(colour -> assertThat(meetings)
                                .filteredOn(meeting -> meeting.inner().equals(yarn))
                                .noneMatch(meeting -> Contrast.between(
                                                colour, meeting.outer().colour())
                                        .isLow()));
                if (seed > 20) {
                    break;
                }
            }
        }
    }
}
