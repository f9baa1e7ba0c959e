package edgewright.desk.piece;

import static edgewright.desk.WindowParts.named;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.SideShape;
import edgewright.desk.Desk;
import edgewright.desk.DeskFrame;
import edgewright.desk.WindowParts;
import edgewright.desk.fitting.Piece;
import edgewright.desk.work.ChartView;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The piece window beside a chart that changes, and on a screen that is small. */
class PieceRoundsWindowTest {
    /** The narrowest screen that the desk is made for. */
    private static final int NARROW_SCREEN_PX = 1_024;

    private static final int LOW_SCREEN_PX = 700;

    @TempDir
    private Path folder;

    private DeskFrame desk;
    private PieceWindow piece;

    @BeforeEach
    void open() {
        desk = WindowParts.desk(rounds(6), folder);
        piece = execute(() -> new PieceWindow(desk, desk.bench(), new ChartView(English.LANGUAGE)));
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
        execute(() -> piece.setVisible(true));
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
                            .filter(part -> !window.contains(SwingUtilities.convertRectangle(
                                    part.getParent(), part.getBounds(), piece.getContentPane())))
                            .map(part ->
                                    part.getClass().getSimpleName() + " " + part.getName() + " " + part.getBounds())
                            .toList();
                }))
                .isEmpty();
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
