package edgewright.assist.letter;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LetterBandTest {
    private static final String ALL = "ABCDEFGHIJKLMNOPQRSTUVWXYZ abcdefghijklmnopqrstuvwxyz 0123456789";

    @Test
    void aWordIsReadFromOutsideTheBorder() {
        assertThat(shown(band("Tié"))).isEqualTo("""
                ..................
                ##################
                ..................
                ..................
                ...#........#.....
                ..................
                ..#####.#..#......
                ....#.............
                ....#........#....
                ....#.............
                ....#...#..###....
                ....#...#.........
                ....#...#.#...#...
                ....#...#.#...#...
                ....#...#.#####...
                ....#...#.#.......
                ....#...#.#.....#.
                ....#...#.........
                ....#...#..####...
                ..................
                ..................
                ##################
                ..................
                """);
    }

    @Test
    void everyLetterIsThereAndCanBeWorkedWithoutALooseRun() {
        Chart chart = band(ALL);
        assertThat(Checker.check(chart).findings()).isEmpty();
        assertThat(chart.rules().stackLongStitches()).isTrue();
        assertThat(chart.shape().a()).isZero();
        assertThat(chart.shape().b()).isZero();
    }

    @Test
    void lettersThatDifferLookDifferent() {
        List<String> rows = ALL.replace(" ", "")
                .chars()
                .mapToObj(letter -> shown(band(Character.toString(letter) + "H")))
                .distinct()
                .toList();
        assertThat(rows).hasSize(62);
    }

    @Test
    void anyTextCanBeWorked() {
        Random random = new Random(5);
        String letters = ALL + "àÉîõÜåçşğőžŁßæ.,!?&'-";
        for (int i = 0; i < 200; i++) {
            StringBuilder text = new StringBuilder("x");
            for (int length = random.nextInt(14); length > 0; length--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            assertThat(Checker.check(band(text.toString())).findings())
                    .as(text.toString())
                    .isEmpty();
        }
    }

    @Test
    void anAccentMayBeGivenWithItsLetterOrBehindIt() {
        assertThat(band("e\u0301t\u0327").rounds())
                .isEqualTo(band("\u00e9\u0163").rounds());
    }

    @Test
    void theRepeatIsAMultipleOfThatOfTheChartItIsLike() {
        List<Yarn> yarns = List.of(
                new Yarn("P", "Peat", Colour.parse("#2b2a33")), new Yarn("Q", "Chalk", Colour.parse("#f2ead8")));
        Chart like = Chart.blank("Plain", new SideShape(2, 7, 3), 3, yarns).withRules(Rules.DEFAULT.withLooseRun(3));
        Chart chart = ((LetterAnswer.Band) LetterBand.of("Tide", Optional.of(like))).chart();
        assertThat(chart.shape().w()).isEqualTo(28);
        assertThat(chart.yarns()).isEqualTo(yarns);
        assertThat(Checker.check(chart).findings()).isEmpty();
    }

    @Test
    void whatIsMissingIsNamedOnce() {
        assertThat(LetterBand.of("a中bж中", Optional.empty())).isEqualTo(new LetterAnswer.Missing(List.of("中", "ж")));
        assertThat(LetterBand.of(" ", Optional.empty())).isEqualTo(new LetterAnswer.NoText());
        assertThat(LetterBand.of("m".repeat(400), Optional.empty())).isInstanceOf(LetterAnswer.TooLong.class);
    }

    private static Chart band(String text) {
        return ((LetterAnswer.Band) LetterBand.of(text, Optional.empty())).chart();
    }

    /** One repeat as it lies on the top of a piece, the outermost round first. */
    private static String shown(Chart chart) {
        StringBuilder shown = new StringBuilder();
        for (int r = chart.rounds().size(); r >= 1; r--) {
            for (int place = chart.shape().w(); place >= 1; place--) {
                String yarn =
                        chart.round(chart.shownRound(r, Section.REPEAT, place)).yarn();
                shown.append(yarn.equals("A") ? '.' : '#');
            }
            shown.append('\n');
        }
        return shown.toString();
    }
}
