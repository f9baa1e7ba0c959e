package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Tries remedies: only what does away with the finding and brings no error is offered.
 *
 * <p>An error is new if its rule was not broken at its place before. Where columns were put in or taken out, places say
 * nothing any more; then no rule may be broken more often than before. Of a ragged chart only the lengths of its sections
 * have been judged, so only these are compared: what else comes to light when it is evened out was there before.
 */
final class RemedyTrial {
    private RemedyTrial() {}

    /** The remedies against one flag that serve, best first. */
    static List<Remedy> serving(Verdict verdict, Violation flag) {
        return flag.rule().remedies(verdict, flag).stream()
                .flatMap(variants -> variants.filter(remedy -> serves(verdict, flag, remedy)).findFirst().stream())
                .toList();
    }

    private static boolean serves(Verdict before, Violation flag, Remedy remedy) {
        Chart edited = remedy.applyTo(before.chart());
        Verdict after = Checker.recheck(before, edited);
        return !hasTrouble(after, flag) && !bringsError(before, after);
    }

    private static boolean hasTrouble(Verdict after, Violation flag) {
        Optional<Place> stitch = flag.where().stitch();
        if (stitch.isPresent() && after.judged()) {
            return Stream.of(after.inRound(stitch.get().round())).anyMatch(flag::isSameTrouble);
        }
        return Stream.concat(after.parts().outside().stream(), after.parts().contrast().stream())
                .anyMatch(flag::isSameTrouble);
    }

    private static boolean bringsError(Verdict before, Verdict after) {
        if (!before.judged()) {
            return !after.judged() && bringsError(before.parts().outside().stream(), after.parts().outside().stream());
        }
        if (!after.judged()) {
            return true;
        }
        return before.chart().shape().equals(after.chart().shape())
                ? bringsErrorInPlace(before, after)
                : bringsMoreErrors(before, after);
    }

    /** Rounds that were not judged again still have their old array of flags. */
    private static boolean bringsErrorInPlace(Verdict before, Verdict after) {
        for (int round = 1; round <= after.chart().rounds().size(); round++) {
            Violation[] old = before.inRound(round);
            Violation[] now = after.inRound(round);
            if (old != now && bringsError(Stream.of(old), Stream.of(now))) {
                return true;
            }
        }
        return false;
    }

    private static boolean bringsError(Stream<Violation> before, Stream<Violation> after) {
        Set<Trouble> old = before.map(Trouble::of).collect(Collectors.toSet());
        return after.filter(Violation::isError).map(Trouble::of).anyMatch(trouble -> !old.contains(trouble));
    }

    private static boolean bringsMoreErrors(Verdict before, Verdict after) {
        Map<Rule, Long> old = errorsByRule(before);
        return errorsByRule(after).entrySet().stream()
                .anyMatch(entry -> entry.getValue() > old.getOrDefault(entry.getKey(), 0L));
    }

    private static Map<Rule, Long> errorsByRule(Verdict verdict) {
        return verdict.flags()
                .filter(Violation::isError)
                .collect(Collectors.groupingBy(Violation::rule, Collectors.counting()));
    }

    /** A flag without what there is to say about it. */
    private record Trouble(Rule rule, FindingPlace where) {
        static Trouble of(Violation flag) {
            return new Trouble(flag.rule(), flag.where());
        }
    }
}
