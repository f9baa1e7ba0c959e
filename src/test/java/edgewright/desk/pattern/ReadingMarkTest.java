package edgewright.desk.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.texts.English;
import edgewright.words.said.SaidPattern;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A pattern is read stitch by stitch, step by step and round by round, and said in its own words. */
class ReadingMarkTest {
    private static final List<Yarn> YARNS =
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));

    /** Round 3 by the words: 4 dc blo; *(1 drop tr, 1 dc blo) twice, 1 drop tr, 3 dc blo; and the end of a repeat to the corner. */
    private static Chart chart() {
        return Chart.blank("Reed Bank", new SideShape(1, 8, 2), 4, YARNS)
                .withRound(3, Round.of("A", "bbbb", "lblblbbb", "lblbb"));
    }

    private static SaidPattern said(Chart chart) {
        return PatternWriter.said(chart, WordingOptions.of(chart, English.LANGUAGE));
    }

    private static String words(SaidPattern said, ReadingMark mark) {
        return new PatternSentences(English.LANGUAGE).sentence(said, mark.stitch(), mark.words());
    }

    @Test
    void stepsFollowEachOtherAsAMakerWorksThem() {
        SaidPattern said = said(chart());
        ReadingMark mark = new ReadingMark(said);
        mark.goTo(new Place(3, Section.FROM_CORNER, 1));
        List<String> steps = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            steps.add(words(said, mark));
            mark.goToNextStep();
        }

        assertThat(steps)
                .containsExactly(
                        "Round 3, from the corner: 4 dc blo, 1 of 4",
                        "Round 3, in the repeat: 1 drop tr",
                        "Round 3, in the repeat: 1 drop tr",
                        "Round 3, in the repeat: 3 dc blo, 1 of 3",
                        "Round 3, to the corner: 1 drop tr",
                        "Round 3, to the corner: 1 dc blo",
                        "Round 3, to the corner: 1 drop tr");
        mark.goOn(1);
        mark.goOn(1);
        assertThat(words(said, mark)).isEqualTo("Round 3, to the corner: 2 dc blo, 2 of 2");
        mark.goToStepBefore();
        assertThat(words(said, mark)).isEqualTo("Round 3, to the corner: 2 dc blo, 1 of 2");
        mark.goOn(1);
        mark.goOn(1);
        assertThat(mark.stitch().place()).isEqualTo(new Place(3, Section.TO_CORNER, 5));
    }

    @Test
    void roundsAreReadFromTheirBeginningAndThePlaceIsKeptWhenTheWordsChange() {
        Chart chart = chart();
        SaidPattern said = said(chart);
        ReadingMark mark = new ReadingMark(said);
        mark.goOnRounds(-1);
        assertThat(words(said, mark)).isEqualTo("Round 1, all along the side: dc blo in every st");
        mark.goOnRounds(2);
        assertThat(mark.stitch().place()).isEqualTo(new Place(3, Section.FROM_CORNER, 1));
        mark.goTo(said.titleOf(3), Optional.of(mark.words().piece().span()));
        mark.goTo(new Place(3, Section.REPEAT, 4));

        SaidPattern plain = said(chart.withRound(3, Round.of("A", "bbbb", "pbbbbbbb", "pbbbb")));
        mark.readIn(plain);
        assertThat(mark.stitch().place()).isEqualTo(new Place(3, Section.REPEAT, 4));
        assertThat(words(plain, mark)).isEqualTo("Round 3, in the repeat: 7 dc blo, 3 of 7");
    }
}
