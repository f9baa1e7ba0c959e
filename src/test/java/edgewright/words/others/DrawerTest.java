package edgewright.words.others;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.words.grammar.LineKind;
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

    /** The names of stitches in either terms, and what texts of the drawer call theirs. */
    private static final Pattern STITCH_WORD = Pattern.compile(
            "(?<![\\p{L}])(?:dc|sc|tr|LT|DTR|mdc|mtr|ldc|drop (?:tr|dc)|long (?:tr|dc)|(?:double|single) crochet|treble|ch)(?![\\p{L}])");

    /** What makes a number that of a round worked before, as in 'same as round 1'. */
    private static final Pattern ROUND_BEFORE = Pattern.compile("(?i)\\b(?:as|rep|repeat) (?:round|rnd|r) ?$");

    /** What a human reads and the reader does not; it stops there and says where. */
    private static final Set<String> REFUSED = Set.of();

    /** Lines that tell a hook, the number of colours, or from which round on something is seen or made, beside something else. */
    private static final Set<String> HOOKS = Set.of(
            "almanac-herring-shoal 8",
            "postcard-standing-reeds 3",
            "postcard-wrack-line 3",
            "bulletin-causeway 7",
            "leaflet-oyster-lattice 17");

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
        Silent silent = new Silent();
        for (DrawerText text : DrawerText.all()) {
            if (text.verdict() == Verdict.READ_RIGHT) {
                Matcher number = NUMBER.matcher(text.text());
                while (number.find()) {
                    int said = Integer.parseInt(number.group());
                    // 'As round 1' is 'as round 2' where these two are alike; then the third must tell.
                    boolean alike = ROUND_BEFORE
                            .matcher(text.text().substring(0, number.start()))
                            .find();
                    silent.tryWith(text, number, alike ? List.of(said + 1, said + 2) : List.of(said + 1));
                }
            }
        }
        assertThat(silent.tried).isGreaterThan(1000);
        assertThat(silent.places).isEmpty();
    }

    @Test
    void everyStitchWordOfARoundThatWasReadMatters() throws IOException {
        Silent silent = new Silent();
        for (DrawerText text : DrawerText.all()) {
            if (text.verdict() == Verdict.READ_RIGHT) {
                Matcher word = STITCH_WORD.matcher(text.text());
                while (word.find()) {
                    if (text.lineAt(word.start()).kind() == LineKind.ROUND) {
                        silent.tryWith(text, word, "puff");
                    }
                }
            }
        }
        assertThat(silent.tried).isGreaterThan(1000);
        assertThat(silent.places).isEmpty();
    }

    /** Changes that nobody would have noticed. */
    private static final class Silent {
        private final List<String> places = new ArrayList<>();
        private int tried;

        void tryWith(DrawerText text, Matcher found, List<Integer> others) {
            int before = places.size();
            for (int other : others) {
                places.subList(before, places.size()).clear();
                tryWith(text, found, String.valueOf(other));
                if (places.size() == before) {
                    return;
                }
            }
        }

        void tryWith(DrawerText text, Matcher found, String other) {
            tried++;
            Account.Line line = text.lineAt(found.start());
            int column = found.start() - text.text().lastIndexOf('\n', found.start() - 1);
            boolean numbersTheLine = column <= 4
                    && text.text().split("\n")[line.number() - 1].strip().startsWith(found.group() + ".");
            OthersReading changed = text.read(new StringBuilder(text.text())
                    .replace(found.start(), found.end(), other)
                    .toString());
            boolean same = changed.isClear()
                    && DrawerText.readRounds(changed, text.base()).equals(text.rightRounds());
            if (same && !numbersTheLine && saysSomething(text, line, column)) {
                places.add(text.name() + " line " + line.number() + ", column " + column + ": " + found.group());
            }
        }
    }

    private static boolean saysSomething(DrawerText text, Account.Line line, int column) {
        if (text.isProse(line.number()) || HOOKS.contains(text.name() + " " + line.number())) {
            return false;
        }
        return switch (line.kind()) {
            case SET_UP, ABBREVIATION, REFUSED -> true;
            case ROUND ->
                line.asides().stream()
                        .noneMatch(aside -> column >= aside.column()
                                && column < aside.column() + aside.text().length());
            default -> false;
        };
    }
}
