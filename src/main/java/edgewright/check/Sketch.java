package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Heading;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A small chart as people write it down to talk about it, with what is found beside it:
 *
 * <pre>
 * looseRun 3
 * C Samphire #6f8a4f
 *
 * 3 A bbl|bb|bbb
 *       ^ covered-loop
 * 2 C  bl|bb|bb
 * 1 A   b|bb|b
 * </pre>
 *
 * <p>A line for each round, the outermost first: number, yarn, and the three sections in working order with a bar between
 * them. So stitches of one fabric column stand under each other. Blanks before a line do not matter to the reader. Above the
 * rounds there may be yarns (id, name, colour), what the chart allows ({@code stackLongStitches true}, {@code
 * landOnCornerChain false}, {@code looseRun 3}) and the stitches a side of the base round ({@code sides 8,8}). A and B are Peat
 * and Chalk unless the sketch says otherwise.
 *
 * <p>A line of {@code ^} under a round, with rules behind, marks stitches; a line that begins with {@code !} is about the
 * round or section above it, or a side. Such lines are claims for a reader or a test: they are not part of the chart.
 *
 * @param text the sketch as it was written down, with its marks
 * @param sides the stitches a side of the base round, where the sketch gives them
 */
public record Sketch(String text, Chart chart, Optional<PerSide<Integer>> sides) {
    private static final String ROW = "([" + Stitch.LETTERS + "]*)";
    private static final Pattern ROUND = Pattern.compile("(\\d+) +(\\w+) +" + ROW + "\\|" + ROW + "\\|" + ROW);
    private static final Pattern YARN = Pattern.compile("(\\w+) +(.+) +(#[0-9a-f]{6})");
    private static final Pattern SETTING = Pattern.compile("(\\w+) +(\\S+)");

    /** @throws IllegalArgumentException for a line that is none of these, or rounds out of order; the message quotes it */
    public static Sketch read(String text) {
        Reader reader = new Reader(text);
        text.lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("^") && !line.startsWith("!"))
                .forEach(reader::take);
        return reader.sketch();
    }

    /** The verdict on the sketched chart, for its sides if it gives them. */
    public Verdict verdict() {
        return sides.map(stitches -> Checker.check(chart, stitches)).orElseGet(() -> Checker.check(chart));
    }

    /** Collects the lines of one sketch. */
    private static final class Reader {
        private final Map<String, Yarn> yarns = new LinkedHashMap<>();
        private final List<Round> outsideIn = new ArrayList<>();
        private Rules rules = Rules.DEFAULT;
        private Optional<PerSide<Integer>> sides = Optional.empty();
        private final String text;
        private int nextRound;

        Reader(String text) {
            this.text = text;
            addYarn("A", "Peat", "#2b2a33");
            addYarn("B", "Chalk", "#f2ead8");
        }

        private void addYarn(String id, String name, String colour) {
            yarns.put(id, new Yarn(id, name, Colour.parse(colour)));
        }

        void take(String line) {
            Matcher round = ROUND.matcher(line);
            Matcher yarn = YARN.matcher(line);
            Matcher setting = SETTING.matcher(line);
            if (round.matches()) {
                addRound(round, line);
            } else if (yarn.matches()) {
                addYarn(yarn.group(1), yarn.group(2), yarn.group(3));
            } else if (setting.matches()) {
                set(setting.group(1), setting.group(2), line);
            } else {
                throw unreadable(line);
            }
        }

        private void addRound(Matcher round, String line) {
            int number = Integer.parseInt(round.group(1));
            if (!outsideIn.isEmpty() && number != nextRound) {
                throw unreadable(line);
            }
            nextRound = number - 1;
            outsideIn.add(new Round(
                    round.group(2),
                    Stitches.of(round.group(3)),
                    Stitches.of(round.group(4)),
                    Stitches.of(round.group(5))));
        }

        private void set(String name, String value, String line) {
            switch (name) {
                case "stackLongStitches" -> rules = rules.withStackLongStitches(Boolean.parseBoolean(value));
                case "landOnCornerChain" -> rules = rules.withLandOnCornerChain(Boolean.parseBoolean(value));
                case "looseRun" -> rules = rules.withLooseRun(Integer.parseInt(value));
                case "sides" -> sides = Optional.of(PerSide.parse(value));
                default -> throw unreadable(line);
            }
        }

        Sketch sketch() {
            if (outsideIn.isEmpty() || nextRound != 0) {
                throw new IllegalArgumentException("a sketch goes down to round 1");
            }
            List<Round> rounds = new ArrayList<>(outsideIn);
            Collections.reverse(rounds);
            return new Sketch(
                    text, new Chart(Heading.of(""), List.copyOf(yarns.values()), rounds).withRules(rules), sides);
        }

        private static IllegalArgumentException unreadable(String line) {
            return new IllegalArgumentException("not a line of a sketch: '" + line + "'");
        }
    }
}
