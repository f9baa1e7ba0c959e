package edgewright.words.write;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.fit.FitPlan;
import edgewright.fit.PatternSize;
import edgewright.texts.Language;
import java.util.Objects;
import java.util.Optional;

/**
 * How a chart is to be written down.
 *
 * @param language the language of its words; the terms are those of the trade in that language, and everyday words are spelled
 *     as they are where these terms are used
 * @param counting the way of counting that is named first, and the only one for the counts of a given size
 * @param size for which pieces the pattern is
 * @param draft whether the pattern says that it is a draft
 * @param hand whose pattern it is
 * @param layout how its rounds are laid out
 * @param eachRound whether each round is told by itself, in full; else rounds that are worked alike stand together
 * @param techniques whether it tells how its techniques are worked
 */
public record WordingOptions(
        Language language,
        Terms terms,
        Counting counting,
        PatternSize size,
        boolean draft,
        HookHand hand,
        RoundsLayout layout,
        boolean eachRound,
        boolean techniques) {
    public WordingOptions {
        Objects.requireNonNull(terms);
        language = language.spelledAs(terms.name());
        Objects.requireNonNull(counting);
        Objects.requireNonNull(size);
        Objects.requireNonNull(hand);
        Objects.requireNonNull(layout);
    }

    /** A pattern that does not tell how its techniques are worked. */
    public WordingOptions(
            Language language,
            Terms terms,
            Counting counting,
            PatternSize size,
            boolean draft,
            HookHand hand,
            RoundsLayout layout) {
        this(language, terms, counting, size, draft, hand, layout, false, false);
    }

    /** A pattern whose rounds are told in sentences, those that are worked alike together. */
    public WordingOptions(
            Language language, Terms terms, Counting counting, PatternSize size, boolean draft, HookHand hand) {
        this(language, terms, counting, size, draft, hand, RoundsLayout.SENTENCES, false, false);
    }

    /** A pattern for a size, or for every size. */
    public WordingOptions(
            Language language,
            Terms terms,
            Counting counting,
            Optional<PerSide<Integer>> repeats,
            boolean draft,
            HookHand hand) {
        this(language, terms, counting, PatternSize.of(repeats), draft, hand);
    }

    /** A pattern for the right hand. */
    public WordingOptions(
            Language language, Terms terms, Counting counting, Optional<PerSide<Integer>> repeats, boolean draft) {
        this(language, terms, counting, repeats, draft, HookHand.RIGHT);
    }

    /** A finished pattern for the right hand. */
    public WordingOptions(Language language, Terms terms, Counting counting, Optional<PerSide<Integer>> repeats) {
        this(language, terms, counting, repeats, false);
    }

    /** This language in the chart's own terms, stitches only, the sizes that the chart names or every size. */
    public static WordingOptions of(Chart chart, Language language) {
        return new WordingOptions(
                language, chart.terms(), Counting.STITCHES, PatternSize.named(chart), false, HookHand.RIGHT);
    }

    /** How often the repeat is worked on each side; empty for a pattern for every size or for several. */
    public Optional<PerSide<Integer>> repeats() {
        return size.repeats();
    }

    /** These options for a pattern that tells how its techniques are worked, or does not. */
    public WordingOptions withTechniques(boolean told) {
        return new WordingOptions(language, terms, counting, size, draft, hand, layout, eachRound, told);
    }

    /** These options in another language. */
    public WordingOptions withLanguage(Language other) {
        return new WordingOptions(other, terms, counting, size, draft, hand, layout, eachRound, techniques);
    }

    /** These options in other terms. */
    public WordingOptions withTerms(Terms other) {
        return new WordingOptions(language, other, counting, size, draft, hand, layout, eachRound, techniques);
    }

    /** These options with another way of counting. */
    public WordingOptions withCounting(Counting other) {
        return new WordingOptions(language, terms, other, size, draft, hand, layout, eachRound, techniques);
    }

    /** These options for other pieces. */
    public WordingOptions withSize(PatternSize other) {
        return new WordingOptions(language, terms, counting, other, draft, hand, layout, eachRound, techniques);
    }

    /** These options for one size. */
    public WordingOptions withRepeats(PerSide<Integer> times) {
        return new WordingOptions(
                language,
                terms,
                counting,
                PatternSize.of(Optional.of(times)),
                draft,
                hand,
                layout,
                eachRound,
                techniques);
    }

    /** These options for one piece whose counts are put right as the plan says. */
    public WordingOptions withPiece(FitPlan plan) {
        return new WordingOptions(
                language, terms, counting, new PatternSize.OfPiece(plan), draft, hand, layout, eachRound, techniques);
    }

    /** These options for a draft. */
    public WordingOptions asDraft() {
        return new WordingOptions(language, terms, counting, size, true, hand, layout, eachRound, techniques);
    }

    /** These options for every size. */
    public WordingOptions withoutRepeats() {
        return new WordingOptions(
                language, terms, counting, PatternSize.any(), draft, hand, layout, eachRound, techniques);
    }

    /** These options for a maker with this hand. */
    public WordingOptions withHand(HookHand other) {
        return new WordingOptions(language, terms, counting, size, draft, other, layout, eachRound, techniques);
    }

    /** These options with the rounds laid out otherwise. */
    public WordingOptions withLayout(RoundsLayout other) {
        return new WordingOptions(language, terms, counting, size, draft, hand, other, eachRound, techniques);
    }

    /** These options with each round by itself, or with alike rounds together. */
    public WordingOptions withEachRound(boolean apart) {
        return new WordingOptions(language, terms, counting, size, draft, hand, layout, apart, techniques);
    }
}
