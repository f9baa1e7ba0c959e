package edgewright.desk.work;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The edits of rounds, columns and yarns as they are made at the desk: each has a name, and the cursor goes along with what was
 * edited.
 */
public final class ChartCommands {
    private ChartCommands() {}

    /** Works these rounds in another yarn. */
    public static void changeYarn(Workbench bench, RoundRange rounds, Yarn yarn) {
        bench.edit(
                bench.says()
                        .text(
                                "edit-yarnOfRounds",
                                count("rounds", rounds.count()),
                                number("first", rounds.first()),
                                number("last", rounds.last()),
                                arg("yarn", yarn.name())),
                chart -> {
                    Chart changed = chart;
                    for (int r = rounds.first(); r <= rounds.last(); r++) {
                        changed = Edits.changeYarn(changed, r, yarn.id());
                    }
                    return changed;
                });
    }

    /** Whether there is room for that many rounds more. */
    public static boolean hasRoomFor(Workbench bench, int rounds) {
        return bench.chart().rounds().size() + rounds <= Chart.MOST_ROUNDS;
    }

    /** Puts a round of back-loop stitches outside these rounds, in the yarn that comes next in turn. */
    public static void insertOutside(Workbench bench, RoundRange rounds) {
        insert(bench, rounds.last() + 1, rounds.last());
    }

    /** The chart with so many rounds of back-loop stitches more, outside all others; the yarns go on taking turns. */
    public static Chart grown(Chart chart, int rounds) {
        Chart grown = chart;
        for (int i = 0; i < rounds; i++) {
            int last = grown.rounds().size();
            grown = Edits.insertRounds(grown, last + 1, List.of(yarnAfter(grown, last)));
        }
        return grown;
    }

    /** Puts a round of back-loop stitches inside these rounds. */
    public static void insertInside(Workbench bench, RoundRange rounds) {
        insert(bench, rounds.first(), rounds.first());
    }

    private static void insert(Workbench bench, int at, int beside) {
        String yarn = yarnAfter(bench.chart(), beside);
        bench.edit(
                bench.says().text("edit-insertRound", number("round", at)),
                chart -> Edits.insertRounds(chart, at, List.of(yarn)));
        toRound(bench, at);
    }

    /** The yarn whose turn it is after that round: the one two rounds in from the new one, as long as two yarns take turns. */
    private static String yarnAfter(Chart chart, int round) {
        return round >= 2
                ? chart.round(round - 1).yarn()
                : chart.yarns().stream()
                        .map(Yarn::id)
                        .filter(id -> !id.equals(chart.round(round).yarn()))
                        .findFirst()
                        .orElse(chart.round(round).yarn());
    }

    /** Works these rounds a second time, directly outside themselves. */
    public static void duplicate(Workbench bench, RoundRange rounds) {
        bench.edit(
                bench.says()
                        .text(
                                "edit-duplicateRounds",
                                count("rounds", rounds.count()),
                                number("first", rounds.first()),
                                number("last", rounds.last())),
                chart -> Edits.duplicateRounds(chart, rounds.first(), rounds.last()));
        toRound(bench, bench.cursor().round() + rounds.count());
    }

    /** Whether these rounds can go that many rounds out, or in if negative. */
    public static boolean canMove(Workbench bench, RoundRange rounds, int by) {
        return rounds.first() + by >= 1
                && rounds.last() + by <= bench.chart().rounds().size();
    }

    /** Moves these rounds out, or in if negative. */
    public static void move(Workbench bench, RoundRange rounds, int by) {
        bench.edit(
                bench.says()
                        .text(
                                "edit-moveRounds",
                                count("rounds", rounds.count()),
                                number("first", rounds.first()),
                                number("last", rounds.last()),
                                number("to", rounds.first() + by)),
                chart -> Edits.moveRounds(chart, rounds.first(), rounds.last(), rounds.first() + by));
        toRound(bench, bench.cursor().round() + by);
    }

    /** Whether anything would be left. */
    public static boolean canDelete(Workbench bench, RoundRange rounds) {
        return rounds.count() < bench.chart().rounds().size();
    }

    public static void delete(Workbench bench, RoundRange rounds) {
        bench.edit(
                bench.says()
                        .text(
                                "edit-deleteRounds",
                                count("rounds", rounds.count()),
                                number("first", rounds.first()),
                                number("last", rounds.last())),
                chart -> Edits.deleteRounds(chart, rounds.first(), rounds.last()));
        toRound(bench, Math.max(1, rounds.first() - 1));
    }

    private static void toRound(Workbench bench, int round) {
        Place at = bench.cursor();
        bench.moveCursor(new Place(Math.max(1, round), at.section(), at.place()));
    }

    /** Columns can be moved only where every section has the length of its round. */
    public static boolean isEven(Workbench bench) {
        return bench.verdict().judged();
    }

    /** Puts a column of back-loop stitches in before the one in which the cursor stands. */
    public static void insertColumn(Workbench bench) {
        Place at = bench.cursor();
        bench.edit(
                bench.says()
                        .text(
                                "edit-insertColumn",
                                arg(
                                        "section",
                                        bench.says()
                                                .text("section-" + at.section().member()))),
                chart -> Edits.insertColumn(chart, at.section(), columnOf(chart, at)));
    }

    /** Whether the column of the cursor can go: something must be left of its section in round 1. */
    public static boolean canDeleteColumn(Workbench bench) {
        return isEven(bench) && bench.chart().border().length(bench.cursor().section(), 1) > 1;
    }

    /** Takes the column out in which the cursor stands. */
    public static void deleteColumn(Workbench bench) {
        Place at = bench.cursor();
        bench.edit(
                bench.says()
                        .text(
                                "edit-deleteColumn",
                                arg(
                                        "section",
                                        bench.says()
                                                .text("section-" + at.section().member()))),
                chart -> Edits.deleteColumn(chart, at.section(), columnOf(chart, at)));
    }

    /** The place that the column of a stitch has in the outermost round. */
    private static int columnOf(Chart chart, Place at) {
        return at.section().placeAbove(at.place(), chart.rounds().size() - at.round());
    }

    /** Whether the repeat has stitches that can change places. */
    public static boolean canShift(Workbench bench) {
        return Stream.of(Section.values())
                .filter(Section::isRepeat)
                .anyMatch(section -> bench.chart().border().length(section, 1) > 1);
    }

    /** Moves the stitches of every repeat on in working order, or back if negative. */
    public static void shiftRepeat(Workbench bench, int by) {
        bench.edit(
                bench.says().text(by > 0 ? "edit-shift-on" : "edit-shift-back", count("columns", Math.abs(by))),
                chart -> Edits.shiftRepeat(chart, by));
    }

    public static void reverse(Workbench bench) {
        bench.edit(bench.says().text("edit-reverse"), Edits::reverse);
    }

    public static void evenOut(Workbench bench) {
        bench.edit(bench.says().text("edit-evenOut"), Edits::evenOut);
    }

    /** Gives the side another A, w and B. */
    public static void reshape(Workbench bench, SideShape to) {
        bench.edit(
                bench.says()
                        .text(
                                "edit-reshape",
                                count("fromCorner", to.a()),
                                count("repeat", to.w()),
                                count("toCorner", to.b())),
                chart -> {
                    Chart wide = Edits.changeRepeatWidth(chart, to.w());
                    return Edits.changeToCorner(Edits.changeFromCorner(wide, to.a()), to.b());
                });
    }

    /** Puts another yarn on the shelf. */
    public static void addYarn(Workbench bench, Yarn yarn) {
        bench.edit(bench.says().text("edit-addYarn", arg("yarn", yarn.name())), chart -> {
            List<Yarn> yarns = new ArrayList<>(chart.yarns());
            yarns.add(yarn);
            return chart.withYarns(yarns);
        });
    }

    /** Gives a yarn another name or colour. */
    public static void changeYarn(Workbench bench, Yarn from, Yarn to) {
        bench.edit(
                bench.says().text("edit-changeYarn", arg("yarn", to.name())),
                chart -> Edits.replaceYarn(chart, from.id(), to));
    }

    /** Whether no round is worked in this yarn, and it is not the last one. */
    public static boolean canRemove(Chart chart, Yarn yarn) {
        return chart.yarns().size() > 1 && roundsIn(chart, yarn) == 0;
    }

    public static void removeYarn(Workbench bench, Yarn yarn) {
        bench.edit(bench.says().text("edit-removeYarn", arg("yarn", yarn.name())), chart -> {
            List<Yarn> yarns = new ArrayList<>(chart.yarns());
            yarns.removeIf(other -> other.id().equals(yarn.id()));
            return chart.withYarns(yarns);
        });
    }

    /** How many rounds are worked in this yarn. */
    public static long roundsIn(Chart chart, Yarn yarn) {
        return chart.rounds().stream()
                .filter(round -> round.yarn().equals(yarn.id()))
                .count();
    }

    /** The first of A, B, C ... and then Y27, Y28 ... that no yarn of the chart has for an id. */
    public static String freeYarnId(Chart chart) {
        Set<String> taken = chart.yarns().stream().map(Yarn::id).collect(Collectors.toCollection(TreeSet::new));
        for (char letter = 'A'; letter <= 'Z'; letter++) {
            if (!taken.contains(String.valueOf(letter))) {
                return String.valueOf(letter);
            }
        }
        int number = 27;
        while (taken.contains("Y" + number)) {
            number++;
        }
        return "Y" + number;
    }

    /** A section as the texts call it. */
    public static String sectionName(Section section, Language language) {
        Messages says = language.messages("desk/work");
        return says.text("section-" + section.member());
    }
}
