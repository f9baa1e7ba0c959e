package edgewright.booklet.parts;

import static edgewright.texts.Arg.count;

import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.TableSetter;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import edgewright.fit.PatternSize;
import edgewright.texts.Language;
import edgewright.words.write.PatternWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** The counts of a pattern for any size: the stitches on a side in each round, for a few sizes from small to large. */
public final class CountsPages {
    /** About how many stitches the sides of the base round have that stand as examples, from a cushion to a bed. */
    private static final List<Integer> EXAMPLES = List.of(40, 60, 80, 120, 160, 200);

    /** So many columns say which round a row is about. */
    static final int NAMING = 2;

    private CountsPages() {}

    /**
     * How often the repeat is worked in each example; rising, none twice, at least once each. The examples of the words are
     * among them: they take the places of those that they are nearest to.
     */
    public static List<Integer> repeats(Chart chart) {
        SideShape shape = chart.shape();
        TreeSet<Integer> repeats = new TreeSet<>();
        for (int stitches : EXAMPLES) {
            repeats.add(Math.max(1, Math.round((stitches - shape.fewestStitches(0)) / (float) shape.w())));
        }
        List<Integer> named = PatternWriter.exampleRepeats();
        for (int words : named) {
            repeats.stream()
                    .filter(m -> !named.contains(m))
                    .min(Comparator.comparingInt(m -> Math.abs(m - words)))
                    .filter(m -> !repeats.contains(words))
                    .ifPresent(repeats::remove);
            repeats.add(words);
        }
        return List.copyOf(repeats);
    }

    /** How often the repeat is worked on the sides of a pattern for several sizes, rising; of one for any size the examples. */
    public static List<Integer> repeats(Chart chart, PatternSize size) {
        return size.sizes().isEmpty()
                ? repeats(chart)
                : size.sizes().stream()
                        .flatMap(PerSide::stream)
                        .distinct()
                        .sorted()
                        .toList();
    }

    /** The head of a column for sides on which the repeat is worked so often: in words, or short where the type is large. */
    public static String repeats(TextSetter setter, int repeats) {
        return setter.sheet().oneColumn()
                ? setter.says().text("counts-times", count("repeats", repeats))
                : setter.says().text("counts-repeats", count("repeats", repeats));
    }

    /** What a side counts in a round of an example in which the repeat is worked so often on every side. */
    public static String example(Chart chart, Counting counting, Language language, int round, int repeats) {
        return language.count(counting.shown(chart.shape().stitches(round, repeats)));
    }

    /** A caption that says what is counted, then the table. */
    public static List<ColumnSlice> set(TextSetter setter, Chart chart, Counting counting, Tag parent) {
        List<Integer> repeats = repeats(chart);
        List<String> columns = new ArrayList<>(
                List.of(setter.says().text("counts-round"), setter.says().text("counts-yarn")));
        repeats.forEach(m -> columns.add(repeats(setter, m)));
        List<List<String>> rows = new ArrayList<>();
        for (int r = 0; r <= chart.rounds().size(); r++) {
            List<String> row = new ArrayList<>();
            row.add(Integer.toString(r));
            row.add(r == 0 ? setter.says().text("counts-base") : chart.yarnOf(r).id());
            for (int m : repeats) {
                row.add(example(chart, counting, setter.language(), r, m));
            }
            rows.add(row);
        }
        String caption = setter.says().text("counts-caption-" + counting) + " "
                + setter.says().text("counts-examples");
        List<ColumnSlice> strips = new ArrayList<>(setter.paragraph(parent, caption));
        strips.replaceAll(strip -> strip.breaking(ColumnSlice.Break.NEVER));
        List<ColumnSlice> table = new ArrayList<>(new TableSetter(setter)
                .fitting(
                        parent,
                        NAMING,
                        columns,
                        rows,
                        setter.sheet().labelPt(),
                        setter.sheet().textPt()));
        table.set(0, table.get(0).spaced(setter.sheet().halfLinePt()));
        strips.addAll(table);
        return strips;
    }
}
