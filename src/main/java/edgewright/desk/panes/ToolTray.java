package edgewright.desk.panes;

import edgewright.chart.Stitch;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.StitchIcon;
import edgewright.desk.parts.WrappingRow;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.DeskTexts;
import edgewright.desk.work.Workbench;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The tray above the chart: the stitch to work, the layers to see, the turn and the size. */
public final class ToolTray extends JPanel {
    /** The stitches in the order in which they are offered: the one that makes the pattern first. */
    public static final List<Stitch> ORDER = List.of(Stitch.LONG, Stitch.BACK_LOOP, Stitch.PLAIN, Stitch.CHAIN);

    private final transient Workbench bench;
    private final transient ChartView view;
    private final Map<Stitch, JToggleButton> stitches = new EnumMap<>(Stitch.class);
    private final Map<ChartView.Layers, JToggleButton> layers = new EnumMap<>(ChartView.Layers.class);

    public ToolTray(Workbench bench, ChartView view, DeskActions actions) {
        super(new BorderLayout());
        this.bench = bench;
        this.view = view;
        WrappingRow row = new WrappingRow(12, 8);
        row.add(group("tray.work", stitchChoice(actions)));
        row.add(group("tray.show", layerChoice(actions)));
        row.add(group(
                "tray.look",
                plain(actions, "turn"),
                plain(actions, "zoomOut"),
                plain(actions, "zoomIn"),
                plain(actions, "fit")));
        add(row);
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                // Another width can mean another number of rows.
                revalidate();
            }
        });
        bench.listen(change -> follow());
        view.listen(this::follow);
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
            button.setText(DeskTexts.of("tray.layers." + each.name()));
            button.setMnemonic(0);
            layers.put(each, button);
        }
        Forms.oneOf(List.copyOf(layers.values()));
        return layers.values().toArray(Component[]::new);
    }

    /** Things that belong together, with a name for those who hear it. */
    private static JPanel group(String key, Component... parts) {
        JPanel group = new JPanel(new MigLayout("insets 0, gap 4"));
        group.setOpaque(false);
        group.getAccessibleContext().setAccessibleName(DeskTexts.of(key));
        for (Component part : parts) {
            group.add(part, "hmin 30");
        }
        return group;
    }

    private static JButton plain(DeskActions actions, String id) {
        JButton button = Forms.button(actions.get(id));
        button.setText(DeskTexts.of("tray." + id));
        button.setMnemonic(0);
        return button;
    }

    private void follow() {
        stitches.get(bench.stitch()).setSelected(true);
        layers.get(view.layers()).setSelected(true);
    }
}
