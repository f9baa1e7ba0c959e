package edgewright.chart;

import java.util.Objects;
import java.util.Optional;

/**
 * The back layer of a double border, if the border has one.
 *
 * @param hook the hook that it is worked with; empty for one size smaller than that of the front. Source of that: common
 *     practice, no source
 */
public record Back(Optional<HookSize> hook, Extras extras) {
    /** A back layer worked with a hook one size smaller. */
    public static final Back DEFAULT = new Back(Optional.empty());

    public Back {
        Objects.requireNonNull(hook);
        Objects.requireNonNull(extras);
    }

    /** A back layer with no unknown members. */
    public Back(Optional<HookSize> hook) {
        this(hook, Extras.NONE);
    }

    /** This back layer with another hook. */
    public Back withHook(Optional<HookSize> other) {
        return new Back(other, extras);
    }
}
