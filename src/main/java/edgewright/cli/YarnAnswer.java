package edgewright.cli;

import com.fasterxml.jackson.annotation.JsonInclude;
import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Yarn;
import edgewright.yarn.Amounts;
import edgewright.yarn.WhatIsLeft;
import edgewright.yarn.WorkedRound;
import edgewright.yarn.YarnPair;
import edgewright.yarn.YarnSwap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What {@link YarnCommand} answers in JSON. Lengths are in metres, to the centimetre; those of yarns are with their margin,
 * those of rounds without. What is not known is left out.
 */
record YarnAnswer(
        String title,
        List<Integer> repeats,
        double margin,
        List<String> estimated,
        List<OfRound> rounds,
        List<OfYarn> yarns,
        List<Pair> contrast,
        Left left,
        List<Exchange> swaps) {

    record OfRound(
            String layer, int round, String yarn, Map<String, Long> stitches, double metres, double metresSoFar) {}

    @JsonInclude(JsonInclude.Include.NON_NULL)
    record OfYarn(
            String yarn, String name, double metres, Double grams, Integer balls, Double inHand, Double missing) {}

    record Pair(String inner, String outer, int round, double ratio, double difference, boolean low) {}

    /** @param yarns those of the charted rounds, if other yarns are enough */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Left(String answer, List<String> yarns, Boolean proved) {}

    record Exchange(List<Integer> rounds, String from, List<String> to) {}

    static YarnAnswer of(
            Chart chart, PerSide<Integer> repeats, WhatIsLeft answer, List<YarnPair> meetings, List<YarnSwap> swaps) {
        Amounts amounts = answer.amounts();
        return new YarnAnswer(
                chart.title(),
                repeats.stream().toList(),
                Amounts.MARGIN,
                amounts.estimated().stream().map(YarnAnswer::member).toList(),
                amounts.rounds().stream().map(YarnAnswer::round).toList(),
                amounts.yarns().stream().map(YarnAnswer::yarn).toList(),
                meetings.stream().map(YarnAnswer::pair).toList(),
                left(answer),
                swaps.stream()
                        .map(swap -> new Exchange(
                                swap.rounds(),
                                swap.from().id(),
                                swap.to().stream().map(Yarn::id).toList()))
                        .toList());
    }

    private static OfRound round(Amounts.OfRound amount) {
        WorkedRound round = amount.round();
        Map<String, Long> stitches = new LinkedHashMap<>();
        round.stitches().forEach((kind, count) -> stitches.put(member(kind), count));
        return new OfRound(
                member(round.layer()),
                round.number(),
                round.yarn(),
                stitches,
                toHundredth(amount.metres()),
                toHundredth(amount.metresSoFar()));
    }

    private static OfYarn yarn(Amounts.OfYarn amount) {
        OptionalDouble inHand = amount.yarn().metresInHand();
        return new OfYarn(
                amount.yarn().id(),
                amount.yarn().name(),
                toHundredth(amount.metres()),
                amount.grams().isPresent() ? toHundredth(amount.grams().getAsDouble()) : null,
                amount.balls().isPresent() ? amount.balls().getAsInt() : null,
                inHand.isPresent() ? inHand.getAsDouble() : null,
                inHand.isPresent() ? toHundredth(amount.missingMetres()) : null);
    }

    private static Pair pair(YarnPair meeting) {
        return new Pair(
                meeting.inner().id(),
                meeting.outer().id(),
                meeting.round(),
                toHundredth(meeting.contrast().ratio()),
                toHundredth(meeting.contrast().difference()),
                meeting.contrast().isLow());
    }

    private static Left left(WhatIsLeft answer) {
        if (answer instanceof WhatIsLeft.OtherYarns others) {
            return new Left("otherYarns", others.yarns(), others.proved());
        }
        String word = answer instanceof WhatIsLeft.Unknown
                ? "unknown"
                : answer instanceof WhatIsLeft.Enough
                        ? "enough"
                        : answer instanceof WhatIsLeft.NotEnough ? "notEnough" : "undecided";
        return new Left(word, null, null);
    }

    private static double toHundredth(double number) {
        return Math.round(number * 100) / 100.0;
    }

    /** A constant as the members of a chart file are written: {@code backLoop}. */
    private static String member(Enum<?> constant) {
        StringBuilder member = new StringBuilder();
        for (String word : constant.name().toLowerCase(Locale.ROOT).split("_")) {
            member.append(member.isEmpty() ? word : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
        }
        return member.toString();
    }
}
