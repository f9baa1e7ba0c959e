package edgewright.assist.picture;

import edgewright.chart.Place;

/**
 * A cell that does not show what is wanted.
 *
 * @param wanted the id of the yarn that is wanted there
 * @param shows the id of the yarn that shows there
 */
public record Miss(Place place, String wanted, String shows) {}
