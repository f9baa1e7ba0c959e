package edgewright.assist.picture;

import edgewright.chart.Place;
import edgewright.chart.Rules;
import edgewright.chart.Stitch;
import java.util.List;
import java.util.Map;

/**
 * What stitches are asked for.
 *
 * @param picture what is to show
 * @param yarns the yarn of each round, round 1 first; as many as the picture has rounds
 * @param rules what the designer allows: whether long stitches may be stacked, and how many may lie side by side
 * @param locked stitches that stay what they are, by their places in the repeat; all others become back-loop or long
 */
public record PictureTask(WantedPicture picture, List<String> yarns, Rules rules, Map<Place, Stitch> locked) {
    public PictureTask {
        yarns = List.copyOf(yarns);
        locked = Map.copyOf(locked);
        if (yarns.size() != picture.rounds()) {
            throw new IllegalArgumentException(yarns.size() + " yarns for " + picture.rounds() + " rounds");
        }
        locked.keySet().forEach(picture::at);
    }

    /** A task in which no stitch is locked. */
    public PictureTask(WantedPicture picture, List<String> yarns, Rules rules) {
        this(picture, yarns, rules, Map.of());
    }

    /** The same with the yarns in another order. */
    public PictureTask withYarns(List<String> other) {
        return new PictureTask(picture, other, rules, locked);
    }
}
