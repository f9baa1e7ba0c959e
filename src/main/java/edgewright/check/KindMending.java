package edgewright.check;

import java.util.List;
import java.util.Optional;

/**
 * Mends the findings of one rule one after the other, each with the first remedy that serves on the chart as it is by then and
 * leaves the rule as it is. A remedy that serves brings no new finding, so all of them together bring none either.
 */
final class KindMending {
    private final String rule;
    private Verdict verdict;

    private KindMending(Verdict before, String rule) {
        this.rule = rule;
        verdict = before;
    }

    static MendedKind of(Verdict before, String rule) {
        KindMending mending = new KindMending(before, rule);
        mending.mend();
        Verdict after = mending.verdict;
        int left = count(after, rule);
        return new MendedKind(
                rule,
                after.chart(),
                count(before, rule) - left,
                left,
                ChangedCells.between(before.chart(), after.chart()));
    }

    private void mend() {
        List<RuleBreach<?>> all = verdict.breaches()
                .filter(breach -> breach.rule().id().equals(rule))
                .limit(Verdict.MOST_TOLD)
                .toList();
        boolean helped = true;
        while (helped) {
            // What one remedy has changed may be what another one needs.
            helped = false;
            for (RuleBreach<?> breach : all) {
                helped |= mend(breach);
            }
        }
    }

    private boolean mend(RuleBreach<?> breach) {
        Optional<Remedy> first = RemedyTrial.still(verdict, breach)
                .flatMap(now -> RemedyTrial.serving(verdict, now).stream()
                        .filter(remedy -> !remedy.edit().relaxesRule())
                        .findFirst());
        first.ifPresent(remedy -> verdict = Checker.recheck(verdict, remedy.applyTo(verdict.chart())));
        return first.isPresent();
    }

    private static int count(Verdict of, String rule) {
        return (int)
                of.breaches().filter(breach -> breach.rule().id().equals(rule)).count();
    }
}
