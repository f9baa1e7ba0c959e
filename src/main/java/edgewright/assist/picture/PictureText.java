package edgewright.assist.picture;

import edgewright.assist.picture.PictureReading.Read;
import edgewright.assist.picture.PictureReading.Refused;
import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Pictures as text: a line a round, the outermost first as a chart shows them; in each the yarn id of every stitch, in working
 * order, and {@link #NEVER_MIND} where any yarn will do. Blanks at the ends of a line, and empty lines, are passed over.
 */
public final class PictureText {
    /** Stands where any yarn will do. */
    public static final String NEVER_MIND = ".";

    private final List<String> ids;
    private final Map<String, Wanted> wanted = new HashMap<>();

    private PictureText(Collection<String> ids) {
        this.ids = ids.stream().filter(PictureText::isOneLetter).toList();
        this.ids.forEach(id -> wanted.put(id, Wanted.of(id)));
        wanted.put(NEVER_MIND, Wanted.NEVER_MIND);
    }

    /**
     * Reads a picture.
     *
     * @param ids the yarns that there are; those of more than one letter cannot be named
     */
    public static PictureReading read(String text, Collection<String> ids) {
        return new PictureText(ids).read(text.startsWith("\ufeff") ? text.substring(1) : text);
    }

    /** The letters of a text that can be yarns, each once, in the order of their ids. */
    public static Set<String> yarns(String text) {
        Set<String> yarns = new TreeSet<>();
        text.codePoints()
                .distinct()
                .mapToObj(Character::toString)
                .filter(Yarn::isId)
                .forEach(yarns::add);
        return yarns;
    }

    private static boolean isOneLetter(String id) {
        return id.codePointCount(0, id.length()) == 1;
    }

    private PictureReading read(String text) {
        int rounds = (int) text.lines().filter(line -> !line.isBlank()).count();
        if (rounds == 0) {
            return new Refused(new PictureFault.NoCells());
        }
        if (rounds > Chart.MOST_ROUNDS) {
            return new Refused(new PictureFault.TooManyRounds(rounds));
        }
        List<List<Wanted>> rows = new ArrayList<>();
        int number = 0;
        for (String line : (Iterable<String>) text.lines()::iterator) {
            number++;
            String letters = line.strip();
            if (letters.isEmpty()) {
                continue;
            }
            List<Wanted> row = new ArrayList<>();
            PictureFault fault =
                    read(letters, number, rows.isEmpty() ? -1 : rows.get(0).size(), row);
            if (fault != null) {
                return new Refused(fault);
            }
            rows.add(row);
        }
        int width = rows.get(0).size();
        return new Read(WantedPicture.of(
                rounds, width, place -> rows.get(rounds - place.round()).get(place.place() - 1)));
    }

    /**
     * Reads one line.
     *
     * @param expected how long it is to be; -1 for any length
     * @return what is wrong with it; null if nothing is
     */
    private PictureFault read(String letters, int line, int expected, List<Wanted> row) {
        int length = letters.codePointCount(0, letters.length());
        if (length > Chart.MOST_STITCHES) {
            return new PictureFault.TooWide(length);
        }
        for (int i = 0; i < letters.length(); i = letters.offsetByCodePoints(i, 1)) {
            String letter = Character.toString(letters.codePointAt(i));
            Wanted here = wanted.get(letter);
            if (here == null) {
                return new PictureFault.NoSuchYarn(line, row.size() + 1, letter, ids);
            }
            row.add(here);
        }
        return expected >= 0 && length != expected ? new PictureFault.Uneven(line, length, expected) : null;
    }
}
