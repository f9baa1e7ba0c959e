package edgewright.file.codec;

import edgewright.chart.Chart;
import edgewright.chart.Extras;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.file.fault.ChartFault;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A round. Sections of round 1 say how wide the border is, so they are held to a length. */
final class RoundCodec extends RecordCodec<Round> {
    private static final List<String> LETTERS = Arrays.stream(Stitch.values())
            .map(stitch -> String.valueOf(stitch.letter()))
            .toList();

    private final int least;
    private final int most;
    private final Member<Round, String> yarn;
    private final Member<Round, Stitches> fromCorner;
    private final Member<Round, Stitches> repeat;
    private final Member<Round, Stitches> toCorner;

    private RoundCodec(int least, int most) {
        this.least = least;
        this.most = most;
        this.yarn = required("yarn", ValueCodecs.text(0, Integer.MAX_VALUE, RoundCodec::named), Round::yarn);
        this.fromCorner = section(Section.FROM_CORNER);
        this.repeat = section(Section.REPEAT);
        this.toCorner = section(Section.TO_CORNER);
    }

    /** Round 1. */
    static RoundCodec first() {
        return new RoundCodec(1, Chart.MOST_STITCHES);
    }

    /** Every other round; whether its sections have the length that goes with it is found when the chart is checked. */
    static RoundCodec other() {
        return new RoundCodec(0, Integer.MAX_VALUE);
    }

    private Member<Round, Stitches> section(Section section) {
        Codec<Stitches> letters = ValueCodecs.text(least, most, this::stitches).as(Stitches::of, Stitches::letters);
        return required(section.member(), letters, round -> round.section(section));
    }

    private static Optional<String> named(String id, Reading in) {
        in.links().roundNames(id, in.json());
        return Optional.of(id);
    }

    private Optional<String> stitches(String letters, Reading in) {
        for (int i = 0; i < letters.length(); i++) {
            if (Stitch.ofLetter(letters.charAt(i)).isEmpty()) {
                in.note(new ChartFault.NoSuchStitch(Character.toString(letters.codePointAt(i)), i + 1, LETTERS));
                return Optional.empty();
            }
        }
        if (letters.length() < least || letters.length() > most) {
            in.note(new ChartFault.WrongNumber(letters.length(), least, most));
            return Optional.empty();
        }
        return Optional.of(letters);
    }

    @Override
    Round make(FoundMembers found) {
        return new Round(
                found.get(yarn), found.get(fromCorner), found.get(repeat), found.get(toCorner), found.extras());
    }

    @Override
    Extras extras(Round round) {
        return round.extras();
    }
}
