package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.file.JournalFolder;
import java.awt.Component;
import java.awt.Point;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.TransferHandler;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A chart file is dragged from another window and dropped on the desk. */
class DropWindowTest {
    @TempDir
    private Path folder;

    private Path file;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;
    private JFrame files;

    @BeforeEach
    void showADeskAndAWindowWithAFile() throws Exception {
        file = folder.resolve("reed-bank.border.json");
        Files.copy(Path.of("sample-charts", "reed-bank.border.json"), file);
        robot = display.robot();
        desk = display.show(folder);
        execute(() -> desk.keepJournal(new JournalFolder(folder.resolve("state")), () -> {}));
        files = execute(() -> {
            JLabel label = new JLabel("a file");
            label.setTransferHandler(new FileHandler());
            label.addMouseListener(new MouseAdapter() {
                @Override
                public void mousePressed(MouseEvent event) {
                    label.getTransferHandler().exportAsDrag(label, event, TransferHandler.COPY);
                }
            });
            JFrame frame = new JFrame("files");
            frame.add(label);
            frame.setSize(120, 80);
            frame.setAlwaysOnTop(true);
            frame.setVisible(true);
            return frame;
        });
        robot.waitForIdle();
    }

    @AfterEach
    void putAway() {
        execute(() -> files.dispose());
    }

    /** The chart, and a table, which Swing gives a place for drops of its own. */
    @ParameterizedTest
    @ValueSource(strings = {"table", "rounds"})
    void aChartDroppedOnTheWindowIsOpened(String part) {
        Component target = named(desk, part);
        Point from = execute(() -> middle(files.getContentPane()));
        Point to = execute(() -> middle(target));
        robot.moveMouse(from);
        robot.pressMouse(MouseButton.LEFT_BUTTON);
        for (int step = 1; step <= 10; step++) {
            robot.moveMouse(new Point(from.x + (to.x - from.x) * step / 10, from.y + (to.y - from.y) * step / 10));
            robot.waitForIdle();
        }
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        until("the chart is open", () -> execute(() -> desk.bench().file()).isPresent());

        assertThat(execute(() -> desk.bench().file())).contains(file);
    }

    private static Point middle(Component component) {
        Point at = component.getLocationOnScreen();
        at.translate(component.getWidth() / 2, component.getHeight() / 2);
        return at;
    }

    /** Gives the file as a file manager does. */
    private final class FileHandler extends TransferHandler {
        private static final long serialVersionUID = 1;

        @Override
        public int getSourceActions(JComponent from) {
            return COPY;
        }

        @Override
        protected Transferable createTransferable(JComponent from) {
            return new Transferable() {
                @Override
                public DataFlavor[] getTransferDataFlavors() {
                    return new DataFlavor[] {DataFlavor.javaFileListFlavor};
                }

                @Override
                public boolean isDataFlavorSupported(DataFlavor flavor) {
                    return flavor.equals(DataFlavor.javaFileListFlavor);
                }

                @Override
                public Object getTransferData(DataFlavor flavor) {
                    return List.of(file.toFile());
                }
            };
        }
    }
}
