package edgewright.desk.piece;

import static edgewright.desk.WindowParts.named;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.SideShape;
import edgewright.desk.Desk;
import edgewright.desk.DeskFrame;
import edgewright.desk.DeskOnDisplay;
import edgewright.desk.WindowParts;
import edgewright.desk.fitting.Piece;
import edgewright.desk.work.ChartView;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The piece window beside a chart that changes, and on a screen that is small. */
class PieceRoundsWindowTest {
    /** The narrowest screen that the desk is made for. */
    private static final int NARROW_SCREEN_PX = 1_024;

    private static final int LOW_SCREEN_PX = 700;

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private DeskFrame desk;
    private PieceWindow piece;
    private ChartView view;

    @BeforeEach
    void open() {
        desk = WindowParts.desk(rounds(6), folder);
        view = execute(() -> new ChartView(English.LANGUAGE));
        piece = WindowParts.pieceWindow(desk, view, folder);
    }

    @AfterEach
    void close() {
        execute(() -> piece.dispose());
        execute(() -> desk.dispose());
    }

    @Test
    void theRoundsToCountInAreThoseOfTheChartAlsoWhenThereAreAsManyOfThem() {
        Chart four = rounds(4);
        Chart layered = four.withMaking(four.making().withBack(Optional.of(Back.DEFAULT)));
        show();
        execute(() -> desk.bench().edit("four rounds and a back layer", chart -> layered));

        assertThat(items("piece.countedIn"))
                .containsExactlyElementsOf(Stream.concat(
                                IntStream.rangeClosed(0, 4).mapToObj(round -> new Piece.CountedIn(false, round)),
                                IntStream.rangeClosed(1, 2).mapToObj(round -> new Piece.CountedIn(true, round)))
                        .toList());
        assertThat(items("piece.frontRound")).isEqualTo(List.of(0, 1, 2, 3, 4));
    }

    @Test
    void theWindowFitsOnANarrowScreenWithNothingCutOff() {
        execute(() -> {
            piece.setVisible(true);
            piece.setSize(piece.getMinimumSize());
            piece.validate();
        });
        assertThat(execute(() -> piece.getMinimumSize().width)).isLessThanOrEqualTo(NARROW_SCREEN_PX);
        assertThat(execute(() -> piece.getMinimumSize().height)).isLessThanOrEqualTo(LOW_SCREEN_PX);
        assertThat(execute(() -> {
                    Rectangle window = new Rectangle(piece.getContentPane().getSize());
                    return WindowParts.parts(piece.getContentPane()).stream()
                            .filter(Component::isShowing)
                            .filter(part -> part.getHeight() > 0)
                            .filter(part -> !window.contains(SwingUtilities.convertRectangle(
                                    part.getParent(), part.getBounds(), piece.getContentPane())))
                            .map(part ->
                                    part.getClass().getSimpleName() + " " + part.getName() + " " + part.getBounds())
                            .toList();
                }))
                .isEmpty();
    }

    @Test
    void theTabulatorGoesRoundThePieceAsTheHandDoesAndThenToWhatIsWanted() {
        Robot robot = display.robot();
        show();
        WindowParts.until("the first field has the focus", () -> focused().equals("piece.TOP"));
        assertThat(tabbed(robot, 8))
                .containsExactly(
                        "piece.LEFT",
                        "piece.BOTTOM",
                        "piece.RIGHT",
                        "piece.tie.level",
                        "piece.tie.upright",
                        "piece.left",
                        "piece.swatch.stitches",
                        "piece.swatch.rounds");
        execute(() -> view.see(view.seeing().withHand(HookHand.LEFT)));
        type("piece.TOP", "41");
        type("piece.LEFT", "29");
        execute(() -> named(piece, "piece.TOP").requestFocusInWindow());
        WindowParts.until("it is back at the top", () -> focused().equals("piece.TOP"));
        assertThat(tabbed(robot, 11))
                .containsExactly(
                        "piece.smaller.TOP",
                        "piece.larger.TOP",
                        "piece.RIGHT",
                        "piece.smaller.RIGHT",
                        "piece.larger.RIGHT",
                        "piece.BOTTOM",
                        "piece.smaller.BOTTOM",
                        "piece.larger.BOTTOM",
                        "piece.LEFT",
                        "piece.smaller.LEFT",
                        "piece.larger.LEFT");
    }

    private List<String> tabbed(Robot robot, int times) {
        List<String> stops = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            String before = focused();
            robot.pressAndReleaseKey(KeyEvent.VK_TAB);
            WindowParts.until(
                    "the focus has gone on from " + before, () -> !focused().equals(before));
            stops.add(focused());
        }
        return stops;
    }

    private static String focused() {
        return execute(() -> {
            Component owner =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            return owner == null ? "" : String.valueOf(owner.getName());
        });
    }

    @Test
    void nothingMovesUnderWhoeverTypesOrChooses() {
        show();
        Map<String, Rectangle> before = places();
        assertThat(before).containsKeys("piece.TOP", "piece.LEFT", "piece.nearest", "piece.words", "piece.left");

        for (String typed : new String[] {"1", "13", "131", "131x", "4", "9999"}) {
            type("piece.LEFT", typed);
            assertThat(places()).as(typed).isEqualTo(before);
        }
        type("piece.LEFT", "29");
        type("piece.TOP", "41");
        Map<String, Rectangle> answered = places();
        assertThat(answered).as("answered").containsAllEntriesOf(before).containsKey("piece.larger.TOP");
        for (String button :
                new String[] {"piece.larger.TOP", "piece.nearest", "piece.left", "piece.keep", "piece.tie.level"}) {
            execute(() -> ((AbstractButton) named(piece, button)).doClick());
            assertThat(places()).as(button).isEqualTo(answered);
        }
        execute(() -> ((AbstractButton) named(piece, "piece.way.ROWS")).doClick());
        assertThat(places()).as("in rows").containsEntry("piece.RIGHT", before.get("piece.RIGHT"));
    }

    /** Where it is to stay: a window that has no frame yet is measured as if it had none. */
    private void show() {
        execute(() -> piece.setVisible(true));
        display.waitForPlace(piece);
    }

    private void type(String field, String text) {
        execute(() -> ((JTextField) named(piece, field)).setText(text));
    }

    /** Where everything is that can be pressed or typed into. */
    private Map<String, Rectangle> places() {
        return execute(() -> {
            piece.validate();
            Map<String, Rectangle> places = new TreeMap<>();
            WindowParts.parts(piece.getContentPane()).stream()
                    .filter(part -> part.isShowing() && part.getName() != null)
                    .filter(part -> part instanceof JTextField
                            || part instanceof AbstractButton
                            || part instanceof JComboBox<?>)
                    .forEach(part -> places.put(
                            part.getName(),
                            SwingUtilities.convertRectangle(part.getParent(), part.getBounds(), piece)));
            return places;
        });
    }

    @Test
    void whatIsToBeDoneKeepsTheWidthThatItWasGivenAndIsFoldedToOneLine() {
        show();
        int width = answersWidth();
        execute(() -> {
            piece.setSize(piece.getWidth() + 160, piece.getHeight());
            piece.validate();
        });
        WindowParts.until("the drawing takes what is left", () -> answersWidth() == width);
        execute(() -> ((AbstractButton) named(piece, "pieceSplit.fold")).doClick());
        assertThat(execute(() -> named(piece, "pieceSplit.line").isShowing())).isTrue();
        execute(() -> ((AbstractButton) named(piece, "pieceSplit.line")).doClick());
        WindowParts.until("it is as wide as before", () -> answersWidth() == width);
    }

    private int answersWidth() {
        return execute(() -> {
            piece.validate();
            return named(piece, "pieceAnswers").getWidth();
        });
    }

    private List<Object> items(String box) {
        return execute(() -> {
            JComboBox<?> combo = (JComboBox<?>) named(piece, box);
            List<Object> items = new ArrayList<>();
            for (int i = 0; i < combo.getItemCount(); i++) {
                items.add(combo.getItemAt(i));
            }
            return items;
        });
    }

    private static Chart rounds(int rounds) {
        return Chart.blank(
                "Reed Bank",
                new SideShape(2, 6, 3),
                rounds,
                Desk.blank(English.LANGUAGE).yarns());
    }
}
