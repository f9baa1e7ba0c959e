package edgewright.yarn;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.HookSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.Yarn;
import edgewright.fit.Inches;
import edgewright.texts.Bundle;
import edgewright.yarn.WeightCategory.Edition;
import edgewright.yarn.WeightCategory.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Says what the values of this package mean. Lengths are in metres with one digit after the point; what is to be bought or had
 * is rounded up.
 */
public final class YarnSentences {
    private final Bundle texts = YarnTexts.BUNDLE;

    /** A length that was worked, such as {@code 12.3 m}. */
    public String worked(double metres) {
        return texts.text("metres", YarnTexts.number(metres, 1));
    }

    /** A length to have at hand, in whole metres, rounded up. */
    public String toHave(double metres) {
        return texts.text("metres", roundedUp(metres));
    }

    /** The weight to have at hand, in whole grams, rounded up; empty if it is not known. */
    public Optional<String> grams(Amounts.OfYarn yarn) {
        return yarn.grams().isPresent()
                ? Optional.of(texts.text("grams", roundedUp(yarn.grams().getAsDouble())))
                : Optional.empty();
    }

    /** The balls to have at hand; empty if their length is not known. */
    public Optional<String> balls(Amounts.OfYarn yarn) {
        return yarn.balls().isPresent()
                ? Optional.of(texts.text(
                        yarn.balls().getAsInt() == 1 ? "balls.one" : "balls.more",
                        yarn.balls().getAsInt()))
                : Optional.empty();
    }

    /** The number of a round, with its layer unless it is a charted one. */
    public String round(WorkedRound round) {
        if (round.layer() == WorkedRound.Layer.BACK && round.number() == 0) {
            return texts.text("layer.backBase");
        }
        return texts.text("layer." + round.layer(), round.number());
    }

    /** What the amounts go out from, a sentence each. */
    public List<String> notes(Amounts amounts) {
        List<String> notes = new ArrayList<>();
        notes.add(texts.text(
                "amounts.counted",
                YarnTexts.shortest(Amounts.TAIL_CM),
                YarnTexts.shortest(100 * Amounts.MARGIN),
                Inches.ofMm(10 * Amounts.TAIL_CM)));
        if (amounts.rounds().stream().anyMatch(round -> round.round().layer() != WorkedRound.Layer.FRONT)) {
            notes.add(texts.text("amounts.back"));
        }
        if (amounts.estimated().isEmpty()) {
            notes.add(texts.text("amounts.measured"));
        } else {
            List<String> kinds = amounts.estimated().stream()
                    .map(kind -> texts.text("kind." + kind))
                    .toList();
            notes.add(texts.text("amounts.estimated", Bundle.and(kinds)));
            notes.add(texts.text("amounts.advice"));
        }
        return notes;
    }

    /** Whether two yarns that meet can be told apart, and by how much. */
    public String contrast(YarnPair meeting) {
        Contrast contrast = meeting.contrast();
        return texts.text(
                contrast.isLow() ? "contrast.low" : "contrast.clear",
                name(meeting.inner()),
                name(meeting.outer()),
                YarnTexts.number(contrast.ratio(), 1),
                YarnTexts.number(contrast.difference(), 0));
    }

    /** What is meant by told apart. */
    public String contrastLimits() {
        return texts.text(
                "contrast.limits",
                YarnTexts.shortest(Contrast.CLEAR_RATIO),
                YarnTexts.shortest(Contrast.LEAST_RATIO),
                YarnTexts.shortest(Contrast.LEAST_DIFFERENCE));
    }

    /** The colour that is suggested for a yarn, or that there is none. */
    public String suggestion(Yarn yarn, Optional<Colour> colour) {
        return colour.map(nearest -> texts.text("contrast.nearest", name(yarn), nearest))
                .orElseGet(() -> texts.text("contrast.none", name(yarn)));
    }

    /** Whether the border can be finished with what is at hand, and how, a sentence each. */
    public List<String> left(Chart chart, WhatIsLeft answer) {
        List<String> sentences = new ArrayList<>();
        if (answer instanceof WhatIsLeft.Unknown) {
            return List.of(texts.text("left.unknown"));
        }
        if (answer instanceof WhatIsLeft.Enough) {
            sentences.add(texts.text("left.enough"));
        }
        for (Amounts.OfYarn yarn : answer.amounts().missing()) {
            String metres = texts.text("metres", YarnTexts.number(Math.ceil(yarn.missingMetres() * 10) / 10, 1));
            sentences.add(texts.text("left.missing", name(yarn.yarn()), metres));
        }
        if (answer instanceof WhatIsLeft.OtherYarns others) {
            sentences.add(texts.text("left.otherYarns", changes(chart, others)));
            if (!others.proved()) {
                sentences.add(texts.text("left.notProved"));
            }
        } else if (answer instanceof WhatIsLeft.NotEnough) {
            sentences.add(texts.text("left.notEnough"));
        } else if (answer instanceof WhatIsLeft.Undecided) {
            sentences.add(texts.text("left.undecided"));
        }
        sentences.add(texts.text("left.margin"));
        return sentences;
    }

    /** Which rounds go to which yarn: 'rounds 2 and 4 in Fog'. */
    private String changes(Chart chart, WhatIsLeft.OtherYarns others) {
        TreeMap<Integer, List<Integer>> byYarn = new TreeMap<>();
        for (int round : others.changed(chart)) {
            Yarn yarn = chart.yarn(others.yarns().get(round - 1)).orElseThrow();
            byYarn.computeIfAbsent(chart.yarns().indexOf(yarn), unused -> new ArrayList<>())
                    .add(round);
        }
        List<String> parts = new ArrayList<>();
        byYarn.forEach((yarn, rounds) -> parts.add(
                texts.text("left.round", rounds(rounds), name(chart.yarns().get(yarn)))));
        return Bundle.and(parts);
    }

    /** What could be worked in another yarn, or that it cannot. */
    public String swap(YarnSwap swap) {
        String rounds = Bundle.capital(rounds(swap.rounds()));
        return swap.to().isEmpty()
                ? texts.text("swap.cannot", rounds, name(swap.from()))
                : texts.text(
                        "swap.can",
                        rounds,
                        name(swap.from()),
                        Bundle.or(swap.to().stream().map(YarnSentences::name).toList()));
    }

    /** Why rounds go together in a swap, and what stays. */
    public String swapLaw() {
        return texts.text("swap.why");
    }

    /** Which hooks and which weight of yarn the border is made with, a sentence each; nothing where nobody has said. */
    public List<String> tools(PatternDetails making) {
        List<String> sentences = new ArrayList<>();
        making.hook().ifPresent(hook -> sentences.add(texts.text("hook.of", hook(hook))));
        making.backHook().ifPresent(hook -> sentences.add(texts.text("hook.ofBack", hook(hook))));
        making.yarnWeight().ifPresent(number -> {
            sentences.add(texts.text("weight.of", weight(number), usual(number)));
            if (making.hook()
                    .filter(hook -> !WeightCategory.isUsual(number, hook))
                    .isPresent()) {
                sentences.add(texts.text("weight.unusual"));
            }
        });
        return sentences;
    }

    /** The number and name of a weight of yarn, such as {@code 4 Medium}. */
    public String weight(int number) {
        return texts.text("weight.name", number, texts.text("weight." + number));
    }

    /** What is usual for yarn of this weight; where the two editions differ, both. */
    public String usual(int number) {
        String print = usual(WeightCategory.of(number, Edition.PRINT));
        String web = usual(WeightCategory.of(number, Edition.WEB));
        return print.equals(web) ? print : texts.text("weight.editions", print, web);
    }

    /** A hook in millimetres, and what else it is called. */
    public String hook(HookSize hook) {
        List<String> names = new ArrayList<>();
        HookNames.us(hook).ifPresent(name -> names.add(texts.text("hook.us", name)));
        HookNames.uk(hook).forEach(name -> names.add(texts.text("hook.uk", name)));
        return names.isEmpty() ? texts.text("hook.mm", hook) : texts.text("hook.names", hook, Bundle.commas(names));
    }

    private String usual(WeightCategory category) {
        return texts.text(
                category.number() == 0 ? "weight.usualLace" : "weight.usual",
                hooks(category.hookMm()),
                stitches(category.stitches()));
    }

    private String hooks(Span mm) {
        String from = YarnTexts.shortest(mm.from().orElseThrow());
        return mm.to().isPresent()
                ? texts.text("weight.mm", from, YarnTexts.shortest(mm.to().getAsDouble()))
                : texts.text("weight.fromMm", from);
    }

    private String stitches(Span stitches) {
        String to = YarnTexts.shortest(stitches.to().orElseThrow());
        return stitches.from().isPresent()
                ? texts.text("range", YarnTexts.shortest(stitches.from().getAsDouble()), to)
                : texts.text("weight.upTo", to);
    }

    /** 'round 6', 'rounds 2, 4 and 7 to 9'; three or more in a row are written from the first to the last. */
    private String rounds(List<Integer> rounds) {
        List<String> parts = new ArrayList<>();
        int at = 0;
        while (at < rounds.size()) {
            int end = at;
            while (end + 1 < rounds.size() && rounds.get(end + 1) == rounds.get(end) + 1) {
                end++;
            }
            if (end - at >= 2) {
                parts.add(texts.text("range", rounds.get(at), rounds.get(end)));
                at = end + 1;
            } else {
                parts.add(String.valueOf(rounds.get(at)));
                at++;
            }
        }
        return texts.text(rounds.size() == 1 ? "rounds.one" : "rounds.more", Bundle.and(parts));
    }

    /** What the designer calls it, or its id if that is nothing. */
    private static String name(Yarn yarn) {
        return yarn.name().isBlank() ? yarn.id() : yarn.name();
    }

    private static String roundedUp(double number) {
        return YarnTexts.number(Math.max(0, Math.ceil(number - Amounts.NOTHING)), 0);
    }
}
