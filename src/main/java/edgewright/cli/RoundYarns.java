package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.assist.picture.YarnOrder;
import edgewright.chart.Yarn;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The yarns of the rounds, as {@code --yarns} gives them: one for each round, from round 1; with an ellipsis behind the last they go
 * on from the first; or the word for finding the best order.
 *
 * @param ids the yarns; empty where the order is to be found
 * @param goOn whether they begin again where there are more rounds
 */
record RoundYarns(List<String> ids, boolean goOn) {
    private static final String FIND = "find";
    private static final String AND_SO_ON = "...";

    RoundYarns {
        ids = List.copyOf(ids);
    }

    /** Yarns that take turns. */
    static RoundYarns inTurn(List<String> ids) {
        return new RoundYarns(ids, true);
    }

    /** @throws BadInput if the text is something else */
    static RoundYarns parse(String text, Messages says) {
        if (text.equals(FIND)) {
            return new RoundYarns(List.of(), false);
        }
        List<String> ids = new ArrayList<>(Arrays.asList(text.split(",", -1)));
        boolean goOn = ids.size() > 1 && ids.get(ids.size() - 1).equals(AND_SO_ON);
        if (goOn) {
            ids.remove(ids.size() - 1);
        }
        if (!ids.stream().allMatch(Yarn::isId)) {
            throw new BadInput(says.text("picture-yarns", arg("found", ScreenText.oneLine(text))));
        }
        return new RoundYarns(ids, goOn);
    }

    /** Whether the best order is to be found. */
    boolean isToBeFound() {
        return ids.isEmpty();
    }

    /** @throws BadInput if there are more or fewer than rounds */
    List<String> forRounds(int rounds, Messages says) {
        if (!goOn && ids.size() != rounds) {
            throw new BadInput(says.text("picture-yarnCount", count("yarns", ids.size()), count("rounds", rounds)));
        }
        return YarnOrder.inTurn(ids, rounds);
    }
}
