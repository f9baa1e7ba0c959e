package edgewright.desk;

import edgewright.desk.canvas.ChartCanvas;
import edgewright.desk.canvas.MotifCommands;
import edgewright.desk.jobs.Questions;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.MenuLine;
import edgewright.desk.shelf.MotifShelf;
import edgewright.desk.shelf.ShelfMenu;
import edgewright.desk.tool.Mirror;
import edgewright.desk.tool.Toolbox;
import edgewright.desk.tool.Tools;
import edgewright.desk.work.Settings;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.ButtonGroup;
import javax.swing.JFrame;
import javax.swing.JMenu;
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
            "pasteGrowing",
            "-");

    private final DeskActions actions;
    private final Language language;
    private final Messages says;

    private DrawMenus(DeskActions actions, Language language) {
        this.actions = actions;
        this.language = language;
        says = language.messages("desk");
    }

    /** Puts them into the menu bar of a window. */
    static void addTo(
            JFrame desk,
            DeskActions actions,
            ChartCanvas canvas,
            MotifCommands motifs,
            Settings settings,
            Questions asking,
            Language language) {
        DrawMenus menus = new DrawMenus(actions, language);
        ShelfMenu shelf = new ShelfMenu(
                desk,
                new MotifShelf(settings.folder()),
                canvas.marking()::motif,
                motif -> motifs.work(motif, false),
                asking,
                language);
        desk.getJMenuBar().add(menus.draw(canvas.toolbox()), PLACE);
        desk.getJMenuBar().add(menus.motif(shelf.menu()), PLACE + 1);
    }

    private JMenu draw(Toolbox toolbox) {
        JMenu menu = Forms.caption(new JMenu(), says.text("menu-draw"));
        menu.setName("menu.draw");
        ButtonGroup tools = new ButtonGroup();
        for (Tools tool : Tools.values()) {
            String id = "tool." + tool.id();
            AbstractButton item = menu.add(named(MenuLine.oneOf(actions.get(id), language), id));
            tools.add(item);
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

    private JMenu motif(JMenu shelf) {
        JMenu menu = Forms.caption(new JMenu(), says.text("menu-motif"));
        menu.setName("menu.motif");
        for (String id : MOTIF) {
            if (id.equals("-")) {
                menu.addSeparator();
            } else {
                menu.add(named(MenuLine.of(actions.get(id), language), id));
            }
        }
        menu.add(shelf);
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
