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

    private CanvasKeys(ChartCanvas canvas) {
        this.canvas = canvas;
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
            case "left" -> canvas.go(Heading.LEFT);
            case "right" -> canvas.go(Heading.RIGHT);
            case "up" -> canvas.go(Heading.UP);
            case "down" -> canvas.go(Heading.DOWN);
            case "home" -> canvas.goToEnd(-1);
            case "end" -> canvas.goToEnd(1);
            case "work" -> canvas.workHere(canvas.bench().stitch(), 1);
            case "takeOut" -> canvas.workHere(Stitch.BACK_LOOP, 0);
            case "takeOutBack" -> canvas.workHere(Stitch.BACK_LOOP, -1);
            case "pick" ->
                canvas.bench()
                        .choose(canvas.bench().chart().stitch(canvas.bench().cursor()));
            default -> canvas.workHere(Stitch.ofLetter(id.charAt(0)).orElseThrow(), 1);
        }
    }
}
