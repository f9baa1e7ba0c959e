package edgewright.fit;

import static edgewright.texts.Arg.and;
import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.commas;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.or;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * What is said to a maker about fitting, in sentences from the messages. Every count is shown in the question's way
 * of counting.
 */
public final class FitSentences {
    /** Blocks that are alike are put in brackets from so many on. */
    private static final int FEWEST_IN_BRACKETS = 3;

    private final Language language;
    private final Messages says;
    private final FitPhrases words;

    /** The sentences in that language. */
    public FitSentences(Language language) {
        this.language = language;
        this.says = language.messages("fit");
        this.words = new FitPhrases(language);
    }

    /** A plan or a refusal in full, one sentence or a few to each element. */
    public List<String> of(FitAnswer answer) {
        return answer instanceof FitPlan plan ? plan(plan) : refusal((FitRefusal) answer);
    }

    /** What a side should have, and where it is changed. */
    public String of(FitPlan plan, Side side) {
        Counting counting = plan.question().counting();
        SideChange change = plan.change(side);
        int counted = plan.question().counts().get(side);
        String repeats = words.repeats(plan.targets().repeats().get(side));
        if (change.change() == 0) {
            return says.text(
                    "plan-closes", arg("side", words.name(side)), count("counted", counted), arg("repeats", repeats));
        }
        String what = says.text(
                change.change() > 0 ? "plan-add" : "plan-lose",
                count("changes", change.changes()),
                and("stitches", numbers(change, counting)));
        int wanted = counting.shown(plan.targets().wanted().get(side));
        return says.text(
                "plan-change",
                arg("side", words.name(side)),
                count("counted", counted),
                count("wanted", wanted),
                arg("repeats", repeats),
                arg("what", what));
    }

    /** The way along a side in the changing round. */
    public String way(FitPlan plan, Side side) {
        Counting counting = plan.question().counting();
        return says.text(
                counting == Counting.STITCHES ? "way-STITCHES" : "way-WITH_CHAINS",
                arg("side", words.name(side)),
                arg("round", words.round(plan.changing())),
                arg("way", steps(plan.change(side), counting)),
                count("stitches", counting.shown(plan.stitchesAfterwards().get(side))));
    }

    /** The next smaller and the next larger count of a side. */
    public String sizes(FitPlan plan, Side side) {
        return sizes(plan, List.of(side));
    }

    /** In which rounds the counts are put right, and why in these. */
    public String of(ChangeRounds rounds) {
        if (rounds.counting().isEmpty()) {
            return says.text("rounds-base");
        }
        String counting = words.round(rounds.counting().getAsInt());
        String changing = words.round(rounds.changing());
        OptionalInt checking = rounds.checking();
        String when = checking.isPresent()
                ? says.text(
                        "rounds-plain",
                        arg("counting", counting),
                        arg("changing", changing),
                        arg("checking", words.round(checking.getAsInt())))
                : says.text("rounds-noCheck", arg("counting", counting), arg("changing", changing));
        return rounds.firstLong().isPresent()
                ? when + " "
                        + says.text(
                                "rounds-why", number("round", rounds.firstLong().getAsInt()))
                : when;
    }

    /** A warning, and what would help. */
    public String of(FitWarning warning, FitQuestion question) {
        if (warning instanceof FitWarning.Crowded crowded) {
            String what = says.text(
                    crowded.change() > 0 ? "warning-crowded-add" : "warning-crowded-lose",
                    arg("side", words.name(crowded.side())),
                    arg("changes", says.text("changes", count("changes", Math.abs(crowded.change())))),
                    arg("stitches", words.stitches(crowded.stitches())));
            return withReliefs(what, crowded.reliefs(), question);
        }
        if (warning instanceof FitWarning.LandsAcross across) {
            List<String> where = Stream.of(Side.values())
                    .flatMap(side -> landing(across, side, question.counting()))
                    .toList();
            return says.text("warning-landsAcross", number("changing", across.changing()), commas("where", where));
        }
        FitWarning.TooLate late = (FitWarning.TooLate) warning;
        return says.text(
                "warning-tooLate",
                number("changing", late.changing()),
                number("firstLong", late.rounds().firstLong().orElseThrow()));
    }

    /** Why a design does not close on exact counts; empty if it does. */
    public String of(EvenSides closing, FitQuestion question, int repeat) {
        if (closing instanceof EvenSides.TooShort shorts) {
            List<String> sides = shorts.sides().stream().map(words::side).toList();
            return says.text(
                    "closing-tooShort",
                    commas("sides", sides),
                    count("fewest", question.counting().shown(shorts.fewest())));
        }
        if (closing instanceof EvenSides.CornersMiss miss) {
            return says.text(
                    "closing-cornersMiss",
                    arg("longer", words.stitches(miss.longer())),
                    count("shorter", miss.shorter().orElse(0)));
        }
        if (closing instanceof EvenSides.SidesDiffer differ) {
            return says.text(
                    "closing-sidesDiffer",
                    arg("side", words.name(differ.side())),
                    arg("other", words.side(Side.FIRST)),
                    count("difference", differ.difference()),
                    count("repeat", repeat),
                    or("widths", differ.widths().stream().map(language::count).toList()));
        }
        return "";
    }

    private List<String> plan(FitPlan plan) {
        List<String> said = new ArrayList<>();
        FitQuestion question = plan.question();
        // Whoever reads no further must have read that this will not do.
        plan.objections().forEach(objection -> said.add(of(objection, question)));
        said.add(counted(question));
        if (plan.isDone()) {
            said.add(says.text("plan-done"));
        }
        for (Side side : Side.values()) {
            said.add(of(plan, side));
        }
        for (SideChange change : plan.changes().stream().toList()) {
            if (change.change() != 0) {
                said.add(way(plan, change.side()));
            }
        }
        said.addAll(nextSizes(plan));
        said.add(of(plan.rounds()));
        plan.warnings().stream()
                .filter(warning -> !warning.isObjection())
                .forEach(warning -> said.add(of(warning, question)));
        return List.copyOf(said);
    }

    /** The next sizes, opposite sides together where they have the same ones. */
    List<String> nextSizes(FitPlan plan) {
        return Stream.of(Side.values())
                .map(side -> equals(plan, side))
                .distinct()
                .map(sides -> sizes(plan, sides))
                .toList();
    }

    private List<String> refusal(FitRefusal refusal) {
        List<String> said = new ArrayList<>();
        FitQuestion question = refusal.question();
        if (refusal instanceof FitRefusal.TooSmall small) {
            said.addAll(tooSmall(small));
        } else if (refusal instanceof FitRefusal.WantedOpen open) {
            said.add(counted(question));
            open.sides().stream().map(side -> open(open, side)).distinct().forEach(said::add);
        } else if (refusal instanceof FitRefusal.CannotClose cannot) {
            said.add(counted(question));
            said.add(says.text(
                    "refusal-cannotClose-" + cannot.cause(),
                    arg("round", words.round(question.round())),
                    arg("counts", question.wanted().map(words::counts).orElse(""))));
            said.add(of(cannot.closing(), question, cannot.repeat()));
            said.add(says.text("closing-help-" + cannot.cause()));
        } else if (refusal instanceof FitRefusal.NoRoom full) {
            said.add(counted(question));
            said.add(says.text("refusal-noRoom"));
            full.sides().forEach(side -> said.add(noRoom(full, side)));
            said.add(withReliefs(says.text("refusal-noRoom-help"), full.reliefs(), question));
        } else if (refusal instanceof FitRefusal.NotInWords not) {
            said.add(counted(question));
            said.add(says.text("refusal-notInWords"));
            if (!not.patterned().isEmpty()) {
                said.add(says.text(
                        "refusal-notInWords-patterned",
                        count("count", not.patterned().size()),
                        and("rounds", not.patterned())));
            }
            not.across().ifPresent(across -> said.add(of(across, question)));
            said.add(of(not.rounds()));
        }
        return List.copyOf(said);
    }

    private List<String> tooSmall(FitRefusal.TooSmall refusal) {
        FitQuestion question = refusal.question();
        Counting counting = question.counting();
        List<String> said = new ArrayList<>();
        said.add(says.text(
                "refusal-tooSmall",
                arg("round", words.round(question.round())),
                count("fewest", counting.shown(refusal.fewest())),
                arg("counting", words.way(counting))));
        for (Side side : refusal.sides()) {
            said.add(says.text(
                    "refusal-tooSmall-side",
                    arg("side", words.name(side)),
                    count("stitches", question.counts().get(side)),
                    count("missing", refusal.missing(side))));
        }
        said.add(says.text("refusal-tooSmall-help"));
        return said;
    }

    /** The same of opposite sides that are wanted with the same count. */
    private String open(FitRefusal.WantedOpen refusal, FitRefusal.WantedOpen.OpenSide open) {
        Counting counting = refusal.question().counting();
        PerSide<Integer> wanted = refusal.question().wanted().orElseThrow();
        List<Side> alike = Ties.OPPOSITE.group(open.side()).stream()
                .filter(other -> wanted.get(other).equals(wanted.get(open.side())))
                .toList();
        String name = language.capital(words.sides(alike));
        int stitches = wanted.get(open.side());
        int larger = counting.shown(open.larger());
        return open.smaller().isPresent()
                ? says.text(
                        "refusal-open",
                        arg("sides", name),
                        count("stitches", stitches),
                        count("smaller", counting.shown(open.smaller().getAsInt())),
                        count("larger", larger))
                : says.text(
                        "refusal-open-fewest",
                        arg("sides", name),
                        count("stitches", stitches),
                        count("larger", larger));
    }

    /** What was counted, in which round and how. */
    public String counted(FitQuestion question) {
        return says.text(
                "plan-counted",
                arg("round", words.round(question.round())),
                arg("counting", words.way(question.counting())),
                arg("counts", words.counts(question.counts())));
    }

    /** The stitches that two are worked into, or the pairs that are worked together. */
    private List<String> numbers(SideChange change, Counting counting) {
        return change.numbers(counting).stream()
                .map(stitch -> change.kind() == CountChange.INCREASE
                        ? String.valueOf(stitch)
                        : says.text("plan-pair", number("first", stitch), number("second", stitch + 1)))
                .toList();
    }

    private String noRoom(FitRefusal.NoRoom full, Side side) {
        int change = full.targets().change(side);
        return says.text(
                change > 0 ? "refusal-noRoom-add" : "refusal-noRoom-lose",
                arg("side", words.name(side)),
                count("changes", Math.abs(change)),
                arg("stitches", words.stitches(full.targets().counted().get(side))),
                count("most", full.most(side)));
    }

    private Stream<String> landing(FitWarning.LandsAcross across, Side side, Counting counting) {
        List<Integer> numbers = across.longStitches().stream()
                .filter(stitch -> stitch.side() == side)
                .map(stitch -> SideChange.number(stitch.place(), counting))
                .toList();
        return numbers.isEmpty()
                ? Stream.of()
                : Stream.of(says.text(
                        "warning-landsAcross-at",
                        count("count", numbers.size()),
                        number("round", across.changing() + 1),
                        arg("side", words.side(side)),
                        and("stitches", numbers)));
    }

    private String withReliefs(String what, List<TooManyChangesRemedy> reliefs, FitQuestion question) {
        StringBuilder said = new StringBuilder(what);
        reliefs.forEach(relief -> said.append(' ').append(relief(relief, question)));
        return said.toString();
    }

    private String relief(TooManyChangesRemedy relief, FitQuestion question) {
        if (relief instanceof TooManyChangesRemedy.OtherCount other) {
            return says.text(
                    "relief-otherCount",
                    arg("sides", words.sides(question.tiesThatHold().group(other.side()))),
                    count("stitches", question.counting().shown(other.stitches())));
        }
        return says.text(
                "relief-untie",
                arg("sides", words.sides(Ties.OPPOSITE.group(((TooManyChangesRemedy.Untie) relief).side()))));
    }

    /** Sides of which the same is said: this one, and the opposite one if it has the same target. */
    private static List<Side> equals(FitPlan plan, Side side) {
        return Ties.OPPOSITE.group(side).stream()
                .filter(other -> plan.targets()
                        .wanted()
                        .get(other)
                        .equals(plan.targets().wanted().get(side)))
                .toList();
    }

    private String sizes(FitPlan plan, List<Side> sides) {
        Counting counting = plan.question().counting();
        Targets targets = plan.targets();
        int larger = counting.shown(targets.larger(sides.get(0)));
        OptionalInt smaller = targets.smaller(sides.get(0));
        String name = language.capital(words.sides(sides));
        return smaller.isPresent()
                ? says.text(
                        "plan-next",
                        arg("sides", name),
                        count("smaller", counting.shown(smaller.getAsInt())),
                        count("larger", larger))
                : says.text("plan-nextLarger", arg("sides", name), count("larger", larger));
    }

    /** What is worked along a side, from the first block to the last. */
    String steps(SideChange change, Counting counting) {
        return language.commas(
                change.blocks(counting).stream().flatMap(this::steps).toList());
    }

    private Stream<String> steps(ChangeBlock block) {
        List<String> once = new ArrayList<>();
        if (block.work() > 0) {
            once.add(says.text("way-work", count("stitches", block.work())));
        }
        block.change()
                .ifPresent(change ->
                        once.add(says.text(change == CountChange.INCREASE ? "way-INCREASE" : "way-DECREASE")));
        if (block.times() >= FEWEST_IN_BRACKETS) {
            return Stream.of(says.text("way-times", commas("steps", once), count("times", block.times())));
        }
        return Stream.generate(() -> once).limit(block.times()).flatMap(List::stream);
    }
}
