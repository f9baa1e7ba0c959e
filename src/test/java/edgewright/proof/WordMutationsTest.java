package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Terms;
import edgewright.hands.Fabric;
import edgewright.testing.RandomCharts;
import edgewright.texts.Language;
import edgewright.texts.Languages;
import edgewright.words.SeededCharts;
import edgewright.words.page.PlainText;
import edgewright.words.read.PatternReader;
import edgewright.words.read.ReadingResult;
import edgewright.words.tree.Group;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.SideWords;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.WrittenRound;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.RoundsLayout;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import org.junit.jupiter.api.Test;

/**
 * Spoils correct patterns in the ways in which a typist does, and sees that no spoilt pattern that would make another fabric
 * passes: it is refused, at or after the place that was spoilt.
 */
class WordMutationsTest {
    private enum Change {
        NUMBER,
        STITCHES_SWAPPED,
        REPEAT_MARK_DROPPED,
        LINE_DROPPED,
        OTHER_TERMS,
        MARK_MOVED,
        MARK_DROPPED,
        MARKER_IN_OTHER_STITCH
    }

    /** A spoilt text, the first line of the sentence that was spoilt, and the round it belongs to; 0 before round 1. */
    private record Spoilt(String text, int line, int round) {}

    private static final java.util.regex.Pattern NUMBER = java.util.regex.Pattern.compile("[0-9]+");
    /** What is spoilt in the words of a language: expressions for a run, a repeat mark and the name of a round, and texts. */
    private record Marks(
            String run,
            String repeat,
            String round,
            String firstRound,
            String end,
            String uk,
            String us,
            String mark,
            String marker) {
        private static final Marks ENGLISH = new Marks(
                "[0-9]+ (dc blo|sc blo|dc|sc|drop tr|drop dc)(?=[,;)\\]])",
                "\\*|rep from \\*",
                "(?m)^Rounds? ([0-9]+) [^:\n]*\\(",
                "(?m)^Rounds? 1 [^:\n]*\\(",
                "\nFinishing",
                "UK terms",
                "US terms",
                "^",
                "(?m)^Marker.*?([0-9]+)");
        private static final Marks INVENTED = new Marks(
                "(bäk ö|räck ö|bäk|slät|lång-dröpp|lång-slät) × [0-9]+(?= [·¦»]|[\\]›])",
                "«|»|» åter",
                "(?m)^([0-9]+)(?: še [0-9]+| fram till [0-9]+)?:te vårv",
                "(?m)^1(?: še [0-9]+| fram till [0-9]+)?:te vårv",
                "\nSlütet",
                "norr mål",
                "sör mål",
                "¤",
                "(?m)^Märke.*?([0-9]+)");

        /** Found in the words of rounds that stand together or refer to others. */
        private static final java.util.regex.Pattern SOME =
                java.util.regex.Pattern.compile("^Rounds |^[0-9]+ (še|fram till) [0-9]+|: as round|lik vårv");

        static Marks of(Language language, RoundsLayout layout) {
            Marks marks = language.equals(Languages.INVENTED) ? INVENTED : ENGLISH;
            return layout == RoundsLayout.SENTENCES
                    ? marks
                    : new Marks(
                            marks.run,
                            marks.repeat,
                            "(?m)^([0-9]+) +\\|",
                            "(?m)^1   ",
                            marks.end,
                            marks.uk,
                            marks.us,
                            marks.mark,
                            marks.marker);
        }
    }

    private final Map<String, Integer> refused = new TreeMap<>();
    private int harmless;
    private int slippedThrough;

    @Test
    void no_spoilt_pattern_that_would_make_another_fabric_passes() {
        RandomCharts charts = new RandomCharts(6);
        Random random = charts.random();
        // -Dedgewright.exhaustive=3 spoils some nine thousand patterns.
        int patterns = 160 * Integer.getInteger("edgewright.exhaustive", 1);
        int spoiltPatterns = 0;
        for (int i = 0; i < patterns; i++) {
            Chart chart = charts.workable();
            PerSide<Integer> repeats = PerSide.of(2, 1, random.nextInt(4), random.nextInt(3));
            if (i % 3 > 0) {
                chart = RandomCharts.workable(SeededCharts.withAlikeRounds(chart, i));
            }
            if (i % 2 == 0) {
                chart = charts.started(chart);
                repeats = repeats.map(m -> m + 3);
            }
            Terms terms = Terms.values()[random.nextInt(2)];
            Language language = Languages.of(i / 2);
            WordingOptions options = new WordingOptions(
                    language,
                    terms,
                    Counting.values()[random.nextInt(2)],
                    random.nextBoolean() ? Optional.of(repeats) : Optional.empty());
            RoundsLayout layout = RoundsLayout.values()[i / 4 % 2];
            options = options.withLayout(layout);
            repeats = LongEnough.repeats(chart, options, repeats);
            String text = PlainText.of(PatternWriter.write(chart, options));
            for (Change change : Change.values()) {
                for (int times = 0; times < 4; times++) {
                    Optional<Spoilt> spoilt = spoil(text, Marks.of(language, layout), terms, change, random);
                    if (spoilt.isPresent()) {
                        spoiltPatterns++;
                        judge(language, chart, repeats, text, spoilt.get(), change);
                    }
                }
            }
        }
        System.getLogger(WordMutationsTest.class.getName())
                .log(
                        System.Logger.Level.INFO,
                        "{0} spoilt patterns, refused {1}, {2} of no effect on the fabric, {3} slipped through",
                        spoiltPatterns,
                        refused,
                        harmless,
                        slippedThrough);
        assertThat(spoiltPatterns).isGreaterThan(2_000);
        assertThat(slippedThrough).isZero();
        assertThat(harmless).isLessThan(spoiltPatterns / 12);
        assertThat(refused.values().stream().mapToInt(Integer::intValue).sum()).isEqualTo(spoiltPatterns - harmless);
    }

    @Test
    void everyNumberOfRoundsThatStandTogetherMatters() {
        RandomCharts charts = new RandomCharts(7);
        int spoiltNumbers = 0;
        for (int i = 0; i < 240; i++) {
            Chart chart = RandomCharts.workable(SeededCharts.withAlikeRounds(charts.small(), i));
            Language language = Languages.of(i);
            chart = i % 4 < 2 ? chart : charts.started(chart);
            PerSide<Integer> repeats = PerSide.of(3, 4, 3, 5);
            WordingOptions options = WordingOptions.of(chart, language);
            options = i % 3 == 0 ? options.withRepeats(repeats) : options;
            repeats = LongEnough.repeats(chart, options, repeats);
            String text = PlainText.of(PatternWriter.write(chart, options));
            assertThat(new Prover(chart, language).prove(text, repeats).agrees())
                    .as(text)
                    .isTrue();
            Marks marks = Marks.of(language, RoundsLayout.SENTENCES);
            for (MatchResult number : NUMBER.matcher(text).results().toList()) {
                boolean isOfSome = number.start() >= start(text, marks)
                        && Marks.SOME.matcher(sentence(text, number.start())).find();
                for (int by : isOfSome ? new int[] {-1, 1, 2} : new int[0]) {
                    String other = String.valueOf(Math.max(0, Integer.parseInt(number.group()) + by));
                    spoiltNumbers++;
                    judge(
                            language,
                            chart,
                            repeats,
                            text,
                            replaced(text, marks, number.start(), number.end(), other),
                            Change.NUMBER);
                }
            }
        }
        assertThat(spoiltNumbers).isGreaterThan(1_000);
        System.getLogger(WordMutationsTest.class.getName())
                .log(
                        System.Logger.Level.INFO,
                        "{0} spoilt numbers of rounds together, {1} harmless",
                        spoiltNumbers,
                        harmless);
        assertThat(harmless).isLessThan(spoiltNumbers / 20);
    }

    private static int start(String text, Marks marks) {
        return java.util.regex.Pattern.compile(marks.firstRound())
                .matcher(text)
                .results()
                .findFirst()
                .orElseThrow()
                .start();
    }

    /** The lines between blank lines in which a character stands. */
    private static String sentence(String text, int at) {
        int end = text.indexOf("\n\n", at);
        return text.substring(text.lastIndexOf("\n\n", at) + 2, end < 0 ? text.length() : end);
    }

    private void judge(
            Language language, Chart chart, PerSide<Integer> repeats, String text, Spoilt spoilt, Change change) {
        ProofResult result = new Prover(chart, language).prove(spoilt.text(), repeats);
        ReadingResult reading = PatternReader.read(spoilt.text(), language);
        boolean sameFabric = reading instanceof ReadingResult.Understood understood
                && fabric(understood.pattern(), chart, repeats).equals(fabric(chart, repeats));
        if (result.agrees()) {
            if (!sameFabric) {
                slippedThrough++;
                throw new AssertionError("%s slipped through:%n%s%nfrom%n%s".formatted(change, spoilt.text(), text));
            }
            ((ReadingResult.Understood) reading)
                    .pattern()
                    .rounds()
                    .forEach(round -> assertMarked(round, chart, repeats, spoilt));
            harmless++;
            return;
        }
        boolean unread = result instanceof ProofResult.Unread;
        assertThat(unread ? line(result) : round(result))
                .as("%s in round %s: %s%n%s", change, spoilt.round(), result, spoilt.text())
                .isGreaterThanOrEqualTo(unread ? spoilt.line() : spoilt.round());
        refused.merge(change + " " + result.getClass().getSimpleName(), 1, Integer::sum);
    }

    /** Whatever was spoilt, a pattern that passes starts no round but where its mark stands. */
    private static void assertMarked(WrittenRound round, Chart chart, PerSide<Integer> repeats, Spoilt spoilt) {
        round.start().ifPresent(start -> {
            int stitches = chart.shape(Side.FIRST).stitches(round.number(), repeats.get(start.side()));
            assertThat(markedPlaces(round.stretch(), start.mark(), stitches))
                    .as("round %d of %s", round.number(), spoilt.text())
                    .contains(start.stitch());
        });
    }

    /** How many stitches stand before the mark: in a group as many numbers as it has repeats, and its end if it begins there. */
    private static Set<Integer> markedPlaces(SideInstructions side, StartMark mark, int stitches) {
        int first = SideStep.stitches(side.steps(mark.part()).subList(0, mark.step()));
        int before = SideStep.stitches(side.before());
        int groupsEnd = stitches - SideStep.stitches(side.after());
        return switch (mark.part()) {
            case BEFORE -> Set.of(first);
            case AFTER -> Set.of(groupsEnd + first);
            case GROUP -> {
                Set<Integer> places = new TreeSet<>();
                for (int at = before;
                        at < groupsEnd;
                        at += side.group().orElseThrow().stitches()) {
                    places.add(at + first);
                }
                if (first == 0) {
                    places.add(groupsEnd);
                }
                yield places;
            }
        };
    }

    private static int line(ProofResult result) {
        return ((ProofResult.Unread) result).problems().get(0).line();
    }

    /** The round in which hands stop or the fabric differs. What shows in a round may tell of the round above. */
    private static int round(ProofResult result) {
        if (result instanceof ProofResult.Stopped stopped) {
            return stopped.stop().round();
        }
        return ((ProofResult.Differs) result)
                .differences().stream()
                        .filter(difference -> !(difference instanceof Difference.OtherShown))
                        .mapToInt(
                                difference -> round(difference, result.fabric().orElseThrow()))
                        .min()
                        .orElseThrow();
    }

    private static int round(Difference difference, Fabric fabric) {
        if (difference instanceof Difference.OtherYarn yarn) {
            return yarn.round();
        }
        if (difference instanceof Difference.CornerChains corner) {
            return corner.round();
        }
        if (difference instanceof Difference.Count count) {
            return count.round();
        }
        if (difference instanceof Difference.OtherStitch stitch) {
            return stitch.place().round();
        }
        if (difference instanceof Difference.OtherLanding landing) {
            return landing.place().round();
        }
        if (difference instanceof Difference.Rounds) {
            return fabric.rounds();
        }
        throw new AssertionError("no difference of a front: " + difference);
    }

    private static Optional<Spoilt> spoil(String text, Marks marks, Terms terms, Change change, Random random) {
        int firstRound = start(text, marks);
        return switch (change) {
            case NUMBER ->
                pick(NUMBER.matcher(text), firstRound, random).map(number -> {
                    int other = Integer.parseInt(number.group()) + (random.nextBoolean() ? 1 : -1);
                    return replaced(text, marks, number.start(), number.end(), String.valueOf(Math.max(0, other)));
                });
            case STITCHES_SWAPPED -> swapped(text, marks, firstRound, random);
            case MARK_MOVED -> markMoved(text, marks, firstRound, random);
            case MARK_DROPPED ->
                mark(text, marks, firstRound, random).map(mark -> replaced(text, marks, mark.start(), mark.end(), ""));
            case MARKER_IN_OTHER_STITCH ->
                pick(java.util.regex.Pattern.compile(marks.marker()).matcher(text), 0, random)
                        .map(marker -> replaced(
                                text,
                                marks,
                                marker.start(1),
                                marker.end(1),
                                String.valueOf(Integer.parseInt(marker.group(1)) + 1 - 2 * random.nextInt(2))));
            case REPEAT_MARK_DROPPED ->
                pick(java.util.regex.Pattern.compile(marks.repeat()).matcher(text), firstRound, random)
                        .map(mark -> replaced(text, marks, mark.start(), mark.end(), ""));
            case LINE_DROPPED ->
                pick(java.util.regex.Pattern.compile("(?m)^.+\n").matcher(text), firstRound, random)
                        .filter(line -> line.start() < text.indexOf(marks.end()))
                        // The gap begins where the line before ends.
                        .map(line -> replaced(text, marks, line.start() - 1, line.end() - 1, ""));
            case OTHER_TERMS ->
                Optional.of(
                        terms == Terms.UK
                                ? new Spoilt(text.replaceFirst(marks.uk(), marks.us()), 1, 0)
                                : new Spoilt(text.replaceFirst(marks.us(), marks.uk()), 1, 0));
        };
    }

    private static Optional<MatchResult> mark(String text, Marks marks, int from, Random random) {
        return pick(
                java.util.regex.Pattern.compile(" ?\\Q" + marks.mark() + "\\E").matcher(text), from, random);
    }

    /** The mark of a start stands at another run of the same round. */
    private static Optional<Spoilt> markMoved(String text, Marks marks, int from, Random random) {
        Optional<MatchResult> mark = mark(text, marks, from, random);
        if (mark.isEmpty()) {
            return Optional.empty();
        }
        int round = roundAt(text, marks, mark.get().start());
        List<MatchResult> runs = java.util.regex.Pattern.compile(marks.run())
                .matcher(text)
                .results()
                .filter(run -> run.start() > from && roundAt(text, marks, run.start()) == round)
                .toList();
        if (runs.isEmpty()) {
            return Optional.empty();
        }
        int to = runs.get(random.nextInt(runs.size())).start();
        String moved = to < mark.get().start()
                ? text.substring(0, to) + marks.mark() + " "
                        + text.substring(to, mark.get().start())
                        + text.substring(mark.get().end())
                : text.substring(0, mark.get().start())
                        + text.substring(mark.get().end(), to) + marks.mark() + " " + text.substring(to);
        return Optional.of(new Spoilt(moved, lineOf(text, mark.get().start()), round));
    }

    /** Two neighbouring runs that are not the same stitch change places. */
    private static Optional<Spoilt> swapped(String text, Marks marks, int from, Random random) {
        List<MatchResult> runs = java.util.regex.Pattern.compile(marks.run())
                .matcher(text)
                .results()
                .filter(run -> run.start() > from)
                .toList();
        List<Integer> pairs = new ArrayList<>();
        for (int i = 1; i < runs.size(); i++) {
            if (roundAt(text, marks, runs.get(i).start())
                    == roundAt(text, marks, runs.get(i - 1).start())) {
                pairs.add(i);
            }
        }
        if (pairs.isEmpty()) {
            return Optional.empty();
        }
        int second = pairs.get(random.nextInt(pairs.size()));
        MatchResult one = runs.get(second - 1);
        MatchResult other = runs.get(second);
        String between = text.substring(one.end(), other.start());
        return Optional.of(replaced(text, marks, one.start(), other.end(), other.group() + between + one.group()));
    }

    private static Optional<MatchResult> pick(java.util.regex.Matcher matcher, int from, Random random) {
        List<MatchResult> found =
                matcher.results().filter(match -> match.start() >= from).toList();
        return found.isEmpty() ? Optional.empty() : Optional.of(found.get(random.nextInt(found.size())));
    }

    private static Spoilt replaced(String text, Marks marks, int start, int end, String by) {
        return new Spoilt(
                text.substring(0, start) + by + text.substring(end), lineOf(text, start), roundAt(text, marks, start));
    }

    /** The first line of the sentence that this character belongs to. */
    private static int lineOf(String text, int offset) {
        return (int) text.substring(0, text.lastIndexOf("\n\n", offset)).lines().count() + 1;
    }

    /** The round whose words the character belongs to, by the number in its title. */
    private static int roundAt(String text, Marks marks, int offset) {
        return java.util.regex.Pattern.compile(marks.round())
                .matcher(text)
                .results()
                .filter(round -> round.start() <= offset)
                .mapToInt(round -> Integer.parseInt(round.group(1)))
                .reduce(0, (one, next) -> next);
    }

    /** What the chart says, side by side: yarn, corner chains and stitches. */
    private static List<String> fabric(Chart chart, PerSide<Integer> repeats) {
        List<String> fabric = new ArrayList<>();
        for (int r = 1; r <= chart.rounds().size(); r++) {
            for (Side side : Side.values()) {
                fabric.add(chart.yarnOf(r).name() + " " + chart.corner().chains() + " "
                        + chart.round(r).side(side, repeats.get(side)));
            }
        }
        return fabric;
    }

    /** What a tree says, worked out by counting alone; whatever does not come out is written down as it stands. */
    private static List<String> fabric(Instructions pattern, Chart chart, PerSide<Integer> repeats) {
        List<String> fabric = new ArrayList<>();
        for (WrittenRound round : pattern.rounds()) {
            for (Side side : Side.values()) {
                int stitches = chart.shape(Side.FIRST).stitches(round.number(), repeats.get(side));
                String letters = side(round.stretch(), stitches);
                fabric.add(pattern.yarnOf(round).name() + " " + round.cornerChains() + " " + letters);
            }
        }
        return fabric;
    }

    private static String side(SideInstructions round, int stitches) {
        StringBuilder side = new StringBuilder(letters(round.before()));
        if (round.group().isPresent()) {
            Group group = round.group().get();
            while (stitches - side.length() > group.lastStitches()) {
                side.append(letters(group.steps()));
            }
            if (stitches - side.length() != group.lastStitches()) {
                side.append('?');
            }
        }
        return side + letters(round.after());
    }

    private static String letters(List<? extends SideStep> runs) {
        return SideWords.letters(runs);
    }
}
