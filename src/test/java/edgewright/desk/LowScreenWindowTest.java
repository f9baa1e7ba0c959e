package edgewright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.desk.parts.FormDialog;
import java.awt.Component;
import java.awt.Rectangle;
import java.awt.Window;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On a low screen the form of a dialog scrolls; what is wrong with it, and its buttons, stay. */
class LowScreenWindowTest {
    /** A screen of 700 pixels less its bar and the title of the dialog. */
    private static final int LOW_PX = 640;

    @TempDir
    private Path folder;

    @Test
    void noDialogLosesItsButtonsOnALowScreen() {
        DeskFrame desk = WindowParts.shownDesk(folder);
        List<Window> windows = AllWindows.of(desk, folder);
        List<String> lost = new ArrayList<>();
        execute(() -> windows.stream().filter(FormDialog.class::isInstance).forEach(dialog -> {
            dialog.setMinimumSize(null);
            dialog.setSize(dialog.getWidth(), Math.min(dialog.getHeight(), LOW_PX));
            dialog.validate();
            for (String name : List.of("objection", "cancel", "accept")) {
                Component part = WindowParts.named(dialog, name);
                Rectangle at = SwingUtilities.convertRectangle(part.getParent(), part.getBounds(), dialog);
                if (!new Rectangle(dialog.getSize()).contains(at) || at.isEmpty()) {
                    lost.add(dialog.getName() + " " + name);
                }
            }
        }));
        AllWindows.close(windows);
        assertThat(lost).isEmpty();
    }
}
