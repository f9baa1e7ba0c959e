package edgewright.desk.parts;

import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Supplier;

/** Text on its way over the clipboard. Another program may hold it just now, and whoever wants it is told so. */
public final class TextClipboard {
    private final Supplier<Clipboard> clipboard;

    /** Another program holds the clipboard; a moment later it may not. */
    public static final class BusyException extends Exception {
        private static final long serialVersionUID = 1;

        private BusyException(IllegalStateException cause) {
            super("another program holds the clipboard", cause);
        }
    }

    public TextClipboard(Supplier<Clipboard> clipboard) {
        this.clipboard = clipboard;
    }

    /** The clipboard of the machine. */
    public static TextClipboard ofMachine() {
        return new TextClipboard(() -> Toolkit.getDefaultToolkit().getSystemClipboard());
    }

    /** Puts a text on the clipboard in the place of what it holds. */
    public void copy(String text) throws BusyException {
        try {
            clipboard.get().setContents(new StringSelection(text), null);
        } catch (IllegalStateException e) {
            throw new BusyException(e);
        }
    }

    /** The text that it holds; empty if it holds something else or nothing. */
    public Optional<String> text() throws BusyException {
        try {
            return Optional.of((String) clipboard.get().getData(DataFlavor.stringFlavor));
        } catch (UnsupportedFlavorException | IOException e) {
            return Optional.empty();
        } catch (IllegalStateException e) {
            throw new BusyException(e);
        }
    }
}
