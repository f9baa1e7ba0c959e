package edgewright.assist.symmetry;

import java.util.List;

/**
 * The seven groups of a pattern that goes on along a band, by their standard names. Up and down mean across the band, from round to
 * round; all have the steps along the band in common.
 *
 * <p>Source of names and elements: the frieze groups as the International Union of Crystallography names them; from memory.
 */
public enum FriezeGroup {
    /** Nothing but steps. */
    P1("p1"),
    /** A glide: a step by half a period and a mirror along the band. */
    P11G("p11g"),
    /** Mirrors across the band. */
    P1M1("p1m1"),
    /** Half turns. */
    P2("p2"),
    /** Mirrors across the band, half turns between them, and so a glide. */
    P2MG("p2mg"),
    /** A mirror along the band. */
    P11M("p11m"),
    /** Mirrors along and across the band, half turns where they meet. */
    P2MM("p2mm");

    private final String standardName;

    FriezeGroup(String standardName) {
        this.standardName = standardName;
    }

    /** The name by which books know it, in small letters. */
    public String standardName() {
        return standardName;
    }

    /** The groups that have all of this and more, with the same steps. */
    public List<FriezeGroup> greater() {
        return switch (this) {
            case P1 -> List.of(P11G, P1M1, P2, P2MG, P11M, P2MM);
            case P11G -> List.of(P2MG);
            case P1M1, P2 -> List.of(P2MG, P2MM);
            case P11M -> List.of(P2MM);
            case P2MG, P2MM -> List.of();
        };
    }

    boolean hasMirrorAcross() {
        return this == P1M1 || this == P2MG || this == P2MM;
    }

    boolean hasHalfTurn() {
        return this == P2 || this == P2MG || this == P2MM;
    }

    boolean hasMirrorAlong() {
        return this == P11M || this == P2MM;
    }

    boolean hasGlide() {
        return this == P11G || this == P2MG;
    }
}
