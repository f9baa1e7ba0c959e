package edgewright.words.others;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.words.others.DrawerText.Verdict;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Texts from a designer's drawer, written by somebody who had not seen the reader. */
class DrawerTest {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,6}");

    /** What a human reads and the reader does not; it stops there and says where. */
    private static final Set<String> REFUSED = Set.of(
            "almanac-lapping-water",
            "leaflet-running-tide",
            "letter-samphire",
            "plain-words-bell-rope",
            "postcard-wrack-line",
            "school-eider-nest",
            "school-running-tide");

    /** Lines that tell a hook or the number of colours beside something else. */
    private static final Set<String> HOOKS = Set.of("almanac-herring-shoal 8", "postcard-standing-reeds 3");

    @Test
    void everyTextIsReadRightOrRefusedWithItsPlace() throws IOException {
        Set<String> wrong = new TreeSet<>();
        Set<String> refused = new TreeSet<>();
        for (DrawerText text : DrawerText.all()) {
            Verdict verdict = text.verdict();
            if (EnumSet.of(Verdict.READ_WRONGLY, Verdict.REFUSED_ELSEWHERE).contains(verdict)) {
                wrong.add(text.name() + " " + verdict);
            } else if (verdict == Verdict.REFUSED_READABLE) {
                refused.add(text.name());
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(refused).isEqualTo(new TreeSet<>(REFUSED));
    }

    @Test
    void everyNumberOfATextThatWasReadMattersUnlessItSaysNothingToHands() throws IOException {
        List<String> silent = new ArrayList<>();
        int tried = 0;
        for (DrawerText text : DrawerText.all()) {
            if (text.verdict() != Verdict.READ_RIGHT) {
                continue;
            }
            OthersReading right = text.read(text.text());
            List<String> rounds = DrawerText.readRounds(right, text.base());
            Matcher number = NUMBER.matcher(text.text());
            while (number.find()) {
                tried++;
                int more = Integer.parseInt(number.group()) + 1;
                OthersReading changed = text.read(text.text().substring(0, number.start())
                        + more
                        + text.text().substring(number.end()));
                if (changed.isClear()
                        && DrawerText.readRounds(changed, text.base()).equals(rounds)) {
                    int line = (int) text.text()
                                    .substring(0, number.start())
                                    .chars()
                                    .filter(c -> c == '\n')
                                    .count()
                            + 1;
                    Account.Line account = right.account().lines().get(line - 1);
                    boolean numbersTheLine =
                            text.text().split("\n")[line - 1].strip().startsWith(number.group() + ".");
                    if (!numbersTheLine && saysSomething(text, account)) {
                        silent.add(text.name() + " line " + line + ": " + number.group());
                    }
                }
            }
        }
        assertThat(tried).isGreaterThan(1000);
        assertThat(silent).isEmpty();
    }

    private static boolean saysSomething(DrawerText text, Account.Line line) {
        if (text.isProse(line.number()) || HOOKS.contains(text.name() + " " + line.number())) {
            return false;
        }
        return switch (line.kind()) {
            case SET_UP, ABBREVIATION, REFUSED -> true;
            case ROUND -> line.asides().isEmpty();
            default -> false;
        };
    }
}
