package edgewright.desk;

import edgewright.chart.Stitch;
import edgewright.draw.Heading;
import java.awt.event.ActionEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** The keys that work on the chart while it has the focus. Which key does what lies in the texts {@code canvas.key.*}. */
final class CanvasKeys {
    /** Everything that a key does on the chart, in the order in which help shows it. */
    static final List<String> IDS = List.of(
            "left", "right", "up", "down", "home", "end", "b", "p", "l", "c", "work", "takeOut", "takeOutBack", "pick");

    private final ChartCanvas canvas;
    private final CanvasWalk walk;

    private CanvasKeys(ChartCanvas canvas) {
        this.canvas = canvas;
        this.walk = new CanvasWalk(canvas);
    }

    static void bind(ChartCanvas canvas) {
        CanvasKeys keys = new CanvasKeys(canvas);
        for (String id : IDS) {
            for (String key : Texts.of("canvas.key." + id + ".keys").split(",")) {
                canvas.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key.strip()), id);
            }
            canvas.getActionMap().put(id, new AbstractAction() {
                @Override
                public void actionPerformed(ActionEvent event) {
                    keys.press(id);
                }
            });
        }
    }

    private void press(String id) {
        switch (id) {
            case "left" -> walk.go(Heading.LEFT);
            case "right" -> walk.go(Heading.RIGHT);
            case "up" -> walk.go(Heading.UP);
            case "down" -> walk.go(Heading.DOWN);
            case "home" -> walk.goToEnd(-1);
            case "end" -> walk.goToEnd(1);
            case "work" -> walk.work(canvas.bench().stitch(), 1);
            case "takeOut" -> walk.work(Stitch.BACK_LOOP, 0);
            case "takeOutBack" -> walk.work(Stitch.BACK_LOOP, -1);
            case "pick" ->
                canvas.bench()
                        .choose(canvas.bench().chart().stitch(canvas.bench().cursor()));
            default -> walk.work(Stitch.ofLetter(id.charAt(0)).orElseThrow(), 1);
        }
    }
}
