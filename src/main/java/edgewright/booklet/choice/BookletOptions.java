package edgewright.booklet.choice;

import edgewright.booklet.own.PrintedMatter;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.fit.FitPlan;
import edgewright.fit.PatternSize;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.write.WordingOptions;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the person who publishes a pattern chooses.
 *
 * @param draft whether a chart with error findings is published all the same, marked as a draft on every page
 * @param parts of what the file is made, and in which order
 * @param language in which the pattern speaks; everyday words are spelled as they are where its terms, of both the first, are used
 * @param matter the files of the designer's own that are printed too
 */
public record BookletOptions(
        PrintChoice appearance,
        WordingChoice telling,
        PrintingNotice imprint,
        BookletParts parts,
        boolean draft,
        Language language,
        PrintedMatter matter) {
    public BookletOptions {
        Objects.requireNonNull(appearance);
        Objects.requireNonNull(telling);
        Objects.requireNonNull(imprint);
        Objects.requireNonNull(parts);
        language = language.spelledAs(telling.terms().inTurn().get(0).name());
        Objects.requireNonNull(matter);
    }

    /** Without files of the designer's own. */
    public BookletOptions(
            PrintChoice appearance,
            WordingChoice telling,
            PrintingNotice imprint,
            BookletParts parts,
            boolean draft,
            Language language) {
        this(appearance, telling, imprint, parts, draft, language, PrintedMatter.NONE);
    }

    /** The pattern in the chart's own terms, for right-handed makers, on A4, for any size, without the workbook. */
    public static BookletOptions of(Chart chart, Language language) {
        return new BookletOptions(
                PrintChoice.STANDARD,
                new WordingChoice(
                        PrintedTerms.of(chart.terms()), Counting.STITCHES, HookHand.RIGHT, PatternSize.named(chart)),
                PrintingNotice.NONE,
                BookletParts.USUAL,
                false,
                language);
    }

    /** For whose eyes it is set. */
    public Edition edition() {
        return appearance.edition();
    }

    /** The paper of all pages but, perhaps, those of the chart. */
    public Paper paper() {
        return appearance.paper();
    }

    /** The side of a cell of the chart, if one was asked for. */
    public OptionalDouble cellMm() {
        return appearance.cellMm();
    }

    /** The terms of the words; of both the first. */
    public Terms terms() {
        return telling.terms().inTurn().get(0);
    }

    /** The way of counting that comes first. */
    public Counting counting() {
        return telling.counting();
    }

    /** The hand that holds the hook. */
    public HookHand hand() {
        return telling.hand();
    }

    /** For which pieces the pattern is. */
    public PatternSize size() {
        return telling.size();
    }

    /** How often the repeat is worked on each side; empty for a pattern of any size, and of more than one. */
    public Optional<PerSide<Integer>> repeats() {
        return telling.size().repeats();
    }

    /** The same for each size of the pattern, in its order; none for any size. */
    public List<PerSide<Integer>> sizes() {
        return telling.size().sizes();
    }

    /** What the sizes of the pattern are called, in their order; none where they have no names. */
    public List<String> sizeNames() {
        return telling.size().names();
    }

    /** What the booklet says in its own words. */
    public Messages says() {
        return language.messages("booklet");
    }

    /** The tag of BCP 47 of words in these terms. */
    public String languageTag(Terms terms) {
        return language.dialectTag(terms.name());
    }

    /** The parts of the file in their order. */
    public List<BookletPart> inOrder() {
        return parts.inOrder(edition());
    }

    /** How the words are written, in the first of the terms. */
    public WordingOptions words(boolean asDraft) {
        boolean techniques = inOrder().contains(BookletPart.TECHNIQUES);
        return new WordingOptions(
                language(),
                terms(),
                counting(),
                size(),
                asDraft,
                hand(),
                telling.layout(),
                telling.eachRound(),
                techniques);
    }

    /** Looking otherwise. */
    public BookletOptions with(PrintChoice other) {
        return new BookletOptions(other, telling, imprint, parts, draft, language, matter);
    }

    /** Told otherwise. */
    public BookletOptions with(WordingChoice other) {
        return new BookletOptions(appearance, other, imprint, parts, draft, language, matter);
    }

    /** With another version and date. */
    public BookletOptions with(PrintingNotice other) {
        return new BookletOptions(appearance, telling, other, parts, draft, language, matter);
    }

    /** With these files of the designer's own. */
    public BookletOptions with(PrintedMatter other) {
        return new BookletOptions(appearance, telling, imprint, parts, draft, language, other);
    }

    /** In another edition. */
    public BookletOptions withEdition(Edition other) {
        return with(appearance.withEdition(other));
    }

    /** On other paper. */
    public BookletOptions withPaper(Paper other) {
        return with(appearance.withPaper(other));
    }

    /** With cells of that size. */
    public BookletOptions withCellMm(double side) {
        return with(appearance.withCellMm(side));
    }

    /** In these terms alone. */
    public BookletOptions withTerms(Terms other) {
        return with(telling.withTerms(PrintedTerms.of(other)));
    }

    /** Counted the other way. */
    public BookletOptions withCounting(Counting other) {
        return with(telling.withCounting(other));
    }

    /** For makers of the other hand. */
    public BookletOptions withHand(HookHand other) {
        return with(telling.withHand(other));
    }

    /** For a piece on which the repeat is worked that often. */
    public BookletOptions withRepeats(PerSide<Integer> perSide) {
        return with(telling.withRepeats(perSide));
    }

    /** For other pieces. */
    public BookletOptions withSize(PatternSize other) {
        return with(telling.withSize(other));
    }

    /** For one piece whose counts are put right as the plan says. */
    public BookletOptions withPiece(FitPlan plan) {
        return withSize(new PatternSize.OfPiece(plan));
    }

    /** Made of other parts. */
    public BookletOptions withParts(BookletParts other) {
        return new BookletOptions(appearance, telling, imprint, other, draft, language, matter);
    }

    /** Published even with error findings, or not. */
    public BookletOptions withDraft(boolean allowed) {
        return new BookletOptions(appearance, telling, imprint, parts, allowed, language, matter);
    }
}
