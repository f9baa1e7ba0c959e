package edgewright.desk.panes;

import edgewright.chart.Stitch;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.StitchIcon;
import edgewright.desk.parts.WrappingRow;
import edgewright.desk.tool.Mirror;
import edgewright.desk.tool.Toolbox;
import edgewright.desk.tool.Tools;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Workbench;
import edgewright.texts.Messages;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Insets;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The tray above the chart: the stitch to work, the tools and mirrors, the layers to see, the turn and the size. */
public final class ToolTray extends JPanel {
    /** The stitches in the order in which they are offered: those that make the pattern first. */
    public static final List<Stitch> ORDER = Stream.of(Stitch.values())
            .sorted(Comparator.comparing(stitch -> !stitch.coversStitchBelow()))
            .toList();

    private static final int GAP_PX = 12;

    private final transient Workbench bench;
    private final transient ChartView view;
    private final transient Toolbox toolbox;
    private final transient Messages says;
    private final WrappingRow row = new WrappingRow(GAP_PX, 8);
    private final transient ShortTexts texts = new ShortTexts();
    private int fittedTo;
    private final Map<Stitch, JToggleButton> stitches = new EnumMap<>(Stitch.class);
    private final Map<Tools, JToggleButton> tools = new EnumMap<>(Tools.class);
    private final Map<Mirror, JToggleButton> mirrors = new EnumMap<>(Mirror.class);
    private final Map<ChartView.Layers, JToggleButton> layers = new EnumMap<>(ChartView.Layers.class);

    public ToolTray(Workbench bench, ChartView view, DeskActions actions, Toolbox toolbox) {
        super(new BorderLayout());
        this.bench = bench;
        this.view = view;
        this.toolbox = toolbox;
        says = view.language().messages("desk/panes");
        row.add(group(says.text("tray-work"), stitchChoice(actions)));
        row.add(group(says.text("tray-tools"), toolChoice(actions)));
        row.add(group(says.text("tray-mirrors"), mirrorChoice(actions)));
        row.add(group(says.text("tray-show"), layerChoice(actions)));
        row.add(group(
                says.text("tray-look"),
                plain(actions, "turn", says.text("tray-turn")),
                plain(actions, "zoomOut", says.text("tray-zoomOut")),
                plain(actions, "zoomIn", says.text("tray-zoomIn")),
                plain(actions, "fit", says.text("tray-fit"))));
        add(row);
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                fitIn();
            }
        });
        bench.listen(change -> follow());
        view.listen(change -> follow());
        toolbox.listen(change -> {
            if (change != Toolbox.Change.GHOST) {
                follow();
            }
        });
        follow();
    }

    /** One row: with names if there is room for them, else with signs. */
    private void fitIn() {
        if (fittedTo != getWidth()) {
            fittedTo = getWidth();
            if (oneRow(false) > fittedTo) {
                oneRow(true);
            }
            revalidate();
        }
    }

    /** How wide all is in one row, with names or with signs, which are shown from then on. */
    private int oneRow(boolean signs) {
        texts.shorten(signs);
        int across = GAP_PX;
        for (Component group : row.getComponents()) {
            // A layout that was not laid out yet keeps the sizes it was asked for last.
            group.invalidate();
            across += group.getPreferredSize().width + GAP_PX;
        }
        return across;
    }

    private Component[] toolChoice(DeskActions actions) {
        for (Tools tool : Tools.values()) {
            tools.put(tool, signed(new JToggleButton(actions.get("tool." + tool.id())), ToolIcon.of(tool)));
        }
        Forms.oneOf(List.copyOf(tools.values()));
        return tools.values().toArray(Component[]::new);
    }

    private Component[] mirrorChoice(DeskActions actions) {
        for (Mirror mirror : Mirror.values()) {
            JToggleButton button = new JToggleButton(actions.get("mirror." + mirror.id()));
            mirrors.put(mirror, signed(button, ToolIcon.of(mirror)));
        }
        return mirrors.values().toArray(Component[]::new);
    }

    /** A button that shows a sign; its name is heard, and stands in its tip. */
    private static JToggleButton signed(JToggleButton button, ToolIcon sign) {
        button.setName(button.getActionCommand());
        button.getAccessibleContext().setAccessibleName(button.getText());
        button.setHideActionText(true);
        button.setText(null);
        button.setMnemonic(0);
        button.setIcon(sign);
        button.setMargin(new Insets(4, 6, 4, 6));
        return button;
    }

    private Component[] stitchChoice(DeskActions actions) {
        for (Stitch stitch : ORDER) {
            JToggleButton button = new JToggleButton(actions.get("choose." + stitch.letter()));
            button.setName("choose." + stitch.letter());
            button.setMnemonic(0);
            button.setIcon(new StitchIcon(stitch));
            button.setIconTextGap(6);
            texts.add(button, button.getIcon());
            stitches.put(stitch, button);
        }
        List<JToggleButton> buttons = ORDER.stream().map(stitches::get).toList();
        Forms.oneOf(buttons);
        return buttons.toArray(Component[]::new);
    }

    private Component[] layerChoice(DeskActions actions) {
        for (ChartView.Layers each : ChartView.Layers.values()) {
            JToggleButton button = new JToggleButton(actions.get("layers." + each.name()));
            button.setName("layers." + each.name());
            button.setText(says.text("tray-layers-" + each.name()));
            button.setMnemonic(0);
            texts.add(button, ToolIcon.ofView(button.getName()));
            layers.put(each, button);
        }
        Forms.oneOf(List.copyOf(layers.values()));
        return layers.values().toArray(Component[]::new);
    }

    /** Things that belong together, with a name for those who hear it. */
    private static JPanel group(String name, Component... parts) {
        JPanel group = new JPanel(new MigLayout("insets 0, gap 4"));
        group.setOpaque(false);
        group.getAccessibleContext().setAccessibleName(name);
        for (Component part : parts) {
            group.add(part, "hmin 30");
        }
        return group;
    }

    private JButton plain(DeskActions actions, String id, String text) {
        JButton button = Forms.button(actions.get(id));
        button.setText(text);
        button.setMnemonic(0);
        texts.add(button, ToolIcon.ofView(id));
        return button;
    }

    /** What has the keys first when somebody comes to this pane. */
    public Component firstPart() {
        return stitches.get(bench.stitch());
    }

    private void follow() {
        stitches.get(bench.stitch()).setSelected(true);
        layers.get(view.layers()).setSelected(true);
        tools.forEach((tool, button) -> button.setSelected(toolbox.tool() == tool));
        mirrors.forEach((mirror, button) -> button.setSelected(toolbox.isUp(mirror)));
    }
}
