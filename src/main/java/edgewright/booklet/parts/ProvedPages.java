package edgewright.booklet.parts;

import static edgewright.texts.Arg.and;
import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.fit.FitPlan;
import edgewright.proof.ProofSentences;
import edgewright.proof.Prover;
import edgewright.proof.SizeProofs;
import edgewright.proof.SizeProofs.Trial;
import edgewright.texts.Messages;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** For which sizes the words of the pattern were worked back before it was printed, and what came of it. */
public final class ProvedPages {
    private final TextSetter setter;
    private final Messages says;
    private final Chart chart;
    private final BookletOptions options;
    private final Progress progress;
    private final List<String> problems = new ArrayList<>();

    public ProvedPages(TextSetter setter, Chart chart, BookletOptions options, Progress progress) {
        this.setter = setter;
        this.says = setter.says();
        this.progress = progress;
        this.chart = chart;
        this.options = options;
    }

    /**
     * Works the words, and says so for each size.
     *
     * @throws java.util.concurrent.CancellationException if it is not to go on
     */
    public List<ColumnSlice> set(Tag parent, Anchor anchor) {
        WordingOptions written = options.words(false);
        List<PerSide<Integer>> sizes = sizes();
        List<PerSide<Integer>> small = sizes.stream()
                .filter(size -> Prover.stitches(chart, size) <= Prover.MOST_STITCHES)
                .toList();
        Optional<FitPlan> piece = options.size().changes();
        ProofSentences sentences = new ProofSentences(options.language());
        List<Trial> trials = piece.isPresent() && !small.isEmpty()
                ? List.of(SizeProofs.ofPiece(chart, written, piece.get(), sentences, progress::isStopped))
                : SizeProofs.run(chart, written, small, sentences, trial -> {}, progress::isStopped);
        List<Trial> proved = trials.stream().filter(Trial::agrees).toList();
        List<Trial> failed = trials.stream().filter(trial -> !trial.agrees()).toList();
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        if (!proved.isEmpty()) {
            String agreed = sizes(proved);
            strips.addAll(setter.paragraph(
                    parent,
                    piece.map(plan -> says.text(
                                    "proved-how-piece", number("round", plan.changing()), arg("agreed", agreed)))
                            .orElseGet(() -> says.text("proved-how", arg("agreed", agreed)))));
        }
        failed.forEach(trial -> problems.addAll(trial.problems()));
        if (!failed.isEmpty()) {
            strips.addAll(setter.paragraph(
                    parent,
                    says.text(
                            "proved-failed",
                            arg("agreed", sizes(failed)),
                            arg("problem", failed.get(0).problems().get(0)))));
        }
        if (small.size() < sizes.size()) {
            strips.addAll(paragraph(parent, says.text("proved-tooLarge", count("stitches", Prover.MOST_STITCHES))));
        }
        return strips;
    }

    /** What stands against the words, a sentence each; none if they made the chart in every size, or were not worked yet. */
    public List<String> problems() {
        return List.copyOf(problems);
    }

    private List<ColumnSlice> paragraph(Tag parent, String text) {
        List<ColumnSlice> strips = new ArrayList<>(setter.paragraph(parent, text));
        strips.set(0, strips.get(0).spaced(setter.sheet().halfLinePt()));
        return strips;
    }

    /** The sizes of the pattern, or where it is for any size those that the counts show and those that bring out mistakes. */
    private List<PerSide<Integer>> sizes() {
        if (!options.sizes().isEmpty()) {
            return options.sizes();
        }
        List<PerSide<Integer>> sizes = new ArrayList<>(SizeProofs.USUAL);
        CountsPages.repeats(chart).stream()
                .map(PerSide::all)
                .filter(size -> !sizes.contains(size))
                .forEach(sizes::add);
        return sizes;
    }

    /** In a few words: a maker wants to know how well the pattern was tried, not on what. */
    private String sizes(List<Trial> trials) {
        List<PerSide<Integer>> bases = trials.stream()
                .map(trial -> trial.baseStitches().map(options.counting()::shown))
                .toList();
        List<String> alike = bases.stream()
                .filter(ProvedPages::isAlike)
                .map(base -> base.get(Side.FIRST))
                .distinct()
                .sorted()
                .map(options.language()::count)
                .toList();
        List<PerSide<Integer>> others =
                bases.stream().filter(base -> !isAlike(base)).toList();
        if (alike.isEmpty()) {
            return others.stream().map(this::four).collect(Collectors.joining("; "));
        }
        String first = says.text("proved-alike-" + options.counting(), and("counts", alike));
        return others.isEmpty()
                ? first
                : says.text("proved-others", count("pieces", others.size()), arg("alike", first));
    }

    private String four(PerSide<Integer> base) {
        return says.text(
                "proved-four-" + options.counting(),
                count("top", base.top()),
                count("left", base.left()),
                count("bottom", base.bottom()),
                count("right", base.right()));
    }

    private static boolean isAlike(PerSide<Integer> base) {
        return base.stream().distinct().count() == 1;
    }
}
