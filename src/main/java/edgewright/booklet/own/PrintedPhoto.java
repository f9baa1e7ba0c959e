package edgewright.booklet.own;

import edgewright.chart.Photo;

/** A photograph and what the chart says of it. */
public record PrintedPhoto(Photo photo, Photograph picture) {}
