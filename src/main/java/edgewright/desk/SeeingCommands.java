package edgewright.desk;

import edgewright.chart.HookHand;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.MenuLine;
import edgewright.desk.scene.SceneWindow;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Seeing;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Workbench;
import edgewright.draw.paint.ColourVision;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.List;
import java.util.function.BooleanSupplier;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;

/** What the chart is seen as: the part of the border, the hand, the colours; the border as a whole; and the panes around it. */
final class SeeingCommands {
    private static final List<String> FOLDS =
            List.of("fold.findings", "fold.words", "fold.side", "fold.yarns", "fold.all");

    private final ChartView view;
    private final DeskActions actions;
    private final Language language;
    private final Messages says;

    /** Adds the commands, and lays the panes of a window that has its size as they lay last. */
    SeeingCommands(JFrame desk, Workbench bench, ChartView view, Settings settings, DeskActions actions) {
        this.view = view;
        this.actions = actions;
        language = view.language();
        says = language.messages("desk");
        view.see(Seeing.of(settings));
        view.listen(change -> {
            view.seeing().keepIn(settings);
            settings.setCounting(view.counting());
        });
        for (Seeing.Drawn drawn : Seeing.Drawn.values()) {
            actions.add("drawn." + drawn.name(), () -> view.see(view.seeing().withDrawn(drawn)));
        }
        actions.add(
                "leftHand",
                () -> view.see(view.seeing()
                        .withHand(view.seeing().hand() == HookHand.LEFT ? HookHand.RIGHT : HookHand.LEFT)));
        for (ColourVision vision : ColourVision.values()) {
            actions.add("vision." + vision.name(), () -> view.see(view.seeing().withVision(vision)));
        }
        actions.add("scene", SceneWindow.opener(desk, bench, view));
        PaneFolds folds = new PaneFolds(desk.getContentPane(), bench, settings, language);
        folds.addTo(actions);
        folds.begin(desk.getWidth());
    }

    /** Puts them into the menu of the view, after what of the layers is shown. */
    void addTo(JMenuBar bar) {
        for (int i = 0; i < bar.getMenuCount(); i++) {
            if (bar.getMenu(i).getName().equals("menu.view")) {
                addTo(bar.getMenu(i));
            }
        }
    }

    private void addTo(JMenu menu) {
        int at = ChartView.Layers.values().length;
        menu.insertSeparator(at++);
        for (Seeing.Drawn drawn : Seeing.Drawn.values()) {
            menu.insert(oneOf("drawn." + drawn.name(), () -> view.seeing().drawn() == drawn), at++);
        }
        menu.insert(named(MenuLine.of(actions.get("scene"), language), "scene"), at++);
        menu.insertSeparator(at++);
        JCheckBoxMenuItem left = named(MenuLine.onOff(actions.get("leftHand"), language), "leftHand");
        follow(left, () -> view.seeing().hand() == HookHand.LEFT);
        menu.insert(left, at++);
        JMenu colours = Forms.caption(new JMenu(), says.text("menu-vision"));
        colours.setName("menu.vision");
        for (ColourVision vision : ColourVision.values()) {
            colours.add(oneOf("vision." + vision.name(), () -> view.seeing().vision() == vision));
        }
        menu.insert(colours, at++);
        JMenu panes = Forms.caption(new JMenu(), says.text("menu-panes"));
        panes.setName("menu.panes");
        FOLDS.forEach(id -> panes.add(named(MenuLine.of(actions.get(id), language), id)));
        menu.insert(panes, at);
    }

    private JMenuItem oneOf(String id, BooleanSupplier chosen) {
        JRadioButtonMenuItem item = named(MenuLine.oneOf(actions.get(id), language), id);
        follow(item, chosen);
        return item;
    }

    private void follow(JMenuItem item, BooleanSupplier chosen) {
        Runnable follow = () -> item.setSelected(chosen.getAsBoolean());
        view.listen(change -> follow.run());
        follow.run();
    }

    private static <I extends JMenuItem> I named(I item, String id) {
        item.setName("menu." + id);
        return item;
    }
}
