package edgewright.words.others;

import edgewright.texts.Language;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Lexicon;
import edgewright.words.grammar.Token;
import edgewright.words.grammar.WordSet;
import edgewright.words.terms.Bars;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A text line by line, with its typographic signs made plain and its Markdown taken out. Every character keeps its line and
 * column.
 */
final class Page {
    private static final Pattern BREAK = Pattern.compile("\\r\\n|[\\n\\r\\x{85}\\x{2028}\\x{2029}]");
    /** Words set off by stars, which stand for no repeat: no star and no blank just inside them. */
    private static final Pattern BOLD = Pattern.compile("(\\*\\*|__)(?=[^\\s*_])([^*_]{1,200}?)(?<=[^\\s*_])\\1");

    private static final Pattern LIGHT =
            Pattern.compile("(?<![\\p{L}\\d_])_(?=[^\\s_])([^_]{1,200}?)(?<=[^\\s_])_(?![\\p{L}\\d_])");
    /** In Markdown: a star before a blank, with no other star in the line. */
    private static final Pattern STAR_OF_LIST = Pattern.compile("^\\s*\\*\\s+(?=[^*]*$)");

    private static final Pattern STARRED_LINE = Pattern.compile("^\\*(?=\\p{L})[^*]*\\*$");
    private static final Pattern QUOTED =
            Pattern.compile("[\u201c\u201e\u00ab\"][\\p{L}][\\p{L} -]{0,24}[\u201d\u201c\u00bb\"]");
    private static final String LIST_SIGNS = "-+*\u2022\u00b7\u2013\u2014>";
    private static final String DASHES = "\u2010\u2011\u2012\u2013\u2014\u2015\u2212";
    private static final String SINGLE_QUOTES = "\u2018\u2019\u201a\u201b\u00b4";
    private static final String DOUBLE_QUOTES = "\u201c\u201d\u201e\u201f\u00ab\u00bb\"`";
    private static final String STARS = "\u2217\u204e\uff0a\u2731\u22c6";

    /**
     * One line.
     *
     * @param number from 1
     * @param raw as it stands in the text
     * @param text the same with plain signs; as long as {@code raw}
     * @param hashes whether it is a heading by its hashes
     * @param listed whether it begins with the sign of a list
     * @param round the word for a round, where its title is a number alone; else empty
     */
    record Line(int number, String raw, String text, boolean hashes, boolean listed, String round) {
        boolean isBlank() {
            return text.isBlank();
        }

        /** The words in quotation marks, as tokens. */
        List<List<Token>> quoted() {
            List<List<Token>> quoted = new ArrayList<>();
            Matcher found = QUOTED.matcher(raw);
            while (found.find()) {
                quoted.add(tokens().stream()
                        .filter(token -> token.column() > found.start() + 1 && token.end() <= found.end())
                        .toList());
            }
            return quoted;
        }

        boolean isRule() {
            String bare = raw.strip();
            return bare.length() >= 3
                    && (bare.chars().allMatch(c -> c == '-' || DASHES.indexOf(c) >= 0)
                            || bare.chars().allMatch(c -> c == '=' || c == '_')
                            || bare.chars().allMatch(c -> c == '~' || c == '*' || c == '#'));
        }

        List<Token> tokens() {
            List<Token> tokens = Token.of(text, number);
            if (!round.isEmpty()) {
                tokens.add(
                        0,
                        new Token(
                                Token.Kind.WORD,
                                round,
                                round,
                                number,
                                tokens.get(0).column()));
            }
            return tokens;
        }
    }

    private final Pattern listSign;
    private final List<Line> lines = new ArrayList<>();

    Page(String text, Language language) {
        listSign = Pattern.compile("^\\s*(?:[-+•·–—]\\s+|>\\s*|\\*\\s+(?=(?i:"
                + WordSet.alternatives(language, Concept.ROUND.name()) + ")\\s*\\d))+");
        String[] raw = BREAK.split(text.startsWith("\uFEFF") ? " " + text.substring(1) : text, -1);
        boolean markdown = Stream.of(raw).anyMatch(line -> line.startsWith("#"));
        List<String> plain = Stream.of(raw).map(line -> plain(line, markdown)).toList();
        String word = Bars.parted(language.messages(Lexicon.BUNDLE).text(Concept.ROUND.name()))
                .get(0);
        Set<Integer> titles = NumberedTitles.in(plain, language);
        for (int i = 0; i < raw.length; i++) {
            boolean hashes = raw[i].stripLeading().startsWith("#");
            lines.add(new Line(
                    i + 1,
                    raw[i],
                    plain.get(i),
                    hashes,
                    isListed(raw[i], plain.get(i)),
                    titles.contains(i) ? word : ""));
        }
    }

    /** The lines from the first. */
    List<Line> lines() {
        return lines;
    }

    private static boolean isListed(String raw, String plain) {
        int first = raw.length() - raw.stripLeading().length();
        return first < raw.length() && LIST_SIGNS.indexOf(raw.charAt(first)) >= 0 && plain.charAt(first) == ' ';
    }

    private String plain(String raw, boolean markdown) {
        StringBuilder plain = new StringBuilder(raw.length());
        for (int i = 0; i < raw.length(); i++) {
            plain.append(plain(raw.charAt(i)));
        }
        for (int i = 0; i + 1 < plain.length(); i++) {
            if (plain.charAt(i) == '\\' && "*_#-.[]()".indexOf(plain.charAt(i + 1)) >= 0) {
                plain.setCharAt(i, ' ');
            }
        }
        int hashes = 0;
        while (hashes < plain.length() && (plain.charAt(hashes) == '#' || plain.charAt(hashes) == ' ')) {
            plain.setCharAt(hashes, ' ');
            hashes++;
        }
        blank(plain, listSign);
        blankEmphasis(plain, BOLD, 2);
        blankEmphasis(plain, LIGHT, 1);
        if (markdown) {
            blank(plain, STAR_OF_LIST);
            blankEmphasis(plain, STARRED_LINE, 1);
        }
        return plain.toString();
    }

    private static char plain(char c) {
        if (DASHES.indexOf(c) >= 0) {
            return '-';
        }
        if (SINGLE_QUOTES.indexOf(c) >= 0) {
            return '\'';
        }
        if (DOUBLE_QUOTES.indexOf(c) >= 0) {
            return ' ';
        }
        if (STARS.indexOf(c) >= 0) {
            return '*';
        }
        if (c == '\u2192' || c == '\u21d2') {
            return '=';
        }
        if (c == '\u00d7') {
            return 'x';
        }
        boolean blank =
                Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.getType(c) == Character.FORMAT;
        return blank ? ' ' : c;
    }

    private static void blank(StringBuilder text, Pattern sign) {
        Matcher found = sign.matcher(text);
        if (found.find()) {
            text.replace(found.start(), found.end(), " ".repeat(found.end() - found.start()));
        }
    }

    private static void blankEmphasis(StringBuilder text, Pattern signs, int width) {
        Matcher found = signs.matcher(text.toString());
        while (found.find()) {
            text.replace(found.start(), found.start() + width, " ".repeat(width));
            text.replace(found.end() - width, found.end(), " ".repeat(width));
        }
    }
}
