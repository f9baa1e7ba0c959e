/**
 * Makes a border fit a piece: counts of stitches, multiples, where to change a side, starts, landmarks, the back layer.
 *
 * <p>Begin at {@link edgewright.fit.Fit} for a piece whose sides were counted, at {@link edgewright.fit.PickUpPlan} for a
 * bare one. Values hold stitches, corner chains not counted; whatever takes or gives a {@link edgewright.chart.Counting}
 * works in that way of counting instead and says so. {@link edgewright.fit.FitSentences}, {@link edgewright.fit.BackSentences} and {@link
 * edgewright.fit.GuideSentences} turn values into sentences.
 *
 * <p>May be used by yarn, words, proof, booklet, desk and cli.
 */
package edgewright.fit;
