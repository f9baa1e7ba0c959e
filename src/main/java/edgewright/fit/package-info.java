/**
 * Makes a border fit a piece: counts of stitches, multiples, where to change a side, landmarks for counting.
 *
 * <p>May be used by booklet, desk and cli.
 */
package edgewright.fit;
