package edgewright.booklet.own;

import edgewright.chart.Colour;
import edgewright.file.fault.Problem;
import java.nio.file.Path;

/** Why a pattern cannot be published with the files that its chart names. */
public sealed interface OwnFault {
    /**
     * A photograph of the chart.
     *
     * @param place in the list of the chart, counted from 0 as is usual for members of a file
     * @param name as the chart has it
     */
    record OfPhoto(Path chart, int place, String name, PhotoFault fault) implements OwnFault {}

    /** The imprint that the chart names is not in its folder, or cannot be reached there. */
    record OfImprintName(Path chart, String name, PhotoFault fault) implements OwnFault {}

    /**
     * The imprint file itself.
     *
     * @param problem the first of those that it has
     */
    record OfImprint(Path imprint, Problem problem) implements OwnFault {}

    /** The logo of an imprint. */
    record OfLogo(Path imprint, String name, PhotoFault fault) implements OwnFault {}

    /**
     * The accent of an imprint cannot be read on white paper.
     *
     * @param ratio of the luminances of paper and accent, after WCAG 2.2
     */
    record PaleAccent(Path imprint, Colour accent, double ratio) implements OwnFault {}
}
