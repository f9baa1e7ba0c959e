package edgewright.check;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Tries remedies: only what does away with the finding and brings no other is offered, neither error nor warning.
 *
 * <p>A finding is new if its rule was not broken at its place before. Where columns were put in or taken out, places say
 * nothing any more; then no rule may be broken more often than before. Of a ragged chart only the lengths of its sections
 * have been judged, so only these are compared: what else comes to light when it is evened out was there before.
 */
final class RemedyTrial {
    /** What changes least of the fabric first; what only has a rule say less, in the whole chart, last. */
    private static final Comparator<Remedy> ORDER =
            Comparator.comparing((Remedy remedy) -> remedy.edit().relaxesRule()).thenComparingInt(Remedy::changedCells);

    private RemedyTrial() {}

    /** The remedies against one breach that serve, in the order in which they are offered; of as much change, as the rule has them. */
    static List<Remedy> serving(Verdict verdict, RuleBreach<?> breach) {
        return breach.remedies(verdict).stream()
                .flatMap(variants ->
                        variants.flatMap(edit -> tried(verdict, breach, edit).stream()).findFirst().stream())
                .sorted(ORDER)
                .toList();
    }

    private static Optional<Remedy> tried(Verdict before, RuleBreach<?> breach, RemedyEdit edit) {
        Effect effect = edit.isOneForAll() ? before.effect(edit) : new Effect(before, edit);
        return hasTrouble(effect.after, breach) || effect.bringsTrouble()
                ? Optional.empty()
                : Optional.of(new Remedy(edit, effect.changedCells()));
    }

    /** What comes of an edit, whichever finding it is for. It is worked out as it is asked for. */
    static final class Effect {
        private final Verdict before;
        private final Verdict after;
        private Boolean bringsTrouble;
        private Integer changedCells;

        Effect(Verdict before, RemedyEdit edit) {
            this.before = before;
            this.after = Checker.recheck(before, edit.applyTo(before.chart()));
        }

        private boolean bringsTrouble() {
            Boolean known = bringsTrouble;
            if (known == null) {
                known = RemedyTrial.bringsTrouble(before, after);
                bringsTrouble = known;
            }
            return known;
        }

        private int changedCells() {
            Integer known = changedCells;
            if (known == null) {
                known = ChangedCells.between(before.chart(), after.chart());
                changedCells = known;
            }
            return known;
        }
    }

    private static boolean hasTrouble(Verdict after, RuleBreach<?> breach) {
        return still(after, breach).isPresent();
    }

    /** The breach of the same rule at the same place in another chart with the same columns; empty if it is not broken there. */
    static Optional<RuleBreach<?>> still(Verdict after, RuleBreach<?> breach) {
        var stitch = breach.place().oneStitch();
        if (stitch.isPresent() && after.judged()) {
            return new RoundJudge(after.chart())
                    .breaches(stitch.get().round()).stream()
                            .filter(breach::isSameTrouble)
                            .findFirst();
        }
        return Stream.concat(after.parts().outside().stream(), after.parts().contrast().stream())
                .filter(breach::isSameTrouble)
                .findFirst();
    }

    private static boolean bringsTrouble(Verdict before, Verdict after) {
        if (!before.judged()) {
            return !after.judged()
                    && bringsTrouble(before.parts().outside().stream(), after.parts().outside().stream());
        }
        if (!after.judged()) {
            return true;
        }
        return before.chart().border().equals(after.chart().border())
                ? bringsTroubleInPlace(before, after)
                : bringsMoreTrouble(before, after);
    }

    /** Rounds that were not judged again still have the same object for what was found in them. */
    @SuppressWarnings("ReferenceEquality") // as many findings may be others
    private static boolean bringsTroubleInPlace(Verdict before, Verdict after) {
        RoundJudge judge = new RoundJudge(after.chart());
        RoundJudge earlier = new RoundJudge(before.chart());
        for (int round = 1; round <= after.chart().rounds().size(); round++) {
            if (before.ofStitches(round) != after.ofStitches(round)
                    && after.ofStitches(round).all() > 0
                    && judge.breaksMore(round, earlier)) {
                return true;
            }
        }
        return bringsTrouble(before.parts().contrast().stream(), after.parts().contrast().stream());
    }

    private static boolean bringsTrouble(Stream<RuleBreach<?>> before, Stream<RuleBreach<?>> after) {
        Set<Trouble> old = before.map(Trouble::of).collect(Collectors.toSet());
        return after.map(Trouble::of).anyMatch(trouble -> !old.contains(trouble));
    }

    private static boolean bringsMoreTrouble(Verdict before, Verdict after) {
        Map<Rule<?>, Long> old = countByRule(before);
        return countByRule(after).entrySet().stream()
                .anyMatch(entry -> entry.getValue() > old.getOrDefault(entry.getKey(), 0L));
    }

    private static Map<Rule<?>, Long> countByRule(Verdict verdict) {
        return verdict.breaches().collect(Collectors.groupingBy(RuleBreach::rule, Collectors.counting()));
    }

    /** A breach without what there is to say about it. */
    private record Trouble(Rule<?> rule, FindingPlace place) {
        static Trouble of(RuleBreach<?> breach) {
            return new Trouble(breach.rule(), breach.place());
        }
    }
}
