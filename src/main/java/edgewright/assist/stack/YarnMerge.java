package edgewright.assist.stack;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The yarns of two charts as those of one. A yarn of the outer chart is the same as one of the inner if name and colour are; it
 * then gets the id that the inner chart has for it. Any other keeps its id or, if the inner chart has another yarn under that id,
 * gets the first free letter.
 *
 * @param yarns those of the inner chart as they are, then what the outer chart adds
 * @param renamed the new id of each yarn of the outer chart, by its old one; yarns that keep their id are there too
 */
record YarnMerge(List<Yarn> yarns, Map<String, String> renamed) {
    YarnMerge {
        yarns = List.copyOf(yarns);
        renamed = Map.copyOf(renamed);
    }

    static YarnMerge of(Chart inner, Chart outer) {
        List<Yarn> yarns = new ArrayList<>(inner.yarns());
        Set<String> taken = new HashSet<>();
        inner.yarns().forEach(yarn -> taken.add(yarn.id()));
        Set<String> given = new HashSet<>(taken);
        outer.yarns().forEach(yarn -> given.add(yarn.id()));
        Map<String, String> renamed = new HashMap<>();
        for (Yarn yarn : outer.yarns()) {
            Optional<Yarn> same = inner.yarns().stream()
                    .filter(other ->
                            other.name().equals(yarn.name()) && other.colour().equals(yarn.colour()))
                    .min((one, two) ->
                            Boolean.compare(two.id().equals(yarn.id()), one.id().equals(yarn.id())));
            if (same.isPresent()) {
                renamed.put(yarn.id(), same.get().id());
                continue;
            }
            String id = taken.contains(yarn.id()) ? free(given) : yarn.id();
            given.add(id);
            renamed.put(yarn.id(), id);
            yarns.add(new Yarn(id, yarn.name(), yarn.colour(), yarn.ball(), yarn.metresInHand(), yarn.extras()));
        }
        return new YarnMerge(yarns, renamed);
    }

    /** The first letter that is no id yet; with all letters taken, a letter and a number. */
    private static String free(Set<String> given) {
        for (int number = 0; ; number++) {
            for (char letter = 'A'; letter <= 'Z'; letter++) {
                String id = number == 0 ? String.valueOf(letter) : letter + String.valueOf(number);
                if (!given.contains(id)) {
                    return id;
                }
            }
        }
    }
}
