package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.plain;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.RoundParts;
import edgewright.words.page.TextBlock;
import edgewright.words.terms.TradeTerms;
import edgewright.words.terms.TradeWord;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.Bracket;
import edgewright.words.tree.Group;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Puts rounds into sentences. */
final class RoundWording {
    private final Language language;
    private final Messages phrases;
    private final TradeTerms trade;
    private final OptionalInt told;
    private final SizeWording sizes;
    private final ChangesWording changes;

    /** @param told the chains that a corner has wherever a round does not say how many, where the pattern says so once */
    RoundWording(Language language, Terms terms, OptionalInt told, SizeWording sizes, ChangesWording changes) {
        this.language = language;
        this.told = told;
        this.phrases = language.messages("words/phrases");
        this.trade = TradeTerms.of(language, terms);
        this.sizes = sizes;
        this.changes = changes;
    }

    /** The base round and what is said of it. */
    TextBlock.RoundWords base(BaseRound base) {
        List<String> steps = new ArrayList<>();
        String counts = sizes.base(base.side(), base.fewest());
        if (!counts.isEmpty()) {
            steps.add(counts);
        }
        base.cornerChains()
                .ifPresent(chains ->
                        steps.add(sentence(language.capital(phrases.text("corner", arg("chains", chains(chains)))))));
        String name = phrases.text("base-title");
        return block(0, name, sentence(name), counts, steps);
    }

    /** A round of the border; {@code yarn} is what its yarn is called. */
    TextBlock.RoundWords round(WrittenRound round, String yarn) {
        String name = phrases.text("round-title", number("round", round.number()), arg("yarn", yarn));
        String counts = sizes.of(round.side());
        List<String> steps = new ArrayList<>();
        RoundParts parts = parts(round);
        if (parts instanceof RoundParts.OfEachSide sides) {
            steps.addAll(sides.lines());
        } else {
            RoundParts.OfAllSides alike = (RoundParts.OfAllSides) parts;
            alike.begun().ifPresent(begun -> steps.add(begun.start()));
            steps.add(instructions(round, alike));
            alike.begun().ifPresent(begun -> steps.add(begun.end()));
        }
        if (!counts.isEmpty() && parts instanceof RoundParts.OfEachSide) {
            steps.add(counts);
        } else if (!counts.isEmpty()) {
            int last = steps.size() - 1;
            steps.set(last, phrases.list("sentences-next", List.of(steps.get(last), counts)));
        }
        return block(round.number(), name, phrases.text("round-label", arg("title", name)), counts, steps);
    }

    private TextBlock.RoundWords block(int round, String name, String label, String counts, List<String> steps) {
        String opening = steps.isEmpty() ? label : phrases.list("sentences-next", List.of(label, steps.get(0)));
        return new TextBlock.RoundWords(round, name, label, counts, opening, steps);
    }

    private String sentence(String text) {
        return phrases.text("sentence", arg("text", text));
    }

    /** What is to be done, taken apart. */
    RoundParts parts(WrittenRound round) {
        String corner = corner(round.cornerChains());
        if (round instanceof WrittenRound.PuttingRight right) {
            return new RoundParts.OfEachSide(changes.lines(right.work(), corner));
        }
        if (round instanceof WrittenRound.EachSide apart) {
            return new RoundParts.OfEachSide(Stream.of(Side.values())
                    .map(side -> along(side, apart.stretch(side), corner))
                    .toList());
        }
        SideInstructions stretch = round.stretch();
        boolean alone = stretch.before().isEmpty() && stretch.after().isEmpty();
        return new RoundParts.OfAllSides(
                runs(stretch.before()),
                stretch.group().map(group -> group(group, alone)).orElse(""),
                runs(stretch.after()),
                chains(round.cornerChains()),
                phrases.text(round.start().isPresent() ? "next-sides" : "all-sides"),
                round.start().map(start -> new RoundParts.Begun(start(start, corner), end(start))));
    }

    /** What is worked along one side, in a round whose sides are told apart. */
    private String along(Side side, SideInstructions stretch, String corner) {
        String work = clauses(
                runs(stretch.before()), stretch.group().map(group -> group(group, false)), runs(stretch.after()));
        return phrases.text("along", arg("edge", edge(side)), arg("steps", work), arg("corner", corner));
    }

    /** Whether a group is so simple that it is said without an asterisk: one stitch into each stitch of the side. */
    static boolean isEveryStitch(Group group) {
        return group.steps().size() == 1
                && group.steps().get(0) instanceof Run only
                && only.count() == 1
                && only.stitch().standsInStitchBelow();
    }

    private String instructions(WrittenRound round, RoundParts.OfAllSides parts) {
        SideInstructions stretch = round.stretch();
        String work = clauses(
                parts.fromCorner(), Optional.of(parts.repeat()).filter(group -> !group.isEmpty()), parts.toCorner());
        String corner = corner(round.cornerChains());
        if (round.start().isEmpty()) {
            return phrases.text("alike", arg("work", work), arg("corner", corner));
        }
        boolean saysEvery = stretch.before().isEmpty()
                && stretch.group().filter(RoundWording::isEveryStitch).isPresent();
        return phrases.text(
                "alike-next",
                arg("work", saysEvery ? work : phrases.text("from-corner", arg("work", work))),
                arg("corner", corner),
                arg("sides", parts.sides()));
    }

    private String clauses(String before, Optional<String> group, String after) {
        List<String> clauses = new ArrayList<>();
        if (!before.isEmpty()) {
            clauses.add(before);
        }
        group.ifPresent(clauses::add);
        if (!after.isEmpty()) {
            clauses.add(after);
        }
        return phrases.list("clauses-next", clauses);
    }

    /** Where the yarn is joined, and what is worked from there to the first corner. */
    private String start(WrittenStart start, String corner) {
        SideInstructions rest = start.toCorner();
        if (rest.isEmpty()) {
            return phrases.text(
                    "start-next-to-corner",
                    arg("edge", edge(start.side())),
                    number("number", start.stitch()),
                    arg("corner", corner));
        }
        String work = clauses(runs(rest.before()), rest.group().map(group -> group(group, false)), runs(rest.after()));
        return phrases.text(
                "start",
                arg("edge", edge(start.side())),
                number("number", start.stitch()),
                arg("work", work),
                arg("corner", corner));
    }

    /** What is worked from the last corner to where the yarn was joined. */
    private String end(WrittenStart start) {
        return start.toJoin().isEmpty()
                ? phrases.text("return-at-once", arg("edge", edge(start.side())))
                : phrases.text("return", arg("edge", edge(start.side())), arg("runs", runs(start.toJoin())));
    }

    private String edge(Side side) {
        return phrases.text("edge-" + side);
    }

    /** @param alone whether nothing else is worked on the side; then it need not be said how far the group goes */
    private String group(Group group, boolean alone) {
        String upTo = group.lastStitches() == 0
                ? phrases.text("to-corner")
                : phrases.text("to-last", plain("last", group.lastStitches()));
        if (!isEveryStitch(group)) {
            return phrases.text("group", arg("steps", runs(group.steps())), arg("upTo", upTo));
        }
        String stitch = name(group.steps().get(0).stitchAt(1));
        return alone && group.lastStitches() == 0
                ? phrases.text("every", arg("stitch", stitch))
                : phrases.text("every-to", arg("stitch", stitch), arg("upTo", upTo));
    }

    private String runs(List<? extends SideStep> steps) {
        return phrases.list("runs-next", steps.stream().map(this::step).toList());
    }

    private String step(SideStep step) {
        if (step instanceof Run run) {
            return run(run);
        }
        Bracket bracket = (Bracket) step;
        boolean holdsBrackets = bracket.steps().stream().anyMatch(Bracket.class::isInstance);
        return phrases.text(
                holdsBrackets ? "bracket-outer" : "bracket",
                arg("steps", runs(bracket.steps())),
                arg("times", phrases.text("times", number("count", bracket.times()))));
    }

    String run(Run run) {
        return run(language, trade, run);
    }

    /** How a run is said. */
    static String run(Language language, TradeTerms trade, Run run) {
        Messages phrases = language.messages("words/phrases");
        String stitch = name(trade, run.stitch());
        return run.stitch() == Stitch.CHAIN
                ? phrases.text(
                        "chains",
                        number("count", run.count()),
                        arg("stitch", stitch),
                        arg("miss", trade.abbreviation(TradeWord.MISS)),
                        arg("missed", phrases.text("sts", plain("sts", run.count()))))
                : phrases.text("run", number("count", run.count()), arg("stitch", stitch));
    }

    /** A corner is told once; a round only names it, unless its own has other chains. */
    private String corner(int chains) {
        return told.equals(OptionalInt.of(chains))
                ? phrases.text("corner-as-told")
                : phrases.text("corner", arg("chains", chains(chains)));
    }

    private String chains(int chains) {
        return phrases.text("corner-chains", number("count", chains), arg("stitch", name(Stitch.CHAIN)));
    }

    private String name(Stitch stitch) {
        return name(trade, stitch);
    }

    private static String name(TradeTerms trade, Stitch stitch) {
        return trade.abbreviation(stitch).replace(' ', Language.NO_BREAK);
    }

    /** What is said of the stitches on a side; empty where nothing is. */
    String size(SideSize size) {
        return sizes.of(size);
    }
}
