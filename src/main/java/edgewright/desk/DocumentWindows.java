package edgewright.desk;

import java.awt.Dialog.ModalityType;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.swing.JDialog;

/**
 * The windows that stand beside a document: they were opened by what was done in it, are seen only while it is in front, and go
 * with it.
 */
final class DocumentWindows {
    private final Window desk;
    private final List<Window> windows = new ArrayList<>();
    private final List<Window> hidden = new ArrayList<>();

    DocumentWindows(Window desk) {
        this.desk = desk;
    }

    /** Does something in the document; a window that comes of it belongs to the document. */
    void during(Runnable deed) {
        Set<Window> before = Set.of(desk.getOwnedWindows());
        deed.run();
        for (Window window : desk.getOwnedWindows()) {
            boolean stays = window instanceof JDialog dialog && dialog.getModalityType() == ModalityType.MODELESS;
            if (stays && !before.contains(window)) {
                windows.add(window);
            }
        }
    }

    /** Hides them while another document is in front. */
    void hide() {
        for (Window window : windows) {
            if (window.isVisible()) {
                window.setVisible(false);
                hidden.add(window);
            }
        }
    }

    /** Shows those again that were hidden; the keys stay where they are. */
    void show() {
        for (Window window : hidden) {
            window.setAutoRequestFocus(false);
            window.setVisible(true);
            window.setAutoRequestFocus(true);
        }
        hidden.clear();
    }

    /** Puts them away for good. */
    void dispose() {
        windows.forEach(Window::dispose);
    }
}
