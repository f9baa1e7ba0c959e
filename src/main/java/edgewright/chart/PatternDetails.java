package edgewright.chart;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a designer says of how the border is made, beside the chart itself. All of it may be left unsaid.
 *
 * @param start where the rounds are started; empty for a start at a corner
 * @param back the back layer of a double border; empty if the border has one layer
 * @param hook the hook of the front
 * @param swatch what a swatch in the border's own stitches measures
 * @param use how much yarn the designer's stitches take
 * @param yarnWeight the category of the yarn, 0 to {@value #MOST_WEIGHT}, as the Craft Yarn Council numbers them
 * @param skill what a maker should be able to do, in the designer's words; may be empty
 * @param technique how rounds are begun and closed
 * @param sizes those that the pattern is written for, at most {@value NamedSize#MOST}, no two of one name; none for any size
 * @param piece the one that the designer works the border on; empty if its counts are not kept
 */
public record PatternDetails(
        Optional<Start> start,
        Optional<Back> back,
        Optional<HookSize> hook,
        Optional<Swatch> swatch,
        Optional<YarnUse> use,
        OptionalInt yarnWeight,
        String skill,
        Technique technique,
        List<NamedSize> sizes,
        Optional<KeptPiece> piece) {
    /** The highest category of yarn weight. */
    public static final int MOST_WEIGHT = 7;

    /** Nothing is said. */
    public static final PatternDetails NONE = new PatternDetails(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            "");

    public PatternDetails {
        Objects.requireNonNull(start);
        Objects.requireNonNull(back);
        Objects.requireNonNull(hook);
        Objects.requireNonNull(swatch);
        Objects.requireNonNull(use);
        Objects.requireNonNull(technique);
        Objects.requireNonNull(piece);
        sizes = List.copyOf(sizes);
        skill = CleanText.lines(skill);
        if (yarnWeight.isPresent() && (yarnWeight.getAsInt() < 0 || yarnWeight.getAsInt() > MOST_WEIGHT)) {
            throw new IllegalArgumentException(
                    "yarn weight " + yarnWeight.getAsInt() + ": expected 0 to " + MOST_WEIGHT);
        }
        if (sizes.size() > NamedSize.MOST
                || sizes.stream().map(NamedSize::name).distinct().count() < sizes.size()) {
            throw new IllegalArgumentException("sizes: " + sizes);
        }
    }

    /** In the usual technique, for any size. */
    public PatternDetails(
            Optional<Start> start,
            Optional<Back> back,
            Optional<HookSize> hook,
            Optional<Swatch> swatch,
            Optional<YarnUse> use,
            OptionalInt yarnWeight,
            String skill) {
        this(start, back, hook, swatch, use, yarnWeight, skill, Technique.DEFAULT, List.of(), Optional.empty());
    }

    /** The hook of the back layer: its own, else one size smaller than that of the front; empty if neither is known. */
    public Optional<HookSize> backHook() {
        return back.flatMap(layer -> layer.hook().or(() -> hook.flatMap(HookSize::smaller)));
    }

    /** The same with other starts. */
    public PatternDetails withStart(Optional<Start> other) {
        return new PatternDetails(other, back, hook, swatch, use, yarnWeight, skill, technique, sizes, piece);
    }

    /** The same with another back layer, or none. */
    public PatternDetails withBack(Optional<Back> other) {
        return new PatternDetails(start, other, hook, swatch, use, yarnWeight, skill, technique, sizes, piece);
    }

    /** The same with another hook. */
    public PatternDetails withHook(Optional<HookSize> other) {
        return new PatternDetails(start, back, other, swatch, use, yarnWeight, skill, technique, sizes, piece);
    }

    /** The same with another swatch. */
    public PatternDetails withSwatch(Optional<Swatch> other) {
        return new PatternDetails(start, back, hook, other, use, yarnWeight, skill, technique, sizes, piece);
    }

    /** The same with other measurements of yarn. */
    public PatternDetails withUse(Optional<YarnUse> other) {
        return new PatternDetails(start, back, hook, swatch, other, yarnWeight, skill, technique, sizes, piece);
    }

    /** The same with yarn of another weight. */
    public PatternDetails withYarnWeight(OptionalInt other) {
        return new PatternDetails(start, back, hook, swatch, use, other, skill, technique, sizes, piece);
    }

    /** The same with other words on skill. */
    public PatternDetails withSkill(String other) {
        return new PatternDetails(start, back, hook, swatch, use, yarnWeight, other, technique, sizes, piece);
    }

    /** The same with rounds begun and closed otherwise. */
    public PatternDetails withTechnique(Technique other) {
        return new PatternDetails(start, back, hook, swatch, use, yarnWeight, skill, other, sizes, piece);
    }

    /** The same for other sizes. */
    public PatternDetails withSizes(List<NamedSize> other) {
        return new PatternDetails(start, back, hook, swatch, use, yarnWeight, skill, technique, other, piece);
    }

    /** The same with the counts of another piece, or of none. */
    public PatternDetails withPiece(Optional<KeptPiece> other) {
        return new PatternDetails(start, back, hook, swatch, use, yarnWeight, skill, technique, sizes, other);
    }

    /** The same, with a start column that a chart of this shape has, and sizes that close on it. */
    PatternDetails on(BorderShape border) {
        PatternDetails begun = start.isEmpty() ? this : withStart(start.map(begin -> begin.on(border)));
        return sizes.isEmpty()
                ? begun
                : begun.withSizes(sizes.stream().map(size -> size.on(border)).toList());
    }
}
