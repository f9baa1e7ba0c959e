package edgewright.draw.picture;

import edgewright.chart.Place;

/**
 * A stitch as it is drawn in a corner: the repeat is drawn on both limbs and as often as the style asks, so one place of the
 * chart can be drawn in many cells.
 *
 * @param occurrence which working of the repeat on that side, from 1 in working order; 1 for the other sections
 */
public record ArmPlace(Arm limb, Place place, int occurrence) {}
