package edgewright.desk;

import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.MenuLine;
import edgewright.desk.tool.Mirror;
import edgewright.desk.tool.Toolbox;
import edgewright.desk.tool.Tools;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;

/** The menus of tools and mirrors, and of motifs. */
final class DrawMenus {
    /** They stand behind the menus of files, edits and stitches. */
    private static final int PLACE = 3;

    private static final List<String> MOTIF = List.of(
            "motifLift",
            "motifFlipAlong",
            "motifFlipOutwards",
            "motifOtherArmMirrored",
            "motifOtherArmRotated",
            "motifRepeatAlong",
            "-",
            "pasteGrowing");

    private final DeskActions actions;
    private final Language language;
    private final Messages says;

    private DrawMenus(DeskActions actions, Language language) {
        this.actions = actions;
        this.language = language;
        says = language.messages("desk");
    }

    /** Puts them into the menu bar. */
    static void addTo(JMenuBar bar, DeskActions actions, Toolbox toolbox, Language language) {
        DrawMenus menus = new DrawMenus(actions, language);
        bar.add(menus.draw(toolbox), PLACE);
        bar.add(menus.motif(), PLACE + 1);
    }

    private JMenu draw(Toolbox toolbox) {
        JMenu menu = Forms.caption(new JMenu(), says.text("menu-draw"));
        menu.setName("menu.draw");
        for (Tools tool : Tools.values()) {
            String id = "tool." + tool.id();
            AbstractButton item = menu.add(named(MenuLine.oneOf(actions.get(id), language), id));
            follow(toolbox, () -> item.setSelected(toolbox.tool() == tool));
        }
        menu.addSeparator();
        for (Mirror mirror : Mirror.values()) {
            String id = "mirror." + mirror.id();
            AbstractButton item = menu.add(named(MenuLine.onOff(actions.get(id), language), id));
            follow(toolbox, () -> item.setSelected(toolbox.isUp(mirror)));
        }
        return menu;
    }

    private JMenu motif() {
        JMenu menu = Forms.caption(new JMenu(), says.text("menu-motif"));
        menu.setName("menu.motif");
        for (String id : MOTIF) {
            if (id.equals("-")) {
                menu.addSeparator();
            } else {
                menu.add(named(MenuLine.of(actions.get(id), language), id));
            }
        }
        return menu;
    }

    private static void follow(Toolbox toolbox, Runnable follow) {
        toolbox.listen(follow);
        follow.run();
    }

    private static <I extends JMenuItem> I named(I item, String id) {
        item.setName("menu." + id);
        return item;
    }
}
