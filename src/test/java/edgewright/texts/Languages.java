package edgewright.texts;

import java.util.List;

/** The languages in which patterns are written and read in tests: that of the program, and one of resources alone. */
public final class Languages {
    /** Its numbers stand after the stitches, and its lists, repeats and decimals have other signs than those of English. */
    public static final Language INVENTED = Language.of("art-x-marsh");

    private static final List<Language> ALL = List.of(English.LANGUAGE, INVENTED);

    private Languages() {}

    /** One language after the other, so that many cases are shared between all of them. */
    public static Language of(long number) {
        return ALL.get((int) Math.floorMod(number, (long) ALL.size()));
    }
}
