package edgewright.words.write;

import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.texts.Bundle;
import edgewright.words.page.RoundParts;
import edgewright.words.page.TextBlock;
import edgewright.words.terms.Phrasebook;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.Group;
import edgewright.words.tree.Multiple;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.stream.Collectors;

/** Puts rounds and the counts of their sides into sentences. */
final class RoundWording {
    private final Phrasebook texts = Phrasebook.ofPattern();
    private final Phrasebook terms;
    private final Counting counting;
    private final HookHand hand;
    private final ChangesWording changes;

    RoundWording(Terms terms, Counting counting, HookHand hand) {
        this.terms = Phrasebook.of(terms);
        this.counting = counting;
        this.hand = hand;
        this.changes = new ChangesWording(terms, hand, this::run);
    }

    /** The base round and what is said of it. */
    TextBlock.RoundWords base(BaseRound base) {
        List<String> corner = base.cornerChains().stream()
                .mapToObj(chains -> Bundle.capital(corner(chains)) + ".")
                .toList();
        return new TextBlock.RoundWords(0, texts.text("setUp.title"), said(base.side(), base.fewest()), corner);
    }

    /** A round of the border; {@code yarn} is what its yarn is called. */
    TextBlock.RoundWords round(WrittenRound round, String yarn) {
        String name = texts.text("round.title", round.number(), yarn);
        String counts = said(round.side(), OptionalInt.empty());
        RoundParts parts = parts(round);
        if (parts instanceof RoundParts.OfEachSide sides) {
            return new TextBlock.RoundWords(round.number(), name, counts, sides.lines());
        }
        RoundParts.OfAllSides alike = (RoundParts.OfAllSides) parts;
        List<String> steps = new ArrayList<>();
        alike.begun().ifPresent(begun -> steps.add(begun.start()));
        steps.add(instructions(round, alike));
        alike.begun().ifPresent(begun -> steps.add(begun.end()));
        return new TextBlock.RoundWords(round.number(), name, counts, steps);
    }

    /** What is to be done, taken apart. */
    RoundParts parts(WrittenRound round) {
        String corner = corner(round.cornerChains());
        if (round instanceof WrittenRound.PuttingRight right) {
            return new RoundParts.OfEachSide(changes.lines(right.work(), corner));
        }
        SideInstructions stretch = round.stretch();
        boolean alone = stretch.before().isEmpty() && stretch.after().isEmpty();
        return new RoundParts.OfAllSides(
                runs(stretch.before()),
                stretch.group().map(group -> group(group, alone)).orElse(""),
                runs(stretch.after()),
                chains(round.cornerChains()),
                texts.text(round.start().isPresent() ? "round.nextSides" : "round.sides"),
                round.start().map(start -> new RoundParts.Begun(start(start, corner), end(start))));
    }

    private String said(SideSize size, OptionalInt fewest) {
        List<String> said = new ArrayList<>();
        size(size, fewest, said);
        return String.join(" ", said);
    }

    /** Whether a group is so simple that it is said without an asterisk: one stitch into each stitch of the side. */
    static boolean isEveryStitch(Group group) {
        Run first = group.runs().get(0);
        return group.runs().size() == 1 && first.count() == 1 && first.stitch().standsInStitchBelow();
    }

    private String instructions(WrittenRound round, RoundParts.OfAllSides parts) {
        List<String> clauses = new ArrayList<>();
        boolean opens = round.stretch().before().isEmpty();
        if (!opens) {
            clauses.add(texts.text("round.from") + " " + parts.fromCorner());
        }
        round.stretch().group().ifPresent(group -> {
            String from = opens && !isEveryStitch(group) ? texts.text("round.from") + " " : "";
            clauses.add(from + parts.repeat());
        });
        if (!round.stretch().after().isEmpty()) {
            clauses.add(parts.toCorner());
        }
        clauses.add(corner(round.cornerChains()));
        return String.join("; ", clauses) + ". " + parts.sides();
    }

    /** Where the yarn is joined, and what is worked from there to the first corner. */
    private String start(WrittenStart start, String corner) {
        SideInstructions rest = start.toCorner();
        List<String> clauses = new ArrayList<>();
        if (!rest.before().isEmpty()) {
            clauses.add(runs(rest.before()));
        }
        rest.group().ifPresent(group -> clauses.add(group(group, false)));
        if (!rest.after().isEmpty()) {
            clauses.add(runs(rest.after()));
        }
        String join = texts.text("round.start", edge(start.side()), start.stitch()) + "; ";
        String next = rest.isEmpty() ? "" : texts.text("round.fromNext") + " ";
        clauses.add(corner);
        return join + next + String.join("; ", clauses) + ".";
    }

    /** What is worked from the last corner to where the yarn was joined. */
    private String end(WrittenStart start) {
        String joined = texts.text("round.lastAtJoin");
        String work = start.toJoin().isEmpty() ? joined : runs(start.toJoin()) + ", " + joined;
        return texts.text("round.back", edge(start.side()), work);
    }

    private String edge(Side side) {
        return texts.text("edge." + side);
    }

    /** @param alone whether nothing else is worked on the side; then it need not be said how far the group goes */
    private String group(Group group, boolean alone) {
        String upTo = group.lastStitches() == 0
                ? texts.text("round.toCorner")
                : texts.counted("round.toLast", group.lastStitches());
        if (!isEveryStitch(group)) {
            return texts.text("round.group", runs(group.runs()), upTo);
        }
        String stitch = name(group.runs().get(0).stitch());
        return alone && group.lastStitches() == 0
                ? texts.text("round.every", stitch)
                : texts.text("round.everyTo", stitch, upTo);
    }

    private String runs(List<Run> runs) {
        return runs.stream().map(this::run).collect(Collectors.joining(", "));
    }

    String run(Run run) {
        if (run.stitch() != Stitch.CHAIN) {
            return texts.text("round.run", run.count(), name(run.stitch()));
        }
        String missed = texts.counted("round.sts", run.count());
        return texts.text("round.chains", run.count(), name(Stitch.CHAIN), terms.text("miss.short"), missed);
    }

    private String corner(int chains) {
        return texts.text("round.corner", chains(chains));
    }

    private String chains(int chains) {
        return texts.text("round.run", chains, name(Stitch.CHAIN));
    }

    private String name(Stitch stitch) {
        return terms.of(stitch, "short").replace(' ', Phrasebook.NO_BREAK);
    }

    /** Adds to a line what is said of the stitches on a side; nothing where nothing is. */
    void size(SideSize size, OptionalInt fewest, List<String> line) {
        if (size.counts().isPresent()) {
            String counts = counts(size.counts().get());
            line.add(
                    size.multiple().isPresent()
                            ? texts.text(
                                    "size.countsOf." + counting,
                                    counts,
                                    multiple(size.multiple().get(), counting))
                            : texts.text("size.counts." + counting, counts));
        } else if (size.multiple().isPresent()) {
            Multiple multiple = size.multiple().get();
            Counting other = counting == Counting.STITCHES ? Counting.WITH_CHAINS : Counting.STITCHES;
            String first = multiple(multiple, counting) + bounds(multiple, fewest, counting);
            String second = plus(multiple, other) + bounds(multiple, fewest, other);
            line.add(texts.text("size." + counting, first, second));
        }
    }

    private String bounds(Multiple multiple, OptionalInt fewest, Counting way) {
        String examples = multiple.examples().stream()
                .map(way::shown)
                .map(String::valueOf)
                .collect(Collectors.joining("," + Phrasebook.NO_BREAK));
        String shown = examples.isEmpty() ? "" : Phrasebook.NO_BREAK + texts.text("size.examples", examples);
        return fewest.isEmpty() ? shown : shown + ", " + texts.text("size.fewest", way.shown(fewest.getAsInt()));
    }

    private String multiple(Multiple multiple, Counting way) {
        int plus = way.shown(multiple.plus()) % multiple.of();
        if (multiple.of() == 1) {
            return texts.text("size.any");
        }
        return plus == 0
                ? texts.text("size.multiple", multiple.of())
                : texts.text("size.multiplePlus", multiple.of(), plus);
    }

    /** The multiple again, in the other way of counting: what is added suffices, if there is anything. */
    private String plus(Multiple multiple, Counting way) {
        int plus = way.shown(multiple.plus()) % multiple.of();
        return plus == 0 ? multiple(multiple, way) : texts.text("size.plus", plus);
    }

    private String counts(PerSide<Integer> counts) {
        IntFunction<String> shown = stitches -> texts.counted("round.sts", counting.shown(stitches));
        if (counts.allSidesAreAlike()) {
            return texts.text("size.each", shown.apply(counts.top()));
        }
        if (counts.oppositeSidesAreAlike()) {
            return texts.text("size.pairs", shown.apply(counts.top()), shown.apply(counts.left()));
        }
        return texts.text(
                "size.four." + hand,
                shown.apply(counts.top()),
                shown.apply(counts.left()),
                shown.apply(counts.bottom()),
                shown.apply(counts.right()));
    }
}
