/**
 * A maker who works instructions stitch by stitch on a fabric of loops of its own.
 *
 * <p>May be used by proof, desk and cli. Of the chart it knows the stitches and the terms only, neither geometry nor
 * rules, so that what it makes is evidence about both.
 */
package edgewright.hands;
