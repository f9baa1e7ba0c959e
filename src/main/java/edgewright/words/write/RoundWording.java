package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.plain;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.RoundParts;
import edgewright.words.page.TextBlock;
import edgewright.words.said.Said;
import edgewright.words.said.SpanMarks;
import edgewright.words.terms.TradeTerms;
import edgewright.words.terms.TradeWord;
import edgewright.words.tree.BackRound;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.Bracket;
import edgewright.words.tree.Group;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.StartMark.Part;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Puts rounds into sentences. */
final class RoundWording {
    private final Language language;
    private final Messages phrases;
    private final TradeTerms trade;
    private final OptionalInt told;
    private final SizeWording sizes;
    private final ChangesWording changes;
    private final StartWording starts;
    private final TitleWording titles;
    private final SpanMarks marks;

    /**
     * Sentences in this language.
     *
     * @param told the chains that a corner has wherever a round does not say how many, where the pattern says so once
     * @param marks for the pieces that say stitches
     */
    RoundWording(
            Language language,
            Terms terms,
            OptionalInt told,
            SizeWording sizes,
            ChangesWording changes,
            StartWording starts,
            SpanMarks marks) {
        this.language = language;
        this.told = told;
        this.phrases = language.messages("words/phrases");
        this.trade = TradeTerms.of(language, terms);
        this.sizes = sizes;
        this.changes = changes;
        this.starts = starts;
        this.titles = new TitleWording(language);
        this.marks = marks;
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
        return block(0, 0, name, sentence(name), counts, steps);
    }

    /**
     * A round of the border, or some that stand together.
     *
     * @param rounds one after the other, at least one; all are worked as the first of them
     * @param yarns what the yarn of each is called
     */
    TextBlock.RoundWords rounds(List<WrittenRound> rounds, List<String> yarns) {
        WrittenRound round = rounds.get(0);
        String name = titles.of(round.number(), yarns);
        String counts = sizes.ofEach(rounds);
        List<String> steps = round instanceof WrittenRound.AsRound again ? asTold(again) : sentences(round);
        if (!counts.isEmpty() && parts(round) instanceof RoundParts.OfEachSide) {
            steps.add(counts);
        } else if (!counts.isEmpty()) {
            int end = steps.size() - 1;
            steps.set(end, phrases.list("sentences-next", List.of(steps.get(end), counts)));
        }
        String label = phrases.text("round-label", arg("title", name));
        return block(round.number(), rounds.get(rounds.size() - 1).number(), name, label, counts, steps);
    }

    private List<String> asTold(WrittenRound.AsRound round) {
        String start = starts.of(round);
        String told = phrases.text("as-told", number("round", round.as().number()));
        Said whole = new Said.WholeRound();
        return new ArrayList<>(List.of(
                start.isEmpty()
                        ? marks.put(told, whole)
                        : phrases.list("sentences-next", List.of(start, marks.put(language.capital(told), whole)))));
    }

    /** What is to be done, a sentence or more a line, without the count. */
    List<String> sentences(WrittenRound round) {
        RoundParts parts = parts(round);
        if (parts instanceof RoundParts.OfEachSide sides) {
            return new ArrayList<>(sides.lines());
        }
        String start = starts.of(round);
        String work = instructions(round, (RoundParts.OfAllSides) parts);
        return new ArrayList<>(List.of(start.isEmpty() ? work : phrases.list("sentences-next", List.of(start, work))));
    }

    /** Whether a round is put into sentences even in a table: it has words for each side, or says where it begins. */
    boolean runsAcross(WrittenRound round) {
        return parts(round) instanceof RoundParts.OfEachSide || saysStart(round);
    }

    /** Whether a round says where it begins. */
    private boolean saysStart(WrittenRound round) {
        return round.start().isPresent() || !starts.of(round).isEmpty();
    }

    /** How many stitches a side has after a round, for a cell of a table; empty where nothing is said. */
    String countsCell(WrittenRound round) {
        return sizes.cell(round.side());
    }

    private TextBlock.RoundWords block(
            int round, int last, String name, String label, String counts, List<String> steps) {
        String opening = steps.isEmpty() ? label : phrases.list("sentences-next", List.of(label, steps.get(0)));
        return new TextBlock.RoundWords(round, last, name, label, counts, opening, steps);
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
            return new RoundParts.OfEachSide(
                    changes.eachSide(PerSide.each(side -> along(side, apart.stretch(side))), corner));
        }
        SideInstructions stretch = round.stretch();
        boolean alone = stretch.before().isEmpty() && stretch.after().isEmpty();
        Optional<StartMark> mark =
                round.start().map(WrittenStart::mark).filter(each -> !isOneStitchThroughout(stretch));
        Optional<Side> all = Optional.empty();
        return new RoundParts.OfAllSides(
                runs(stretch, Part.BEFORE, mark, all),
                stretch.group()
                        .map(group -> isEveryStitch(group)
                                ? every(group, alone, mark.filter(each -> each.part() == Part.GROUP))
                                : group(group, runs(stretch, Part.GROUP, mark, all), all))
                        .orElse(""),
                runs(stretch, Part.AFTER, mark, all),
                chains(round.cornerChains()),
                phrases.text("all-sides"),
                starts.toldApart(round));
    }

    /** Whether a side is one stitch in every stitch of it; then it is no matter where in its words a round starts. */
    static boolean isOneStitchThroughout(SideInstructions stretch) {
        return stretch.before().isEmpty()
                && stretch.after().isEmpty()
                && stretch.group()
                        .filter(group -> isEveryStitch(group) && group.lastStitches() == 0)
                        .isPresent();
    }

    /** What is worked along one side, in a round whose sides are told apart. */
    private String along(Side side, SideInstructions stretch) {
        boolean alone = stretch.before().isEmpty() && stretch.after().isEmpty();
        Optional<Side> only = Optional.of(side);
        Optional<StartMark> none = Optional.empty();
        return clauses(
                runs(stretch, Part.BEFORE, none, only),
                stretch.group()
                        .map(group -> isEveryStitch(group)
                                ? every(group, alone, none, only)
                                : group(group, runs(stretch, Part.GROUP, none, only), only)),
                runs(stretch, Part.AFTER, none, only));
    }

    /** Whether a group is so simple that it is said without an asterisk: one stitch into each stitch of the side. */
    static boolean isEveryStitch(Group group) {
        return group.steps().size() == 1
                && group.steps().get(0) instanceof Run only
                && only.count() == 1
                && only.stitch().standsInStitchBelow();
    }

    private String instructions(WrittenRound round, RoundParts.OfAllSides parts) {
        String work = clauses(
                parts.fromCorner(), Optional.of(parts.repeat()).filter(group -> !group.isEmpty()), parts.toCorner());
        return phrases.text("alike", arg("work", work), arg("corner", corner(round.cornerChains())));
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

    private String group(Group group, String steps, Optional<Side> side) {
        return asGroup(phrases.text("group", arg("steps", steps), arg("upTo", upTo(group))), group, side);
    }

    /** A text as the piece that says a group of all sides. */
    String asGroup(String text, Group group) {
        return asGroup(text, group, Optional.empty());
    }

    private String asGroup(String text, Group group, Optional<Side> side) {
        return marks.put(text, Said.Stitches.of(side, Part.GROUP, group.stitches()));
    }

    /**
     * A group without an asterisk.
     *
     * @param alone whether nothing else is worked on the side; then it need not be said how far the group goes
     * @param mark of a start in the group
     */
    String every(Group group, boolean alone, Optional<StartMark> mark) {
        return every(group, alone, mark, Optional.empty());
    }

    private String every(Group group, boolean alone, Optional<StartMark> mark, Optional<Side> side) {
        String stitch = name(group.steps().get(0).stitchAt(1));
        String said = alone && group.lastStitches() == 0
                ? phrases.text("every", arg("stitch", stitch))
                : phrases.text("every-to", arg("stitch", stitch), arg("upTo", upTo(group)));
        String every = asGroup(said, group, side);
        return mark.isPresent() ? phrases.text("marked", arg("step", every)) : every;
    }

    /** The steps of one part of a side that is told as all sides are. */
    String runs(SideInstructions stretch, Part part) {
        return runs(stretch, part, Optional.empty(), Optional.empty());
    }

    /** The steps of one part of a side, with the mark of the start if it stands there. */
    private String runs(SideInstructions stretch, Part part, Optional<StartMark> mark, Optional<Side> side) {
        List<SideStep> told = stretch.steps(part);
        List<String> steps = steps(told, Said.Stitches.of(side, part, SideStep.stitches(told)));
        mark.filter(each -> each.part() == part).ifPresent(each -> {
            if (each.step() == steps.size()) {
                steps.add(phrases.text("start-mark-word"));
            } else {
                steps.set(each.step(), phrases.text("marked", arg("step", steps.get(each.step()))));
            }
        });
        return phrases.list("runs-next", steps);
    }

    /** How far a group goes on. */
    String upTo(Group group) {
        return group.lastStitches() == 0
                ? phrases.text("to-corner")
                : phrases.text("to-last", plain("last", group.lastStitches()));
    }

    /** @param all the stitches that are made by these steps */
    private List<String> steps(List<SideStep> steps, Said.Stitches all) {
        List<String> texts = new ArrayList<>();
        long told = 0;
        for (SideStep step : steps) {
            Said.Stitches here = all.within(told, step.stitches());
            texts.add(marks.put(step(step, here), here));
            told += step.stitches();
        }
        return texts;
    }

    private String step(SideStep step, Said.Stitches here) {
        if (step instanceof Run run) {
            return run(language, trade, run);
        }
        Bracket bracket = (Bracket) step;
        boolean holdsBrackets = bracket.steps().stream().anyMatch(Bracket.class::isInstance);
        return phrases.text(
                holdsBrackets ? "bracket-outer" : "bracket",
                arg("steps", phrases.list("runs-next", steps(bracket.steps(), here.once(bracket.times())))),
                arg("times", phrases.text("times", number("count", bracket.times()))));
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
    String corner(int chains) {
        return isTold(chains) ? phrases.text("corner-as-told") : phrases.text("corner", arg("chains", chains(chains)));
    }

    /** Whether a corner has as many chains as the pattern has told once for all. */
    boolean isTold(int chains) {
        return told.equals(OptionalInt.of(chains));
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

    /** The same of back rounds that stand together. */
    String backSizes(List<BackRound> rounds) {
        return sizes.ofBack(rounds);
    }
}
