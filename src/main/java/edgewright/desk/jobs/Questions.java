package edgewright.desk.jobs;

import static edgewright.texts.Arg.arg;

import edgewright.desk.parts.Forms;
import edgewright.desk.parts.TextClipboard;
import edgewright.file.ChartFiles;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileFilter;

/** The questions that the desk asks, and what it tells when something did not work. */
public final class Questions {
    /** What to do about unsaved work. */
    enum Unsaved {
        SAVE,
        DISCARD,
        CANCEL
    }

    private final Component parent;
    private final Messages says;
    private final Messages common;
    private Optional<Path> folder = Optional.empty();

    public Questions(Component parent, Language language) {
        this.parent = parent;
        says = language.messages("desk/jobs");
        common = language.messages("desk/common");
    }

    /** Asks whether unsaved work is to be saved, thrown away, or gone on with. Closing the question goes on with it. */
    Unsaved aboutUnsaved(String title) {
        int answer = ask(
                "unsaved",
                says.text("ask-unsaved", arg("title", title)),
                JOptionPane.WARNING_MESSAGE,
                says.text("ask-unsaved-save"),
                says.text("ask-unsaved-discard"),
                says.text("ask-unsaved-cancel"));
        return switch (answer) {
            case 0 -> Unsaved.SAVE;
            case 1 -> Unsaved.DISCARD;
            default -> Unsaved.CANCEL;
        };
    }

    /** Asks whether a file that is there already may be replaced. */
    boolean mayReplace(Path file) {
        return ask(
                        "replace",
                        says.text("ask-replace", arg("file", String.valueOf(file.getFileName()))),
                        JOptionPane.WARNING_MESSAGE,
                        says.text("ask-replace-yes"),
                        says.text("ask-replace-no"))
                == 0;
    }

    /** Asks whether a file may be saved over that somebody else has changed since it was opened. */
    boolean mayReplaceChanged(Path file) {
        return ask(
                        "changedOutside",
                        says.text("ask-changedOutside", arg("file", String.valueOf(file.getFileName()))),
                        JOptionPane.WARNING_MESSAGE,
                        says.text("ask-changedOutside-yes"),
                        says.text("ask-changedOutside-no"))
                == 0;
    }

    /** Tells that a mistake in the program was met, and lets what a developer needs be copied. */
    public void tellOfMistake(Throwable problem) {
        String said = says.text("ask-mistake");
        while (ask("mistake", said, JOptionPane.ERROR_MESSAGE, says.text("ask-ok"), says.text("ask-mistake-copy"))
                == 1) {
            StringBuilder details = new StringBuilder();
            for (Throwable cause = problem; cause != null; cause = cause.getCause()) {
                details.append(cause).append('\n');
                for (StackTraceElement step : cause.getStackTrace()) {
                    details.append("  ").append(step).append('\n');
                }
            }
            try {
                TextClipboard.ofMachine().copy(details.toString());
                return;
            } catch (TextClipboard.BusyException e) {
                said = common.text("clipboard-busy");
            }
        }
    }

    /**
     * Tells a sentence.
     *
     * @param name under which tests find the dialog
     */
    public void tellSentence(String name, String sentence) {
        ask(name, sentence, JOptionPane.ERROR_MESSAGE, says.text("ask-ok"));
    }

    /** Tells a sentence that was made elsewhere. */
    public void tellSentence(String sentence) {
        tellSentence("problem", sentence);
    }

    /** Begins the next search for a file beside this one. */
    public void lookBeside(Path file) {
        folder = Optional.ofNullable(file.toAbsolutePath().getParent());
    }

    /** Asks for a chart to open. */
    public Optional<Path> fileToOpen() {
        JFileChooser chooser = chooser("open", says.text("files-charts"), ChartFiles.ENDING);
        chooser.setApproveButtonText(says.text("files-open"));
        return chooser.showOpenDialog(parent) == JFileChooser.APPROVE_OPTION
                ? Optional.of(taken(chooser))
                : Optional.empty();
    }

    /**
     * Asks for a file that goes with a chart; the folder that is looked into for charts stays the same.
     *
     * @param endings with their dots
     */
    public Optional<Path> companionToOpen(String kind, String... endings) {
        JFileChooser chooser = chooser("openCompanion", kind, endings);
        chooser.setApproveButtonText(says.text("files-open"));
        return chooser.showOpenDialog(parent) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath().toAbsolutePath())
                : Optional.empty();
    }

    /** Asks for a text of any kind to open. */
    public Optional<Path> textToOpen(String kind) {
        JFileChooser chooser = chooser("openText", kind, ".txt");
        chooser.setApproveButtonText(says.text("files-open"));
        if (chooser.showOpenDialog(parent) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        Path file = taken(chooser);
        lookBeside(file);
        return Optional.of(file);
    }

    /**
     * Asks where something is to be written, and whether a file there may be replaced. A name without the ending gets it.
     *
     * @param ending with its dot
     */
    public Optional<Path> fileToWrite(String title, String kind, String ending, Path proposal) {
        JFileChooser chooser = chooser("write", kind, ending);
        chooser.setDialogTitle(title);
        chooser.setSelectedFile(
                folder.isPresent() && proposal.getParent() == null
                        ? folder.get().resolve(proposal).toFile()
                        : proposal.toFile());
        chooser.setApproveButtonText(says.text("files-save"));
        if (chooser.showSaveDialog(parent) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        Path chosen = taken(chooser);
        Path file = chosen.toString().toLowerCase(Locale.ROOT).endsWith(ending)
                ? chosen
                : chosen.resolveSibling(chosen.getFileName() + ending);
        return !file.toFile().exists() || mayReplace(file) ? Optional.of(file) : Optional.empty();
    }

    private Path taken(JFileChooser chooser) {
        Path file = chooser.getSelectedFile().toPath().toAbsolutePath();
        lookBeside(file);
        return file;
    }

    private JFileChooser chooser(String name, String kind, String... endings) {
        JFileChooser chooser = new JFileChooser(folder.map(Path::toFile).orElse(new File("").getAbsoluteFile()));
        chooser.setName(name + "Chooser");
        chooser.setFileFilter(new FileFilter() {
            @Override
            public boolean accept(File file) {
                return file.isDirectory()
                        || Arrays.stream(endings).anyMatch(file.getName().toLowerCase(Locale.ROOT)::endsWith);
            }

            @Override
            public String getDescription() {
                return kind;
            }
        });
        return chooser;
    }

    /** Asks a question with these answers; the first is the proposed one. The answer is its index, or -1. */
    private int ask(String name, String question, int kind, String... answers) {
        JOptionPane pane = new JOptionPane(Forms.message(question), kind);
        JButton[] buttons = new JButton[answers.length];
        for (int i = 0; i < answers.length; i++) {
            JButton button = Forms.caption(new JButton(), answers[i]);
            button.setName("answer" + (i + 1));
            button.addActionListener(event -> pane.setValue(button));
            buttons[i] = button;
        }
        pane.setName(name);
        pane.setOptions(buttons);
        pane.setInitialValue(buttons[0]);
        var dialog = pane.createDialog(parent, says.text("ask-title"));
        dialog.setName(name);
        dialog.setVisible(true);
        dialog.dispose();
        for (int i = 0; i < buttons.length; i++) {
            if (buttons[i] == pane.getValue()) {
                return i;
            }
        }
        return -1;
    }
}
