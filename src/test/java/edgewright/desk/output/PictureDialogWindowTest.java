package edgewright.desk.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.desk.Desk;
import edgewright.desk.WindowParts;
import edgewright.desk.parts.Look;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Theme;
import edgewright.draw.marks.Drawing;
import edgewright.texts.English;
import java.awt.Component;
import javax.swing.JComboBox;
import javax.swing.JSpinner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What can be saved as a picture: one corner or the whole border, as long as it is not too large. */
class PictureDialogWindowTest {
    private final Chart chart = Desk.blank(English.LANGUAGE);
    private PictureDialog dialog;

    @BeforeEach
    void open() {
        dialog = execute(() -> {
            Look.setUp(Theme.LIGHT);
            return new PictureDialog(null, chart, new ChartView(English.LANGUAGE));
        });
    }

    @AfterEach
    void close() {
        execute(() -> dialog.dispose());
    }

    @Test
    void theWholeBorderIsDrawnForTheSizeThatIsChosen() {
        choose("picture.part", PictureDialog.Part.BORDER);
        set("size.level", 2);
        set("size.upright", 5);
        Drawing drawing = execute(() -> dialog.drawing()).get();
        // Three repeats more on the upright sides, in cells of 5 mm.
        assertThat(drawing.heightMm() - drawing.widthMm())
                .isEqualTo(3 * 5.0 * chart.shape().w());
        assertThat(execute(() -> part("picture.repeats").isEnabled())).isFalse();
        assertThat(execute(() -> part("size.level").isEnabled())).isTrue();
    }

    @Test
    void aPictureOfTooManyPixelsIsRefusedInOneSentenceUntilItsCellsAreSmaller() {
        choose("picture.part", PictureDialog.Part.BORDER);
        choose("picture.kind", PictureDialog.Kind.PNG);
        set("size.level", 400);
        set("size.upright", 400);
        set("picture.cell", 24);
        assertThat(execute(() -> dialog.objection()).orElseThrow())
                .matches("[\\d,]+ million pixels; 100 at most: make the squares smaller");
        set("picture.cell", 4);
        assertThat(execute(() -> dialog.objection())).isEmpty();
        choose("picture.kind", PictureDialog.Kind.SVG);
        set("size.level", 9_999);
        set("size.upright", 9_999);
        assertThat(execute(() -> dialog.objection()).orElseThrow())
                .matches("[\\d,]+ stitches; 400,000 at most: take fewer repeats");
    }

    private void choose(String name, Object value) {
        execute(() -> ((JComboBox<?>) part(name)).setSelectedItem(value));
    }

    private void set(String name, int value) {
        execute(() -> ((JSpinner) part(name)).setValue(value));
    }

    private Component part(String name) {
        return WindowParts.named(dialog, name);
    }
}
