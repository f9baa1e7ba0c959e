package edgewright.fit;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.texts.Bundle;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * What is said to a maker about fitting, in sentences from the resource bundle. Every count is shown in the question's way
 * of counting.
 */
public final class FitSentences {
    /** Blocks that are alike are put in brackets from so many on. */
    private static final int FEWEST_IN_BRACKETS = 3;

    private final Bundle texts = FitTexts.BUNDLE;

    /** A plan or a refusal in full, one sentence or a few to each element. */
    public List<String> of(FitAnswer answer) {
        return answer instanceof FitPlan plan ? plan(plan) : refusal((FitRefusal) answer);
    }

    /** What a side should have, and where it is changed. */
    public String of(FitPlan plan, Side side) {
        Counting counting = plan.question().counting();
        SideChange change = plan.change(side);
        int counted = plan.question().counts().get(side);
        String repeats = repeats(plan.targets().repeats().get(side));
        if (change.change() == 0) {
            return texts.text("plan.closes", name(side), counted, repeats);
        }
        String what = texts.counted(
                change.change() > 0 ? "plan.add" : "plan.lose",
                change.changes(),
                Bundle.and(numbers(change, counting)));
        int wanted = counting.shown(plan.targets().wanted().get(side));
        return texts.text("plan.change", name(side), counted, wanted, repeats, what);
    }

    /** The way along a side in the changing round. */
    public String way(FitPlan plan, Side side) {
        Counting counting = plan.question().counting();
        return texts.text(
                "way." + counting,
                name(side),
                round(plan.changing()),
                steps(plan.change(side), counting),
                counting.shown(plan.stitchesAfterwards().get(side)));
    }

    /** The next smaller and the next larger count of a side. */
    public String sizes(FitPlan plan, Side side) {
        return sizes(plan, List.of(side));
    }

    /** In which rounds the counts are put right, and why in these. */
    public String of(ChangeRounds rounds) {
        if (rounds.counting().isEmpty()) {
            return texts.text("rounds.base");
        }
        String counting = round(rounds.counting().getAsInt());
        String changing = round(rounds.changing());
        OptionalInt checking = rounds.checking();
        String when = checking.isPresent()
                ? texts.text("rounds.plain", counting, changing, round(checking.getAsInt()))
                : texts.text("rounds.noCheck", counting, changing);
        return rounds.firstLong().isPresent()
                ? when + " " + texts.text("rounds.why", rounds.firstLong().getAsInt())
                : when;
    }

    /** A warning, and what would help. */
    public String of(FitWarning warning, FitQuestion question) {
        if (warning instanceof FitWarning.Crowded crowded) {
            String what = texts.text(
                    crowded.change() > 0 ? "warning.crowded.add" : "warning.crowded.lose",
                    name(crowded.side()),
                    texts.counted("changes", Math.abs(crowded.change())),
                    texts.counted("stitches", crowded.stitches()));
            return withReliefs(what, crowded.reliefs(), question);
        }
        if (warning instanceof FitWarning.LandsAcross across) {
            List<String> where = Stream.of(Side.values())
                    .flatMap(side -> landing(across, side, question.counting()))
                    .toList();
            return texts.text("warning.landsAcross", across.changing(), Bundle.commas(where));
        }
        FitWarning.TooLate late = (FitWarning.TooLate) warning;
        return texts.text(
                "warning.tooLate", late.changing(), late.rounds().firstLong().orElseThrow());
    }

    /** Why a design does not close on exact counts; empty if it does. */
    public String of(EvenSides closing, FitQuestion question, int repeat) {
        if (closing instanceof EvenSides.TooShort shorts) {
            List<String> sides = shorts.sides().stream().map(this::side).toList();
            return texts.text(
                    "closing.tooShort",
                    Bundle.commas(sides),
                    question.counting().shown(shorts.fewest()));
        }
        if (closing instanceof EvenSides.CornersMiss miss) {
            return texts.text("closing.cornersMiss", texts.counted("stitches", miss.longer()), miss.shorter());
        }
        if (closing instanceof EvenSides.SidesDiffer differ) {
            return texts.text(
                    "closing.sidesDiffer",
                    name(differ.side()),
                    side(Side.TOP),
                    differ.difference(),
                    repeat,
                    Bundle.or(differ.widths()));
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
            said.add(texts.text("plan.done"));
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
            said.add(texts.text(
                    "refusal.cannotClose." + cannot.cause(),
                    round(question.round()),
                    question.wanted().map(this::counts).orElse("")));
            said.add(of(cannot.closing(), question, cannot.repeat()));
            said.add(texts.text("closing.help." + cannot.cause()));
        } else if (refusal instanceof FitRefusal.NoRoom full) {
            said.add(counted(question));
            said.add(texts.text("refusal.noRoom"));
            full.sides().forEach(side -> said.add(noRoom(full, side)));
            said.add(withReliefs(texts.text("refusal.noRoom.help"), full.reliefs(), question));
        } else if (refusal instanceof FitRefusal.NotInWords not) {
            said.add(counted(question));
            said.add(texts.text("refusal.notInWords"));
            if (!not.patterned().isEmpty()) {
                said.add(texts.counted(
                        "refusal.notInWords.patterned", not.patterned().size(), Bundle.and(not.patterned())));
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
        said.add(texts.text(
                "refusal.tooSmall", round(question.round()), counting.shown(refusal.fewest()), way(counting)));
        for (Side side : refusal.sides()) {
            said.add(texts.text(
                    "refusal.tooSmall.side", name(side), question.counts().get(side), refusal.missing(side)));
        }
        said.add(texts.text("refusal.tooSmall.help"));
        return said;
    }

    /** The same of opposite sides that are wanted with the same count. */
    private String open(FitRefusal.WantedOpen refusal, FitRefusal.WantedOpen.OpenSide open) {
        Counting counting = refusal.question().counting();
        PerSide<Integer> wanted = refusal.question().wanted().orElseThrow();
        List<Side> alike = Ties.OPPOSITE.group(open.side()).stream()
                .filter(other -> wanted.get(other).equals(wanted.get(open.side())))
                .toList();
        String name = Bundle.capital(sides(alike));
        int count = wanted.get(open.side());
        int larger = counting.shown(open.larger());
        return open.smaller().isPresent()
                ? texts.text(
                        "refusal.open",
                        name,
                        count,
                        counting.shown(open.smaller().getAsInt()),
                        larger)
                : texts.text("refusal.open.fewest", name, count, larger);
    }

    /** What was counted, in which round and how. */
    public String counted(FitQuestion question) {
        return texts.text("plan.counted", round(question.round()), way(question.counting()), counts(question.counts()));
    }

    /** The four sides with their counts, within a sentence. */
    String counts(PerSide<Integer> counts) {
        return Bundle.commas(Stream.of(Side.values())
                .map(side -> texts.text("plan.count", side(side), counts.get(side)))
                .toList());
    }

    /** The stitches that two are worked into, or the pairs that are worked together. */
    private List<String> numbers(SideChange change, Counting counting) {
        return change.numbers(counting).stream()
                .map(number -> change.kind() == CountChange.INCREASE
                        ? String.valueOf(number)
                        : texts.text("plan.pair", number, number + 1))
                .toList();
    }

    private String noRoom(FitRefusal.NoRoom full, Side side) {
        int change = full.targets().change(side);
        return texts.text(
                change > 0 ? "refusal.noRoom.add" : "refusal.noRoom.lose",
                name(side),
                Math.abs(change),
                texts.counted("stitches", full.targets().counted().get(side)),
                full.most(side));
    }

    private Stream<String> landing(FitWarning.LandsAcross across, Side side, Counting counting) {
        List<Integer> numbers = across.longStitches().stream()
                .filter(stitch -> stitch.side() == side)
                .map(stitch -> SideChange.number(stitch.place(), counting))
                .toList();
        String key = numbers.size() == 1 ? "warning.landsAcross.one" : "warning.landsAcross.more";
        return numbers.isEmpty()
                ? Stream.of()
                : Stream.of(texts.text(key, across.changing() + 1, side(side), Bundle.and(numbers)));
    }

    private String withReliefs(String what, List<TooManyChangesRemedy> reliefs, FitQuestion question) {
        StringBuilder said = new StringBuilder(what);
        reliefs.forEach(relief -> said.append(' ').append(relief(relief, question)));
        return said.toString();
    }

    private String relief(TooManyChangesRemedy relief, FitQuestion question) {
        if (relief instanceof TooManyChangesRemedy.OtherCount other) {
            return texts.text(
                    "relief.otherCount",
                    sides(question.tiesThatHold().group(other.side())),
                    question.counting().shown(other.stitches()));
        }
        return texts.text("relief.untie", sides(Ties.OPPOSITE.group(((TooManyChangesRemedy.Untie) relief).side())));
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
        String name = Bundle.capital(sides(sides));
        return smaller.isPresent()
                ? texts.text("plan.next", name, counting.shown(smaller.getAsInt()), larger)
                : texts.text("plan.nextLarger", name, "", larger);
    }

    /** What is worked along a side, from the first block to the last. */
    String steps(SideChange change, Counting counting) {
        return Bundle.commas(
                change.blocks(counting).stream().flatMap(this::steps).toList());
    }

    private Stream<String> steps(ChangeBlock block) {
        List<String> once = new ArrayList<>();
        if (block.work() > 0) {
            once.add(texts.text("way.work", block.work()));
        }
        block.change().ifPresent(change -> once.add(texts.text("way." + change)));
        if (block.times() >= FEWEST_IN_BRACKETS) {
            return Stream.of(texts.text("way.times", Bundle.commas(once), block.times()));
        }
        return Stream.generate(() -> once).limit(block.times()).flatMap(List::stream);
    }

    private String repeats(int number) {
        return number == 0 ? texts.text("repeats.none") : texts.counted("repeats", number);
    }

    private String round(int round) {
        return round == 0 ? texts.text("round.base") : texts.text("round.number", round);
    }

    /** A way of counting, within a sentence. */
    String way(Counting counting) {
        return texts.text("counting." + counting);
    }

    private String sides(List<Side> sides) {
        return sides.size() == 1 ? side(sides.get(0)) : texts.text("sides." + sides.get(0) + "." + sides.get(1));
    }

    private String side(Side side) {
        return texts.text("side." + side);
    }

    /** The side at the beginning of a sentence. */
    private String name(Side side) {
        return Bundle.capital(side(side));
    }
}
