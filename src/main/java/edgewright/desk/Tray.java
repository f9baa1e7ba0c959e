package edgewright.desk;

import edgewright.chart.Stitch;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The tray above the chart: the stitch to work, the layers to see, the turn and the size. */
final class Tray extends JPanel {
    /** The stitches in the order in which they are offered: the one that makes the pattern first. */
    static final Stitch[] ORDER = {Stitch.LONG, Stitch.BACK_LOOP, Stitch.PLAIN, Stitch.CHAIN};

    private final transient Workbench bench;
    private final transient View view;
    private final Map<Stitch, JToggleButton> stitches = new EnumMap<>(Stitch.class);
    private final Map<View.Layers, JToggleButton> layers = new EnumMap<>(View.Layers.class);

    Tray(Workbench bench, View view, Actions actions) {
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

    private Component[] stitchChoice(Actions actions) {
        for (Stitch stitch : ORDER) {
            JToggleButton button = new JToggleButton(actions.get("choose." + stitch.letter()));
            button.setName("choose." + stitch.letter());
            button.setMnemonic(0);
            button.setIcon(new StitchIcon(stitch));
            button.setIconTextGap(6);
            stitches.put(stitch, button);
        }
        List<JToggleButton> buttons = Stream.of(ORDER).map(stitches::get).toList();
        Forms.oneOf(buttons);
        return buttons.toArray(Component[]::new);
    }

    private Component[] layerChoice(Actions actions) {
        for (View.Layers each : View.Layers.values()) {
            JToggleButton button = new JToggleButton(actions.get("layers." + each.name()));
            button.setName("layers." + each.name());
            button.setText(Texts.of("tray.layers." + each.name()));
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
        group.getAccessibleContext().setAccessibleName(Texts.of(key));
        for (Component part : parts) {
            group.add(part, "hmin 30");
        }
        return group;
    }

    private static JButton plain(Actions actions, String id) {
        JButton button = Forms.button(actions.get(id));
        button.setText(Texts.of("tray." + id));
        button.setMnemonic(0);
        return button;
    }

    private void follow() {
        stitches.get(bench.stitch()).setSelected(true);
        layers.get(view.layers()).setSelected(true);
    }
}
