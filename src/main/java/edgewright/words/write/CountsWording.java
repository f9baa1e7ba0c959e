package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.plain;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.TextBlock;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.Multiple;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenRound;
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

    CountsWording(Language language, Instructions pattern, YarnLabels yarns) {
        this.says = language.messages("words/write");
        this.pattern = pattern;
        this.yarns = yarns;
        this.counting = pattern.counting();
    }

    /** Empty unless the pattern states the counts, or as many examples, of every round and of the base round. */
    Optional<TextBlock.CountsTable> table() {
        List<SideSize> sizes = Stream.concat(
                        Stream.of(pattern.base().side()),
                        pattern.rounds().stream().map(WrittenRound::side))
                .toList();
        String caption = says.text("caption-" + counting);
        if (sizes.stream().allMatch(size -> size.counts().isPresent())) {
            List<PerSide<Integer>> counts =
                    sizes.stream().map(size -> size.counts().orElseThrow()).toList();
            return Optional.of(ofOneSize(caption, counts));
        }
        List<List<Integer>> examples = sizes.stream()
                .flatMap(size -> size.multiple().stream())
                .map(Multiple::examples)
                .toList();
        long lengths = examples.stream().map(List::size).distinct().count();
        if (examples.size() < sizes.size() || lengths != 1 || examples.get(0).isEmpty()) {
            return Optional.empty();
        }
        List<String> columns = new ArrayList<>();
        examples.get(0).forEach(base -> columns.add(says.text("example", plain("stitches", counting.shown(base)))));
        return Optional.of(table(says.text("examples-caption", arg("caption", caption)), columns, examples));
    }

    private TextBlock.CountsTable ofOneSize(String caption, List<PerSide<Integer>> counts) {
        if (counts.stream().allMatch(PerSide::allSidesAreAlike)) {
            List<List<Integer>> numbers =
                    counts.stream().map(c -> List.of(c.top())).toList();
            return table(caption, List.of(says.text("counts-each")), numbers);
        }
        if (counts.stream().allMatch(PerSide::oppositeSidesAreAlike)) {
            List<List<Integer>> numbers =
                    counts.stream().map(c -> List.of(c.top(), c.left())).toList();
            return table(caption, List.of(says.text("counts-topBottom"), says.text("counts-leftRight")), numbers);
        }
        List<Side> order = pattern.hand().workingOrder();
        return table(
                caption,
                order.stream().map(side -> says.text("column-" + side)).toList(),
                counts.stream()
                        .map(each -> order.stream().map(each::get).toList())
                        .toList());
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
