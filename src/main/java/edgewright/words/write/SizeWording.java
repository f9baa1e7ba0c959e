package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.plain;

import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.tree.BackRound;
import edgewright.words.tree.Multiple;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenRound;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Puts what is said of the stitches on a side into words. */
final class SizeWording {
    private final Language language;
    private final Messages phrases;
    private final Counting counting;
    private final HookHand hand;

    SizeWording(Language language, Counting counting, HookHand hand) {
        this.language = language;
        this.phrases = language.messages("words/phrases");
        this.counting = counting;
        this.hand = hand;
    }

    /** What is said of a round; empty where nothing is. */
    String of(SideSize size) {
        return size.counts().isEmpty()
                ? base(size, OptionalInt.empty())
                : phrases.text("size-counts", arg("counts", language.capital(counts(size))));
    }

    /** What is said of rounds that stand together; empty where nothing is. */
    String ofEach(List<WrittenRound> rounds) {
        SideSize first = rounds.get(0).side();
        if (first.counts().isEmpty() || rounds.size() == 1) {
            return of(first);
        }
        Optional<Integer> more = AlikeRounds.growth(rounds).filter(by -> rounds.size() > 2);
        if (more.isPresent()) {
            return phrases.text(
                    "counts-growing",
                    arg("counts", language.capital(counts(first))),
                    number("first", rounds.get(0).number()),
                    number("more", more.get()));
        }
        List<String> each = rounds.stream().map(round -> counts(round.side())).toList();
        return phrases.text(
                "counts-of-rounds", arg("counts", language.capital(phrases.list("counts-of-rounds-next", each))));
    }

    /** The same of back rounds that stand together: of the first, and by how much all grow. */
    String ofBack(List<BackRound> rounds) {
        SideSize first = rounds.get(0).side();
        return AlikeRounds.growthOf(rounds.stream().map(BackRound::side).toList())
                .map(more -> phrases.text(
                        "back-counts-growing",
                        arg("counts", language.capital(counts(first))),
                        number("first", rounds.get(0).number()),
                        number("more", more)))
                .orElse("");
    }

    /** The same for a cell of a table: no sentence where counts alone are said. */
    String cell(SideSize size) {
        return size.counts().isEmpty() ? of(size) : counts(size);
    }

    /**
     * What is said of the base round, and how the stitches of a side are counted in the whole pattern; empty where nothing is.
     *
     * @param fewest the fewest stitches that a side may have, where it must be said
     */
    String base(SideSize size, OptionalInt fewest) {
        var way = arg("way", phrases.text("counted-" + counting));
        if (size.counts().isEmpty()) {
            return size.multiple()
                    .map(multiple -> phrases.text(
                            "size-multiple", arg("multiple", language.capital(withExamples(multiple, fewest))), way))
                    .orElse("");
        }
        var counts = arg("counts", language.capital(counts(size)));
        return size.multiple()
                .map(multiple -> phrases.text("size-counts-of", counts, way, arg("multiple", bare(multiple))))
                .orElseGet(() -> phrases.text("size-counts-way", counts, way));
    }

    /** So many stitches, a number for each size. */
    String stitches(List<Integer> sizes) {
        return sizes.size() == 1
                ? phrases.text("sts", plain("sts", counting.shown(sizes.get(0))))
                : phrases.text("sts-each", arg("sizes", numbers(sizes)));
    }

    /** The numbers alone, the first outside the brackets. */
    String numbers(List<Integer> sizes) {
        List<String> shown =
                sizes.stream().map(counting::shown).map(String::valueOf).toList();
        return ofSizes(phrases, shown);
    }

    /** Something of each size, the first outside the brackets. */
    static String ofSizes(Messages phrases, List<String> sizes) {
        return sizes.size() == 1
                ? sizes.get(0)
                : phrases.text(
                        "sizes",
                        arg("first", sizes.get(0)),
                        arg("others", phrases.list("others-next", sizes.subList(1, sizes.size()))));
    }

    private String withExamples(Multiple multiple, OptionalInt fewest) {
        String bounded = fewest.isEmpty()
                ? bare(multiple)
                : phrases.text(
                        "with-fewest",
                        arg("multiple", bare(multiple)),
                        number("fewest", counting.shown(fewest.getAsInt())));
        return multiple.examples().isEmpty()
                ? bounded
                : phrases.text(
                        "with-examples", arg("multiple", bounded), arg("examples", stitches(multiple.examples())));
    }

    /** 'Multiple of 6 plus 5' and no more. */
    String bare(Multiple multiple) {
        int plus = counting.shown(multiple.plus()) % multiple.of();
        if (multiple.of() == 1) {
            return phrases.text("multiple-any");
        }
        return plus == 0
                ? phrases.text("multiple", number("of", multiple.of()))
                : phrases.text("multiple-plus", number("of", multiple.of()), number("plus", plus));
    }

    private String counts(SideSize size) {
        List<PerSide<Integer>> counts = size.counts();
        if (counts.stream().allMatch(PerSide::allSidesAreAlike)) {
            return stitches(of(counts, Side.TOP));
        }
        Stream<String> said = counts.stream().allMatch(PerSide::oppositeSidesAreAlike)
                ? Stream.of(pair(Side.TOP, Side.BOTTOM, counts), pair(Side.LEFT, Side.RIGHT, counts))
                : hand.workingOrder().stream().map(side -> count(name(side), of(counts, side)));
        return phrases.list("counts-next", said.toList());
    }

    private static List<Integer> of(List<PerSide<Integer>> counts, Side side) {
        return counts.stream().map(each -> each.get(side)).toList();
    }

    private String pair(Side one, Side other, List<PerSide<Integer>> counts) {
        return count(phrases.list("sides-next", List.of(name(one), name(other))), of(counts, one));
    }

    private String count(String sides, List<Integer> sizes) {
        return phrases.text("side-count", arg("sides", sides), arg("sts", stitches(sizes)));
    }

    private String name(Side side) {
        return phrases.text("sideName-" + side);
    }
}
