package edgewright.words.others;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Lexicon;
import edgewright.words.setup.Part;
import edgewright.words.terms.Bars;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Knows the headings of the parts of a pattern. */
final class Parts {
    private static final int LONGEST_CAPITALS = 60;
    private static final int MOST_HEADING_WORDS = 3;
    private final Map<Part, List<String>> headings = new EnumMap<>(Part.class);

    Parts(Language language) {
        Messages words = language.messages(Lexicon.BUNDLE);
        for (Part part : Part.values()) {
            if (part != Part.HEAD) {
                headings.put(part, Bars.parted(words.text("PART_" + part).replace(Language.NO_BREAK, ' ')));
            }
        }
    }

    /** The part that begins with a line of these words alone. */
    Optional<Part> headed(String line) {
        String words = line.strip()
                .replaceFirst("^[0-9]{1,2}[.)]\\s+", "")
                .replaceFirst("\\s*[:.]\\s*$", "")
                .replaceAll("\\s+", " ")
                .toLowerCase(Locale.ROOT);
        return headings.entrySet().stream()
                .filter(entry -> entry.getValue().contains(words))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** The part of the words before the first colon of a line, if they are a heading. */
    Optional<Part> labelled(String line) {
        int colon = line.indexOf(':');
        return colon > 0 ? headed(line.substring(0, colon)) : Optional.empty();
    }

    /** Tension or size, if a sentence begins with their heading. */
    Optional<Part> begunBy(List<Lexeme> sentence) {
        StringBuilder words = new StringBuilder();
        for (Lexeme word : sentence.subList(0, Math.min(sentence.size(), MOST_HEADING_WORDS))) {
            words.append(words.isEmpty() ? "" : " ").append(word.text());
            Optional<Part> part = headed(words.toString()).filter(known -> known == Part.TENSION || known == Part.SIZE);
            if (part.isPresent()) {
                return part;
            }
        }
        return Optional.empty();
    }

    /** Whether a line is all in capital letters, as some write headings. */
    static boolean isCapitals(String line) {
        String bare = line.strip();
        return bare.length() <= LONGEST_CAPITALS
                && bare.chars().filter(Character::isLetter).count() > 3
                && bare.chars().noneMatch(c -> Character.isLowerCase(c) || c == ':' || c == '=');
    }
}
