package edgewright.draw.paint;

import java.text.BreakIterator;
import java.util.Locale;
import java.util.function.Predicate;

/** Texts that are longer than their room, cut with an ellipsis. */
public final class ShortenedText {
    private static final String GOES_ON = "\u2026";

    private ShortenedText() {}

    /**
     * The text if it fits; else as much of it as fits with an ellipsis behind it, never cut between a letter and its accent. Where
     * not even one letter fits the ellipsis stands alone.
     *
     * @param fits whether a text fits; a longer text never fits better
     */
    public static String toFit(String text, Predicate<String> fits) {
        String whole = text.strip();
        if (fits.test(whole)) {
            return whole;
        }
        BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
        letters.setText(whole);
        letters.next();
        String longest = GOES_ON;
        for (int end = letters.current(); end != BreakIterator.DONE; end = letters.next()) {
            String cut = whole.substring(0, end).strip() + GOES_ON;
            if (!fits.test(cut)) {
                break;
            }
            longest = cut;
        }
        return longest;
    }
}
