package edgewright.desk.output;

import static edgewright.desk.WindowParts.named;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import edgewright.desk.Desk;
import edgewright.desk.parts.Look;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.fit.Fit;
import edgewright.fit.FitPlan;
import edgewright.fit.FitQuestion;
import edgewright.fit.PatternSize;
import edgewright.texts.English;
import java.awt.Container;
import java.nio.file.Path;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pattern is asked for one piece: its counts and the hand that works it are proposed, and can be changed. */
class PieceOrderWindowTest {
    private static final Chart CHART = Chart.blank(
            "Tide Steps",
            new SideShape(2, 5, 1),
            8,
            Desk.blank(English.LANGUAGE).yarns());
    private static final FitQuestion QUESTION = FitQuestion.of(2, PerSide.of(57, 39, 58, 41), Counting.STITCHES);
    private static final FitPlan PLAN = (FitPlan) Fit.inWords(CHART, QUESTION);
    private static final PieceOrder ORDER = new PieceOrder(new PatternSize.OfPiece(PLAN), HookHand.LEFT);

    @TempDir
    private Path folder;

    private WordsDialog words;
    private PublishDialog pages;

    @BeforeEach
    void ask() {
        execute(() -> {
            Look.setUp(Theme.LIGHT);
            ChartView view = new ChartView(English.LANGUAGE);
            words = new WordsDialog(null, CHART, view, 0);
            pages = new PublishDialog(null, CHART, view, 0, new Settings(folder.resolve("settings")));
            words.forPiece(ORDER);
            pages.forPiece(ORDER);
        });
    }

    @AfterEach
    void close() {
        execute(() -> {
            words.dispose();
            pages.dispose();
        });
    }

    @Test
    void theWordsAndThePagesAreForThePieceAndForTheHandThatWorksIt() {
        assertThat(execute(() -> words.options().size())).isEqualTo(ORDER.piece());
        assertThat(execute(() -> words.options().hand())).isEqualTo(HookHand.LEFT);
        assertThat(execute(() -> pages.options().size())).isEqualTo(ORDER.piece());
        assertThat(execute(() -> pages.options().hand())).isEqualTo(HookHand.LEFT);
        assertThat(execute(() -> ((JLabel) named(words, "size.counts")).getText()))
                .isEqualTo("Base round of the piece, stitches only: 53, 35, 54, 37.");
    }

    @Test
    void countedInTheOtherWayItIsTheSamePieceWithItsCountsSaidSo() {
        PatternSize other = new PatternSize.OfPiece((FitPlan) Fit.inWords(CHART, QUESTION.in(Counting.WITH_CHAINS)));
        choose(words, "saveWords.counting", Counting.WITH_CHAINS);
        choose(pages, "publish.counting", Counting.WITH_CHAINS);
        assertThat(execute(() -> words.options().size())).isEqualTo(other);
        assertThat(execute(() -> pages.options().size())).isEqualTo(other);
    }

    @Test
    void anotherSizeCanBeChosenStill() {
        execute(() -> ((JComboBox<?>) named(words, "size.choice")).setSelectedIndex(1));
        assertThat(execute(() -> words.options().size())).isEqualTo(PatternSize.any());
    }

    private static void choose(Container in, String box, Object item) {
        execute(() -> ((JComboBox<?>) named(in, box)).setSelectedItem(item));
    }
}
