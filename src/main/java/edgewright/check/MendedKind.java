package edgewright.check;

import edgewright.chart.Chart;

/**
 * What comes of mending all findings of one rule as one edit. There is no finding after it that was not there before, neither
 * error nor warning; what an uneven chart hid until it was evened out was there before. No rule says less than it did.
 *
 * @param rule the id of the rule
 * @param chart the chart after it; the same as before if nothing could be mended
 * @param mended how many findings of the rule are gone
 * @param left how many could not be mended, or stand beyond the first {@link Verdict#MOST_TOLD} of the rule
 * @param changedCells how many cells of the fabric then show another colour, those of the repeat counted once
 */
public record MendedKind(String rule, Chart chart, int mended, int left, int changedCells) {}
