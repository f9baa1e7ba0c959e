package edgewright.chart;

import java.util.Objects;

/**
 * A motif that is kept under a name.
 *
 * @param name one that says something
 */
public record NamedMotif(String name, Motif motif, Extras extras) {
    public NamedMotif {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a motif that is kept has a name");
        }
        Objects.requireNonNull(motif);
        Objects.requireNonNull(extras);
    }

    /** A motif with no unknown members. */
    public NamedMotif(String name, Motif motif) {
        this(name, motif, Extras.NONE);
    }
}
