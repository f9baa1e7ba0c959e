package edgewright.desk;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.chart.Yarn;
import edgewright.desk.command.Command;
import edgewright.desk.parts.DeskAction;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.MenuLine;
import edgewright.desk.parts.ShortText;
import edgewright.desk.parts.YarnCard;
import edgewright.desk.shelf.ShelfMenu;
import edgewright.desk.work.Settings;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/** The menu bar, built from its plan: everything that can be done, and the key for it. */
final class Menus {
    /** So many letters of a name stand in a menu. */
    private static final int MOST_OF_NAME = 48;

    private final DeskActions actions;
    private final Language language;
    private final Messages says;
    private final Messages common;
    private final Map<String, Runnable> filling = new HashMap<>();
    private final Map<String, JMenu> filled = new HashMap<>();

    Menus(DeskActions actions, Language language) {
        this.actions = actions;
        this.language = language;
        says = language.messages("desk");
        common = language.messages("desk/common");
    }

    /** Has the recent charts stand in their menu, and this done when one is chosen. */
    Menus withRecent(Settings settings, Consumer<Path> open) {
        filling.put(MenuPlan.RECENT, () -> fillRecent(filled.get(MenuPlan.RECENT), settings, open));
        return this;
    }

    /** Has the yarns of the chart in front stand in their menu, and this done when one is chosen. */
    Menus withYarns(Supplier<List<Yarn>> yarns, Consumer<Yarn> change) {
        filling.put(MenuPlan.YARN_OF_ROUNDS, () -> fillYarns(filled.get(MenuPlan.YARN_OF_ROUNDS), yarns.get(), change));
        return this;
    }

    /** Has what lies on the shelf of motifs stand in its menu. */
    Menus withShelf(ShelfMenu shelf) {
        filling.put(MenuPlan.SHELF, () -> shelf.fill(filled.get(MenuPlan.SHELF)));
        return this;
    }

    JMenuBar bar() {
        JMenuBar bar = new JMenuBar();
        MenuPlan.BAR.forEach(plan -> bar.add(menu(plan)));
        return bar;
    }

    private JMenu menu(MenuPlan plan) {
        JMenu menu = Forms.caption(new JMenu(), says.text("menu-" + plan.id()));
        menu.setName("menu." + plan.id());
        // What has come about in the background meanwhile is seen in it, too.
        onOpening(menu, actions::refresh);
        Map<String, ButtonGroup> families = new HashMap<>();
        for (MenuPlan.Line line : plan.lines()) {
            if (line instanceof MenuPlan.Does does) {
                menu.add(item(does.command(), families));
            } else if (line instanceof MenuPlan.Inner inner) {
                menu.add(menu(inner.menu()));
            } else if (line instanceof MenuPlan.Filled some) {
                menu.add(filled(some.id()));
            } else {
                menu.addSeparator();
            }
        }
        return menu;
    }

    private JMenuItem item(String id, Map<String, ButtonGroup> families) {
        Optional<Command.Choice> choice = actions.command(id).flatMap(Command::chosen);
        JMenuItem item = choice.isEmpty()
                ? MenuLine.of(actions.get(id), language)
                : line(actions.get(id), choice.get().ofSeveral());
        if (choice.filter(Command.Choice::ofSeveral).isPresent()) {
            families.computeIfAbsent(id.substring(0, id.indexOf('.')), family -> new ButtonGroup())
                    .add(item);
        }
        item.setName("menu." + id);
        return item;
    }

    private JMenuItem line(DeskAction action, boolean ofSeveral) {
        return ofSeveral ? MenuLine.oneOf(action, language) : MenuLine.onOff(action, language);
    }

    private JMenu filled(String id) {
        JMenu menu = Forms.caption(new JMenu(), says.text("menu-" + id));
        menu.setName("menu." + id);
        filled.put(id, menu);
        onOpening(menu, filling.get(id));
        return menu;
    }

    private void fillRecent(JMenu menu, Settings settings, Consumer<Path> open) {
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
    }

    private void fillYarns(JMenu menu, List<Yarn> yarns, Consumer<Yarn> change) {
        menu.removeAll();
        for (Yarn yarn : yarns) {
            JMenuItem item = new JMenuItem(
                    common.text(
                            "yarn-short", arg("id", yarn.id()), arg("yarn", ShortText.of(yarn.name(), MOST_OF_NAME))),
                    new YarnCard(yarn.colour(), 14));
            item.setName("yarnOfRounds." + yarn.id());
            item.addActionListener(event -> change.accept(yarn));
            menu.add(item);
        }
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
    }
}
