package edgewright.yarn;

import static edgewright.texts.Arg.and;
import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.commas;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.decimal;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.or;
import static edgewright.texts.Arg.shortest;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.HookSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.Yarn;
import edgewright.fit.Inches;
import edgewright.texts.Language;
import edgewright.texts.Messages;
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
    private final Language language;
    private final Messages says;

    public YarnSentences(Language language) {
        this.language = language;
        this.says = language.messages("yarn");
    }

    /** A length that was worked, such as {@code 12.3 m}. */
    public String worked(double metres) {
        return says.text("metres", decimal("metres", metres, 1));
    }

    /** A length to have at hand, in whole metres, rounded up. */
    public String toHave(double metres) {
        return says.text("metres", count("metres", roundedUp(metres)));
    }

    /** The weight to have at hand, in whole grams, rounded up; empty if it is not known. */
    public Optional<String> grams(Amounts.OfYarn yarn) {
        return yarn.grams().isPresent()
                ? Optional.of(
                        says.text("grams", count("grams", roundedUp(yarn.grams().getAsDouble()))))
                : Optional.empty();
    }

    /** The balls to have at hand; empty if their length is not known. */
    public Optional<String> balls(Amounts.OfYarn yarn) {
        return yarn.balls().isPresent()
                ? Optional.of(says.text("balls", count("balls", yarn.balls().getAsInt())))
                : Optional.empty();
    }

    /** The number of a round, with its layer unless it is a charted one. */
    public String round(WorkedRound round) {
        if (round.layer() == WorkedRound.Layer.BACK && round.number() == 0) {
            return says.text("layer-backBase");
        }
        return says.text("layer-" + round.layer(), number("round", round.number()));
    }

    /** What the amounts go out from, a sentence each. */
    public List<String> notes(Amounts amounts) {
        List<String> notes = new ArrayList<>();
        notes.add(says.text(
                "amounts-counted",
                shortest("tailCm", Amounts.TAIL_CM, 2),
                shortest("margin", 100 * Amounts.MARGIN, 2),
                arg("tailInches", new Inches(language).ofMm(10 * Amounts.TAIL_CM))));
        if (amounts.rounds().stream().anyMatch(round -> round.round().layer() != WorkedRound.Layer.FRONT)) {
            notes.add(says.text("amounts-back"));
        }
        if (amounts.estimated().isEmpty()) {
            notes.add(says.text("amounts-measured"));
        } else {
            List<String> kinds = amounts.estimated().stream()
                    .map(kind -> says.text("kind-" + kind))
                    .toList();
            notes.add(says.text("amounts-estimated", and("kinds", kinds)));
            notes.add(says.text("amounts-advice"));
        }
        return notes;
    }

    /** Whether two yarns that meet can be told apart, and by how much. */
    public String contrast(YarnPair meeting) {
        Contrast contrast = meeting.contrast();
        return says.text(
                contrast.isLow() ? "contrast-low" : "contrast-clear",
                arg("inner", name(meeting.inner())),
                arg("outer", name(meeting.outer())),
                decimal("ratio", contrast.ratio(), 1),
                decimal("difference", contrast.difference(), 0));
    }

    /** What is meant by told apart. */
    public String contrastLimits() {
        return says.text(
                "contrast-limits",
                shortest("clearRatio", Contrast.CLEAR_RATIO, 2),
                shortest("leastRatio", Contrast.LEAST_RATIO, 2),
                shortest("leastDifference", Contrast.LEAST_DIFFERENCE, 2));
    }

    /** The colour that is suggested for a yarn, or that there is none. */
    public String suggestion(Yarn yarn, Optional<Colour> colour) {
        return colour.map(nearest ->
                        says.text("contrast-nearest", arg("yarn", name(yarn)), arg("colour", nearest.toString())))
                .orElseGet(() -> says.text("contrast-none", arg("yarn", name(yarn))));
    }

    /** Whether the border can be finished with what is at hand, and how, a sentence each. */
    public List<String> left(Chart chart, WhatIsLeft answer) {
        List<String> sentences = new ArrayList<>();
        if (answer instanceof WhatIsLeft.Unknown) {
            return List.of(says.text("left-unknown"));
        }
        if (answer instanceof WhatIsLeft.Enough) {
            sentences.add(says.text("left-enough"));
        }
        for (Amounts.OfYarn yarn : answer.amounts().missing()) {
            String missing = worked(Math.ceil(yarn.missingMetres() * 10) / 10);
            sentences.add(says.text("left-missing", arg("yarn", name(yarn.yarn())), arg("length", missing)));
        }
        if (answer instanceof WhatIsLeft.OtherYarns others) {
            sentences.add(says.text("left-otherYarns", arg("changes", changes(chart, others))));
            if (!others.proved()) {
                sentences.add(says.text("left-notProved"));
            }
        } else if (answer instanceof WhatIsLeft.NotEnough) {
            sentences.add(says.text("left-notEnough"));
        } else if (answer instanceof WhatIsLeft.Undecided) {
            sentences.add(says.text("left-undecided"));
        }
        sentences.add(says.text("left-margin"));
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
        byYarn.forEach((yarn, rounds) -> parts.add(says.text(
                "left-round",
                arg("rounds", rounds(rounds)),
                arg("yarn", name(chart.yarns().get(yarn))))));
        return language.and(parts);
    }

    /** What could be worked in another yarn, or that it cannot. */
    public String swap(YarnSwap swap) {
        String rounds = language.capital(rounds(swap.rounds()));
        return swap.to().isEmpty()
                ? says.text("swap-cannot", arg("rounds", rounds), arg("yarn", name(swap.from())))
                : says.text(
                        "swap-can",
                        arg("rounds", rounds),
                        arg("yarn", name(swap.from())),
                        or("yarns", swap.to().stream().map(YarnSentences::name).toList()));
    }

    /** Why rounds go together in a swap, and what stays. */
    public String swapLaw() {
        return says.text("swap-why");
    }

    /** Which hooks and which weight of yarn the border is made with, a sentence each; nothing where nobody has said. */
    public List<String> tools(PatternDetails making) {
        List<String> sentences = new ArrayList<>();
        making.hook().ifPresent(hook -> sentences.add(says.text("hook-of", arg("hook", hook(hook)))));
        making.backHook().ifPresent(hook -> sentences.add(says.text("hook-ofBack", arg("hook", hook(hook)))));
        making.yarnWeight().ifPresent(number -> {
            sentences.add(says.text("weight-of", arg("weight", weight(number)), arg("usual", usual(number))));
            if (making.hook()
                    .filter(hook -> !WeightCategory.isUsual(number, hook))
                    .isPresent()) {
                sentences.add(says.text("weight-unusual"));
            }
        });
        return sentences;
    }

    /** The number and name of a weight of yarn, such as {@code 4 Medium}. */
    public String weight(int number) {
        return says.text("weight-name", number("number", number), arg("name", says.text("weightName-" + number)));
    }

    /** What is usual for yarn of this weight; where the two editions differ, both. */
    public String usual(int number) {
        String print = usual(WeightCategory.of(number, Edition.PRINT));
        String web = usual(WeightCategory.of(number, Edition.WEB));
        return print.equals(web) ? print : says.text("weight-editions", arg("printed", print), arg("web", web));
    }

    /** A hook in millimetres, and what else it is called. */
    public String hook(HookSize hook) {
        List<String> names = new ArrayList<>();
        HookNames.us(hook).ifPresent(name -> names.add(says.text("hook-us", arg("name", name))));
        HookNames.uk(hook).ifPresent(name -> names.add(says.text("hook-uk", arg("name", name))));
        return names.isEmpty()
                ? says.text("hook-mm", shortest("mm", hook.mm(), 2))
                : says.text("hook-names", shortest("mm", hook.mm(), 2), commas("names", names));
    }

    private String usual(WeightCategory category) {
        return says.text(
                category.number() == 0 ? "weight-usualLace" : "weight-usual",
                arg("hooks", hooks(category.hookMm())),
                arg("stitches", stitches(category.stitches())));
    }

    private String hooks(Span mm) {
        double from = mm.from().orElseThrow();
        return mm.to().isPresent()
                ? says.text(
                        "weight-mm",
                        shortest("from", from, 2),
                        shortest("to", mm.to().getAsDouble(), 2))
                : says.text("weight-fromMm", shortest("from", from, 2));
    }

    private String stitches(Span stitches) {
        double to = stitches.to().orElseThrow();
        return stitches.from().isPresent()
                ? says.text("range", shortest("from", stitches.from().getAsDouble(), 2), shortest("to", to, 2))
                : says.text("weight-upTo", shortest("to", to, 2));
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
                parts.add(says.text("range", number("from", rounds.get(at)), number("to", rounds.get(end))));
                at = end + 1;
            } else {
                parts.add(String.valueOf(rounds.get(at)));
                at++;
            }
        }
        return says.text("rounds", count("count", rounds.size()), and("rounds", parts));
    }

    /** What the designer calls it, or its id if that is nothing. */
    private static String name(Yarn yarn) {
        return yarn.name().isBlank() ? yarn.id() : yarn.name();
    }

    private static long roundedUp(double number) {
        return (long) Math.max(0, Math.ceil(number - Amounts.NOTHING));
    }
}
