package edgewright.desk;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.chart.Counting;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.desk.panes.ToolTray;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.MenuLine;
import edgewright.desk.parts.ShortText;
import edgewright.desk.parts.YarnCard;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.desk.work.Workbench;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/** The menu bar: everything that can be done, and the key for it. */
final class Menus {
    /** So many letters of a name stand in a menu. */
    private static final int MOST_OF_NAME = 48;

    private final DeskActions actions;
    private final Language language;
    private final Messages says;
    private final Messages common;
    private final JMenuBar bar = new JMenuBar();

    private Menus(DeskActions actions, Language language) {
        this.actions = actions;
        this.language = language;
        says = language.messages("desk");
        common = language.messages("desk/common");
    }

    /**
     * The menu bar.
     *
     * @param openRecent opens one of the recent charts
     * @param changeYarn works the chosen rounds in a yarn
     */
    static JMenuBar bar(
            Workbench bench,
            ChartView view,
            Settings settings,
            DeskActions actions,
            Consumer<Path> openRecent,
            Consumer<Yarn> changeYarn) {
        Menus menus = new Menus(actions, view.language());
        JMenu file = menus.menu("file", "new", "open", "readText");
        file.add(menus.recent(settings, openRecent));
        menus.fill(file, "-", "save", "saveAs", "-", "prove", "publish", "picture", "saveWords");
        menus.fill(file, "-", "properties", "making", "ownPages", "-", "quit");
        JMenu edit = menus.menu("edit", "undo", "redo", "-", "cut", "copy", "paste", "pasteReversed", "unmark");
        menus.fill(edit, "-", "nextFinding", "previousFinding", "-", "evenOut");
        menus.stitchMenu(bench);
        JMenu rounds =
                menus.menu("rounds", "insertOutside", "insertInside", "duplicateRounds", "-", "moveOut", "moveIn");
        menus.fill(rounds, "-", "deleteRounds", "-");
        rounds.add(menus.yarnOfRounds(bench, changeYarn));
        menus.fill(rounds, "letters", "startHere", "-", "addYarn", "changeYarn", "removeYarn", "-", "amounts");
        JMenu side = menus.menu("side", "insertColumn", "deleteColumn", "-", "side");
        menus.fill(side, "-", "shiftOn", "shiftBack", "shift", "-", "reverse");
        menus.pieceMenu(view);
        menus.viewMenu(view, settings);
        menus.menu("help", "help", "laws", "keys", "-", "about");
        return menus.bar;
    }

    private JMenu menu(String id, String... ids) {
        JMenu menu = Forms.caption(new JMenu(), says.text("menu-" + id));
        menu.setName("menu." + id);
        fill(menu, ids);
        bar.add(menu);
        return menu;
    }

    private void fill(JMenu menu, String... ids) {
        for (String id : ids) {
            if (id.equals("-")) {
                menu.addSeparator();
            } else {
                menu.add(named(MenuLine.of(actions.get(id), language), id));
            }
        }
    }

    private void stitchMenu(Workbench bench) {
        JMenu menu = menu("stitch");
        for (Stitch stitch : ToolTray.ORDER) {
            String id = "choose." + stitch.letter();
            JRadioButtonMenuItem item = MenuLine.oneOf(actions.get(id), language);
            menu.add(named(item, id));
            Runnable follow = () -> item.setSelected(bench.stitch() == stitch);
            bench.listen(change -> follow.run());
            follow.run();
        }
        fill(menu, "-", "workHere", "takeOut");
    }

    private void pieceMenu(ChartView view) {
        JMenu menu = menu("piece", "fitPiece", "guide", "-");
        for (Counting way : Counting.values()) {
            String id = "counting." + way.name();
            JRadioButtonMenuItem item = MenuLine.oneOf(actions.get(id), language);
            menu.add(named(item, id));
            Runnable follow = () -> item.setSelected(view.counting() == way);
            view.listen(change -> follow.run());
            follow.run();
        }
    }

    private void viewMenu(ChartView view, Settings settings) {
        JMenu menu = menu("view");
        for (ChartView.Layers layers : ChartView.Layers.values()) {
            String id = "layers." + layers.name();
            JRadioButtonMenuItem item = MenuLine.oneOf(actions.get(id), language);
            menu.add(named(item, id));
            Runnable follow = () -> item.setSelected(view.layers() == layers);
            view.listen(change -> follow.run());
            follow.run();
        }
        fill(menu, "-", "turn", "-", "zoomIn", "zoomOut", "fit", "-");
        JMenu themes = Forms.caption(new JMenu(), says.text("menu-theme"));
        themes.setName("menu.theme");
        ButtonGroup one = new ButtonGroup();
        for (Theme theme : Theme.values()) {
            String id = "theme." + theme.name();
            JRadioButtonMenuItem item = MenuLine.oneOf(actions.get(id), language);
            item.setSelected(settings.theme() == theme);
            one.add(item);
            themes.add(named(item, id));
        }
        menu.add(themes);
    }

    private JMenu recent(Settings settings, Consumer<Path> open) {
        JMenu menu = Forms.caption(new JMenu(), says.text("recent"));
        menu.setName("menu.recent");
        onOpening(menu, () -> {
            menu.removeAll();
            List<Path> recent = settings.recent();
            for (int i = 0; i < recent.size(); i++) {
                Path path = recent.get(i);
                JMenuItem item = new JMenuItem(says.text(
                        "recent-item",
                        number("place", i + 1),
                        arg("file", ShortText.of(path.getFileName().toString(), MOST_OF_NAME))));
                item.setName("recent" + (i + 1));
                item.setMnemonic('1' + i);
                item.setToolTipText(path.toString());
                item.addActionListener(event -> open.accept(path));
                menu.add(item);
            }
            if (recent.isEmpty()) {
                menu.add(says.text("recent-none")).setEnabled(false);
            }
        });
        return menu;
    }

    private JMenu yarnOfRounds(Workbench bench, Consumer<Yarn> change) {
        JMenu menu = Forms.caption(new JMenu(), says.text("yarnOfRounds"));
        menu.setName("menu.yarnOfRounds");
        onOpening(menu, () -> {
            menu.removeAll();
            for (Yarn yarn : bench.chart().yarns()) {
                JMenuItem item = new JMenuItem(
                        common.text(
                                "yarn-short",
                                arg("id", yarn.id()),
                                arg("yarn", ShortText.of(yarn.name(), MOST_OF_NAME))),
                        new YarnCard(yarn.colour(), 14));
                item.setName("yarnOfRounds." + yarn.id());
                item.addActionListener(event -> change.accept(yarn));
                menu.add(item);
            }
        });
        return menu;
    }

    private static void onOpening(JMenu menu, Runnable fill) {
        menu.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent event) {
                fill.run();
            }

            @Override
            public void menuDeselected(MenuEvent event) {}

            @Override
            public void menuCanceled(MenuEvent event) {}
        });
        fill.run();
    }

    private static <I extends JMenuItem> I named(I item, String id) {
        item.setName("menu." + id);
        return item;
    }
}
