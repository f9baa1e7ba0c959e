package edgewright.words.others;

import edgewright.chart.PerSide;
import edgewright.words.grammar.BodyNotes;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.StatedCount;
import edgewright.words.tree.Group;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import java.util.List;
import java.util.Optional;

/**
 * A round whose sides are found.
 *
 * @param at where its title stands
 * @param yarn the id of its yarn
 * @param sideAt where the words of each side begin; its title where one is told for all
 * @param as the number of the round that it is worked as, if it is told so
 */
record BuiltRound(
        Lexeme at,
        int number,
        String yarn,
        PerSide<SideBuilder.Built> sides,
        int chains,
        Lexeme chainsAt,
        Optional<Integer> as,
        List<StatedCount> counts,
        List<Lexeme> chainsBelow,
        List<BodyNotes.Growth> growths,
        PerSide<Lexeme> sideAt) {

    /** The stitches of a side that stand outside its group. */
    static long fixed(SideInstructions side) {
        return (long) SideStep.stitches(side.before()) + SideStep.stitches(side.after());
    }

    /** The stitches of its group; 0 if it has none. */
    static int step(SideInstructions side) {
        return side.group().map(Group::stitches).orElse(0);
    }

    /** Whether a side with so many stitches comes out. */
    static boolean comesOut(SideInstructions side, long stitches) {
        long room = stitches - fixed(side);
        int step = step(side);
        return step == 0 ? room == 0 : room >= 0 && room % step == 0;
    }
}
