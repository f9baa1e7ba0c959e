package edgewright.words.others;

import edgewright.texts.Language;
import edgewright.words.grammar.WordSet;
import java.util.regex.Pattern;

/**
 * How yarns are named in a list, with the words of the language in it.
 *
 * @param idFirst 'A: Peat', 'A = Peat', 'Yarn A - Peat', 'A (Peat)', 'A is Peat'; groups: id, name
 * @param spaced 'A Peat'; groups: id, name
 * @param twoSpaced a line with two of these
 * @param nameFirst 'Peat (A)', 'Main colour (MC)', 'Peat = A'; groups: name, id
 * @param namesAlone 'Yarns: Dusk, Lamp', 'wool in two colours, Slate and Shell'; group: the names
 * @param between what parts the names of such a list
 * @param about a line about yarn, or one that says the terms beside it
 */
record YarnPatterns(
        Pattern idFirst,
        Pattern spaced,
        Pattern twoSpaced,
        Pattern nameFirst,
        Pattern namesAlone,
        Pattern between,
        Pattern about,
        Pattern role,
        Pattern numbered) {
    private static final String ID = "([A-H]|MC|CC[1-9]?|C[1-9]|Y[1-9])";
    private static final String ALONE = "(?<![\\p{L}\\d])";
    private static final String CAPITALISED = "\\p{Lu}[\\p{L}']+";

    static YarnPatterns of(Language language) {
        String leads = "(?i:" + alternatives(language, "YARN_LEADS") + ")";
        String is = "(?:" + alternatives(language, "YARN_IS") + ")";
        String called = "(?:" + alternatives(language, "YARN_CALLED") + ")";
        String and = "(?:" + alternatives(language, "YARN_AND") + ")";
        String lists = "(?i:" + alternatives(language, "YARN_LISTS") + ")(?i: "
                + alternatives(language, "YARN_LISTS_FOR") + ")?";
        String word = "(?!(?:" + alternatives(language, "NOT_YARN_NAMES") + ")\\b)\\p{L}[\\p{L}']+";
        String name = "(" + word + "(?: " + CAPITALISED + "){0,3})";
        String comma = ", (?:" + and + " )?| " + and + " ";
        String sign = "(?: " + is + " |  ?| *[:=,-] *)\\p{L}";
        return new YarnPatterns(
                Pattern.compile(ALONE + "(?:" + leads + " )?" + ID + "(?: *[:=-] *| ?\\(| " + is + " |, " + called
                        + " |, (?=\\p{Lu}))" + name),
                Pattern.compile(ALONE + ID + " {1,6}" + name),
                Pattern.compile("(?<!\\p{L})(?:A|MC) {1,6}\\p{L}+.*(?<!\\p{L})(?:B|CC) {1,6}\\p{L}"),
                Pattern.compile(ALONE + "(\\p{Lu}\\p{L}*(?:[ -]\\p{L}+){0,3}?) ?(?:\\((?:" + leads + " )?|= |" + is
                        + " (?:" + leads + " )?)" + ID + "(?![\\p{L}\\d])"),
                Pattern.compile(lists + "[:,] *((?:" + CAPITALISED + "(?:" + comma + ")){1,5}" + CAPITALISED
                        + ")(?![\\p{L}(])"),
                Pattern.compile(comma),
                Pattern.compile("(?i:" + alternatives(language, "ABOUT_YARN") + "|\\b(?:"
                        + alternatives(language, "ABOUT_YARN_ALONE") + ")\\b)|(?<!\\p{L})(?:A|MC)" + sign
                        + "+.*(?<!\\p{L})(?:B|CC)"
                        + sign),
                Pattern.compile("(?i:" + alternatives(language, "YARN_ROLES") + ")(?: " + leads
                        + ")? \\((\\p{Lu}{1,2})\\) *[:=-] *" + name),
                Pattern.compile("(?i:" + alternatives(language, "YARN_LISTS") + ") [1-8](?!\\d)"));
    }

    private static String alternatives(Language language, String key) {
        return WordSet.alternatives(language, key);
    }
}
