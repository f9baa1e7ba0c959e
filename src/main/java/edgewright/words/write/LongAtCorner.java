package edgewright.words.write;

import edgewright.words.tree.SideStep;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.List;

/** Long stitches beside a corner, for which a pattern must say what lies under them. */
final class LongAtCorner {
    private LongAtCorner() {}

    /** Whether the second or the last but one stitch of a side can be long, with the group worked not at all or more often. */
    static boolean isIn(WrittenRound round) {
        for (int times = 0; times <= 2; times++) {
            List<SideStep> side = new ArrayList<>(round.stretch().before());
            for (int i = 0; i < times; i++) {
                round.stretch().group().ifPresent(group -> side.addAll(group.steps()));
            }
            side.addAll(round.stretch().after());
            int last = SideStep.stitches(side);
            if (isLong(side, last, 2) || isLong(side, last, last - 1)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isLong(List<SideStep> side, int stitches, int place) {
        return place >= 1 && place <= stitches && SideStep.stitchAt(side, place).coversStitchBelow();
    }
}
