package edgewright.words.setup;

import edgewright.words.grammar.Token;
import java.util.ArrayList;
import java.util.List;

/** Cuts the words of a list of abbreviations into its entries. */
final class EntryCuts {
    private static final int LONGEST_ENTRY = 7;
    private static final int FEWEST_WITH_COMMAS = 3;

    private EntryCuts() {}

    /** The tokens up to the end of their first sentence. */
    static List<Token> upToStop(List<Token> tokens) {
        for (int i = 0; i < tokens.size(); i++) {
            String text = tokens.get(i).text();
            boolean ends = text.equals(";") || text.equals("!") || (text.equals(".") && isEnd(tokens, i));
            if (ends) {
                return tokens.subList(0, i + 1);
            }
        }
        return tokens;
    }

    private static boolean isEnd(List<Token> tokens, int at) {
        return at + 1 == tokens.size()
                || Character.isUpperCase(tokens.get(at + 1).text().charAt(0));
    }

    /** The entries of a line: parted by semicolons, or by commas and full stops where an equals sign comes after them. */
    static List<List<Token>> parts(List<Token> line) {
        long equals = line.stream().filter(token -> token.text().equals("=")).count();
        List<List<Token>> parts = new ArrayList<>(List.of(new ArrayList<>()));
        for (int i = 0; i < line.size(); i++) {
            String sign = line.get(i).text();
            boolean begun = parts.get(parts.size() - 1).stream()
                    .anyMatch(token -> token.text().equals("="));
            boolean soft = (sign.equals(",") || sign.equals(".")) && begun && equals > 1 && equalsComes(line, i);
            if (sign.equals(";") || soft) {
                parts.add(new ArrayList<>());
            } else {
                parts.get(parts.size() - 1).add(line.get(i));
            }
        }
        return parts.size() >= FEWEST_WITH_COMMAS && parts.stream().allMatch(EntryCuts::hasCommaForSign)
                ? parts.stream().map(EntryCuts::withSign).toList()
                : parts;
    }

    /** 'Ch, chain': where each part of a line is so, the comma stands for an equals sign. */
    private static boolean hasCommaForSign(List<Token> part) {
        return part.size() > 2
                && part.get(0).kind() == Token.Kind.WORD
                && part.get(1).text().equals(",");
    }

    private static List<Token> withSign(List<Token> part) {
        List<Token> signed = new ArrayList<>(part);
        Token comma = part.get(1);
        signed.set(1, new Token(Token.Kind.SIGN, "=", "=", comma.line(), comma.column()));
        return signed;
    }

    private static boolean equalsComes(List<Token> line, int from) {
        for (int i = from + 1; i < Math.min(line.size(), from + 6); i++) {
            if (line.get(i).text().equals("=")) {
                return true;
            }
            if (line.get(i).text().equals(",")) {
                return false;
            }
        }
        return false;
    }

    /** The entry up to the end of its sentence. */
    static List<Token> firstSentence(List<Token> part, int sign) {
        for (int i = Math.max(0, sign); i + 1 < part.size(); i++) {
            Token next = part.get(i + 1);
            boolean ends = part.get(i).text().equals(".")
                    && (next.line() != part.get(i).line()
                            || next.column() > part.get(i).end())
                    && (Character.isUpperCase(next.text().charAt(0)) || entryComes(part, i + 1));
            if (ends) {
                return part.subList(0, i + 1);
            }
        }
        return part;
    }

    /** Whether another entry begins here: a word or two, perhaps with a name in brackets, and a sign. */
    private static boolean entryComes(List<Token> part, int from) {
        for (int i = from + 1; i < Math.min(part.size(), from + LONGEST_ENTRY); i++) {
            String text = part.get(i).text();
            if (text.equals("=") || text.equals(":")) {
                return true;
            }
            if (text.equals(".") || text.equals(",") || text.equals(";")) {
                return false;
            }
        }
        return false;
    }
}
