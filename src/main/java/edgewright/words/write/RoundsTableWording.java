package edgewright.words.write;

import static edgewright.texts.Arg.arg;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.TextBlock;
import edgewright.words.tree.Group;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.StartMark.Part;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts the rounds of a pattern into a table, a row each. A round with words for each side, or one that begins along a side,
 * says them across its row.
 */
final class RoundsTableWording {
    private final Messages phrases;
    private final Instructions pattern;
    private final YarnLabels yarns;
    private final RoundWording rounds;
    private final boolean counted;

    RoundsTableWording(Language language, Instructions pattern, YarnLabels yarns, RoundWording rounds) {
        this.phrases = language.messages("words/phrases");
        this.pattern = pattern;
        this.yarns = yarns;
        this.rounds = rounds;
        this.counted = pattern.rounds().stream()
                .anyMatch(round -> !rounds.countsCell(round).isEmpty());
    }

    TextBlock.RoundsTable table() {
        List<String> columns = new ArrayList<>(List.of(
                phrases.text("column-round"),
                phrases.text("column-yarn"),
                phrases.text("column-from"),
                phrases.text("column-repeat"),
                phrases.text("column-to")));
        if (counted) {
            columns.add(phrases.text("column-counts"));
        }
        return new TextBlock.RoundsTable(
                columns,
                pattern.rounds().stream().map(round -> row(round, columns)).toList());
    }

    private TextBlock.RoundRow row(WrittenRound round, List<String> columns) {
        TextBlock.RoundWords told = rounds.rounds(List.of(round), List.of(yarns.of(pattern.yarnOf(round))));
        boolean across = rounds.runsAcross(round);
        List<String> cells =
                new ArrayList<>(List.of(Integer.toString(round.number()), yarns.of(pattern.yarnOf(round))));
        List<String> listed = new ArrayList<>(List.of(told.label()));
        if (across) {
            cells.add(phrases.list("sentences-next", rounds.sentences(round)));
            listed.add(cells.get(2));
        } else {
            cells.addAll(work(round));
            for (int i = 2; i < cells.size(); i++) {
                listed.add(labelled(columns.get(i), cells.get(i)));
            }
        }
        if (counted) {
            String counts = rounds.countsCell(round);
            cells.add(counts.isEmpty() ? phrases.text("none-cell") : counts);
            listed.add(labelled(columns.get(columns.size() - 1), cells.get(cells.size() - 1)));
        }
        return new TextBlock.RoundRow(round.number(), told.name(), across, cells, listed);
    }

    private String labelled(String column, String cell) {
        return phrases.text("entry", arg("word", column), arg("text", cell));
    }

    private List<String> work(WrittenRound round) {
        SideInstructions side = round.stretch();
        List<String> last = new ArrayList<>();
        if (!side.after().isEmpty()) {
            last.add(rounds.runs(side, Part.AFTER));
        }
        if (!rounds.isTold(round.cornerChains())) {
            last.add(rounds.corner(round.cornerChains()));
        }
        return List.of(
                side.before().isEmpty() ? phrases.text("none-cell") : rounds.runs(side, Part.BEFORE),
                side.group().map(group -> group(side, group)).orElseGet(() -> phrases.text("none-cell")),
                last.isEmpty() ? phrases.text("none-cell") : phrases.list("clauses-next", last));
    }

    private String group(SideInstructions side, Group group) {
        return RoundWording.isEveryStitch(group)
                ? rounds.every(group, false, Optional.empty())
                : rounds.asGroup(
                        phrases.text(
                                "repeat-cell",
                                arg("steps", rounds.runs(side, Part.GROUP)),
                                arg("upTo", rounds.upTo(group))),
                        group);
    }
}
