package edgewright.booklet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Breaks text into lines by the widths that are printed, never at a no-break space. A number stays with the word that it
 * counts. A row of stitches is
 * broken after a comma, a semicolon or a full stop; only what is wider than a line between two of them is broken elsewhere.
 * A word that is wider than a line is broken where it has to be.
 */
public final class LineBreaker {
    /** A no-break space is none of them. */
    private static final String BREAKING_BLANKS = "[\\s\\u2000-\\u2006\\u2008-\\u200b\\u3000]+";

    private static final Pattern NUMBER = Pattern.compile("[*(\\[]*\\d[\\d.]*");

    private final Face face;
    private final double sizePt;
    private final boolean atPauses;

    private LineBreaker(Face face, double sizePt, boolean atPauses) {
        this.face = face;
        this.sizePt = sizePt;
        this.atPauses = atPauses;
    }

    /** For sentences: lines as full as can be. */
    public static LineBreaker forProse(Face face, double sizePt) {
        return new LineBreaker(face, sizePt, false);
    }

    /** For rows of stitches: lines that end at a pause. */
    static LineBreaker forStitches(Face face, double sizePt) {
        return new LineBreaker(face, sizePt, true);
    }

    /** The lines of a text; no line is empty, unless the text is. */
    public List<String> lines(String text, double widthPt) {
        return lines(text, widthPt, widthPt);
    }

    /**
     * The lines of a text that begins further right. No line is empty but the first one, if nothing fits on it.
     *
     * @param firstPt the width of the first line, not more than that of the others
     */
    public List<String> lines(String text, double widthPt, double firstPt) {
        List<String> words = unbroken(text);
        List<String> lines = new ArrayList<>();
        for (String phrase : atPauses ? phrases(words, widthPt) : words) {
            int last = lines.size() - 1;
            if (last < 0 && firstPt < widthPt && width(phrase) > firstPt + 0.001) {
                lines.add("");
            }
            double roomPt = last <= 0 ? firstPt : widthPt;
            if (last >= 0 && !lines.get(last).isEmpty() && width(lines.get(last) + " " + phrase) <= roomPt + 0.001) {
                lines.set(last, lines.get(last) + " " + phrase);
            } else {
                lines.addAll(fitting(phrase, widthPt));
            }
        }
        return lines.isEmpty() ? List.of("") : List.copyOf(lines);
    }

    private double width(String text) {
        return face.widthPt(text, sizePt);
    }

    /** The words up to a pause as one, unless they are wider than a line. */
    private List<String> phrases(List<String> words, double widthPt) {
        List<String> phrases = new ArrayList<>();
        int start = 0;
        for (int end = 1; end <= words.size(); end++) {
            if (end == words.size() || isPause(words.get(end - 1))) {
                List<String> phrase = words.subList(start, end);
                String joined = String.join(" ", phrase);
                phrases.addAll(width(joined) <= widthPt ? List.of(joined) : phrase);
                start = end;
            }
        }
        return phrases;
    }

    private static boolean isPause(String word) {
        return ",;.".indexOf(word.charAt(word.length() - 1)) >= 0;
    }

    /**
     * Words as they are printed, with the numbers among them held to the word that they count. In a sentence a number may
     * as well belong to the word before it ('round 5'), so it is held to both.
     */
    private List<String> unbroken(String text) {
        List<String> words = new ArrayList<>();
        boolean afterNumber = false;
        for (String each : text.split(BREAKING_BLANKS)) {
            String word = face.printable(each).strip();
            if (word.isEmpty()) {
                continue;
            }
            boolean held = afterNumber || (!atPauses && Character.isDigit(word.charAt(0)));
            if (held && !words.isEmpty()) {
                int last = words.size() - 1;
                words.set(last, words.get(last) + " " + word);
            } else {
                words.add(word);
            }
            afterNumber = NUMBER.matcher(word).matches();
        }
        return words;
    }

    /** A word that fits on a line as it is; else cut into pieces that do, at a blank if it has one. */
    private List<String> fitting(String word, double widthPt) {
        List<String> pieces = new ArrayList<>();
        String left = word;
        while (width(left) > widthPt + 0.001) {
            int blank = left.indexOf(' ');
            int end = blank > 0 && width(left.substring(0, blank)) <= widthPt ? blank : fits(left, widthPt);
            pieces.add(left.substring(0, end));
            left = left.substring(end).strip();
        }
        if (!left.isEmpty()) {
            pieces.add(left);
        }
        return pieces;
    }

    /** How many characters of a word fit, at least one. */
    private int fits(String word, double widthPt) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()) {
            int next = word.offsetByCodePoints(end, 1);
            if (width(word.substring(0, next)) > widthPt) {
                break;
            }
            end = next;
        }
        return end;
    }
}
