package edgewright.desk.journal;

import java.awt.Component;
import java.awt.Container;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.dnd.DnDConstants;
import java.awt.dnd.DropTarget;
import java.awt.dnd.DropTargetAdapter;
import java.awt.dnd.DropTargetDragEvent;
import java.awt.dnd.DropTargetDropEvent;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** Opens a file that is dropped on the window, wherever on it; the fields in which text can be typed keep their own drops. */
final class ChartDrop extends DropTargetAdapter {
    private final Consumer<Path> open;

    private ChartDrop(Consumer<Path> open) {
        this.open = open;
    }

    /** Takes what is dropped on this window from now on. */
    static void on(JRootPane window, Consumer<Path> open) {
        ChartDrop drop = new ChartDrop(open);
        new DropTarget(window, DnDConstants.ACTION_COPY, drop);
        drop.takeOver(window);
    }

    /** Tables and lists have a place for drops from Swing, which takes none, and would refuse a file for the whole window. */
    private void takeOver(Container within) {
        for (Component part : within.getComponents()) {
            boolean isTyped = part instanceof JTextComponent text && text.isEditable();
            if (part.getDropTarget() != null && !isTyped) {
                part.setDropTarget(new DropTarget(part, DnDConstants.ACTION_COPY, this));
            }
            if (part instanceof Container container) {
                takeOver(container);
            }
        }
    }

    @Override
    public void dragEnter(DropTargetDragEvent event) {
        look(event);
    }

    @Override
    public void dragOver(DropTargetDragEvent event) {
        look(event);
    }

    private static void look(DropTargetDragEvent event) {
        if (event.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
            event.acceptDrag(DnDConstants.ACTION_COPY);
        } else {
            event.rejectDrag();
        }
    }

    @Override
    public void drop(DropTargetDropEvent event) {
        if (!event.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
            event.rejectDrop();
            return;
        }
        event.acceptDrop(DnDConstants.ACTION_COPY);
        Optional<Path> file = file(event.getTransferable());
        event.dropComplete(file.isPresent());
        // Afterwards: the file manager waits for the end of the drop, and opening may ask a question.
        file.ifPresent(dropped -> SwingUtilities.invokeLater(() -> open.accept(dropped)));
    }

    /** The first of the files that were dropped. */
    static Optional<Path> file(Transferable dropped) {
        try {
            List<?> files = (List<?>) dropped.getTransferData(DataFlavor.javaFileListFlavor);
            return files.stream().map(file -> ((File) file).toPath()).findFirst();
        } catch (UnsupportedFlavorException | IOException e) {
            return Optional.empty();
        }
    }
}
