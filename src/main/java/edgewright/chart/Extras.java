package edgewright.chart;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Members of a chart file that this version does not know, kept so that they are written back as they were.
 *
 * @param json the members in the order of the file: name, and value as JSON text
 */
public record Extras(Map<String, String> json) {
    /** No unknown member. */
    public static final Extras NONE = new Extras(Map.of());

    public Extras {
        json = Collections.unmodifiableMap(new LinkedHashMap<>(json));
    }
}
