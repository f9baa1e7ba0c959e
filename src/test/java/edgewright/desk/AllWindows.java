package edgewright.desk;

import static edgewright.desk.WindowParts.until;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.OwnMatter;
import edgewright.chart.OwnSection;
import edgewright.chart.Photo;
import edgewright.chart.YarnUse;
import edgewright.check.FindingSentences;
import edgewright.desk.dialogs.LettersDialog;
import edgewright.desk.dialogs.NewChartDialog;
import edgewright.desk.dialogs.PropertiesDialog;
import edgewright.desk.dialogs.ShiftDialog;
import edgewright.desk.dialogs.SideDialog;
import edgewright.desk.guide.GuideWindow;
import edgewright.desk.guide.PatternDetailsDialog;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Lanes;
import edgewright.desk.jobs.Questions;
import edgewright.desk.output.PictureDialog;
import edgewright.desk.output.PublishDialog;
import edgewright.desk.output.WordsDialog;
import edgewright.desk.own.ImprintDialog;
import edgewright.desk.own.OwnPagesDialog;
import edgewright.desk.panes.StatusLine;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.reading.ReadingCommands;
import edgewright.desk.scene.SceneWindow;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.yarn.MeasureDialog;
import edgewright.desk.yarn.YarnDialog;
import edgewright.desk.yarn.YarnWindow;
import edgewright.texts.English;
import edgewright.texts.Language;
import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.CellRendererPane;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JTable;
import javax.swing.JToolTip;
import javax.swing.ListCellRenderer;

/** Every window and dialog that the desk has of a chart, and everything in them that shows a text. */
final class AllWindows {
    /** One photograph and one text, so that nothing of the dialog is empty. */
    static final OwnMatter OWN = new OwnMatter(
            List.of(new Photo("Reeds in the wind.jpg", "Reeds", "", Photo.At.COVER)),
            List.of(new OwnSection("Care", "Wash it cold.")),
            Optional.of("Saltmarsh.imprint.json"));

    private AllWindows() {}

    /** Makes them all, opens those that stay beside the chart, and packs the dialogs. */
    static List<Window> of(DeskFrame desk, Path folder) {
        return of(desk, folder, English.LANGUAGE);
    }

    /** The same in a language. */
    static List<Window> of(DeskFrame desk, Path folder, Language language) {
        List<Window> windows = new ArrayList<>(List.of(desk));
        Chart chart = execute(() -> desk.bench().chart());
        ChartView view = execute(() -> new ChartView(language));
        Settings settings = new Settings(folder.resolve("other.properties"));
        List<Supplier<Window>> makers = List.of(
                () -> WindowParts.pieceWindow(desk, view, folder),
                () -> new GuideWindow(desk, desk.bench(), view),
                () -> new SceneWindow(desk, desk.bench(), view),
                () -> new NewChartDialog(desk, Counting.STITCHES, language),
                () -> new PropertiesDialog(desk, chart, language),
                () -> new PatternDetailsDialog(desk, chart, language),
                () -> new SideDialog(desk, chart.shape(), Counting.STITCHES, language),
                () -> new ShiftDialog(desk, 6, language),
                () -> new LettersDialog(desk, chart, 3, language),
                () -> YarnDialog.changing(desk, chart, chart.yarns().get(0), language),
                () -> new PublishDialog(desk, chart, view, 2, settings),
                () -> new WordsDialog(desk, chart, view, 2),
                () -> new MeasureDialog(desk, YarnUse.NONE, language),
                () -> new PictureDialog(desk, chart, view),
                () -> new OwnPagesDialog(desk, OWN, Optional.empty(), language),
                () -> new ImprintDialog(desk, Optional.empty(), Optional::empty, language));
        makers.forEach(maker -> windows.add(execute(() -> {
            Window made = maker.get();
            if (made.getName().matches("[a-z]+Window")) {
                made.setVisible(true);
            } else {
                made.pack();
            }
            return made;
        })));
        windows.add(readingWindow(desk, language));
        windows.add(yarnWindow(desk, view));
        windows.add(execute(
                () -> new HelpWindow(desk, new DeskActions(language), new FindingSentences(language), language)));
        return windows;
    }

    private static Window readingWindow(DeskFrame desk, Language language) {
        execute(() -> new ReadingCommands(
                        desk,
                        desk.bench(),
                        new ChartView(language),
                        new Jobs(new StatusLine(language).board(Lanes.Lane.PREVIEW), language),
                        new Questions(desk, language),
                        chart -> {})
                .read());
        return execute(() -> Stream.of(desk.getOwnedWindows())
                .filter(owned -> "readingWindow".equals(owned.getName()))
                .findFirst()
                .orElseThrow());
    }

    /** It works beside the event thread. */
    private static Window yarnWindow(DeskFrame desk, ChartView view) {
        execute(() -> YarnWindow.opener(desk, desk.bench(), view).run());
        Window window = execute(() -> Stream.of(desk.getOwnedWindows())
                .filter(owned -> "yarnWindow".equals(owned.getName()))
                .findFirst()
                .orElseThrow());
        JTable table = (JTable) WindowParts.named(window, "yarns.table");
        until("the amounts are there", () -> execute(() -> table.getRowCount() > 0));
        return window;
    }

    static void close(List<Window> windows) {
        execute(() -> windows.forEach(Window::dispose));
    }

    /**
     * Looks at everything within that shows a text, also what only comes into being as it is painted: each item of a list as it
     * is rendered, each cell of a table, each line of a menu, each tool tip. Says where those are that are looked for. To be
     * asked on the event thread.
     */
    static List<String> where(Container window, Predicate<JComponent> wanted) {
        Search search = new Search(wanted, new ArrayList<>());
        for (Component part : window.getComponents()) {
            search.look(part, window.getName() + " ");
        }
        return search.found();
    }

    private record Search(Predicate<JComponent> wanted, List<String> found) {
        void look(Component part, String where) {
            if (part instanceof CellRendererPane) {
                // What was rendered last; it is rendered here itself.
                return;
            }
            String here = where + "/" + part.getClass().getSimpleName()
                    + (part.getName() == null ? "" : ":" + part.getName());
            if (part instanceof JComponent shown) {
                take(shown, here);
                if (shown.getToolTipText() != null) {
                    JToolTip tip = shown.createToolTip();
                    tip.setTipText(shown.getToolTipText());
                    take(tip, here + " tip");
                }
            }
            if (part instanceof JMenu menu) {
                look(menu.getPopupMenu(), here);
            }
            if (part instanceof JList<?> list) {
                for (int i = 0; i < list.getModel().getSize(); i++) {
                    lookAtItem(list.getCellRenderer(), list, list.getModel().getElementAt(i), i, here);
                }
            }
            if (part instanceof JComboBox<?> box) {
                for (int i = 0; i < box.getItemCount(); i++) {
                    lookAtItem(box.getRenderer(), new JList<>(), box.getItemAt(i), i, here);
                }
            }
            if (part instanceof JTable table) {
                lookAtCells(table, here);
            }
            if (part instanceof Container container) {
                for (Component inner : container.getComponents()) {
                    look(inner, here);
                }
            }
        }

        private void take(JComponent component, String here) {
            if (wanted.test(component)) {
                found.add(here);
            }
        }

        @SuppressWarnings({"unchecked", "rawtypes"}) // A list renders what it holds.
        private void lookAtItem(ListCellRenderer renderer, JList list, Object item, int at, String here) {
            Component shown = renderer.getListCellRendererComponent(list, item, at, at % 2 == 1, false);
            look(shown, here + "[" + at + "]");
        }

        private void lookAtCells(JTable table, String here) {
            for (int column = 0; column < table.getColumnCount(); column++) {
                for (int row = 0; row < Math.min(8, table.getRowCount()); row++) {
                    look(
                            table.prepareRenderer(table.getCellRenderer(row, column), row, column),
                            here + "(" + row + "," + column + ")");
                }
            }
        }
    }
}
