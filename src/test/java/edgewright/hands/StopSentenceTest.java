package edgewright.hands;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.hands.Stop.Reason;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StopSentenceTest {
    @Test
    void a_stop_says_round_side_stitch_and_what_is_missing() {
        assertThat(StopSentence.of(new Stop(Reason.COVERED, 3, Side.TOP, 1008, Optional.of(Stitch.LONG), 0, 0)))
                .isEqualTo("Round 3, top edge, stitch 1,008: a long stitch is asked for, but the loop two rounds"
                        + " below lies behind the long stitch between.");
        assertThat(StopSentence.of(new Stop(Reason.STITCHES_LEFT, 12, Side.RIGHT, 9, Optional.empty(), 0, 1)))
                .isEqualTo(
                        "Round 12, right-hand edge, stitch 9: the words turn the corner here, but 1 stitch of this side is"
                                + " still to be worked.");
        assertThat(StopSentence.of(new Stop(Reason.STITCHES_LEFT, 12, Side.RIGHT, 9, Optional.empty(), 0, 2)))
                .contains("but 2 stitches of this side are still");
        assertThat(StopSentence.of(new Stop(Reason.BASE_TOO_SHORT, 0, Side.BOTTOM, 3, Optional.empty(), 7, 3)))
                .isEqualTo("Base round, bottom edge: 3 stitches, but the pattern needs at least 7.");
        assertThat(StopSentence.of(new Stop(Reason.BACK_MULTIPLE_NOT_MET, 0, Side.BOTTOM, 9, Optional.empty(), 1, 9)))
                .isEqualTo("Back base round, bottom edge: 9 stitches made, which is 1 more than the multiple that the"
                        + " pattern states.");
        assertThat(StopSentence.of(new Stop(Reason.COUNT_NOT_MET, 4, Side.LEFT, 9, Optional.empty(), 13, 9)))
                .isEqualTo("Round 4, left-hand edge: 9 stitches made, but the pattern states 13.");
    }

    @ParameterizedTest
    @EnumSource
    void every_reason_has_a_sentence_with_its_place_and_no_gap(Reason reason) {
        String sentence = StopSentence.of(new Stop(reason, 5, Side.LEFT, 17, Optional.of(Stitch.LONG), 4, 2));
        String place = switch (reason) {
            case BACK_COUNT_NOT_MET, BACK_MULTIPLE_NOT_MET, BACK_NOT_AS_FRONT -> "Back round 5, left-hand edge";
            case CORNERS_DIFFER, LAYERS_DIFFER -> "Joining round, left-hand edge";
            default -> "Round 5, left-hand edge";
        };
        assertThat(sentence).startsWith(place).endsWith(".").doesNotContain("{").doesNotContain("null");
    }

    @Test
    void no_text_is_left_over() {
        Set<String> used = new TreeSet<>(
                Set.of("place.base", "place.stitch", "place.side", "place.back", "place.backBase", "place.joining"));
        for (Reason reason : Reason.values()) {
            used.add("stop." + reason);
        }
        for (Stitch stitch : Stitch.values()) {
            used.add("stitch." + stitch);
        }
        for (Side side : Side.values()) {
            used.add("side." + side);
        }
        assertThat(new TreeSet<>(ResourceBundle.getBundle("edgewright.hands.stops", Locale.ROOT)
                        .keySet()))
                .isEqualTo(used);
    }
}
