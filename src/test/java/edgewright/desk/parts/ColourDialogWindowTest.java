package edgewright.desk.parts;

import static edgewright.desk.WindowParts.named;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Colour;
import edgewright.desk.work.Theme;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.Container;
import java.awt.image.BufferedImage;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A colour is chosen beside the one that it takes the place of. */
class ColourDialogWindowTest {
    private ColourDialog dialog;

    @BeforeEach
    void make() {
        execute(() -> {
            Look.setUp(Theme.LIGHT);
            dialog = new ColourDialog(null, Colour.parse("#2b2a33"), English.LANGUAGE);
            dialog.pack();
        });
    }

    @AfterEach
    void close() {
        execute(() -> dialog.dispose());
    }

    @Test
    void theOldColourAndTheNewOneAreSeenEdgeToEdge() {
        assertThat(halves()).containsExactly("#2b2a33", "#2b2a33");
        execute(() -> ((JTextField) named(dialog, "colour.written")).setText("#3c4a6b"));
        assertThat(halves()).containsExactly("#2b2a33", "#3c4a6b");
        execute(() -> ((AbstractButton) named(dialog, "shelf#f2ead8")).doClick());
        assertThat(halves()).containsExactly("#2b2a33", "#f2ead8");
        assertThat(execute(() ->
                        named(dialog, "colour.pair").getAccessibleContext().getAccessibleName()))
                .isEqualTo("Before #2b2a33, now #f2ead8");
        execute(() -> ((JTextField) named(dialog, "colour.written")).setText("#f2e"));
        assertThat(halves()).as("not a colour yet").containsExactly("#2b2a33", "#f2ead8");
    }

    /** The colours to the left and to the right of the middle. */
    private List<String> halves() {
        return execute(() -> {
            Container pair = (Container) named(dialog, "colour.pair");
            Component below = pair.getComponent(pair.getComponentCount() - 1);
            BufferedImage image = new BufferedImage(below.getWidth(), below.getHeight(), BufferedImage.TYPE_INT_RGB);
            below.paint(image.getGraphics());
            int middle = image.getWidth() / 2;
            int y = image.getHeight() / 2;
            return List.of(
                    new Colour(image.getRGB(middle - 1, y) & 0xffffff).toString(),
                    new Colour(image.getRGB(middle, y) & 0xffffff).toString());
        });
    }
}
