package edgewright.draw.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.chart.Corner;
import edgewright.chart.HookHand;
import edgewright.chart.Stitch;
import edgewright.chart.Technique;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.marks.TextDump;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import edgewright.draw.svg.SvgPicture;
import edgewright.words.technique.ShownTechnique;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TechniqueFigureTest {
    /** Every technique in every way in which a pattern can use it. */
    static List<ShownTechnique> all() {
        List<ShownTechnique> all = new ArrayList<>();
        for (ShownTechnique.Kind kind : ShownTechnique.Kind.values()) {
            for (Technique.Join join : Technique.Join.values()) {
                for (ShownTechnique.Ends ends : ShownTechnique.Ends.values()) {
                    for (Stitch stitch : List.of(Stitch.BACK_LOOP, Stitch.PLAIN)) {
                        for (int chains = 1; chains <= Corner.MOST_CHAINS; chains++) {
                            all.add(ShownTechnique.of(kind)
                                    .with(join)
                                    .with(ends)
                                    .with(stitch)
                                    .withChains(chains));
                        }
                    }
                }
            }
        }
        return all;
    }

    static List<ShownTechnique.Kind> kinds() {
        return List.of(ShownTechnique.Kind.values());
    }

    private static Drawing figure(ShownTechnique shown, HookHand hand, ColourMode mode) {
        return TechniqueFigure.of(shown, hand, mode, "a figure", "what it shows");
    }

    @Test
    void allThatIsDrawnLiesOnTheSheet() {
        List<String> outside = new ArrayList<>();
        for (ShownTechnique shown : all()) {
            for (HookHand hand : HookHand.values()) {
                Drawing figure = figure(shown, hand, ColourMode.COLOUR);
                Area sheet = new Area(0, 0, figure.widthMm(), figure.heightMm()).grown(1e-6);
                figure.marks().stream()
                        .map(Mark::bounds)
                        .filter(bounds -> !sheet.holds(bounds))
                        .forEach(bounds -> outside.add(shown + " " + hand + " " + bounds));
            }
        }
        assertThat(outside).isEmpty();
    }

    @Test
    void allFiguresAreEquallyWide() {
        assertThat(all())
                .allSatisfy(shown -> assertThat(
                                figure(shown, HookHand.RIGHT, ColourMode.COLOUR).widthMm())
                        .isEqualTo(TechniqueFigure.WIDTH_MM));
    }

    @Test
    void theOtherHandSeesTheMirrorImageWithItsNumbersUpright() {
        Frame mirror = new Frame(TechniqueFigure.WIDTH_MM, 0, -1, 0, 0, 1);
        for (ShownTechnique shown : all()) {
            List<Look> right = looks(figure(shown, HookHand.RIGHT, ColourMode.COLOUR), mirror);
            List<Look> left = looks(figure(shown, HookHand.LEFT, ColourMode.COLOUR), new Frame(0, 0, 1, 0, 0, 1));
            assertThat(left.stream().map(Look::what))
                    .as("%s", shown)
                    .isEqualTo(right.stream().map(Look::what).toList());
            for (int i = 0; i < left.size(); i++) {
                assertThat(left.get(i).where()).containsExactly(right.get(i).where(), within(1e-6));
            }
        }
    }

    /**
     * A shape by its look, and the middle and size of what it covers. Paths are not compared point by point: those of both hands
     * are made by the same steps.
     */
    private record Look(String what, double x, double y, double width, double height) {
        static Look of(String what, Area area, Frame frame) {
            double x = frame.xMm(area.middleXMm(), area.middleYMm());
            double y = frame.yMm(area.middleXMm(), area.middleYMm());
            return new Look(what, x, y, area.widthMm(), area.heightMm());
        }

        double[] where() {
            return new double[] {x, y, width, height};
        }
    }

    private static List<Look> looks(Drawing figure, Frame frame) {
        List<Look> looks = new ArrayList<>();
        figure.drawOn(new Surface() {
            @Override
            public void fill(Shape.Fill fill) {
                looks.add(Look.of("fill " + fill.colour(), fill.bounds(), frame));
            }

            @Override
            public void line(Shape.Line line) {
                String what = "line " + line.colour() + " " + line.widthMm() + line.dashMm();
                looks.add(Look.of(what, line.bounds(), frame));
            }

            @Override
            public void text(Shape.Text text) {
                looks.add(Look.of("text " + text.text(), new Area(text.xMm(), text.yMm(), 0, 0), frame));
            }
        });
        return looks;
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void theNumbersOfAFigureAreThoseOfItsSteps(ShownTechnique.Kind kind) {
        Set<String> numbers = numbers(figure(ShownTechnique.of(kind), HookHand.RIGHT, ColourMode.COLOUR));
        if (kind == ShownTechnique.Kind.ROW_ENDS) {
            // How many stitches a row takes is no order of steps.
            assertThat(numbers).isEqualTo(Set.of("1\u00d7", "2\u00d7", "3\u00d7"));
            return;
        }
        assertThat(numbers)
                .isEqualTo(IntStream.rangeClosed(1, numbers.size())
                        .mapToObj(Integer::toString)
                        .collect(Collectors.toSet()));
        assertThat(numbers.size()).isBetween(2, 4);
    }

    @Test
    void aStartAboveTheMarkerShowsTheLastStitchInDashesHoweverTheYarnIsJoined() {
        for (Technique.Join join : Technique.Join.values()) {
            String dump = TextDump.of(figure(
                    ShownTechnique.of(ShownTechnique.Kind.START_ABOVE_MARKER).with(join),
                    HookHand.RIGHT,
                    ColourMode.COLOUR));
            assertThat(dump.lines().filter(line -> line.startsWith("  line " + Palette.LIGHT.accent() + " 0.55")))
                    .as("%s", join)
                    .hasSize(3);
        }
    }

    static Set<String> numbers(Drawing figure) {
        return figure.marks().stream()
                .filter(mark -> mark.kind() == MarkKind.STEP)
                .flatMap(mark -> mark.shapes().stream())
                .filter(Shape.Text.class::isInstance)
                .map(shape -> ((Shape.Text) shape).text())
                .collect(Collectors.toSet());
    }

    @Test
    void whereThereIsBlackAloneNothingIsGrey() {
        String dump = all().stream()
                .map(shown -> TextDump.of(figure(shown, HookHand.RIGHT, ColourMode.BLACK)))
                .collect(Collectors.joining());
        assertThat(Pattern.compile("#[0-9a-f]{6}").matcher(dump).results().map(MatchResult::group))
                .containsOnly(
                        Palette.BLACK.ink().toString(), Palette.BLACK.paper().toString());
    }

    @Test
    void aFigureComesOutTheSameTwice() {
        for (ShownTechnique shown : all()) {
            assertThat(SvgPicture.of(figure(shown, HookHand.RIGHT, ColourMode.COLOUR)))
                    .isEqualTo(SvgPicture.of(figure(shown, HookHand.RIGHT, ColourMode.COLOUR)));
        }
    }

    @Test
    void aCornerOfOneChainTakesBothStitchesInItAndOneOfMoreInItsFirstAndItsLast() {
        assertThat(IntStream.rangeClosed(1, Corner.MOST_CHAINS)
                        .mapToObj(chains -> takenLoops(
                                ShownTechnique.of(ShownTechnique.Kind.CORNER).withChains(chains)))
                        .toList())
                .isEqualTo(List.of(1L, 2L, 2L));
        assertThat(IntStream.rangeClosed(1, Corner.MOST_CHAINS)
                        .mapToObj(chains -> takenLoops(ShownTechnique.of(ShownTechnique.Kind.CORNER)
                                .withChains(chains)
                                .with(Stitch.PLAIN)))
                        .toList())
                .isEqualTo(List.of(2L, 4L, 4L));
    }

    /** The loops that a figure shows as those that are spoken of. */
    private static long takenLoops(ShownTechnique shown) {
        return figure(shown, HookHand.RIGHT, ColourMode.COLOUR).marks().stream()
                .filter(mark -> mark.kind() == MarkKind.TECHNIQUE)
                .filter(mark -> TextDump.of(new Drawing(1, 1, "", "", List.of(mark)))
                        .contains(FigureYarn.TAKEN.fill(ColourMode.COLOUR).toString()))
                .count();
    }
}
