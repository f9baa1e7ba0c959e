package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.parts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.Stitch;
import edgewright.chart.YarnUse;
import edgewright.desk.canvas.ChartCanvas;
import edgewright.desk.dialogs.LettersDialog;
import edgewright.desk.dialogs.NewChartDialog;
import edgewright.desk.dialogs.PropertiesDialog;
import edgewright.desk.dialogs.ShiftDialog;
import edgewright.desk.dialogs.SideDialog;
import edgewright.desk.guide.GuideWindow;
import edgewright.desk.guide.PatternDetailsDialog;
import edgewright.desk.output.PictureDialog;
import edgewright.desk.output.PublishDialog;
import edgewright.desk.output.WordsDialog;
import edgewright.desk.own.ImprintDialog;
import edgewright.desk.own.OwnPagesDialog;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.piece.PieceWindow;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.yarn.MeasureDialog;
import edgewright.desk.yarn.YarnDialog;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.accessibility.Accessible;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JSpinner;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.plaf.UIResource;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever works by ear or by keys alone finds everything: names, keys and a way round. */
class AccessWindowTest {
    @TempDir
    private Path folder;

    private DeskFrame desk;

    @BeforeEach
    void open() {
        desk = WindowParts.shownDesk(folder);
    }

    @AfterEach
    void close() {
        execute(() -> desk.dispose());
    }

    @Test
    void everyControlOfTheDeskHasANameForTheEarAndAStableOne() {
        assertThat(execute(() -> nameless(desk))).isEmpty();
    }

    @Test
    void everyControlOfThePieceWindowHasANameForTheEarAndAStableOne() {
        assertThat(execute(() -> {
                    PieceWindow piece = WindowParts.pieceWindow(desk, new ChartView(English.LANGUAGE), folder);
                    List<String> nameless = nameless(piece);
                    piece.dispose();
                    return nameless;
                }))
                .isEmpty();
    }

    @Test
    void everyControlOfEveryDialogHasANameForTheEarAndAStableOne() {
        Chart chart = Desk.blank(English.LANGUAGE);
        List<Supplier<FormDialog>> dialogs = List.of(
                () -> new NewChartDialog(desk, Counting.STITCHES, English.LANGUAGE),
                () -> new PropertiesDialog(desk, chart, English.LANGUAGE),
                () -> new PatternDetailsDialog(desk, chart, English.LANGUAGE),
                () -> new SideDialog(desk, chart.shape(), Counting.STITCHES, English.LANGUAGE),
                () -> new ShiftDialog(desk, 6, English.LANGUAGE),
                () -> new LettersDialog(desk, chart, 3, English.LANGUAGE),
                () -> YarnDialog.changing(desk, chart, chart.yarns().get(0), English.LANGUAGE),
                () -> new PublishDialog(
                        desk,
                        chart,
                        new ChartView(English.LANGUAGE),
                        2,
                        new Settings(folder.resolve("desk.properties"))),
                () -> new WordsDialog(desk, chart, new ChartView(English.LANGUAGE), 2),
                () -> new MeasureDialog(desk, YarnUse.NONE, English.LANGUAGE),
                () -> new PictureDialog(desk, chart, new ChartView(English.LANGUAGE)),
                () -> new OwnPagesDialog(desk, AllWindows.OWN, Optional.empty(), English.LANGUAGE),
                () -> new ImprintDialog(desk, Optional.empty(), Optional::empty, English.LANGUAGE));
        for (Supplier<FormDialog> dialog : dialogs) {
            assertThat(execute(() -> {
                        FormDialog made = dialog.get();
                        List<String> nameless = nameless(made);
                        made.dispose();
                        return nameless;
                    }))
                    .isEmpty();
        }
    }

    @Test
    void everyControlOfTheRoundGuideHasANameAndAMnemonicOfItsOwn() {
        List<String> shared = new ArrayList<>();
        assertThat(execute(() -> {
                    GuideWindow guide = new GuideWindow(desk, desk.bench(), new ChartView(English.LANGUAGE));
                    addShared(guide, new HashSet<>(), shared);
                    List<String> nameless = nameless(guide);
                    guide.dispose();
                    return nameless;
                }))
                .isEmpty();
        assertThat(shared).isEmpty();
    }

    @Test
    void noTwoThingsOfAMenuOrADialogHaveTheSameMnemonic() {
        assertThat(execute(this::sharedMnemonics)).isEmpty();
    }

    @Test
    void everyThingInTheMenusCanBeReachedByItsMnemonic() {
        assertThat(execute(() -> menus().flatMap(AccessWindowTest::items)
                        .filter(item -> item.getMnemonic() == 0
                                && item.isEnabled()
                                && !item.getName().startsWith("yarnOf"))
                        .map(Component::getName)
                        .toList()))
                .isEmpty();
    }

    @Test
    void theTabulatorLeadsThroughEveryPaneAndBackToTheChart() {
        Set<String> reached = execute(() -> {
            Set<String> names = new HashSet<>();
            Component at = desk.canvas();
            do {
                names.add(String.valueOf(at.getName()));
                at = desk.getFocusTraversalPolicy().getComponentAfter(desk, at);
            } while (at != desk.canvas() && names.size() < 200);
            return names;
        });

        assertThat(reached)
                .as("of buttons of which one is chosen it stops at that one, and the arrow keys go on")
                .contains("chart", "rounds", "yarns", "choose.l", "layers.BOTH", "insertOutside", "addYarn");
    }

    @Test
    void theArrowKeysGoFromOneChoiceToTheNext() {
        AbstractButton last = (AbstractButton) named(desk, "choose.c");
        execute(() -> last.getActionMap().get("RIGHT").actionPerformed(null));
        assertThat(execute(() -> desk.bench().stitch())).isEqualTo(Stitch.LONG);
        execute(() -> ((AbstractButton) named(desk, "choose.l"))
                .getActionMap()
                .get("RIGHT")
                .actionPerformed(null));
        assertThat(execute(() -> desk.bench().stitch())).isEqualTo(Stitch.BACK_LOOP);
    }

    private static List<String> nameless(Container window) {
        List<String> nameless = new ArrayList<>();
        for (Component part : parts(window)) {
            if (isControl(part)) {
                Accessible accessible = (Accessible) part;
                String heard = accessible.getAccessibleContext().getAccessibleName();
                if (part.getName() == null || heard == null || heard.isBlank()) {
                    nameless.add(part.getClass().getSimpleName() + " " + part.getName() + " " + heard);
                }
            }
        }
        return nameless;
    }

    private static boolean isControl(Component part) {
        if (part instanceof UIResource
                || part.getParent() instanceof JSpinner
                || part.getParent() instanceof JComboBox) {
            return false;
        }
        if (part instanceof JTextComponent text) {
            boolean ofSpinner = text.getParent().getParent() instanceof JSpinner;
            return (text.isEditable() && !ofSpinner) || "words".equals(text.getName());
        }
        return part instanceof AbstractButton
                || part instanceof JTable
                || part instanceof JList
                || part instanceof JSpinner
                || part instanceof JComboBox
                || part instanceof ChartCanvas;
    }

    private List<String> sharedMnemonics() {
        List<String> shared = new ArrayList<>();
        Set<Integer> bar = new HashSet<>();
        menus().forEach(menu -> {
            if (!bar.add(menu.getMnemonic())) {
                shared.add(menu.getName());
            }
            Set<Integer> taken = new HashSet<>();
            items(menu).filter(item -> item.getMnemonic() != 0).forEach(item -> {
                if (!taken.add(item.getMnemonic())) {
                    shared.add(menu.getName() + " " + item.getName());
                }
            });
        });
        addShared(desk.getContentPane(), bar, shared);
        for (FormDialog dialog : List.of(
                new NewChartDialog(desk, Counting.STITCHES, English.LANGUAGE),
                new PropertiesDialog(desk, Desk.blank(English.LANGUAGE), English.LANGUAGE),
                new PatternDetailsDialog(desk, Desk.blank(English.LANGUAGE), English.LANGUAGE),
                new LettersDialog(desk, Desk.blank(English.LANGUAGE), 2, English.LANGUAGE),
                new PublishDialog(
                        desk,
                        Desk.blank(English.LANGUAGE),
                        new ChartView(English.LANGUAGE),
                        1,
                        new Settings(folder.resolve("desk.properties"))),
                new PictureDialog(desk, Desk.blank(English.LANGUAGE), new ChartView(English.LANGUAGE)),
                new WordsDialog(desk, Desk.blank(English.LANGUAGE), new ChartView(English.LANGUAGE), 1),
                new MeasureDialog(desk, YarnUse.NONE, English.LANGUAGE),
                YarnDialog.changing(
                        desk,
                        Desk.blank(English.LANGUAGE),
                        Desk.blank(English.LANGUAGE).yarns().get(0),
                        English.LANGUAGE),
                new ImprintDialog(desk, Optional.empty(), Optional::empty, English.LANGUAGE))) {
            addShared(dialog, new HashSet<>(), shared);
            dialog.dispose();
        }
        addSharedOfTabs(new OwnPagesDialog(desk, AllWindows.OWN, Optional.empty(), English.LANGUAGE), shared);
        PieceWindow piece = WindowParts.pieceWindow(desk, new ChartView(English.LANGUAGE), folder);
        addShared(piece, new HashSet<>(), shared);
        piece.dispose();
        return shared;
    }

    /** A mnemonic works only where it is seen: each tab is looked at by itself, with the tabs and what stands around them. */
    private static void addSharedOfTabs(FormDialog dialog, List<String> shared) {
        JTabbedPane tabs = (JTabbedPane) named(dialog, "own.tabs");
        for (int tab = 0; tab < tabs.getTabCount(); tab++) {
            tabs.setSelectedIndex(tab);
            Set<Integer> taken = new HashSet<>();
            for (int i = 0; i < tabs.getTabCount(); i++) {
                if (tabs.getMnemonicAt(i) < 0 || !taken.add(tabs.getMnemonicAt(i))) {
                    shared.add("tab " + i);
                }
            }
            addShared(dialog, taken, shared);
        }
        dialog.dispose();
    }

    private static boolean isOnHiddenTab(Component part) {
        for (Component at = part; at != null; at = at.getParent()) {
            if (at.getParent() instanceof JTabbedPane && !at.isVisible()) {
                return true;
            }
        }
        return false;
    }

    private static void addShared(Container window, Set<Integer> taken, List<String> shared) {
        for (Component part : parts(window)) {
            int mnemonic = part instanceof AbstractButton button
                    ? button.getMnemonic()
                    : part instanceof JLabel label ? label.getDisplayedMnemonic() : 0;
            if (mnemonic != 0 && !isOnHiddenTab(part) && !taken.add(mnemonic)) {
                shared.add(window.getName() + " " + part.getName() + " " + (char) mnemonic);
            }
        }
    }

    private Stream<JMenu> menus() {
        return Stream.of(desk.getJMenuBar().getComponents()).map(JMenu.class::cast);
    }

    private static Stream<JMenuItem> items(JMenu menu) {
        return Stream.of(menu.getMenuComponents())
                .filter(JMenuItem.class::isInstance)
                .map(JMenuItem.class::cast);
    }
}
