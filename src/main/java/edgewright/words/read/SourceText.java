package edgewright.words.read;

import edgewright.texts.Language;
import edgewright.words.page.PatternPart;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A text to be read, cut into the parts of a pattern. Blank lines and the rules under headings belong to none.
 *
 * <p>A heading stands at the start of its line, alone. A line that begins with the word for a round and its number begins
 * the rounds, heading or not, except among the designer's own words.
 */
final class SourceText {

    /**
     * One line.
     *
     * @param number from 1
     * @param text with no blanks at its end, and without the marks of Markdown
     * @param indent how many blanks stand before its first word
     * @param unmarked where the words stand, if the text is Markdown
     */
    record Line(int number, String text, int indent, Optional<Unmarked> unmarked) {
        /** A line of Markdown. */
        static Line ofMarkdown(int number, String raw) {
            Unmarked unmarked = Unmarked.of(raw);
            Line line = of(number, unmarked.text());
            return new Line(number, line.text(), line.indent(), Optional.of(unmarked));
        }

        static Line of(int number, String raw) {
            int end = raw.length();
            while (end > 0 && Token.isBlank(raw.charAt(end - 1))) {
                end--;
            }
            int indent = 0;
            while (indent < end && Token.isBlank(raw.charAt(indent))) {
                indent++;
            }
            return new Line(number, raw.substring(0, end), indent, Optional.empty());
        }

        boolean isBlank() {
            return text.isEmpty();
        }

        /** Whether it is made of nothing but this character. */
        boolean isRuleOf(char c) {
            return !isBlank() && text.chars().allMatch(each -> each == c);
        }

        /** The words of the line with single spaces between them. */
        String words() {
            StringBuilder words = new StringBuilder();
            for (int i = indent; i < text.length(); i++) {
                boolean blank = Token.isBlank(text.charAt(i));
                if (!blank || !Token.isBlank(text.charAt(i - 1))) {
                    words.append(blank ? ' ' : text.charAt(i));
                }
            }
            return words.toString();
        }

        boolean isMarkdown() {
            return unmarked.isPresent();
        }

        /** The level of a heading of Markdown; 0 for any other line. */
        int level() {
            return unmarked.map(Unmarked::level).orElse(0);
        }

        /** The column, from 1, of what stands at this place of the text, from 0. */
        int column(int at) {
            return unmarked.map(from -> from.columns().get(at)).orElse(at + 1);
        }

        List<Token> tokens() {
            List<Token> tokens = Token.of(text, number);
            return unmarked.isEmpty()
                    ? tokens
                    : tokens.stream()
                            .map(token -> new Token(token.kind(), token.text(), number, column(token.column() - 1)))
                            .toList();
        }
    }

    /** Lines that go together. */
    record Paragraph(List<Line> lines) {
        String words() {
            return lines.stream().map(Line::words).collect(Collectors.joining(" "));
        }

        List<Token> tokens() {
            return lines.stream().flatMap(line -> line.tokens().stream()).toList();
        }
    }

    /** The lines of a part; those before any heading are the part with the title. */
    record Piece(PatternPart.Kind kind, List<Line> lines) {
        /** Lines that stand together with no blank line between them. */
        List<Paragraph> blocks() {
            List<Paragraph> blocks = new ArrayList<>();
            List<Line> open = new ArrayList<>();
            for (Line line : lines) {
                if (!line.isBlank()) {
                    open.add(line);
                } else if (!open.isEmpty()) {
                    blocks.add(new Paragraph(List.copyOf(open)));
                    open.clear();
                }
            }
            if (!open.isEmpty()) {
                blocks.add(new Paragraph(List.copyOf(open)));
            }
            return blocks;
        }

        /** Each line with those after it that are indented further. */
        List<Paragraph> paragraphs() {
            List<Paragraph> paragraphs = new ArrayList<>();
            List<Line> open = new ArrayList<>();
            for (Line line : lines) {
                if (!open.isEmpty()
                        && (line.isBlank() || line.indent() <= open.get(0).indent())) {
                    paragraphs.add(new Paragraph(List.copyOf(open)));
                    open.clear();
                }
                if (!line.isBlank()) {
                    open.add(line);
                }
            }
            if (!open.isEmpty()) {
                paragraphs.add(new Paragraph(List.copyOf(open)));
            }
            return paragraphs;
        }
    }

    private final Grammar grammar;
    private final Preamble preamble;
    private final List<Line> lines = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private String title = "";

    SourceText(String text, Language language) {
        this.grammar = Grammar.of(language);
        this.preamble = Preamble.of(language);
        String[] raw = text.replaceFirst("^\\x{FEFF}", "").split("\\r\\n|[\\n\\r\\x{85}\\x{2028}\\x{2029}]", -1);
        boolean markdown = Arrays.stream(raw).anyMatch(this::isMarkdownHeading);
        for (int i = 0; i < raw.length; i++) {
            lines.add(markdown ? Line.ofMarkdown(i + 1, raw[i]) : Line.of(i + 1, raw[i]));
        }
        cut();
    }

    /** A part of a pattern under a heading with the marks of Markdown shows what the text is. */
    private boolean isMarkdownHeading(String raw) {
        if (!raw.startsWith("#")) {
            return false;
        }
        Line line = Line.ofMarkdown(1, raw);
        return line.level() > 0 && heading(line) != null;
    }

    /** The first line, if it is underlined, or if it says nothing else that a pattern says. */
    String title() {
        return title;
    }

    /** The parts in the order of the text. The same kind may come more than once. */
    List<Piece> pieces() {
        return pieces;
    }

    /** Where the text ends, for messages: behind the last word of it. */
    Token end() {
        Line last = lines.get(0);
        for (Line line : lines) {
            last = line.isBlank() ? last : line;
        }
        return new Token(
                Token.Kind.SIGN, "", last.number(), last.column(last.text().length()));
    }

    /** Whether a line begins with the word for a round and a number. */
    boolean beginsRound(Line line) {
        return beginsRound(line.tokens());
    }

    /** Whether a line of these tokens does. */
    boolean beginsRound(List<Token> line) {
        return grammar.roundBegun(line) >= 0;
    }

    private void cut() {
        int i = 0;
        while (i < lines.size() && lines.get(i).isBlank()) {
            i++;
        }
        if (i < lines.size()) {
            boolean underlined = i + 1 < lines.size() && lines.get(i + 1).isRuleOf('=');
            if (underlined || isTitle(lines.get(i))) {
                title = lines.get(i).words();
                i += underlined ? 2 : 1;
            }
        }
        Piece piece = new Piece(PatternPart.Kind.HEADING, new ArrayList<>());
        for (; i < lines.size(); i++) {
            Line line = lines.get(i);
            PatternPart.Kind heading = heading(line);
            boolean rounds = piece.kind() != PatternPart.Kind.DESIGNER_NOTES
                    && piece.kind() != PatternPart.Kind.ROUNDS
                    && line.indent() == 0
                    && beginsRound(line);
            if (heading != null || rounds) {
                pieces.add(piece);
                piece = new Piece(rounds ? PatternPart.Kind.ROUNDS : heading, new ArrayList<>());
            }
            if (heading == null) {
                piece.lines().add(line);
                // The words of a round belong to its heading.
                while (line.level() > 0
                        && i + 1 < lines.size()
                        && lines.get(i + 1).isBlank()) {
                    i++;
                }
            } else if (i + 1 < lines.size()
                    && (lines.get(i + 1).isRuleOf('-') || lines.get(i + 1).isRuleOf('='))) {
                i++;
            }
        }
        pieces.add(piece);
    }

    private boolean isTitle(Line line) {
        if (line.isMarkdown()) {
            return line.level() == 1;
        }
        return heading(line) == null && !beginsRound(line) && !preamble.says(line.words());
    }

    private PatternPart.Kind heading(Line line) {
        if (line.isBlank() || line.indent() > 0) {
            return null;
        }
        String words = line.words().replaceFirst("\\s*:$", "");
        for (PatternPart.Kind kind : PatternPart.Kind.values()) {
            boolean has = kind != PatternPart.Kind.HEADING && kind != PatternPart.Kind.COUNTS;
            if (has && grammar.heading(kind).stream().anyMatch(words::equalsIgnoreCase)) {
                return kind;
            }
        }
        return null;
    }
}
