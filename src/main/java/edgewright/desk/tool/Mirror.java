package edgewright.desk.tool;

import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * A way in which a border can be its own image. A stitch stays in its round, and what stands on it goes along: the image of the
 * stitch below is below the image.
 */
public enum Mirror {
    /**
     * Across the corner: what is worked so many stitches before the corner chains is worked as many after them. Where the part
     * to the corner and the part from it differ in length, some stitches of the longer one have their image in the repeat, and the
     * repeat has several images.
     */
    CORNER("corner") {
        @Override
        Set<Place> images(SideShape shape, Place place) {
            Set<Place> images = new LinkedHashSet<>();
            for (int from : distances(shape, place, Section.FROM_CORNER)) {
                images.add(before(shape, place.round(), from));
            }
            for (int from : distances(shape, place, Section.TO_CORNER)) {
                images.add(after(shape, place.round(), from));
            }
            return images;
        }
    },
    /** Across the middle of the repeat. The parts at the corners stay. */
    REPEAT("repeat") {
        @Override
        Set<Place> images(SideShape shape, Place place) {
            return Set.of(
                    place.section().isRepeat()
                            ? new Place(place.round(), place.section(), shape.w() + 1 - place.place())
                            : place);
        }
    },
    /** On by half a repeat, if that is a whole number of stitches. The parts at the corners stay. */
    HALF("half") {
        @Override
        Set<Place> images(SideShape shape, Place place) {
            return Set.of(
                    place.section().isRepeat() && isPossible(shape)
                            ? new Place(
                                    place.round(), place.section(), (place.place() - 1 + shape.w() / 2) % shape.w() + 1)
                            : place);
        }

        @Override
        public boolean isPossible(SideShape shape) {
            return shape.w() % 2 == 0;
        }
    };

    private final String id;

    Mirror(String id) {
        this.id = id;
    }

    /** Its name in texts, keys and tests. */
    public String id() {
        return id;
    }

    /** Whether it does anything on such a side. */
    public boolean isPossible(SideShape shape) {
        return true;
    }

    /** The stitches that are the same as this one, as the border goes round a piece of any size. */
    abstract Set<Place> images(SideShape shape, Place place);

    /**
     * How many stitches from the corner chains a place can be, counted from 1 at the chains.
     *
     * @param atCorner which corner: that before the part from the corner, or that behind the part to the corner
     */
    private static Set<Integer> distances(SideShape shape, Place place, Section atCorner) {
        Set<Integer> distances = new LinkedHashSet<>();
        boolean begin = atCorner == Section.FROM_CORNER;
        int length = shape.length(place.section(), place.round());
        int inSection = begin ? place.place() : length + 1 - place.place();
        if (place.section() == atCorner) {
            distances.add(inSection);
        } else if (place.section().isRepeat()) {
            int part = shape.length(atCorner, place.round());
            int other = shape.length(begin ? Section.TO_CORNER : Section.FROM_CORNER, place.round());
            // One repeat beyond the longer part the images begin to be those that were met.
            for (int from = part + inSection; from <= Math.max(part, other) + shape.w(); from += shape.w()) {
                distances.add(from);
            }
        }
        return distances;
    }

    /** The place so many stitches before the corner chains. */
    private static Place before(SideShape shape, int round, int from) {
        int part = shape.length(Section.TO_CORNER, round);
        return from <= part
                ? new Place(round, Section.TO_CORNER, part + 1 - from)
                : new Place(round, Section.REPEAT, shape.w() - (from - part - 1) % shape.w());
    }

    /** The place so many stitches after the corner chains. */
    private static Place after(SideShape shape, int round, int from) {
        int part = shape.length(Section.FROM_CORNER, round);
        return from <= part
                ? new Place(round, Section.FROM_CORNER, from)
                : new Place(round, Section.REPEAT, (from - part - 1) % shape.w() + 1);
    }
}
