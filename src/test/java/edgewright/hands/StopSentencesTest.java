package edgewright.hands;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.hands.Stop.Reason;
import edgewright.texts.English;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StopSentencesTest {
    private static final StopSentences SAYS = new StopSentences(English.LANGUAGE);

    @Test
    void a_stop_says_round_side_stitch_and_what_is_missing() {
        assertThat(SAYS.of(new Stop(Reason.COVERED, 3, Side.TOP, 1008, Optional.of(Stitch.LONG), 0, 0)))
                .isEqualTo("Round 3, top edge, stitch 1008: a long stitch is asked for, but the loop two rounds"
                        + " below lies behind the long stitch between.");
        assertThat(SAYS.of(new Stop(Reason.STITCHES_LEFT, 12, Side.RIGHT, 9, Optional.empty(), 0, 1)))
                .isEqualTo(
                        "Round 12, right-hand edge, stitch 9: the words turn the corner here, but 1 stitch of this side is"
                                + " still to be worked.");
        assertThat(SAYS.of(new Stop(Reason.STITCHES_LEFT, 12, Side.RIGHT, 9, Optional.empty(), 0, 2)))
                .contains("but 2 stitches of this side are still");
        assertThat(SAYS.of(new Stop(Reason.BASE_TOO_SHORT, 0, Side.BOTTOM, 3, Optional.empty(), 7, 3)))
                .isEqualTo("Base round, bottom edge: 3 stitches, but the pattern needs at least 7.");
        assertThat(SAYS.of(new Stop(Reason.BACK_MULTIPLE_NOT_MET, 0, Side.BOTTOM, 9, Optional.empty(), 1, 9)))
                .isEqualTo("Back base round, bottom edge: 9 stitches made, which is 1 more than the multiple that the"
                        + " pattern states.");
        assertThat(SAYS.of(new Stop(Reason.COUNT_NOT_MET, 4, Side.LEFT, 9, Optional.empty(), 13, 9)))
                .isEqualTo("Round 4, left-hand edge: 9 stitches made, but the pattern states 13.");
        assertThat(SAYS.of(new Stop(Reason.NO_PLACE_TO_JOIN, 1201, Side.LEFT, 9, Optional.empty(), 12_010, 12_009)))
                .isEqualTo("Round 1201, left-hand edge, stitch 9: the yarn is to be joined in stitch 12010 of the round"
                        + " below, but with both corner chains there are only 12,009.");
    }

    @ParameterizedTest
    @EnumSource
    void every_reason_has_a_sentence_with_its_place_and_no_gap(Reason reason) {
        String sentence = SAYS.of(new Stop(reason, 5, Side.LEFT, 17, Optional.of(Stitch.LONG), 4, 2));
        String place = switch (reason) {
            case BACK_COUNT_NOT_MET, BACK_MULTIPLE_NOT_MET, BACK_NOT_AS_FRONT -> "Back round 5, left-hand edge";
            case CORNERS_DIFFER, LAYERS_DIFFER -> "Joining round, left-hand edge";
            default -> "Round 5, left-hand edge";
        };
        assertThat(sentence).startsWith(place).endsWith(".").doesNotContain("{").doesNotContain("null");
    }
}
