package edgewright.words.said;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;
import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.fit.Fit;
import edgewright.fit.FitPlan;
import edgewright.fit.FitQuestion;
import edgewright.fit.Ties;
import edgewright.hands.Fabric;
import edgewright.proof.Prover;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import edgewright.texts.Language;
import edgewright.texts.Languages;
import edgewright.texts.Messages;
import edgewright.words.SeededCharts;
import edgewright.words.page.PlainText;
import edgewright.words.read.PatternReader;
import edgewright.words.read.ReadingResult;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.WrittenRound;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.RoundsLayout;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which piece of a pattern says which stitches, for charts from seeds, in all sizes, layouts, terms and languages. */
class SaidPatternTest {
    private static final int CASES = 300;
    private static final int READ_CASES = 120;
    /** A side that has the start of every round is that much longer than its words ask for. */
    private static final int MORE_FOR_STARTS = 4;

    private static final List<Case> ANY =
            LongStream.range(0, CASES).mapToObj(seed -> new Case(seed, false)).toList();

    @Test
    void theWordsAreTheSameWhetherOrNotSomebodyAsksWhatTheySay() {
        for (Case one : ANY) {
            assertThat(one.said.text()).as("seed %d", one.seed).isEqualTo(PatternWriter.write(one.chart, one.options));
        }
    }

    @Test
    void piecesLieWithinEachOtherOrApartInEveryLineAndCell() {
        for (Case one : ANY) {
            for (SaidRounds rounds : one.said.rounds()) {
                for (SaidText text : texts(rounds)) {
                    for (SaidSpan span : text.spans()) {
                        assertThat(text.spans())
                                .as("seed %d: %s of %s", one.seed, span, text.text())
                                .allMatch(other -> span.holds(other)
                                        || other.holds(span)
                                        || span.end() <= other.begin()
                                        || other.end() <= span.begin());
                    }
                }
                // A table says in its cells what it says in the lines of its list.
                assertThat(saidIn(rounds.cells())).as("seed %d", one.seed).isSubsetOf(saidIn(rounds.lines()));
            }
        }
    }

    @Test
    void everyStitchOfASideIsSaidByOneSmallestPiece() {
        int referred = 0;
        for (Case one : ANY) {
            for (int r = 1; r <= one.chart.rounds().size(); r++) {
                SaidRounds words = one.said.rounds().get(one.said.titleOf(r));
                Set<Place> seen = new HashSet<>();
                for (SaidStitch stitch : one.side(r)) {
                    SaidText line = words.lines().get(stitch.piece().line());
                    SaidSpan smallest = stitch.piece().span();
                    List<SaidSpan> saying = words.lines().stream()
                            .flatMap(each -> each.spans().stream())
                            .filter(span -> one.says(span, stitch))
                            .toList();
                    assertThat(line.spans()).containsAll(saying);
                    assertThat(saying)
                            .as("seed %d, %s: %s", one.seed, stitch.place(), line.text())
                            .contains(smallest)
                            .allMatch(span -> span.holds(smallest));
                    assertThat(one.said.places(words, smallest))
                            .as("seed %d, %s: %s", one.seed, stitch.place(), line.words(smallest))
                            .contains(stitch.place());
                    seen.add(stitch.place());
                    assertThat(one.said.saying(stitch.place()))
                            .contains(new SaidPattern.Saying(one.said.titleOf(r), stitch.piece()))
                            .contains(new SaidPattern.Saying(one.said.toldUnder(r), one.said.toldIn(stitch)));
                    referred += one.said.titleOf(r) == one.said.toldUnder(r) ? 0 : 1;
                }
                assertThat(seen).as("seed %d, round %d", one.seed, r).isEqualTo(places(one.chart, r));
            }
        }
        assertThat(referred).isGreaterThan(50);
    }

    @Test
    void whatHandsMakeOfTheWordsIsWhatThePieceOfEachStitchSaysReadByItself() {
        int stitches = 0;
        int groups = 0;
        for (long seed = 0; seed < READ_CASES; seed++) {
            Case one = new Case(seed, true);
            Reader reader = new Reader(one);
            for (int r = 1; r <= one.chart.rounds().size(); r++) {
                SaidRounds words = one.said.rounds().get(one.said.titleOf(r));
                String worked = one.worked.letters(r, Side.TOP);
                StringBuilder said = new StringBuilder();
                for (SaidStitch stitch : one.said.side(r, Side.TOP, one.repeats(r))) {
                    SaidRounds.Piece piece = one.said.toldIn(stitch);
                    SaidRounds told = one.said.rounds().get(one.said.toldUnder(r));
                    String letters =
                            reader.letters(told.lines().get(piece.line()).words(piece.span()));
                    said.append(letters.charAt(0));
                    assertThat(letters.chars().distinct().count()).isEqualTo(1);
                    assertThat(one.chart.stitch(stitch.place()).letter())
                            .as("seed %d, %s", one.seed, stitch.place())
                            .isEqualTo(letters.charAt(0));
                    stitches++;
                }
                assertThat(said).as("seed %d, round %d", one.seed, r).hasToString(worked);
                for (SaidText line : words.lines()) {
                    for (SaidSpan span : line.spans()) {
                        groups += one.requireRead(reader, r, line, span, worked) ? 1 : 0;
                    }
                }
            }
        }
        assertThat(stitches).isGreaterThan(4_000);
        assertThat(groups).isGreaterThan(50);
    }

    @Test
    void aMakerReadsARoundFromItsStartRoundToThereAndPassesEveryPlace() {
        int started = 0;
        for (Case one : ANY) {
            for (WrittenRound round : one.tree.rounds()) {
                List<SaidStitch> read = one.said.inWorkingOrder(round.number());
                List<SaidStitch> side =
                        one.said.side(round.number(), Side.FIRST, one.said.fewestRepeats(round.number()));
                assertThat(read).as("seed %d, %s", one.seed, round).containsExactlyInAnyOrderElementsOf(side);
                int first = read.get(0).number() - 1;
                assertThat(read.get(read.size() - 1).number()).isEqualTo(first == 0 ? side.size() : first);
                // In English the mark stands before the step that is worked first, or after the one that is worked
                // last.
                boolean along = round.start().isPresent() && first > 0;
                String mark = English.LANGUAGE.messages("words/phrases").text("start-mark-word");
                boolean marked = !one.language.equals(English.LANGUAGE)
                        || one.around(read.get(0)).contains(mark + "\u00a0")
                        || one.around(read.get(read.size() - 1)).endsWith(", " + mark);
                assertThat(!along || marked)
                        .as("seed %d: %s", one.seed, read.get(0))
                        .isTrue();
                started += along ? 1 : 0;
            }
        }
        assertThat(started).isGreaterThan(50);
    }

    @Test
    void aRoundThatPutsTheCountsRightSaysForEachSideWhatHandsMakeOfIt() {
        RandomCharts charts = new RandomCharts(13);
        Random random = charts.random();
        int pieces = 0;
        while (pieces < 20) {
            Chart chart = RandomCharts.workable(
                    withPlainRounds(charts.chart(new SideShape(random.nextInt(5), 1 + random.nextInt(8), 2), 4)));
            PerSide<Integer> counted = PerSide.all(0).map(zero -> 20 + random.nextInt(40));
            FitQuestion question =
                    new FitQuestion(1, counted, Counting.STITCHES, new Ties(false, false), Optional.empty());
            if (!(Fit.inWords(chart, question) instanceof FitPlan plan) || plan.isDone()) {
                continue;
            }
            pieces++;
            WordingOptions options =
                    WordingOptions.of(chart, Languages.of(pieces)).withPiece(plan);
            SaidPattern said = PatternWriter.said(chart, options);
            Fabric worked = new Prover(chart, Languages.of(pieces))
                    .prove(options, plan)
                    .fabric()
                    .orElseThrow();
            SaidRounds words = said.rounds().get(said.titleOf(2));
            for (Side side : Side.values()) {
                StringBuilder letters = new StringBuilder();
                for (SaidStitch stitch :
                        said.side(2, side, plan.targets().repeats().get(side))) {
                    letters.append(chart.stitch(stitch.place()).letter());
                    assertThat(said.places(words, stitch.piece().span())).contains(stitch.place());
                    assertThat(((Said.Stitches) stitch.piece().span().said()).side())
                            .contains(side);
                }
                assertThat(letters).hasToString(worked.letters(2, side));
            }
        }
    }

    private static Chart withPlainRounds(Chart chart) {
        Chart plain = chart;
        for (int r = 1; r <= 2; r++) {
            plain = plain.withRound(
                    r,
                    Round.of(
                            chart.round(r).yarn(),
                            "b".repeat(chart.round(r).fromCorner().length()),
                            "b".repeat(chart.round(r).repeat().length()),
                            "b".repeat(chart.round(r).toCorner().length())));
        }
        return plain;
    }

    private static List<SaidText> texts(SaidRounds rounds) {
        return Stream.concat(rounds.lines().stream(), rounds.cells().stream()).toList();
    }

    private static Set<Said> saidIn(List<SaidText> texts) {
        Set<Said> said = new HashSet<>();
        texts.forEach(text -> text.spans().forEach(span -> said.add(span.said())));
        return said;
    }

    private static Set<Place> places(Chart chart, int round) {
        Set<Place> places = new HashSet<>();
        for (Section section : Section.values()) {
            for (int i = 1; i <= chart.round(round).section(section).length(); i++) {
                places.add(new Place(round, section, i));
            }
        }
        return places;
    }

    /** A chart from a seed, its words, and what hands made of them where they can be worked. */
    private static final class Case {
        private final long seed;
        private final Chart chart;
        private final WordingOptions options;
        private final SaidPattern said;
        private final Instructions tree;
        private final Language language;
        private final Fabric worked;

        Case(long seed, boolean workable) {
            this.seed = seed;
            language = Languages.of(seed);
            SeededCharts seeded = new SeededCharts(seed);
            Chart first = workable ? seeded.workable() : seeded.any();
            // A round that is worked as another need not be one that hands can work there.
            chart = workable ? first : SeededCharts.withAlikeRounds(first, seed);
            WordingOptions any = seeded.options()
                    .withLanguage(language)
                    .withLayout(RoundsLayout.values()[(int) (seed / 2 % 2)])
                    .withEachRound(seed % 5 == 0);
            options = workable ? any.withoutRepeats() : any;
            said = PatternWriter.said(chart, options);
            tree = PatternWriter.tree(chart, options);
            int most = 1;
            for (int r = 1; workable && r <= chart.rounds().size(); r++) {
                most = Math.max(most, said.fewestRepeats(r));
            }
            worked = workable
                    ? new Prover(chart, language)
                            .prove(options, PerSide.all(most + MORE_FOR_STARTS))
                            .fabric()
                            .orElseThrow()
                    : null;
        }

        /** How often the repeat is worked on the side that is looked at. */
        int repeats(int round) {
            return worked == null
                    ? said.fewestRepeats(round)
                    : chart.shape(Side.TOP)
                            .repeats(round, worked.side(round, Side.TOP).size())
                            .orElseThrow();
        }

        List<SaidStitch> side(int round) {
            return said.side(round, Side.LEFT, repeats(round));
        }

        /** The words of the step that says a stitch, and three characters before and after it. */
        String around(SaidStitch stitch) {
            SaidRounds words = said.rounds().get(said.toldUnder(stitch.place().round()));
            int line = said.toldIn(stitch).line();
            List<SaidSpan> around = words.around(line, stitch.side(), stitch.told());
            boolean inGroup = stitch.told().part() == StartMark.Part.GROUP && around.size() > 1;
            SaidSpan step = around.get(inGroup ? 1 : 0);
            String text = words.lines().get(line).text();
            return text.substring(Math.max(0, step.begin() - 3), Math.min(text.length(), step.end() + 3));
        }

        boolean says(SaidSpan span, SaidStitch stitch) {
            int round = stitch.place().round();
            WrittenRound written = tree.rounds().get(round - 1);
            int stitches = chart.shape(stitch.side()).stitches(round, repeats(round));
            return span.said()
                    .says(stitch.side(), written.stretch(stitch.side()).placeOf(stitch.number(), stitches));
        }

        /** Holds a bracket or a group, read by itself, against what was worked where it is first worked; whether it was one. */
        boolean requireRead(Reader reader, int round, SaidText line, SaidSpan span, String worked) {
            String words = line.words(span);
            boolean cell = options.layout() == RoundsLayout.TABLE
                    && line.spans().get(0).equals(span);
            if (cell || span.said() instanceof Said.WholeRound || words.contains(reader.mark)) {
                // A cell leaves the asterisk out, and a start stands in no round that begins at a corner.
                return false;
            }
            List<Integer> numbers = said.side(round, Side.TOP, repeats(round)).stream()
                    .filter(stitch -> says(span, stitch))
                    .map(SaidStitch::number)
                    .toList();
            String letters = reader.letters(words);
            int first = numbers.get(0) - 1;
            assertThat(worked.substring(first, first + letters.length()))
                    .as(words)
                    .isEqualTo(letters);
            assertThat(numbers.subList(0, letters.length()))
                    .as(words)
                    .isEqualTo(IntStream.rangeClosed(first + 1, first + letters.length())
                            .boxed()
                            .toList());
            return letters.chars().distinct().count() > 1;
        }
    }

    /** Reads a piece of the words of a side as the whole side of a pattern of one round. */
    private static final class Reader {
        private final Language language;
        private final Messages phrases;
        private final String mark;
        private final String before;
        private final Map<String, String> known = new HashMap<>();

        Reader(Case one) {
            language = one.language.spelledAs(one.options.terms().name());
            phrases = language.messages("words/phrases");
            mark = phrases.text("start-mark-word");
            Instructions none = PatternWriter.tree(one.chart, one.options)
                    .withRounds(List.of())
                    .withMarkers(Optional.empty())
                    .withBack(Optional.empty());
            String heading = phrases.text("heading-ROUNDS");
            String title = phrases.text(
                    "round-title",
                    number("round", 1),
                    arg(
                            "yarn",
                            phrases.text(
                                    "yarn-id", arg("id", none.yarns().get(0).id()))));
            before = PlainText.of(PatternWriter.write(none, language)) + "\n" + heading + "\n"
                    + "-".repeat(heading.length()) + "\n" + phrases.text("round-label", arg("title", title)) + " ";
        }

        String letters(String words) {
            return known.computeIfAbsent(words, this::read);
        }

        private String read(String words) {
            String work = phrases.text("alike", arg("work", words), arg("corner", phrases.text("corner-as-told")));
            String text = (before + work + "\n").replace(Language.NO_BREAK, ' ');
            ReadingResult read = PatternReader.read(text, language);
            assertThat(read).as(text).isInstanceOf(ReadingResult.Understood.class);
            SideInstructions side =
                    ((ReadingResult.Understood) read).pattern().rounds().get(0).stretch();
            List<SideStep> steps = new ArrayList<>(side.before());
            side.group().ifPresent(group -> steps.addAll(group.steps()));
            StringBuilder letters = new StringBuilder();
            SideStep.workedOut(steps)
                    .forEach(run ->
                            letters.append(String.valueOf(run.stitch().letter()).repeat(run.count())));
            return letters.toString();
        }
    }
}
