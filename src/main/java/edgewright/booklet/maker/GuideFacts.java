package edgewright.booklet.maker;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.shortest;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.parts.CountsPages;
import edgewright.chart.Chart;
import edgewright.chart.HookSize;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.fit.BackLayer;
import edgewright.fit.GuideSentences;
import edgewright.fit.Landmarks;
import edgewright.texts.Messages;
import edgewright.yarn.HookNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What the guide says of a round beside its words. */
final class GuideFacts {
    private final Chart chart;
    private final BookletOptions options;
    private final Messages says;
    private final GuideSentences sentences;
    private final List<Integer> examples;

    /**
     * One round.
     *
     * @param hook the hook, if the designer names one
     * @param counted what the columns of the counts stand for: the sides, or for a pattern of any size examples; the first
     *     element is the head of them all
     * @param counts the way of counting, then a count for each column
     * @param seen what a maker should see; may be empty
     * @param back what is matched in the back layer; may be empty
     */
    record RoundFacts(
            int round,
            Yarn yarn,
            Optional<String> hook,
            List<String> counted,
            List<String> counts,
            String seen,
            String back) {
        RoundFacts {
            counted = List.copyOf(counted);
            counts = List.copyOf(counts);
        }
    }

    GuideFacts(Chart chart, BookletOptions options) {
        this.chart = chart;
        this.options = options;
        this.sentences = new GuideSentences(options.language());
        this.says = options.says();
        this.examples = options.repeats().isPresent() ? List.of() : CountsPages.repeats(chart, options.size());
    }

    RoundFacts of(int round) {
        List<String> counted = new ArrayList<>();
        List<String> counts = new ArrayList<>(List.of(says.text("guide-counting-" + options.counting())));
        Optional<PerSide<Integer>> sides = options.size().stitches(chart.border(), round);
        if (sides.isPresent()) {
            counted.add(says.text("guide-counts-sides"));
            for (Side side : options.hand().workingOrder()) {
                counted.add(says.text("side-" + side));
                counts.add(options.language()
                        .count(options.counting().shown(sides.get().get(side))));
            }
        } else {
            // In large type the whole name would take the room of two columns from the counts.
            boolean large = options.edition() == Edition.LARGE_PRINT;
            counted.add(says.text(large ? "guide-counts-repeatsShort" : "guide-counts-repeats"));
            for (int repeats : examples) {
                counted.add(options.language().count(repeats));
                counts.add(count(round, repeats));
            }
        }
        return new RoundFacts(
                round,
                chart.yarnOf(round),
                chart.making().hook().map(this::hook),
                counted,
                counts,
                String.join(" ", seen(round)),
                back(round));
    }

    private String hook(HookSize hook) {
        var mm = shortest("mm", hook.mm(), 2);
        Optional<String> name =
                options.telling().terms().inTurn().contains(Terms.US) ? HookNames.us(hook) : Optional.empty();
        return name.map(us -> says.text("guide-hookUs", mm, arg("name", us)))
                .orElseGet(() -> says.text("guide-hook", mm));
    }

    private String back(int round) {
        boolean before = options.size().changes().stream()
                .anyMatch(plan -> round <= plan.question().round());
        if (before || chart.making().back().isEmpty()) {
            return "";
        }
        OptionalInt matching = new BackLayer(chart.border(), chart.rounds().size()).matching(round);
        return matching.isEmpty() ? "" : says.text("guide-back-matches", number("round", matching.getAsInt()));
    }

    private boolean isRagged() {
        return !chart.raggedSections().isEmpty();
    }

    private String count(int round, int repeats) {
        return CountsPages.example(chart, options.counting(), options.language(), round, repeats);
    }

    /** How often the repeat is worked in this round; where it does not come out even yet, as often as at last. */
    private Optional<PerSide<Integer>> repeats(int round) {
        return options.size()
                .stitches(chart.border(), round)
                .flatMap(sides -> chart.border().repeats(round, sides))
                .or(options::repeats);
    }

    private List<String> seen(int round) {
        if (isRagged()) {
            return List.of();
        }
        return repeats(round)
                .map(repeats -> sentences.landmarks(Landmarks.of(chart, round, repeats), repeats))
                .orElseGet(() -> sentences.landmarks(Landmarks.of(chart, round)));
    }
}
