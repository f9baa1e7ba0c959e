package edgewright.booklet.own;

import edgewright.chart.Imprint;
import java.util.Optional;

/** An imprint and the picture that it names. */
public record PrintedImprint(Imprint imprint, Optional<Photograph> logo) {}
