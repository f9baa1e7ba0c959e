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
 * @param talk knows sentences to people
 */
record SetUpWords(
        WordSet multiples,
        WordSet over,
        WordSet measures,
        WordSet examples,
        WordSet growth,
        WordSet except,
        TalkReader talk) {
    static SetUpWords of(Language language) {
        return new SetUpWords(
                WordSet.of(language, "MULTIPLE_MARKS"),
                WordSet.of(language, "MULTIPLE_OVER"),
                WordSet.of(language, "MEASURE_WORDS"),
                WordSet.of(language, "EXAMPLE_WORDS"),
                WordSet.of(language, "GROWTH_WORDS"),
                WordSet.of(language, "EXCEPT_WORDS"),
                new TalkReader(language));
    }
}
