package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Settings;
import edgewright.file.JournalFolder;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;

/** Opens the desk: the way in for main. */
public final class Desk {
    private Desk() {}

    /** Whether there is a screen to open the window on. */
    public static boolean hasScreen() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (AWTError | HeadlessException e) {
            // A display is named, but nobody answers there.
            return false;
        }
    }

    /**
     * Opens the window in that language, with this chart on it or the start page, and comes back at once. The program ends by itself when the window
     * has been closed. Any thread may call; there must be a screen.
     */
    public static void open(Optional<Path> chart, Language language) {
        Look.speak(language);
        SwingUtilities.invokeLater(() -> {
            Settings settings = Settings.ofUser();
            Look.setUp(settings.looks());
            DeskFrame frame = new DeskFrame(blank(language), settings, language);
            Thread.currentThread().setUncaughtExceptionHandler((thread, problem) -> frame.tellOf(problem));
            if (chart.isEmpty()) {
                frame.deck().begin();
            }
            frame.setVisible(true);
            frame.keepJournal(JournalFolder.ofUser(), () -> chart.ifPresent(frame::open));
        });
    }

    /** What lies on the desk before anything else does: a dozen rounds in two yarns. */
    public static Chart blank(Language language) {
        Messages common = language.messages("desk/common");
        List<Yarn> yarns = List.of(
                new Yarn("A", common.text("newChart-firstYarn"), Colour.parse("#2b2a33")),
                new Yarn("B", common.text("newChart-secondYarn"), Colour.parse("#f2ead8")));
        return Chart.blank(common.text("newChart-untitled"), new SideShape(2, 6, 3), 12, yarns);
    }
}
