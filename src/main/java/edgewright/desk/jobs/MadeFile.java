package edgewright.desk.jobs;

import static edgewright.texts.Arg.arg;

import edgewright.desk.parts.TextClipboard;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Desktop;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.SwingWorker;

/**
 * The file that was made last for others to read: a pattern, a picture, or words. It and its folder are shown by the programs of the
 * machine; where there are none, the path is put on the clipboard.
 */
public final class MadeFile {
    /** Shows a file or a folder in a program of the machine; beside the event thread, since it may take its time. */
    public interface Viewer {
        void show(Path what) throws IOException;
    }

    private final Consumer<String> news;
    private final TextClipboard clipboard;
    private final Messages says;
    private Viewer viewer;
    private Runnable listener = () -> {};
    private Optional<Path> last = Optional.empty();

    /** Nothing was made yet. */
    MadeFile(Viewer viewer, TextClipboard clipboard, Consumer<String> news, Language language) {
        this.viewer = viewer;
        this.clipboard = clipboard;
        this.news = news;
        says = language.messages("desk/jobs");
    }

    /**
     * Nothing was made yet; what will be is shown by the programs of this machine.
     *
     * @param news is given what has happened, in a sentence
     */
    public static MadeFile ofMachine(Consumer<String> news, Language language) {
        return new MadeFile(MadeFile::show, TextClipboard.ofMachine(), news, language);
    }

    private static void show(Path what) throws IOException {
        if (!Desktop.isDesktopSupported() || !Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
            throw new IOException("this machine shows no files");
        }
        Desktop.getDesktop().open(what.toFile());
    }

    /** Has files be shown by this from now on. */
    public void showBy(Viewer other) {
        viewer = other;
    }

    /** Tells this listener whenever a file was made. */
    public void listen(Runnable whenMade) {
        listener = whenMade;
    }

    /** Whether any was made. */
    public boolean isThere() {
        return last.isPresent();
    }

    /** A file was made. It is told of when whoever made it has said so. */
    public void made(Path file) {
        SwingUtilities.invokeLater(() -> {
            last = Optional.of(file.toAbsolutePath());
            listener.run();
        });
    }

    /** Opens it. */
    public void open() {
        last.ifPresent(file -> show(file, file));
    }

    /** Shows the folder in which it lies. */
    public void showFolder() {
        last.ifPresent(file -> show(file.getParent(), file));
    }

    private void show(Path what, Path file) {
        Viewer by = viewer;
        new SwingWorker<Void, Void>() {
            @Override
            protected Void doInBackground() throws IOException {
                by.show(what);
                return null;
            }

            @Override
            protected void done() {
                try {
                    get();
                    news.accept(says.text("made-shown", arg("file", String.valueOf(what.getFileName()))));
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                } catch (ExecutionException e) {
                    // The folder may be closed to other programs, or there is none for such files.
                    copyPath(file);
                }
            }
        }.execute();
    }

    private void copyPath(Path file) {
        try {
            clipboard.copy(file.toString());
            news.accept(says.text("made-copied", arg("path", file.toString())));
        } catch (TextClipboard.BusyException e) {
            news.accept(says.text("made-notShown", arg("path", file.toString())));
        }
    }
}
