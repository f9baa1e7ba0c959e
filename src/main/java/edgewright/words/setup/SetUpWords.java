package edgewright.words.setup;

import edgewright.texts.Language;
import edgewright.words.grammar.TalkReader;
import edgewright.words.grammar.WordSet;

/**
 * Words of set-up sentences that are no concept of their own.
 *
 * @param multiples the letter behind the number of a multiple, as in '8n'
 * @param over what stands behind the stitches that a multiple leaves over
 * @param measures units of length and weight
 * @param examples what tells that a number is of the sample that was made
 * @param growth what tells that sides grow
 * @param except what leaves something out of a count
 * @param those what points at stitches that were just told
 * @param belong what tells that something is part of something
 * @param notCounted that something is left out of a count
 * @param leave what leaves a stitch alone
 * @param soOn that it goes on as it began
 * @param verbs what a sentence about rounds goes on with
 * @param brackets that numbers in brackets are spoken of
 * @param talk knows sentences to people
 */
record SetUpWords(
        WordSet multiples,
        WordSet over,
        WordSet measures,
        WordSet examples,
        WordSet growth,
        WordSet except,
        WordSet those,
        WordSet belong,
        WordSet notCounted,
        WordSet leave,
        WordSet soOn,
        WordSet verbs,
        WordSet brackets,
        WordSet takeIn,
        TalkReader talk) {
    static SetUpWords of(Language language) {
        return new SetUpWords(
                WordSet.of(language, "MULTIPLE_MARKS"),
                WordSet.of(language, "MULTIPLE_OVER"),
                WordSet.of(language, "MEASURE_WORDS"),
                WordSet.of(language, "EXAMPLE_WORDS"),
                WordSet.of(language, "GROWTH_WORDS"),
                WordSet.of(language, "EXCEPT_WORDS"),
                WordSet.of(language, "THOSE_WORDS"),
                WordSet.of(language, "BELONG_WORDS"),
                WordSet.of(language, "NOT_COUNTED_WORDS"),
                WordSet.of(language, "LEAVE_WORDS"),
                WordSet.of(language, "SO_ON_WORDS"),
                WordSet.of(language, "ROUND_VERBS"),
                WordSet.of(language, "BRACKET_WORDS"),
                WordSet.of(language, "TAKE_IN_WORDS"),
                new TalkReader(language));
    }
}
