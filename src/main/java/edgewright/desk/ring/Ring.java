package edgewright.desk.ring;

import edgewright.draw.paint.Area;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Findings of squares that hang together, be it by their corners, in one ring with one number.
 *
 * @param squares what is ringed
 * @param areas where they lie on the sheet
 * @param number of the finding, or of the first and how many there are
 * @param isError whether any of them is an error
 * @param plate where the number stands; empty if there is no room for it
 * @param leader from the ring to the plate where the two do not touch: the ends of a line
 */
public record Ring(
        Set<Square> squares,
        List<Area> areas,
        String number,
        boolean isError,
        Optional<Area> plate,
        Optional<List<Double>> leader) {
    public Ring {
        squares = Set.copyOf(squares);
        areas = List.copyOf(areas);
    }

    /** The ring without its number. */
    static Ring bare(Set<Square> squares, List<Area> areas, String number, boolean isError) {
        return new Ring(squares, areas, number, isError, Optional.empty(), Optional.empty());
    }

    Ring withPlate(Area at) {
        return new Ring(squares, areas, number, isError, Optional.of(at), Optional.empty());
    }

    Ring withPlate(Area at, List<Double> line) {
        return new Ring(squares, areas, number, isError, Optional.of(at), Optional.of(line));
    }

    /** An area that holds all that is painted of it. */
    public Area bounds() {
        Area all = areas.get(0);
        for (Area area : areas) {
            all = all.with(area);
        }
        all = all.grown(RingShapes.REACH * areas.get(0).widthMm());
        return plate.map(all::with).orElse(all).grown(0.1 * areas.get(0).widthMm());
    }
}
