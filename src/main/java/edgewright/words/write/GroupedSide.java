package edgewright.words.write;

import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.words.tree.Group;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import java.util.ArrayList;
import java.util.List;

/**
 * A side of any size as runs before a group, the group, and runs after it.
 *
 * <p>The group has the shortest period of the repeat. It may begin earlier than the repeat and end later, if the corner
 * sections continue the same period: by a whole number of periods together, so that it comes out even on every side, and
 * with no repeat at all too.
 */
final class GroupedSide {
    private GroupedSide() {}

    /** The simplest way to say these three sections. A repeat without stitches, which only a ragged chart has, is not said. */
    static SideInstructions of(Stitches fromCorner, Stitches repeat, Stitches toCorner) {
        if (repeat.length() == 0) {
            return SideInstructions.of(runs(fromCorner.letters() + toCorner.letters()));
        }
        String from = fromCorner.letters();
        String to = toCorner.letters();
        String period = repeat.letters().substring(0, repeat.shortestPeriod());
        Taken taken = simplest(from, period, to);
        int cut = Math.floorMod(-taken.first(), period.length());
        String group = period.substring(cut) + period.substring(0, cut);
        String after = to.substring(taken.last());
        return SideInstructions.of(
                runs(from.substring(0, from.length() - taken.first())),
                new Group(List.copyOf(runs(group)), after.length()),
                runs(after));
    }

    /** How many stitches the group takes from the end of the section before it and from the start of the one after it. */
    private record Taken(int first, int last) {}

    /**
     * Fewest runs win. A run in the group counts twice, because a maker reads it again at every repeat. Where nothing is
     * gained the group stays where the chart has it, so that its rounds can be followed in the drawing.
     */
    private static Taken simplest(String from, String period, String to) {
        int width = period.length();
        int mostBefore = continuesBackwards(from, period);
        int mostAfter = continuesForwards(to, period);
        int[] runsFrom = runsUpTo(from);
        int[] runsTo = runsUpTo(new StringBuilder(to).reverse().toString());
        int round = runsRound(period);
        Taken best = new Taken(0, 0);
        int least = Integer.MAX_VALUE;
        for (int turn = 0; turn < width; turn++) {
            int before = largest(mostBefore, turn, width);
            int after = largest(mostAfter, width - turn, width);
            if (before < 0 || after < 0) {
                continue;
            }
            int cost =
                    runsFrom[from.length() - before] + 2 * runsFrom(period, round, turn) + runsTo[to.length() - after];
            if (turn == 0 && cost == runsFrom[from.length()] + 2 * runsFrom(period, round, 0) + runsTo[to.length()]) {
                before = 0;
                after = 0;
            }
            if (cost < least) {
                least = cost;
                best = new Taken(before, after);
            }
        }
        return best;
    }

    /** The largest number up to {@code most} that leaves this rest when divided by the width; negative if there is none. */
    private static int largest(int most, int rest, int width) {
        return most - Math.floorMod(most - rest, width);
    }

    private static int continuesBackwards(String from, String period) {
        int n = 0;
        while (n < from.length()
                && from.charAt(from.length() - 1 - n) == period.charAt(period.length() - 1 - n % period.length())) {
            n++;
        }
        return n;
    }

    private static int continuesForwards(String to, String period) {
        int n = 0;
        while (n < to.length() && to.charAt(n) == period.charAt(n % period.length())) {
            n++;
        }
        return n;
    }

    /** How many runs the first 0, 1, 2 ... letters have. */
    private static int[] runsUpTo(String letters) {
        int[] runs = new int[letters.length() + 1];
        for (int i = 0; i < letters.length(); i++) {
            boolean begins = i == 0 || letters.charAt(i) != letters.charAt(i - 1);
            runs[i + 1] = runs[i] + (begins ? 1 : 0);
        }
        return runs;
    }

    /** How often the stitch changes when the period is read round and round. */
    private static int runsRound(String period) {
        int changes = 0;
        for (int i = 0; i < period.length(); i++) {
            changes += changesBefore(period, i) ? 1 : 0;
        }
        return changes;
    }

    /** The runs of the period when it is begun so many stitches before its own start. */
    private static int runsFrom(String period, int runsRound, int turn) {
        return changesBefore(period, Math.floorMod(-turn, period.length())) ? runsRound : runsRound + 1;
    }

    private static boolean changesBefore(String period, int i) {
        return period.charAt(i) != period.charAt(Math.floorMod(i - 1, period.length()));
    }

    static List<Run> runs(String letters) {
        List<Run> runs = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= letters.length(); i++) {
            if (i == letters.length() || letters.charAt(i) != letters.charAt(start)) {
                runs.add(new Run(
                        i - start, Stitch.ofLetter(letters.charAt(start)).orElseThrow()));
                start = i;
            }
        }
        return runs;
    }
}
