package edgewright.desk.pattern;

import edgewright.words.said.SaidPattern;
import edgewright.words.said.SaidPattern.Saying;
import edgewright.words.said.SaidRounds;
import edgewright.words.said.SaidSpan;
import edgewright.words.said.SaidText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The words of all rounds as one text, and where in it each piece stands that says stitches. Immutable; knows no window. */
final class ShownPattern {
    /** What a paragraph is. */
    enum Kind {
        /** What stands before words that nobody should follow. */
        OBJECTION,
        /** The first line of rounds, which begins with their title. */
        TITLE,
        /** A further line of rounds. */
        LINE
    }

    /**
     * A line of the text, before it is broken.
     *
     * @param label the first characters of it, that name the rounds; 0 for none
     */
    record Paragraph(Kind kind, String text, int label) {}

    /**
     * A stretch of the text.
     *
     * @param begin its first character, counted from 0 in the whole text
     * @param end after its last character
     */
    record Stretch(int begin, int end) {
        boolean holds(int character) {
            return begin <= character && character < end;
        }
    }

    private final SaidPattern said;
    private final List<Paragraph> paragraphs = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private final Map<Saying, Stretch> pieces = new HashMap<>();
    /** Where the first line of each title begins, and each of its lines. */
    private final List<List<Stretch>> lines = new ArrayList<>();

    private ShownPattern(SaidPattern said) {
        this.said = said;
    }

    /**
     * The words as they are shown.
     *
     * @param objection what stands before the words of rounds that cannot be worked; empty for others
     */
    static ShownPattern of(SaidPattern said, Function<SaidRounds, String> objection) {
        ShownPattern shown = new ShownPattern(said);
        for (int title = 0; title < said.rounds().size(); title++) {
            SaidRounds rounds = said.rounds().get(title);
            String before = objection.apply(rounds);
            if (!before.isEmpty()) {
                shown.add(new Paragraph(Kind.OBJECTION, before, 0));
            }
            shown.add(title, rounds);
        }
        return shown;
    }

    private void add(int title, SaidRounds rounds) {
        List<Stretch> all = new ArrayList<>();
        for (int line = 0; line < rounds.lines().size(); line++) {
            SaidText words = rounds.lines().get(line);
            Stretch at = add(new Paragraph(
                    line == 0 ? Kind.TITLE : Kind.LINE,
                    words.text(),
                    line == 0 ? rounds.label().length() : 0));
            all.add(at);
            for (SaidSpan span : words.spans()) {
                pieces.put(
                        new Saying(title, new SaidRounds.Piece(line, span)),
                        new Stretch(at.begin() + span.begin(), at.begin() + span.end()));
            }
        }
        lines.add(all);
    }

    private Stretch add(Paragraph paragraph) {
        if (!paragraphs.isEmpty()) {
            text.append('\n');
        }
        paragraphs.add(paragraph);
        text.append(paragraph.text());
        return new Stretch(text.length() - paragraph.text().length(), text.length());
    }

    SaidPattern said() {
        return said;
    }

    /** All of it, the paragraphs with a line feed between them. */
    String text() {
        return text.toString();
    }

    List<Paragraph> paragraphs() {
        return List.copyOf(paragraphs);
    }

    /** Where a piece stands. */
    Stretch of(Saying piece) {
        return pieces.get(piece);
    }

    /** Where the rounds of a title are named. */
    Stretch labelOf(int title) {
        Stretch first = lines.get(title).get(0);
        return new Stretch(
                first.begin(), first.begin() + said.rounds().get(title).label().length());
    }

    /** The title whose words stand at a character; empty for an objection and for the end of a line. */
    Optional<Integer> titleAt(int character) {
        for (int title = 0; title < lines.size(); title++) {
            if (lines.get(title).stream().anyMatch(line -> line.holds(character))) {
                return Optional.of(title);
            }
        }
        return Optional.empty();
    }

    /** The smallest piece at a character; empty where no stitch is said. */
    Optional<Saying> pieceAt(int character) {
        return titleAt(character).flatMap(title -> {
            List<Stretch> all = lines.get(title);
            for (int line = 0; line < all.size(); line++) {
                int number = line;
                if (all.get(line).holds(character)) {
                    return said.rounds()
                            .get(title)
                            .lines()
                            .get(line)
                            .at(character - all.get(line).begin())
                            .map(span -> new Saying(title, new SaidRounds.Piece(number, span)));
                }
            }
            return Optional.empty();
        });
    }
}
