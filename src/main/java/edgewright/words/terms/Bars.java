package edgewright.words.terms;

import java.util.List;
import java.util.regex.Pattern;

/** Spellings of one thing in one text, parted by bars. */
public final class Bars {
    private static final Pattern BAR = Pattern.compile("\\s*\\|\\s*");

    private Bars() {}

    /** The spellings in their order. */
    public static List<String> parted(String spellings) {
        return List.of(BAR.split(spellings));
    }
}
