package edgewright.desk;

import static edgewright.desk.WindowParts.cell;
import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.onScreen;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.text.BadLocationException;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Words and chart point at each other, and the keys read the words stitch by stitch. */
class WordsToStitchesWindowTest {
    private static final Place LONG = new Place(2, Section.REPEAT, 2);

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;
    private JTextComponent words;

    @BeforeEach
    void openTheDesk() {
        robot = display.robot();
        desk = display.show(folder);
        words = (JTextComponent) named(desk, "words");
        execute(() -> {
            desk.bench().work(List.of(LONG, new Place(2, Section.REPEAT, 3)), Stitch.LONG);
            desk.bench().moveCursor(new Place(5, Section.REPEAT, 1));
            desk.canvas().fit();
        });
        until("the words follow the edit", () -> text().contains("2 drop tr"));
        robot.waitForIdle();
    }

    @Tag("journey")
    @Test
    void wordsLeadToStitchesAndStitchesToWords() {
        int[] dark = picture(LONG);
        int[] other = picture(new Place(2, Section.REPEAT, 5));
        robot.moveMouse(at("2 drop tr"));
        until("the stitches of the words are lit", () -> !Arrays.equals(dark, picture(LONG)));
        assertThat(picture(new Place(2, Section.REPEAT, 5))).isEqualTo(other);

        robot.moveMouse(onScreen(desk, cell(desk, LONG)));
        until("the words of the stitch are lit", () -> lit().contains("2 drop tr"));
        robot.moveMouse(onScreen(desk, cell(desk, new Place(7, Section.REPEAT, 1))));
        until("the words of another are", () -> !lit().contains("2 drop tr"));

        robot.click(at("2 drop tr"), MouseButton.LEFT_BUTTON, 1);
        until("the cursor goes to the first of them", () -> cursor().equals(LONG));
        assertThat(said()).isEqualTo("Round 2, in the repeat: 2 drop tr, 1 of 2");

        press(KeyEvent.VK_RIGHT);
        assertThat(said()).isEqualTo("Round 2, in the repeat: 2 drop tr, 2 of 2");
        assertThat(lit()).containsExactly("2 drop tr");
        robot.pressKey(KeyEvent.VK_CONTROL);
        press(KeyEvent.VK_RIGHT);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        assertThat(said()).startsWith("Round 2, in the repeat: 4 dc blo, 1 of ");
        press(KeyEvent.VK_DOWN);
        assertThat(said()).isEqualTo("Round 3, all along the side: dc blo in every st");
        press(KeyEvent.VK_UP);
        press(KeyEvent.VK_END);
        press(KeyEvent.VK_ENTER);
        until(
                "the cursor is where the words are read",
                () -> cursor().equals(new Place(
                        2,
                        Section.TO_CORNER,
                        execute(() -> desk.bench().chart().round(2).toCorner().length()))));

        press(KeyEvent.VK_ESCAPE);
        until("the chart has the keys again", () -> execute(desk.canvas()::isFocusOwner));
        assertThat(said()).isEmpty();
    }

    private void press(int key) {
        robot.pressAndReleaseKeys(key);
        robot.waitForIdle();
    }

    private String text() {
        return execute(() -> words.getText()).replace('\u00a0', ' ');
    }

    private Place cursor() {
        return execute(() -> desk.bench().cursor());
    }

    private String said() {
        return execute(() -> words.getAccessibleContext().getAccessibleDescription());
    }

    /** The middle of these words, on the screen. */
    private Point at(String phrase) {
        int middle = text().indexOf(phrase) + phrase.length() / 2;
        return execute(() -> {
            Rectangle letter = words.modelToView2D(middle).getBounds();
            words.scrollRectToVisible(letter);
            Point point = words.getLocationOnScreen();
            point.translate(letter.x + 1, letter.y + letter.height / 2);
            return point;
        });
    }

    /** What of the words is lit. */
    private List<String> lit() {
        return execute(() -> Stream.of(words.getHighlighter().getHighlights())
                .filter(light -> light.getEndOffset() > light.getStartOffset())
                .map(light -> between(light.getStartOffset(), light.getEndOffset()))
                .toList());
    }

    private String between(int begin, int end) {
        try {
            return words.getText(begin, end - begin).replace('\u00a0', ' ');
        } catch (BadLocationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** How the first cell of a place looks. */
    private int[] picture(Place place) {
        return execute(() -> {
            Rectangle at =
                    desk.canvas().boundsOf(desk.canvas().cells().cellsOf(place).get(0));
            BufferedImage image = new BufferedImage(at.width, at.height, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            g.translate(-at.x, -at.y);
            g.setClip(at);
            desk.canvas().paint(g);
            g.dispose();
            return image.getRGB(0, 0, at.width, at.height, null, 0, at.width);
        });
    }
}
