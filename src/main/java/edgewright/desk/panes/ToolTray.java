package edgewright.desk.panes;

import edgewright.chart.Stitch;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.StitchIcon;
import edgewright.desk.parts.WrappingRow;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Workbench;
import edgewright.texts.Messages;
import java.awt.BorderLayout;
import java.awt.Component;
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

/** The tray above the chart: the stitch to work, the layers to see, the turn and the size. */
public final class ToolTray extends JPanel {
    /** The stitches in the order in which they are offered: those that make the pattern first. */
    public static final List<Stitch> ORDER = Stream.of(Stitch.values())
            .sorted(Comparator.comparing(stitch -> !stitch.coversStitchBelow()))
            .toList();

    private final transient Workbench bench;
    private final transient ChartView view;
    private final transient Messages says;
    private final Map<Stitch, JToggleButton> stitches = new EnumMap<>(Stitch.class);
    private final Map<ChartView.Layers, JToggleButton> layers = new EnumMap<>(ChartView.Layers.class);

    public ToolTray(Workbench bench, ChartView view, DeskActions actions) {
        super(new BorderLayout());
        this.bench = bench;
        this.view = view;
        says = view.language().messages("desk/panes");
        WrappingRow row = new WrappingRow(12, 8);
        row.add(group(says.text("tray-work"), stitchChoice(actions)));
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
                // Another width can mean another number of rows.
                revalidate();
            }
        });
        bench.listen(change -> follow());
        view.listen(change -> follow());
        follow();
    }

    private Component[] stitchChoice(DeskActions actions) {
        for (Stitch stitch : ORDER) {
            JToggleButton button = new JToggleButton(actions.get("choose." + stitch.letter()));
            button.setName("choose." + stitch.letter());
            button.setMnemonic(0);
            button.setIcon(new StitchIcon(stitch));
            button.setIconTextGap(6);
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

    private static JButton plain(DeskActions actions, String id, String text) {
        JButton button = Forms.button(actions.get(id));
        button.setText(text);
        button.setMnemonic(0);
        return button;
    }

    private void follow() {
        stitches.get(bench.stitch()).setSelected(true);
        layers.get(view.layers()).setSelected(true);
    }
}
