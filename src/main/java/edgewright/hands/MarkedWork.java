package edgewright.hands;

import edgewright.hands.Stop.Reason;
import edgewright.words.tree.Group;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.StartMark.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The words of a side on which a round starts, parted at the mark of the start. */
final class MarkedWork {
    private final SideInstructions words;
    private final StartMark mark;
    /** The steps of the marked part before the mark, and from it on. */
    private final List<SideStep> first;

    private final List<SideStep> rest;

    MarkedWork(SideInstructions words, StartMark mark) {
        this.words = words;
        this.mark = mark;
        List<SideStep> marked = words.steps(mark.part());
        first = marked.subList(0, mark.step());
        rest = marked.subList(mark.step(), marked.size());
    }

    /** What is worked from the mark to the corner. */
    SideInstructions toCorner() {
        return switch (mark.part()) {
            case BEFORE ->
                words.group()
                        .map(group -> SideInstructions.of(rest, group, words.after()))
                        .orElseGet(() -> SideInstructions.of(rest));
            // At the beginning of a repeat the group may also have come to its end.
            case GROUP ->
                SideInstructions.of(
                        first.isEmpty() ? List.of() : rest, words.group().orElseThrow(), words.after());
            case AFTER -> SideInstructions.of(rest);
        };
    }

    /**
     * What is worked from the corner to the mark. The group goes on as far as there is room for what then stands before the mark.
     *
     * @param past how many stitches of the side lie past the start
     */
    SideInstructions toMark(int past) {
        return switch (mark.part()) {
            case BEFORE -> SideInstructions.of(first);
            case GROUP -> SideInstructions.of(words.before(), upTo(SideStep.stitches(first)), first);
            case AFTER -> {
                // 'To the last ... sts' is counted from the corner, of which those past the start are worked.
                int left = words.group().map(Group::lastStitches).orElse(0) - past;
                if (words.group().isPresent() && left >= 0) {
                    yield SideInstructions.of(words.before(), upTo(left), first);
                }
                List<SideStep> steps = new ArrayList<>(words.before());
                steps.addAll(first);
                yield SideInstructions.of(steps);
            }
        };
    }

    private Group upTo(int lastStitches) {
        return new Group(words.group().orElseThrow().steps(), lastStitches);
    }

    /**
     * Looks whether a round can start where it is said to start: whether that place is there, and whether the mark stands for it.
     * Words that do not come out on this side are not held to their mark; in working them it shows what is wrong with them.
     *
     * @param stitch how many stitches of the side lie before the start
     */
    Optional<Stop> lookForMark(Hook side, int stitch) {
        int room = side.room();
        if (stitch > room) {
            return side.stop(Reason.NO_PLACE_TO_JOIN, stitch, room);
        }
        long before = SideStep.stitches(words.before());
        long after = SideStep.stitches(words.after());
        long group = words.group().map(Group::stitches).orElse(0);
        long inGroups = room - before - after;
        boolean comesOut = group == 0 ? inGroups == 0 : inGroups >= 0 && inGroups % group == 0;
        if (!comesOut) {
            return Optional.empty();
        }
        long marked = SideStep.stitches(first)
                + switch (mark.part()) {
                    case BEFORE -> 0;
                    case GROUP -> before + nearest(stitch - before - SideStep.stitches(first), group, inGroups);
                    case AFTER -> before + inGroups;
                };
        boolean stands = marked == stitch && (mark.part() != Part.GROUP || inGroups > 0 || first.isEmpty());
        return stands
                ? Optional.empty()
                : side.stopAt(Reason.MARK_ELSEWHERE, stitch, (int) Math.min(Integer.MAX_VALUE, marked));
    }

    /** The stitches of whole groups that come nearest to so many. After them a group is left that begins what stands before the mark. */
    private long nearest(long stitches, long group, long inGroups) {
        long groups = Math.floorDiv(2 * stitches + group, 2 * group);
        return group * Math.max(0, Math.min(groups, inGroups / group - (first.isEmpty() ? 0 : 1)));
    }
}
