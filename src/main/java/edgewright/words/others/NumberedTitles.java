package edgewright.words.others;

import edgewright.texts.Language;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.WordSet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds rounds that are told by their numbers alone: lines that begin '1:', '2 and 3:', '4:', one after the other from 1 on. */
final class NumberedTitles {
    private static final int FEWEST = 3;
    private static final Pattern NUMBER = Pattern.compile("\\d{1,3}");

    private NumberedTitles() {}

    /** The places of such lines in the list; none unless there are several, with no number left out. */
    static Set<Integer> in(List<String> lines, Language language) {
        String more = "(?: *(?:-|,|&|\\b(?i:" + WordSet.alternatives(language, Concept.AND.name()) + "|"
                + WordSet.alternatives(language, Concept.TO.name()) + ")\\b) *\\d{1,3})*";
        Pattern title = Pattern.compile("^ *(\\d{1,3}" + more + ") *:(?= )");
        Set<Integer> found = new HashSet<>();
        int last = 0;
        for (int i = 0; i < lines.size(); i++) {
            Matcher matcher = title.matcher(lines.get(i));
            if (matcher.find()) {
                List<Integer> numbers = numbers(matcher.group(1));
                if (numbers.get(0) == last + 1) {
                    found.add(i);
                    last = numbers.get(numbers.size() - 1);
                }
            }
        }
        return found.size() >= FEWEST ? found : Set.of();
    }

    private static List<Integer> numbers(String title) {
        List<Integer> numbers = new ArrayList<>();
        Matcher matcher = NUMBER.matcher(title);
        while (matcher.find()) {
            numbers.add(Integer.parseInt(matcher.group()));
        }
        return numbers;
    }
}
