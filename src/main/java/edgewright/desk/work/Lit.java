package edgewright.desk.work;

import edgewright.chart.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where words and chart point at each other: which stitches of the chart are lit since somebody points at their words, and which
 * stitch of the chart is pointed at. Neither is part of the chart, nor of what is chosen in it.
 */
public final class Lit {
    private final List<Runnable> ofLight = new ArrayList<>();
    private final List<Runnable> ofPointer = new ArrayList<>();
    private Set<Place> places = Set.of();
    private Optional<Place> mark = Optional.empty();
    private Optional<Place> pointed = Optional.empty();

    /** The stitches whose words are pointed at, or read. */
    public Set<Place> places() {
        return places;
    }

    /** The stitch at which the words are read; to be seen even where the chart is larger than its window. */
    public Optional<Place> mark() {
        return mark;
    }

    /** The stitch of the chart under the mouse. */
    public Optional<Place> pointed() {
        return pointed;
    }

    /** Lights these stitches and no others, with the reading mark on one of them or on none. */
    public void light(Set<Place> lit, Optional<Place> read) {
        if (!lit.equals(places) || !read.equals(mark)) {
            places = Set.copyOf(lit);
            mark = read;
            ofLight.forEach(Runnable::run);
        }
    }

    /** Notes which stitch of the chart is pointed at now. */
    public void point(Optional<Place> at) {
        if (!at.equals(pointed)) {
            pointed = at;
            ofPointer.forEach(Runnable::run);
        }
    }

    /** Is run after every change of what is lit. */
    public void whenLit(Runnable listener) {
        ofLight.add(listener);
    }

    /** Is run after another stitch of the chart is pointed at, or none any more. */
    public void whenPointed(Runnable listener) {
        ofPointer.add(listener);
    }
}
