package edgewright.words.others;

import edgewright.words.setup.Facts;
import java.util.ArrayList;
import java.util.List;

/**
 * One way to understand what a text leaves open. What is stated decides which of them it is; where it decides nothing, it is
 * asked.
 *
 * @param less whether 'rep from * 3 times' counts the first time
 * @param armsAdded whether the two stitches of a corner that no round names stand beside those that its words tell
 * @param base how the stitches of the base round are counted
 */
record Guess(boolean less, boolean armsAdded, Base base) {
    /** How the base round and the multiple are counted. */
    enum Base {
        /** As the text counts everywhere. */
        AS_ELSEWHERE,
        /** Stitches only, although the rounds are counted with a corner chain at each end. */
        STITCHES,
        /** Without the two stitches that go into corners, as the rounds are. */
        BETWEEN_CORNERS
    }

    /** All that are possible, the most usual first. */
    static List<Guess> all(Facts facts, boolean unclearTimes) {
        List<Boolean> arms = facts.armsInSides
                .map(in -> List.of(!in))
                .orElse(facts.corner.flatMap(turn -> turn.before()).isPresent() ? List.of(true, false) : List.of(true));
        List<Base> bases = new ArrayList<>(List.of(Base.AS_ELSEWHERE));
        if (facts.betweenCorners || facts.baseBetween) {
            bases.add(Base.BETWEEN_CORNERS);
        }
        if (facts.counting.isPresent()) {
            bases.add(Base.STITCHES);
        }
        List<Guess> all = new ArrayList<>();
        for (boolean less : unclearTimes ? List.of(false, true) : List.of(false)) {
            for (boolean added : arms) {
                bases.forEach(base -> all.add(new Guess(less, added, base)));
            }
        }
        return all;
    }
}
