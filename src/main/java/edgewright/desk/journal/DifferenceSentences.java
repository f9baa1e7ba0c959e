package edgewright.desk.journal;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;

/** Says in what two charts differ. */
final class DifferenceSentences {
    /** More rounds, or runs of rounds, are counted and not named. */
    private static final int MOST_NAMED = 6;

    private final Language language;
    private final Messages says;

    DifferenceSentences(Language language) {
        this.language = language;
        says = language.messages("desk/journal");
    }

    /** One sentence for each kind of difference. */
    String of(ChartDifference difference) {
        if (difference.isNone()) {
            return says.text("differ-none");
        }
        List<String> sentences = new ArrayList<>();
        if (difference.stitches() > 0) {
            sentences.add(says.text(
                    "differ-stitches",
                    count("stitches", difference.stitches()),
                    arg("rounds", rounds(difference.rounds()))));
        } else if (!difference.rounds().isEmpty()) {
            sentences.add(says.text("differ-yarn", arg("rounds", rounds(difference.rounds()))));
        }
        if (difference.more() > 0) {
            sentences.add(says.text("differ-more", count("rounds", difference.more())));
        } else if (difference.more() < 0) {
            sentences.add(says.text("differ-fewer", count("rounds", -difference.more())));
        }
        if (difference.otherwise()) {
            sentences.add(says.text("differ-otherwise"));
        }
        return String.join(" ", sentences);
    }

    private String rounds(List<Integer> rounds) {
        List<String> runs = new ArrayList<>();
        for (int i = 0; i < rounds.size(); ) {
            int first = rounds.get(i);
            int last = first;
            while (++i < rounds.size() && rounds.get(i) == last + 1) {
                last++;
            }
            runs.add(
                    first == last
                            ? language.count(first)
                            : says.text("differ-run", number("first", first), number("last", last)));
        }
        if (runs.size() > MOST_NAMED) {
            return says.text("differ-manyRounds", count("rounds", rounds.size()));
        }
        return says.text("differ-rounds", count("count", rounds.size()), arg("rounds", language.and(runs)));
    }
}
