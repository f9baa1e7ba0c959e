package edgewright.desk.canvas;

import edgewright.chart.Stitch;
import edgewright.draw.picture.Direction;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** The keys that work on the chart while it has the focus. Which key does what lies in the texts {@code canvas.key.*}. */
public final class CanvasKeys {
    /** What the space bar does. */
    static final String AT_SPACE = "work";

    private static final List<String> IDS = Stream.of(
                    Stream.of("left", "right", "up", "down", "home", "end"),
                    Stream.of(Stitch.LETTERS.split("")),
                    Stream.of(AT_SPACE, "takeOut", "takeOutBack", "pick"),
                    Stream.of("markLeft", "markRight", "markUp", "markDown", "unmark"),
                    ToolCommands.keys())
            .flatMap(Function.identity())
            .toList();

    private final ChartCanvas canvas;
    private final CanvasWalk walk;

    private CanvasKeys(ChartCanvas canvas) {
        this.canvas = canvas;
        this.walk = new CanvasWalk(canvas);
    }

    /**
     * What a key does, for the help.
     *
     * @param shown the key as it is lettered
     */
    public record KeyHelp(String shown, String does) {}

    /** Everything that a key does on the chart, in the order in which it is looked for. */
    public static List<KeyHelp> help(Language language) {
        Messages says = language.messages("desk/canvas");
        return IDS.stream()
                .map(id -> new KeyHelp(says.text("canvas-shown-" + id), says.text("canvas-key-" + id)))
                .toList();
    }

    static void bind(ChartCanvas canvas, Language language) {
        Messages says = language.messages("desk/canvas");
        CanvasKeys keys = new CanvasKeys(canvas);
        for (String id : IDS) {
            for (String key : says.text("canvas-keys-" + id).split(",")) {
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
            case "left" -> arrow(Direction.LEFT);
            case "right" -> arrow(Direction.RIGHT);
            case "up" -> arrow(Direction.UP);
            case "down" -> arrow(Direction.DOWN);
            case "home" -> go(() -> walk.goToEnd(-1));
            case "end" -> go(() -> walk.goToEnd(1));
            case "markLeft" -> walk.mark(Direction.LEFT);
            case "markRight" -> walk.mark(Direction.RIGHT);
            case "markUp" -> walk.mark(Direction.UP);
            case "markDown" -> walk.mark(Direction.DOWN);
            case "unmark" -> canvas.cancel();
            case AT_SPACE -> work(canvas.bench().stitch(), 1);
            case "takeOut" -> work(Stitch.BACK_LOOP, 0);
            case "takeOutBack" -> work(Stitch.BACK_LOOP, -1);
            case "pick" ->
                canvas.bench()
                        .choose(canvas.bench().chart().stitch(canvas.bench().cursor()));
            default -> other(id);
        }
    }

    private void other(String id) {
        if (!ToolCommands.press(canvas, id)) {
            work(Stitch.ofLetter(id.charAt(0)).orElseThrow(), 1);
        }
    }

    private void arrow(Direction heading) {
        if (canvas.tools().isBusy()) {
            walk.draw(heading);
        } else {
            go(() -> walk.go(heading));
        }
    }

    private void go(Runnable step) {
        canvas.marking().clear();
        step.run();
    }

    /** Works a stitch where the cursor stands, or at all that is marked. */
    private void work(Stitch stitch, int onwards) {
        if (canvas.marking().isEmpty()) {
            walk.work(stitch, onwards);
        } else {
            canvas.bench()
                    .work(
                            canvas.toolbox()
                                    .symmetry()
                                    .images(
                                            canvas.bench().chart(),
                                            canvas.marking().places()),
                            stitch);
        }
    }
}
