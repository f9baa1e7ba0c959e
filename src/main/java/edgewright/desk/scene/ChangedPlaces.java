package edgewright.desk.scene;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Stitches;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where two charts show different stitches. */
final class ChangedPlaces {
    private ChangedPlaces() {}

    /** The places, if the two differ in nothing else that is seen of the border, and not in more places than that. */
    static Optional<List<Place>> between(Chart before, Chart after, int most) {
        if (!before.border().equals(after.border())
                || !before.yarns().equals(after.yarns())
                || !before.corner().equals(after.corner())
                || before.rounds().size() != after.rounds().size()
                || !before.raggedSections().isEmpty()
                || !after.raggedSections().isEmpty()) {
            return Optional.empty();
        }
        List<Place> places = new ArrayList<>();
        for (int r = 1; r <= after.rounds().size(); r++) {
            Round then = before.round(r);
            Round now = after.round(r);
            if (!then.yarn().equals(now.yarn())) {
                return Optional.empty();
            }
            for (Section section : Section.values()) {
                add(r, section, then.section(section), now.section(section), places);
            }
            if (places.size() > most) {
                return Optional.empty();
            }
        }
        return Optional.of(places);
    }

    private static void add(int round, Section section, Stitches then, Stitches now, List<Place> places) {
        if (then.equals(now)) {
            return;
        }
        for (int place = 1; place <= now.length(); place++) {
            if (then.at(place) != now.at(place)) {
                places.add(new Place(round, section, place));
            }
        }
    }
}
