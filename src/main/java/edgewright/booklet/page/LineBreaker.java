package edgewright.booklet.page;

import edgewright.draw.paint.FontStack;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Breaks text into lines by the widths that are printed, where the JDK's rules for lines allow it: at blanks, never at a no-break
 * space. A number stays with the word that it counts. A row of stitches is broken after a comma, a semicolon or a full stop;
 * only what is wider than a line between two of them is broken elsewhere. What must not be broken but is wider than a line
 * fills its lines all the same: it is broken at a blank or a hyphen, and a word without them where it has to be.
 */
public final class LineBreaker {
    private static final Pattern NUMBER = Pattern.compile("[*(\\[]*\\d[\\d.]*");

    /** The first of several counts in brackets, and those after it. */
    private static final Pattern OPENS = Pattern.compile("(.* )?[(\\[]\\d[\\d,.]*,");

    private static final Pattern GOES_ON = Pattern.compile("\\d[\\d,.]*,");

    /** Sums of widths are not exact. */
    private static final double TOLERANCE_PT = 0.001;

    private final FaceMetrics face;
    private final double sizePt;
    private final boolean atPauses;

    private LineBreaker(FaceMetrics face, double sizePt, boolean atPauses) {
        this.face = face;
        this.sizePt = sizePt;
        this.atPauses = atPauses;
    }

    /** For sentences: lines as full as can be. */
    public static LineBreaker forProse(FaceMetrics face, double sizePt) {
        return new LineBreaker(face, sizePt, false);
    }

    /** For rows of stitches: lines that end at a pause. */
    static LineBreaker forStitches(FaceMetrics face, double sizePt) {
        return new LineBreaker(face, sizePt, true);
    }

    /**
     * What is broken only if it is wider than a line.
     *
     * @param breaks where it is broken then: offsets after a blank, or in a word
     */
    private record Unit(String text, List<Integer> breaks) {
        Unit joined(Unit next) {
            int at = text.length() + 1;
            List<Integer> all = new ArrayList<>(breaks);
            all.add(at);
            next.breaks.forEach(offset -> all.add(at + offset));
            return new Unit(text + " " + next.text, all);
        }

        /** The last place at which it is broken so that what stands before fits, or 0. */
        int lastBreak(Predicate<String> fits) {
            return breaks.stream()
                    .filter(at -> fits.test(text.substring(0, at).strip()))
                    .reduce(0, Math::max);
        }

        Unit from(int offset) {
            return new Unit(
                    text.substring(offset),
                    breaks.stream()
                            .filter(at -> at > offset)
                            .map(at -> at - offset)
                            .toList());
        }
    }

    /** The lines of a text; no line is empty, unless the text is. A line that is broken at a blank ends with it. */
    public List<String> lines(String text, double widthPt) {
        return lines(text, widthPt, widthPt);
    }

    /**
     * The lines of a text that begins further right. No line is empty but the first one, if nothing fits on it. A line that is
     * broken at a blank ends with a plain blank, so that the words before and after it are two to whoever reads the text out.
     *
     * @param firstPt the width of the first line, not more than that of the others
     */
    public List<String> lines(String text, double widthPt, double firstPt) {
        List<Unit> units = held(words(text));
        Filling filling = new Filling(widthPt, firstPt);
        (atPauses ? phrases(units, widthPt) : units).forEach(filling::add);
        return filling.lines();
    }

    /** Fills lines with units, one after the other. */
    private final class Filling {
        private final List<String> full = new ArrayList<>();
        private final double widthPt;
        private final double firstPt;
        private String line = "";

        Filling(double widthPt, double firstPt) {
            this.widthPt = widthPt;
            this.firstPt = firstPt;
        }

        void add(Unit unit) {
            String before = line.isEmpty() ? "" : line + " ";
            double roomPt = full.isEmpty() ? firstPt : widthPt;
            if (fits(before + unit.text(), roomPt)) {
                line = before + unit.text();
                return;
            }
            int cut = fits(unit.text(), widthPt) ? 0 : unit.lastBreak(piece -> fits(before + piece, roomPt));
            if (cut > 0) {
                full.add(before + unit.text().substring(0, cut));
            } else if (!line.isEmpty()) {
                full.add(before);
            } else if (full.isEmpty() && firstPt < widthPt) {
                full.add("");
            }
            begin(cut > 0 ? unit.from(cut) : unit);
        }

        private void begin(Unit unit) {
            Unit rest = unit;
            while (!fits(rest.text(), widthPt)) {
                int cut = rest.lastBreak(piece -> fits(piece, widthPt));
                int end = cut > 0 ? cut : mostLetters(rest.text(), widthPt);
                if (end == rest.text().length()) {
                    break;
                }
                full.add(rest.text().substring(0, end));
                rest = rest.from(end);
            }
            line = rest.text();
        }

        List<String> lines() {
            List<String> lines = new ArrayList<>(full);
            lines.add(line);
            return List.copyOf(lines);
        }
    }

    private boolean fits(String text, double roomPt) {
        return face.widthPt(text, sizePt) <= roomPt + TOLERANCE_PT;
    }

    /** How much of a word fits, up to the end of a letter with its accents; at least one letter. */
    private int mostLetters(String word, double widthPt) {
        BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
        letters.setText(word);
        int end = letters.next();
        for (int next = letters.next(); next != BreakIterator.DONE; next = letters.next()) {
            if (!fits(word.substring(0, next), widthPt)) {
                break;
            }
            end = next;
        }
        return end;
    }

    /** The words up to a pause as one, unless they are wider than a line. */
    private List<Unit> phrases(List<Unit> units, double widthPt) {
        List<Unit> phrases = new ArrayList<>();
        int start = 0;
        for (int end = 1; end <= units.size(); end++) {
            if (end == units.size() || isPause(units.get(end - 1).text())) {
                List<Unit> phrase = units.subList(start, end);
                Unit joined = phrase.stream().reduce(Unit::joined).orElseThrow();
                phrases.addAll(fits(joined.text(), widthPt) ? List.of(joined) : phrase);
                start = end;
            }
        }
        return phrases;
    }

    private static boolean isPause(String word) {
        return ",;.".indexOf(word.charAt(word.length() - 1)) >= 0;
    }

    /**
     * Words, with the numbers among them held to the word that they count, and counts of several sizes to one another. In a sentence a number may as well belong to the
     * word before it ('round 5'), so it is held to both.
     */
    private List<Unit> held(List<Unit> words) {
        List<Unit> held = new ArrayList<>();
        boolean afterNumber = false;
        boolean inCounts = false;
        for (Unit word : words) {
            boolean holds =
                    afterNumber || (!atPauses && Character.isDigit(word.text().charAt(0)));
            int last = held.size() - 1;
            if (holds && last >= 0) {
                held.set(last, held.get(last).joined(word));
            } else {
                held.add(word);
            }
            inCounts = OPENS.matcher(word.text()).matches()
                    || (inCounts && GOES_ON.matcher(word.text()).matches());
            afterNumber = inCounts || NUMBER.matcher(word.text()).matches();
        }
        return held;
    }

    /** What stands between two blanks at which a line may be broken. */
    private static List<Unit> words(String text) {
        BreakIterator places = BreakIterator.getLineInstance(Locale.ROOT);
        places.setText(text);
        List<Unit> words = new ArrayList<>();
        List<Integer> inner = new ArrayList<>();
        int start = 0;
        for (int at = places.next(); at != BreakIterator.DONE; at = places.next()) {
            if (at < text.length() && !Character.isWhitespace(text.charAt(at - 1))) {
                inner.add(at);
                continue;
            }
            String word = plainBlanks(text.substring(start, at));
            int from = start + word.length() - word.stripLeading().length();
            if (!FontStack.printable(word).isBlank()) {
                words.add(new Unit(
                        word.strip(),
                        inner.stream().map(offset -> offset - from).toList()));
            }
            inner.clear();
            start = at;
        }
        return words;
    }

    private static String plainBlanks(String text) {
        StringBuilder plain = new StringBuilder(text);
        for (int i = 0; i < plain.length(); i++) {
            if (Character.isWhitespace(plain.charAt(i)) || Character.isSpaceChar(plain.charAt(i))) {
                plain.setCharAt(i, ' ');
            }
        }
        return plain.toString();
    }
}
