package edgewright.desk.dialogs;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.chart.YarnUse;
import edgewright.check.Checker;
import edgewright.desk.Desk;
import edgewright.desk.DeskOnDisplay;
import edgewright.desk.guide.PatternDetailsDialog;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.TypedNumber;
import edgewright.desk.work.Theme;
import edgewright.desk.yarn.MeasureDialog;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import javax.swing.AbstractButton;
import javax.swing.JFormattedTextField;
import javax.swing.JLabel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The dialogs with a form, as somebody fills them in with the keys. */
class FormWindowTest {
    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;

    @BeforeEach
    void setUp() {
        execute(() -> Look.setUp(Theme.LIGHT));
        robot = display.robot();
    }

    @Test
    void escapeLeavesTheDialogFromANumberThatWasTypedIn() {
        SideDialog dialog =
                execute(() -> new SideDialog(null, new SideShape(2, 6, 3), Counting.STITCHES, English.LANGUAGE));
        CompletableFuture<Boolean> answer = ask(dialog);
        JFormattedTextField repeat = field(dialog, "side.repeat");
        robot.focusAndWaitForFocusGain(repeat);
        robot.enterText("1");
        robot.pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        until("the dialog has answered", answer::isDone);

        assertThat(answer).isCompletedWithValue(false);
    }

    @Test
    void enterAcceptsTheNumberThatWasJustTyped() {
        SideDialog dialog =
                execute(() -> new SideDialog(null, new SideShape(2, 6, 3), Counting.STITCHES, English.LANGUAGE));
        CompletableFuture<Boolean> answer = ask(dialog);
        JFormattedTextField repeat = field(dialog, "side.repeat");
        robot.focusAndWaitForFocusGain(repeat);
        execute(repeat::selectAll);
        robot.enterText("12");
        robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
        until("the dialog has answered", answer::isDone);

        assertThat(answer).isCompletedWithValue(true);
        assertThat(execute(dialog::shape)).isEqualTo(new SideShape(2, 12, 3));
    }

    @Test
    void aNumberThatCannotBeReadStaysAsItIsTypedAndIsObjectedTo() {
        NewChartDialog dialog = execute(() -> new NewChartDialog(null, Counting.STITCHES, English.LANGUAGE));
        JFormattedTextField rounds = field(dialog, "newChart.rounds");
        for (String wrong : new String[] {"abc", "99999", "0", "12a", "3.5", ""}) {
            execute(() -> rounds.setText(wrong));
            assertThat(execute(() -> ((JLabel) named(dialog, "objection")).getText()))
                    .as(wrong)
                    .isEqualTo("Rounds: type a whole number from 1 to 400.");
            assertThat(execute(() -> named(dialog, "accept").isEnabled()))
                    .as(wrong)
                    .isFalse();
            assertThat(execute(() -> rounds.getText())).isEqualTo(wrong);
        }

        execute(() -> rounds.setText("40"));
        assertThat(execute(() -> named(dialog, "accept").isEnabled())).isTrue();
        assertThat(execute(dialog::chart).rounds()).hasSize(40);
        execute(dialog::dispose);
    }

    @Test
    void aNumberThatIsNotAskedForIsNotObjectedTo() {
        PatternDetailsDialog dialog =
                execute(() -> new PatternDetailsDialog(null, Desk.blank(English.LANGUAGE), English.LANGUAGE));
        JFormattedTextField stitches = field(dialog, "making.stitches");
        AbstractButton swatch = (AbstractButton) named(dialog, "making.swatch");
        execute(() -> stitches.setText("x"));
        assertThat(execute(() -> named(dialog, "accept").isEnabled())).isTrue();

        execute(() -> swatch.doClick());
        assertThat(execute(() -> ((JLabel) named(dialog, "objection")).getText()))
                .isEqualTo("Stitches in 10 cm: type a number from 0.1 to 100.");
        execute(() -> stitches.setText("16.5"));
        assertThat(execute(() -> named(dialog, "accept").isEnabled())).isTrue();
        execute(dialog::dispose);
    }

    @Test
    void everyYarnOfANewChartIsToldFromTheOthersAndBearsItsLetter() {
        NewChartDialog dialog = execute(() -> new NewChartDialog(null, Counting.STITCHES, English.LANGUAGE));
        AbstractButton more = (AbstractButton) named(dialog, "moreYarn");
        execute(() -> more.doClick());
        Chart chart = execute(dialog::chart);

        assertThat(chart.yarns()).extracting(Yarn::name).containsExactly("Peat", "Chalk", "Yarn C");
        assertThat(Checker.check(chart).findings()).isEmpty();
        execute(dialog::dispose);
    }

    @Test
    void aYarnOfANewChartNeedsAName() {
        NewChartDialog dialog = execute(() -> new NewChartDialog(null, Counting.STITCHES, English.LANGUAGE));
        JTextField second = (JTextField) named(dialog, "newChart.yarn2");
        execute(() -> second.setText("  "));
        assertThat(execute(() -> ((JLabel) named(dialog, "objection")).getText()))
                .isEqualTo("A yarn needs a name.");
        assertThat(execute(() -> named(dialog, "accept").isEnabled())).isFalse();

        execute(() -> second.setText("Driftwood"));
        assertThat(execute(() -> named(dialog, "accept").isEnabled())).isTrue();
        execute(dialog::dispose);
    }

    @Test
    void thePictureOfASideSaysWhatTheNumbersSay() {
        SideDialog dialog =
                execute(() -> new SideDialog(null, new SideShape(2, 6, 3), Counting.STITCHES, English.LANGUAGE));
        execute(() -> field(dialog, "side.toCorner").setText("11"));

        assertThat(execute(() ->
                        named(dialog, "sidePicture").getAccessibleContext().getAccessibleName()))
                .isEqualTo("A side of the base round: 2 stitches from the corner, 6 in the repeat, 11 to the corner;"
                        + " and 2 rounds on it.");
        execute(dialog::dispose);
    }

    /** The smallest side has no repeat; each further one is a repeat longer. */
    @Test
    void aNewChartShowsItsSkeletonAndForWhichCountsItClosesWhileItIsTyped() {
        NewChartDialog dialog = execute(() -> new NewChartDialog(null, Counting.STITCHES, English.LANGUAGE));
        int[] before = skeleton(dialog);
        execute(() -> field(dialog, "newChart.repeat").setText("8"));
        until("another border is drawn", () -> !Arrays.equals(before, skeleton(dialog)));
        assertThat(execute(() -> named(dialog, "newChart.skeleton")
                        .getAccessibleContext()
                        .getAccessibleName()))
                .isEqualTo("One corner of the border: 12 rounds in 2 yarns in turn;"
                        + " 2 from the corner, 8 in the repeat, 3 to the corner.");
        assertThat(execute(() -> ((JLabel) named(dialog, "newChart.counts")).getText()))
                .contains("multiple of 8 plus 5")
                .endsWith("For instance 5, 13, 21.");
        execute(() -> field(dialog, "newChart.rounds").setText("400"));
        execute(() -> ((AbstractButton) named(dialog, "moreYarn")).doClick());
        until(
                "rounds and yarns are said",
                () -> execute(() -> named(dialog, "newChart.skeleton")
                                .getAccessibleContext()
                                .getAccessibleName())
                        .startsWith("One corner of the border: 400 rounds in 3 yarns in turn;"));
        execute(dialog::dispose);
    }

    private static int[] skeleton(NewChartDialog dialog) {
        return execute(() -> {
            Component picture = named(dialog, "newChart.skeleton");
            picture.setSize(picture.getPreferredSize());
            BufferedImage image =
                    new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
            picture.paint(image.createGraphics());
            return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        });
    }

    @Test
    void everyLengthThatIsAskedForSaysOfHowManyStitches() {
        MeasureDialog dialog = execute(() -> new MeasureDialog(null, YarnUse.NONE, English.LANGUAGE));
        for (String field : List.of("backLoop", "plain", "long", "chain", "tall", "slip")) {
            assertThat(execute(() -> named(dialog, "measure." + field)
                            .getAccessibleContext()
                            .getAccessibleName()))
                    .startsWith(YarnUse.STITCHES + " ");
        }
        execute(dialog::dispose);
    }

    private static JFormattedTextField field(FormDialog dialog, String name) {
        return TypedNumber.field((JSpinner) named(dialog, name));
    }

    /** Shows the dialog, as the desk does, and says later whether it was accepted. */
    private static CompletableFuture<Boolean> ask(FormDialog dialog) {
        CompletableFuture<Boolean> answer = new CompletableFuture<>();
        SwingUtilities.invokeLater(() -> answer.complete(dialog.ask()));
        until("the dialog is open", () -> execute(dialog::isShowing));
        return answer;
    }
}
