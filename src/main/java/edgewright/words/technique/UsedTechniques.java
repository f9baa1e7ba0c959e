package edgewright.words.technique;

import edgewright.chart.PerSide;
import edgewright.chart.Stitch;
import edgewright.chart.Technique;
import edgewright.words.technique.ShownTechnique.Ends;
import edgewright.words.technique.ShownTechnique.Kind;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.Run;
import edgewright.words.tree.WrittenBack;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Finds out which techniques a pattern uses, and which of the ways to work them. */
final class UsedTechniques {
    private final Instructions pattern;
    private final Technique technique;
    private final Set<Stitch> stitches = EnumSet.noneOf(Stitch.class);

    private UsedTechniques(Instructions pattern, Technique technique) {
        this.pattern = pattern;
        this.technique = technique;
        pattern.rounds().stream().flatMap(UsedTechniques::runs).map(Run::stitch).forEach(stitches::add);
    }

    /** In the order of their kinds; of corners one for each number of chains. */
    static List<ShownTechnique> of(Instructions pattern, Technique technique) {
        return new UsedTechniques(pattern, technique).all();
    }

    private List<ShownTechnique> all() {
        List<ShownTechnique> used = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            used.addAll(of(kind));
        }
        return used;
    }

    private List<ShownTechnique> of(Kind kind) {
        ShownTechnique usual = ShownTechnique.of(kind);
        boolean byNeedle = technique.close() == Technique.Close.INVISIBLE;
        return switch (kind) {
            case ALONG_STITCHES, ROW_ENDS -> List.of(usual);
            case START_AT_CORNER -> startsAtCorner() ? corners(usual.with(technique.join())) : List.of();
            case START_ABOVE_MARKER -> onlyIf(startsAlongSide(), usual.with(technique.join()));
            case BACK_LOOP -> onlyIf(stitches.contains(Stitch.BACK_LOOP), usual);
            case LONG -> onlyIf(stitches.contains(Stitch.LONG), usual.with(Stitch.LONG));
            case CORNER -> corners(usual);
            case TWO_IN_ONE -> changes(ChangingStep.TwoInOne.class, usual);
            case TWO_TOGETHER -> changes(ChangingStep.Together.class, usual);
            case INVISIBLE_JOIN -> onlyIf(byNeedle, usual.with(technique.join()).with(ends()));
            case SLIP_JOIN -> onlyIf(!byNeedle, usual.with(technique.join()).with(ends()));
            case LAYERS -> onlyIf(pattern.back().filter(WrittenBack::joined).isPresent(), usual);
        };
    }

    private static List<ShownTechnique> onlyIf(boolean used, ShownTechnique shown) {
        return used ? List.of(shown) : List.of();
    }

    private boolean startsAlongSide() {
        return pattern.rounds().stream().anyMatch(round -> round.start().isPresent());
    }

    private boolean startsAtCorner() {
        return pattern.rounds().isEmpty()
                || pattern.rounds().stream().anyMatch(round -> round.start().isEmpty());
    }

    private Ends ends() {
        return startsAlongSide() ? Ends.SIDE : Ends.CORNER;
    }

    /** Corners are worked in the stitch that most rounds are of. */
    private List<ShownTechnique> corners(ShownTechnique usual) {
        Set<Integer> chains = new TreeSet<>();
        pattern.base().cornerChains().ifPresent(chains::add);
        pattern.rounds().forEach(round -> chains.add(round.cornerChains()));
        boolean plain = stitches.contains(Stitch.PLAIN) && !stitches.contains(Stitch.BACK_LOOP);
        return chains.stream()
                .map(number -> usual.withChains(number).with(plain ? Stitch.PLAIN : Stitch.BACK_LOOP))
                .toList();
    }

    /** A way of changing a number, with the first stitch for which it is used. */
    private List<ShownTechnique> changes(Class<? extends ChangingStep> way, ShownTechnique usual) {
        return pattern.rounds().stream()
                .flatMap(UsedTechniques::changes)
                .filter(way::isInstance)
                .map(step -> usual.with(
                        step instanceof ChangingStep.Together both
                                ? both.stitch()
                                : ((ChangingStep.TwoInOne) step).first()))
                .limit(1)
                .toList();
    }

    private static Stream<Run> runs(WrittenRound round) {
        return Stream.concat(
                round.stretch().runs(),
                changes(round)
                        .flatMap(step -> step instanceof ChangingStep.Work work ? Stream.of(work.run()) : Stream.of()));
    }

    private static Stream<ChangingStep> changes(WrittenRound round) {
        return round.changes().stream()
                .flatMap(PerSide::stream)
                .flatMap(List::stream)
                .flatMap(step -> step instanceof ChangingStep.Times times ? times.steps().stream() : Stream.of(step));
    }
}
