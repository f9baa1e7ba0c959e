package edgewright.booklet.technique;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.Published;
import edgewright.booklet.ReadBack;
import edgewright.booklet.ReadBack.Heard;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletPart;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.Edition;
import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.Terms;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Shape;
import edgewright.draw.technique.TechniqueFigure;
import edgewright.texts.English;
import edgewright.words.technique.TechniqueWording;
import edgewright.words.technique.ToldTechnique;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class TechniquePagesTest {
    private static final BookletParts TECHNIQUES = BookletParts.of(
            BookletPart.COVER, BookletPart.FACTS, BookletPart.WORDS, BookletPart.TECHNIQUES, BookletPart.FINISHING);

    private static BookletOptions options(Chart chart) {
        return BookletOptions.of(chart, English.LANGUAGE).withParts(TECHNIQUES);
    }

    private static List<ToldTechnique> told(Chart chart, BookletOptions options) {
        WordingOptions words = options.words(false);
        return TechniqueWording.of(
                PatternWriter.tree(chart, words), chart.making().technique(), words.language());
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\\p{Z}]+", " ").strip();
    }

    /** What is heard from the heading of the techniques to the next heading of a part. */
    private static List<Heard> part(ReadBack read) {
        List<Heard> part = new ArrayList<>();
        boolean in = false;
        for (Heard heard : read.heard()) {
            in = heard.role().equals("H2") ? plain(heard.text()).equals("Techniques") : in;
            if (in && !heard.role().equals("H2") && !heard.text().isBlank()) {
                part.add(heard);
            }
        }
        return part;
    }

    @ParameterizedTest
    @EnumSource(Edition.class)
    void eachTechniqueIsHeardAsTitleFigureAndNumberedSteps(Edition edition) throws IOException {
        Chart chart = Published.sample("sluice-gate");
        BookletOptions options = options(chart).withEdition(edition);
        List<String> expected = new ArrayList<>();
        for (ToldTechnique told : told(chart, options)) {
            expected.add("H3 " + plain(told.title()));
            expected.add("Figure " + plain(told.alternative()));
            for (int i = 0; i < told.steps().size(); i++) {
                expected.add("Lbl " + (i + 1));
                expected.add("LBody " + plain(told.steps().get(i)));
            }
        }
        try (ReadBack read = Published.read(chart, options)) {
            assertThat(part(read).stream().map(heard -> heard.role() + " " + plain(heard.text())))
                    .isEqualTo(expected);
        }
    }

    @Test
    void twoStandSideBySideAndNeverOnTwoPages() throws IOException {
        Chart chart = Published.sample("sluice-gate");
        try (ReadBack read = Published.read(chart, options(chart))) {
            List<Integer> pages = part(read).stream()
                    .filter(heard -> heard.role().equals("Figure"))
                    .map(Heard::page)
                    .toList();
            assertThat(pages).hasSize(8);
            for (int i = 0; i < pages.size(); i += 2) {
                assertThat(pages.get(i + 1)).isEqualTo(pages.get(i));
            }
        }
    }

    @Test
    void aPatternMayDoWithoutThem() throws IOException {
        Chart chart = Published.sample("reed-bank");
        try (ReadBack read = Published.read(
                chart, options(chart).withParts(BookletParts.of(BookletPart.COVER, BookletPart.WORDS)))) {
            assertThat(part(read)).isEmpty();
        }
        try (ReadBack read = Published.read(chart, BookletOptions.of(chart, English.LANGUAGE))) {
            assertThat(part(read)).isNotEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"reed-bank", "mooring-rope", "sluice-gate"})
    void aFigureHasANumberForEachOfItsSteps(String sample) {
        Chart chart = Published.sample(sample);
        for (HookHand hand : HookHand.values()) {
            for (Terms terms : Terms.values()) {
                for (ToldTechnique told :
                        told(chart, options(chart).withTerms(terms).withHand(hand))) {
                    Drawing figure = TechniqueFigure.of(told.shown(), hand, ColourMode.COLOUR, told.title(), "");
                    assertThat(numbers(figure))
                            .as("%s", told)
                            .isEqualTo(IntStream.rangeClosed(1, told.steps().size())
                                    .mapToObj(Integer::toString)
                                    .collect(Collectors.toSet()));
                }
            }
        }
    }

    private static Set<String> numbers(Drawing figure) {
        return figure.marks().stream()
                .filter(mark -> mark.kind() == MarkKind.STEP)
                .flatMap(mark -> mark.shapes().stream())
                .filter(Shape.Text.class::isInstance)
                // At the ends of rows the steps are told by how many stitches each row takes: once, twice, three times.
                .map(shape -> ((Shape.Text) shape).text().replace("\u00d7", ""))
                .collect(Collectors.toSet());
    }
}
