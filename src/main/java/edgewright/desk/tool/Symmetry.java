package edgewright.desk.tool;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The mirrors that are up, as one function from places to places: whatever can be reached through them, in any order and as
 * often as one likes, is the same stitch. The same for every place that is reached, so a border drawn under it is symmetrical.
 */
public record Symmetry(Set<Mirror> mirrors) {
    /** No mirror is up. */
    public static final Symmetry NONE = new Symmetry(Set.of());

    public Symmetry {
        mirrors = Set.copyOf(mirrors);
    }

    /** The places that this one is the same as, itself among them and first; only such as the chart has. */
    public Set<Place> images(Chart chart, Place place) {
        return images(chart, List.of(place));
    }

    /** The places that any of these is the same as, these among them and first. */
    public Set<Place> images(Chart chart, Collection<Place> places) {
        Set<Place> reached = new LinkedHashSet<>(places);
        if (mirrors.isEmpty()) {
            return reached;
        }
        SideShape shape = chart.shape();
        Deque<Place> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            Place place = open.remove();
            if (place.place() > shape.length(place.section(), place.round())) {
                // A section that is longer than its round has no image of its last stitches.
                continue;
            }
            for (Mirror mirror : mirrors) {
                for (Place image : mirror.images(shape, place)) {
                    if (chart.has(image) && reached.add(image)) {
                        open.add(image);
                    }
                }
            }
        }
        return reached;
    }

    /** Stitches with their images. Where an image meets a stitch that was given, that stitch counts. */
    public Map<Place, Stitch> images(Chart chart, Map<Place, Stitch> stitches) {
        Map<Place, Stitch> all = new LinkedHashMap<>(stitches);
        // Sorted, so that where two images meet it is always the same one that counts.
        List<Place> sorted = new ArrayList<>(stitches.keySet());
        sorted.sort(null);
        for (Place place : sorted) {
            images(chart, place).forEach(image -> all.putIfAbsent(image, stitches.get(place)));
        }
        return all;
    }
}
