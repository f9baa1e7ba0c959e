package edgewright.booklet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What stands at the two ends of each line of squares. The number of a round is the first text from the squares outwards, its
 * yarn's letter the first text on a plate.
 */
public final class EndLabels {
    /** A number and a letter at the end of a line of squares; the letter is empty if there is none. */
    public record Label(String number, String letter) {}

    private record Text(double off, String text, boolean onPlate) {}

    private record End(int line, boolean before) {}

    private final Map<End, List<Text>> texts = new HashMap<>();

    /**
     * @param before whether it stands before the first square of the line
     * @param off how far from the squares
     */
    void add(int line, boolean before, double off, String text, boolean onPlate) {
        if (onPlate || text.matches("\\d+|base")) {
            texts.computeIfAbsent(new End(line, before), end -> new ArrayList<>())
                    .add(new Text(off, text, onPlate));
        }
    }

    /** The lines that have any. */
    public Set<Integer> lines() {
        return texts.keySet().stream().map(End::line).collect(Collectors.toSet());
    }

    /** The labels of a line: of its one end or of both. */
    public List<Label> of(int line) {
        List<Label> labels = new ArrayList<>();
        for (boolean before : new boolean[] {true, false}) {
            List<Text> end = texts.getOrDefault(new End(line, before), List.of());
            first(end, false)
                    .ifPresent(number ->
                            labels.add(new Label(number, first(end, true).orElse(""))));
        }
        return labels;
    }

    private static Optional<String> first(List<Text> texts, boolean onPlate) {
        return texts.stream()
                .filter(text -> text.onPlate() == onPlate)
                .min(Comparator.comparingDouble(Text::off))
                .map(Text::text);
    }
}
