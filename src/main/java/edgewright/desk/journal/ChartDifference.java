package edgewright.desk.journal;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Stitches;
import java.util.ArrayList;
import java.util.List;

/**
 * In what two states of a chart differ. Rounds are compared with those of the same number, stitches with those of the same
 * place, so a round that was inserted differs in all that lies outside it.
 *
 * @param stitches how many places have another stitch, or none, on one of the two; in the rounds that both have
 * @param rounds the numbers of the rounds that differ in stitches or yarn, of those that both have, in order
 * @param more how many rounds the other has more than the one; below 0 if it has fewer
 * @param otherwise whether anything else differs: texts, yarns, corners, how it is made
 */
record ChartDifference(int stitches, List<Integer> rounds, int more, boolean otherwise) {
    static ChartDifference between(Chart one, Chart other) {
        int stitches = 0;
        List<Integer> rounds = new ArrayList<>();
        for (int r = 1; r <= bothHave(one, other); r++) {
            Round here = one.round(r);
            Round there = other.round(r);
            if (here.equals(there)) {
                continue;
            }
            int changed = 0;
            for (Section section : Section.values()) {
                changed += differing(here.section(section), there.section(section));
            }
            stitches += changed;
            if (changed > 0 || !here.yarn().equals(there.yarn())) {
                rounds.add(r);
            }
        }
        int more = other.rounds().size() - one.rounds().size();
        boolean sameRounds = rounds.isEmpty() && more == 0;
        boolean otherwise = !one.heading().equals(other.heading())
                || !one.corner().equals(other.corner())
                || !one.rules().equals(other.rules())
                || !one.yarns().equals(other.yarns())
                || !one.making().equals(other.making())
                || (sameRounds && !one.equals(other));
        return new ChartDifference(stitches, List.copyOf(rounds), more, otherwise);
    }

    boolean isNone() {
        return rounds.isEmpty() && more == 0 && !otherwise;
    }

    /** The places of the shown chart whose stitch the one beside it has not, in order; all places of a round whose yarn is another. */
    static List<Place> placesIn(Chart shown, Chart beside) {
        List<Place> places = new ArrayList<>();
        for (int r = 1; r <= shown.rounds().size(); r++) {
            boolean isThere = r <= beside.rounds().size();
            boolean sameYarn =
                    isThere && shown.round(r).yarn().equals(beside.round(r).yarn());
            for (Section section : Section.values()) {
                Stitches here = shown.round(r).section(section);
                int there = isThere ? beside.round(r).section(section).length() : 0;
                for (int p = 1; p <= here.length(); p++) {
                    if (!sameYarn
                            || p > there
                            || here.at(p) != beside.round(r).section(section).at(p)) {
                        places.add(new Place(r, section, p));
                    }
                }
            }
        }
        return List.copyOf(places);
    }

    private static int bothHave(Chart one, Chart other) {
        return Math.min(one.rounds().size(), other.rounds().size());
    }

    private static int differing(Stitches here, Stitches there) {
        int shorter = Math.min(here.length(), there.length());
        int differing = Math.max(here.length(), there.length()) - shorter;
        for (int place = 1; place <= shorter; place++) {
            if (here.at(place) != there.at(place)) {
                differing++;
            }
        }
        return differing;
    }
}
