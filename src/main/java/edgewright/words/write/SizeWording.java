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
import edgewright.words.tree.Multiple;
import edgewright.words.tree.SideSize;
import java.util.List;
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

    /** What is said; empty where nothing is. */
    String of(SideSize size) {
        return of(size, OptionalInt.empty());
    }

    /** @param fewest the fewest stitches that a side may have, where it must be said */
    String of(SideSize size, OptionalInt fewest) {
        if (size.counts().isPresent()) {
            String counts = language.capital(counts(size.counts().get()));
            String way = phrases.text("counted-" + counting);
            return size.multiple().isPresent()
                    ? phrases.text(
                            "size-counts-of",
                            arg("counts", counts),
                            arg("way", way),
                            arg("multiple", multiple(size.multiple().get(), counting)))
                    : phrases.text("size-counts", arg("counts", counts), arg("way", way));
        }
        if (size.multiple().isEmpty()) {
            return "";
        }
        Multiple multiple = size.multiple().get();
        Counting other = counting == Counting.STITCHES ? Counting.WITH_CHAINS : Counting.STITCHES;
        return phrases.text(
                "bothWays-" + counting,
                arg("first", bounded(multiple(multiple, counting), multiple, fewest, counting)),
                arg("second", bounded(plus(multiple, other), multiple, fewest, other)));
    }

    /** So many stitches. */
    String stitches(int stitches) {
        return phrases.text("sts", plain("sts", stitches));
    }

    private String bounded(String said, Multiple multiple, OptionalInt fewest, Counting way) {
        String bounded = said;
        if (!multiple.examples().isEmpty()) {
            List<String> examples = multiple.examples().stream()
                    .map(way::shown)
                    .map(String::valueOf)
                    .toList();
            bounded = phrases.text(
                    "with-examples",
                    arg("multiple", bounded),
                    arg("examples", phrases.list("examples-next", examples)));
        }
        return fewest.isEmpty()
                ? bounded
                : phrases.text("with-fewest", arg("multiple", bounded), number("fewest", way.shown(fewest.getAsInt())));
    }

    private String multiple(Multiple multiple, Counting way) {
        int plus = way.shown(multiple.plus()) % multiple.of();
        if (multiple.of() == 1) {
            return phrases.text("multiple-any");
        }
        return plus == 0
                ? phrases.text("multiple", number("of", multiple.of()))
                : phrases.text("multiple-plus", number("of", multiple.of()), number("plus", plus));
    }

    /** The multiple again, in the other way of counting: what is added suffices, if there is anything. */
    private String plus(Multiple multiple, Counting way) {
        int plus = way.shown(multiple.plus()) % multiple.of();
        return plus == 0 ? multiple(multiple, way) : phrases.text("plus", number("plus", plus));
    }

    private String counts(PerSide<Integer> counts) {
        if (counts.allSidesAreAlike()) {
            return count(phrases.text("each-side"), counts.top());
        }
        Stream<String> said = counts.oppositeSidesAreAlike()
                ? Stream.of(pair(Side.TOP, Side.BOTTOM, counts), pair(Side.LEFT, Side.RIGHT, counts))
                : hand.workingOrder().stream().map(side -> count(name(side), counts.get(side)));
        return phrases.list("counts-next", said.toList());
    }

    private String pair(Side one, Side other, PerSide<Integer> counts) {
        return count(phrases.list("sides-next", List.of(name(one), name(other))), counts.get(one));
    }

    private String count(String sides, int stitches) {
        return phrases.text("side-count", arg("sides", sides), arg("sts", stitches(counting.shown(stitches))));
    }

    private String name(Side side) {
        return phrases.text("sideName-" + side);
    }
}
