package edgewright.draw.picture;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.choice;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import edgewright.draw.paint.FontStack;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A text of a chart with characters that no face has, to be named before it is printed; {@link FontStack} says what stands for
 * them.
 *
 * @param where which text it is
 * @param yarn the id of the yarn that it is about; empty for a text about no yarn
 * @param characters those that no face has, each once, in the order of Unicode; at least one
 */
public record UnprintedText(Where where, String yarn, NavigableSet<Integer> characters) {
    private static final int MOST_NAMED = 12;

    public UnprintedText {
        characters = Collections.unmodifiableNavigableSet(new TreeSet<>(characters));
    }

    /** The texts that somebody writes freely. */
    public enum Where {
        TITLE,
        DESIGNER,
        NOTES,
        SECTIONS,
        PHOTOS,
        IMPRINT,
        SKILL,
        YARN_ID,
        YARN_NAME,
        VERSION,
        DATE
    }

    /** Of this text, which is about no yarn: itself if a face lacks some of it, else nothing. */
    public static Stream<UnprintedText> of(Where where, String text) {
        return of(where, "", text);
    }

    /** All texts of a chart that a printed pattern shows. */
    public static List<UnprintedText> inPattern(Chart chart) {
        List<UnprintedText> texts = new ArrayList<>(inPicture(chart, true));
        of(Where.NOTES, chart.notes()).forEach(texts::add);
        of(Where.SKILL, chart.making().skill()).forEach(texts::add);
        return texts;
    }

    /**
     * All texts of a chart that a picture of its corner shows.
     *
     * @param legend whether what marks and yarns mean is drawn into it
     */
    public static List<UnprintedText> inPicture(Chart chart, boolean legend) {
        List<UnprintedText> texts = new ArrayList<>();
        if (legend) {
            of(Where.TITLE, chart.title()).forEach(texts::add);
            of(Where.DESIGNER, chart.designer()).forEach(texts::add);
        }
        for (Yarn yarn : chart.yarnsUsed()) {
            of(Where.YARN_ID, yarn.id(), yarn.id()).forEach(texts::add);
            if (legend) {
                of(Where.YARN_NAME, yarn.id(), yarn.name()).forEach(texts::add);
            }
        }
        return texts;
    }

    /** A sentence, without its full stop: which characters, each with its number in Unicode, of many the first, and where. */
    public String sentence(Language language) {
        String named = characters.stream()
                .limit(MOST_NAMED)
                .map(c -> String.format(Locale.ROOT, "%s (U+%04X)", Character.toString(c), c))
                .collect(Collectors.joining(", "));
        Messages says = language.messages("draw");
        return says.text(
                "unprinted",
                arg("characters", characters.size() > MOST_NAMED ? named + " \u2026" : named),
                arg("place", says.text("unprinted-text", choice("text", where), arg("yarn", yarn))),
                count("count", characters.size()));
    }

    private static Stream<UnprintedText> of(Where where, String yarn, String text) {
        NavigableSet<Integer> lacking = FontStack.lacking(text);
        return lacking.isEmpty() ? Stream.empty() : Stream.of(new UnprintedText(where, yarn, lacking));
    }
}
