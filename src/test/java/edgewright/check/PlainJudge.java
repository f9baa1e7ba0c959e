package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.yarn.Contrast;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

/**
 * The rules over again, as they are told: stitch by stitch along whole sides, with the repeat worked none, one, two or many
 * times, where stitch p of a round stands on stitch p - 1 of the round below and drops to p - 2 of the round two below. It
 * shares no line with the checker and does not know that columns line up inside sections.
 */
final class PlainJudge {
    /** What is found: a rule, where, and for a loose run its length. */
    record Found(String rule, FindingPlace where, Optional<OptionalInt> length) {
        Found(String rule, FindingPlace where) {
            this(rule, where, Optional.empty());
        }

        static Found of(Finding finding) {
            return new Found(
                    finding.rule(),
                    finding.place(),
                    finding.violation() instanceof Violation.LooseRun run
                            ? Optional.of(run.length())
                            : Optional.empty());
        }
    }

    private final Chart chart;
    private final int looseRun;
    private final int a;
    private final int w;
    private final int b;
    private final int last;
    /** The rules that stitches break, in the order of the contract. */
    private final Map<Place, List<String>> atStitches = new HashMap<>();

    private PlainJudge(Chart chart) {
        this.chart = chart;
        this.looseRun = chart.rules().looseRun();
        this.a = chart.round(1).fromCorner().length() - 1;
        this.w = chart.round(1).repeat().length();
        this.b = chart.round(1).toCorner().length() - 1;
        this.last = chart.rounds().size();
    }

    static List<Found> judge(Chart chart, Optional<PerSide<Integer>> baseStitches) {
        return new PlainJudge(chart).everything(baseStitches);
    }

    private List<Found> everything(Optional<PerSide<Integer>> baseStitches) {
        List<Found> found = ragged();
        if (!found.isEmpty()) {
            return found;
        }
        baseStitches.ifPresent(stitches -> unclosed(stitches, found));
        for (int m = 0; m <= 2; m++) {
            List<String> sides = sides(m);
            for (int r = 1; r <= last; r++) {
                judgeRound(m, r, sides);
            }
        }
        Map<Integer, Found> contrast = lowContrast();
        for (int r = 1; r <= last; r++) {
            Optional.ofNullable(contrast.get(r)).ifPresent(found::add);
            Map<Place, OptionalInt> runs = looseRuns(r);
            for (Section section : Section.values()) {
                for (int i = 1; i <= chart.round(r).section(section).length(); i++) {
                    Place place = new Place(r, section, i);
                    for (String rule : atStitches.get(place)) {
                        found.add(new Found(rule, new FindingPlace.OfStitch(place)));
                    }
                    if (runs.containsKey(place)) {
                        found.add(
                                new Found("loose-run", new FindingPlace.OfStitch(place), Optional.of(runs.get(place))));
                    }
                }
            }
        }
        return found;
    }

    private List<Found> ragged() {
        List<Found> found = new ArrayList<>();
        for (int r = 1; r <= last; r++) {
            Round round = chart.round(r);
            if (round.fromCorner().length() != a + r) {
                found.add(new Found("ragged-section", new FindingPlace.OfSection(r, Section.FROM_CORNER)));
            }
            if (round.repeat().length() != w) {
                found.add(new Found("ragged-section", new FindingPlace.OfSection(r, Section.REPEAT)));
            }
            if (round.toCorner().length() != b + r) {
                found.add(new Found("ragged-section", new FindingPlace.OfSection(r, Section.TO_CORNER)));
            }
        }
        return found;
    }

    private void unclosed(PerSide<Integer> stitches, List<Found> found) {
        for (Side side : Side.values()) {
            int left = stitches.get(side) - a - b;
            while (left > 0) {
                left -= w;
            }
            if (left != 0) {
                found.add(new Found("unclosed-side", new FindingPlace.OfSide(side)));
            }
        }
    }

    private Map<Integer, Found> lowContrast() {
        Map<Integer, Found> found = new TreeMap<>();
        Set<Set<String>> reported = new HashSet<>();
        for (int r = 2; r <= last; r++) {
            Set<String> pair = new HashSet<>(List.of(yarn(r - 1), yarn(r)));
            boolean low = pair.size() == 2
                    && Contrast.between(
                                    chart.yarnOf(r - 1).colour(),
                                    chart.yarnOf(r).colour())
                            .isLow();
            if (low && reported.add(pair)) {
                found.put(r, new Found("low-contrast", new FindingPlace.OfRound(r)));
            }
        }
        return found;
    }

    /** All rounds as whole sides; the first has number 0 and is the base round, of which nothing is known. */
    private List<String> sides(int m) {
        List<String> sides = new ArrayList<>();
        sides.add("");
        for (Round round : chart.rounds()) {
            sides.add(round.fromCorner().letters()
                    + round.repeat().letters().repeat(m)
                    + round.toCorner().letters());
        }
        return sides;
    }

    private void judgeRound(int m, int r, List<String> sides) {
        for (int p = 1; p <= sides.get(r).length(); p++) {
            List<String> rules = switch (stitch(sides, r, p)) {
                case 'l' -> brokenByLong(sides, r, p);
                case 'c' -> brokenByChain(sides, r, p);
                default -> List.of();
            };
            Place place = place(m, r, p);
            List<String> before = atStitches.put(place, rules);
            if (before != null && !before.equals(rules)) {
                throw new AssertionError(place + " is judged in two ways: " + before + " and " + rules);
            }
        }
    }

    private List<String> brokenByLong(List<String> sides, int r, int p) {
        int last = sides.get(r).length();
        if (r == 1) {
            return List.of("no-round-below");
        }
        if (p == 1 || p == last) {
            return List.of("past-corner");
        }
        List<String> rules = new ArrayList<>();
        addIf(stitch(sides, r - 1, p - 1) == 'l', "covered-loop", rules);
        addIf(stitch(sides, r - 1, p - 1) == 'p', "used-loop", rules);
        boolean inCornerChain = p == 2 || p == last - 1;
        if (r > 2 && !inCornerChain) {
            char landing = stitch(sides, r - 2, p - 2);
            addIf(landing == 'l' && !chart.rules().stackLongStitches(), "lands-on-long", rules);
            addIf(landing == 'c', "lands-on-chain", rules);
        }
        addIf(inCornerChain && !chart.rules().landOnCornerChain(), "lands-on-corner-chain", rules);
        addIf(r > 2 && !yarn(r).equals(yarn(r - 2)), "other-yarn", rules);
        addIf(yarn(r).equals(yarn(r - 1)), "unseen-long", rules);
        return rules;
    }

    private static List<String> brokenByChain(List<String> sides, int r, int p) {
        List<String> rules = new ArrayList<>();
        boolean atEnd = p == 1 || p == sides.get(r).length();
        addIf(atEnd, "chain-at-corner", rules);
        addIf(!atEnd && r > 1 && stitch(sides, r - 1, p - 1) == 'c', "deep-gap", rules);
        return rules;
    }

    private static void addIf(boolean broken, String rule, List<String> rules) {
        if (broken) {
            rules.add(rule);
        }
    }

    /** First stitches of the runs that are too long, and their lengths; empty for a run without an end. */
    private Map<Place, OptionalInt> looseRuns(int r) {
        Round round = chart.round(r);
        if (round.repeat().letters().equals("l".repeat(w))) {
            return looseRunsThroughTheRepeat(r);
        }
        Map<Place, Integer> longest = new HashMap<>();
        Set<Place> goesOn = new HashSet<>();
        for (int m = 0; m <= 2; m++) {
            for (int[] run : runs(r, m)) {
                longest.merge(place(m, r, run[0]), run[1] - run[0] + 1, Math::max);
                for (int p = run[0] + 1; p <= run[1]; p++) {
                    goesOn.add(place(m, r, p));
                }
            }
        }
        longest.keySet().removeAll(goesOn);
        longest.values().removeIf(length -> length <= looseRun);
        Map<Place, OptionalInt> found = new HashMap<>();
        longest.forEach((place, length) -> found.put(place, OptionalInt.of(length)));
        return found;
    }

    private Map<Place, OptionalInt> looseRunsThroughTheRepeat(int r) {
        Map<Place, OptionalInt> found = new HashMap<>();
        int inRepeat = a + r + 1;
        for (int[] run : runs(r, 1)) {
            if (run[0] <= inRepeat && run[1] >= inRepeat) {
                found.put(place(1, r, run[0]), OptionalInt.empty());
            } else if (run[1] - run[0] + 1 > looseRun) {
                found.put(place(1, r, run[0]), OptionalInt.of(run[1] - run[0] + 1));
            }
        }
        return found;
    }

    /** First and last stitch of every run along a whole side. */
    private List<int[]> runs(int r, int m) {
        List<int[]> runs = new ArrayList<>();
        String side = sides(m).get(r);
        int start = 0;
        for (int p = 2; r > 1 && p <= side.length(); p++) {
            boolean counts = p < side.length() && side.charAt(p - 1) == 'l';
            if (counts && start == 0) {
                start = p;
            } else if (!counts && start > 0) {
                runs.add(new int[] {start, p - 1});
                start = 0;
            }
        }
        return runs;
    }

    private static char stitch(List<String> sides, int r, int p) {
        return sides.get(r).charAt(p - 1);
    }

    private String yarn(int r) {
        return chart.round(r).yarn();
    }

    private Place place(int m, int r, int p) {
        int inRepeats = p - (a + r);
        if (inRepeats <= 0) {
            return new Place(r, Section.FROM_CORNER, p);
        }
        return inRepeats <= m * w
                ? new Place(r, Section.REPEAT, (inRepeats - 1) % w + 1)
                : new Place(r, Section.TO_CORNER, inRepeats - m * w);
    }
}
