package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.plain;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.TextBlock;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.SideSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The table of counts: those of the given size, else those of the examples. */
final class CountsWording {
    private final Messages says;
    private final Instructions pattern;
    private final YarnLabels yarns;
    private final Counting counting;
    private final List<String> names;

    /** @param names of the sizes; none where they have no names */
    CountsWording(Language language, Instructions pattern, YarnLabels yarns, List<String> names) {
        this.says = language.messages("words/write");
        this.pattern = pattern;
        this.yarns = yarns;
        this.counting = pattern.counting();
        this.names = List.copyOf(names);
    }

    /** Empty unless the pattern states the counts of every round, and of the base round or of as many examples of it. */
    Optional<TextBlock.CountsTable> table() {
        SideSize base = pattern.base().side();
        List<PerSide<Integer>> examples = base.multiple().stream()
                .flatMap(multiple -> multiple.examples().stream())
                .map(PerSide::all)
                .toList();
        boolean ofExamples = base.counts().isEmpty();
        List<List<PerSide<Integer>>> counts = Stream.concat(
                        Stream.of(ofExamples ? examples : base.counts()),
                        pattern.rounds().stream().map(round -> round.side().counts()))
                .toList();
        if (counts.get(0).isEmpty()
                || counts.stream().map(List::size).distinct().count() > 1) {
            return Optional.empty();
        }
        List<Heading> sides = sides(counts);
        List<String> columns = new ArrayList<>();
        for (int i = 0; i < counts.get(0).size(); i++) {
            for (Heading side : sides) {
                columns.add(
                        ofExamples
                                ? example(examples.get(i))
                                : heading(i, counts.get(0).size(), side));
            }
        }
        List<List<Integer>> numbers = counts.stream()
                .map(round -> round.stream()
                        .flatMap(size -> sides.stream().map(side -> size.get(side.side())))
                        .toList())
                .toList();
        String caption = says.text("caption-" + counting);
        return Optional.of(
                table(ofExamples ? says.text("examples-caption", arg("caption", caption)) : caption, columns, numbers));
    }

    /** A column for sides that are alike: one of them, and what they are called. */
    private record Heading(Side side, String name) {}

    private List<Heading> sides(List<List<PerSide<Integer>>> counts) {
        List<PerSide<Integer>> all = counts.stream().flatMap(List::stream).toList();
        if (all.stream().allMatch(PerSide::allSidesAreAlike)) {
            return List.of(new Heading(Side.TOP, says.text("counts-each")));
        }
        if (all.stream().allMatch(PerSide::oppositeSidesAreAlike)) {
            return List.of(
                    new Heading(Side.TOP, says.text("counts-topBottom")),
                    new Heading(Side.LEFT, says.text("counts-leftRight")));
        }
        return pattern.hand().workingOrder().stream()
                .map(side -> new Heading(side, says.text("column-" + side)))
                .toList();
    }

    private String example(PerSide<Integer> base) {
        return says.text("example", plain("stitches", counting.shown(base.top())));
    }

    /** Of several sizes a column is named after the size. */
    private String heading(int size, int sizes, Heading side) {
        if (sizes == 1) {
            return side.name();
        }
        String name = size < names.size() ? names.get(size) : says.text("size-number", number("size", size + 1));
        return says.text("counts-ofSize", arg("size", name), arg("sides", side.name()));
    }

    private TextBlock.CountsTable table(String caption, List<String> sizes, List<List<Integer>> numbers) {
        List<String> columns = new ArrayList<>(List.of(says.text("counts-round"), says.text("counts-yarn")));
        columns.addAll(sizes);
        List<List<String>> rows = new ArrayList<>();
        for (int r = 0; r < numbers.size(); r++) {
            List<String> row = new ArrayList<>();
            row.add(String.valueOf(r));
            row.add(
                    r == 0
                            ? says.text("counts-base")
                            : yarns.of(pattern.yarnOf(pattern.rounds().get(r - 1))));
            numbers.get(r).forEach(number -> row.add(String.valueOf(counting.shown(number))));
            rows.add(row);
        }
        return new TextBlock.CountsTable(caption, columns, rows);
    }
}
