package edgewright.desk.guide;

import static edgewright.desk.WindowParts.named;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.HookSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.Start;
import edgewright.chart.Swatch;
import edgewright.desk.Desk;
import edgewright.desk.parts.Look;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.GuideTicks;
import edgewright.desk.work.Theme;
import edgewright.desk.work.Workbench;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JSpinner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The round guide beside the chart, and what the designer says of how the border is made. */
class GuideWindowTest {
    private Workbench bench;
    private ChartView view;
    private GuideWindow window;

    @BeforeEach
    void open() {
        execute(() -> {
            Look.setUp(Theme.LIGHT);
            bench = new Workbench(Desk.blank(English.LANGUAGE), Optional.empty(), English.LANGUAGE);
            view = new ChartView(English.LANGUAGE);
            window = new GuideWindow(null, bench, view);
            window.setVisible(true);
        });
    }

    @AfterEach
    void close() {
        execute(() -> window.dispose());
    }

    private String text(String name) {
        return execute(() -> ((JLabel) named(window, name)).getText());
    }

    private AbstractButton button(String name) {
        return (AbstractButton) named(window, name);
    }

    @Test
    void theGuideGoesAlongWithTheCursorAndTheCursorWithTheGuide() {
        execute(() -> bench.moveCursor(new Place(4, Section.REPEAT, 1)));
        assertThat(text("guideHeading")).startsWith("Round 4 of ");

        execute(() -> button("guideNext").doClick());
        assertThat(execute(() -> bench.cursor().round())).isEqualTo(5);
        assertThat(text("guideHeading")).startsWith("Round 5 of ");

        execute(() -> bench.moveCursor(new Place(1, Section.REPEAT, 1)));
        assertThat(execute(() -> button("guidePrevious").isEnabled())).isFalse();
    }

    @Test
    void theBitOfTheChartThatIsWorkedGoesAlongWithTheRound() {
        Component strip = named(window, "guideStrip");
        execute(() -> bench.moveCursor(new Place(4, Section.REPEAT, 1)));
        assertThat(execute(() -> strip.getAccessibleContext().getAccessibleName()))
                .startsWith("Round 4 on one side of the chart");
        int fourth = framed(strip);
        // The first round stands on the base round alone, so its frame lies further down among fewer rounds.
        execute(() -> bench.moveCursor(new Place(1, Section.REPEAT, 1)));
        assertThat(framed(strip)).isNotEqualTo(fourth);
        execute(() -> view.see(view.seeing().withHand(HookHand.LEFT)));
        assertThat(framed(strip)).isPositive();
    }

    /** How far to the right the frame of the round is seen, in pixels; 0 if there is none. */
    private static int framed(Component strip) {
        return execute(() -> {
            BufferedImage image = new BufferedImage(strip.getWidth(), strip.getHeight(), BufferedImage.TYPE_INT_RGB);
            strip.paint(image.getGraphics());
            int accent = Look.colour("accent").getRGB();
            return IntStream.range(0, image.getWidth())
                    .filter(x -> IntStream.range(0, image.getHeight()).anyMatch(y -> image.getRGB(x, y) == accent))
                    .max()
                    .orElse(0);
        });
    }

    @Test
    void ticksAreRememberedForEachRoundUntilAnotherChartIsOpened() {
        execute(() -> {
            for (GuideTicks.Tick tick : GuideTicks.Tick.values()) {
                button("guideTick." + tick.name()).doClick();
            }
        });
        assertThat(text("guideProgress")).startsWith("1 round of ");

        execute(() -> button("guideNext").doClick());
        assertThat(execute(() -> button("guideTick.TOP").isSelected())).isFalse();
        execute(() -> button("guidePrevious").doClick());
        assertThat(execute(() -> button("guideTick.TOP").isSelected())).isTrue();

        execute(() -> bench.open(Desk.blank(English.LANGUAGE), Optional.empty()));
        assertThat(execute(() -> button("guideTick.TOP").isSelected())).isFalse();
        assertThat(text("guideProgress")).isEqualTo("No round is done yet");
    }

    @Test
    void countsFollowTheSizeAndTheSwitchForCounting() {
        Chart chart = bench.chart();
        execute(() -> ((JSpinner) named(window, "guideLevel")).setValue(9));
        assertThat(text("guideCount.TOP")).isEqualTo("" + chart.shape().stitches(1, 9));
        assertThat(text("guideCount.LEFT")).isEqualTo("" + chart.shape().stitches(1, 6));

        execute(() -> view.count(Counting.WITH_CHAINS));
        assertThat(text("guideCount.BOTTOM")).isEqualTo("" + (chart.shape().stitches(1, 9) + 2));
        assertThat(text("guideWay")).contains("one corner chain at each end");
    }

    @Test
    void whatTheFormSaysOfTheMakingIsWhatItWasGiven() {
        PatternDetails making = new PatternDetails(
                Optional.of(new Start(OptionalInt.of(2), Side.LEFT, Side.TOP)),
                Optional.of(new Back(Optional.of(new HookSize(335)))),
                Optional.of(HookSize.ofMm(4.5)),
                Optional.of(new Swatch(16.5, 18)),
                Optional.empty(),
                OptionalInt.of(4),
                "a border or two");
        for (PatternDetails given :
                List.of(making, PatternDetails.NONE, PatternDetails.NONE.withStart(Optional.of(Start.DEFAULT)))) {
            PatternDetails read = execute(() -> {
                PatternDetailsDialog dialog = new PatternDetailsDialog(
                        null, Desk.blank(English.LANGUAGE).withMaking(given), English.LANGUAGE);
                PatternDetails said = dialog.appliedTo(given);
                dialog.dispose();
                return said;
            });
            assertThat(read).isEqualTo(given);
        }
    }

    @Test
    void theColumnOfTheCursorBecomesTheStartColumnAndUndoTakesItBack() {
        Chart before = bench.chart();
        int a = before.shape().a();
        execute(() -> {
            bench.moveCursor(new Place(3, Section.REPEAT, 2));
            new GuideCommands(null, bench, view).startHere();
        });
        assertThat(execute(() -> bench.chart().making().start().orElseThrow()))
                .isEqualTo(Start.DEFAULT.withColumn(OptionalInt.of(a + 2)));

        execute(() -> bench.undo());
        assertThat(execute(() -> bench.chart())).isEqualTo(before);

        execute(() -> {
            bench.moveCursor(new Place(3, Section.TO_CORNER, 1));
            new GuideCommands(null, bench, view).startHere();
        });
        assertThat(execute(() -> bench.chart())).isEqualTo(before);
    }
}
