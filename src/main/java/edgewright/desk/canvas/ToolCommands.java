package edgewright.desk.canvas;

import edgewright.chart.Place;
import edgewright.chart.Stitch;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.tool.Mirror;
import edgewright.desk.tool.Toolbox;
import edgewright.desk.tool.Tools;
import java.util.stream.Stream;

/** The tools and the mirrors as commands: {@code tool.<id>} takes a tool up, {@code mirror.<id>} puts a mirror up or away. */
public final class ToolCommands {
    private static final String TOOL = "tool-";
    private static final String MIRROR = "mirror-";

    private final ChartCanvas canvas;

    public ToolCommands(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    public void addTo(DeskActions actions) {
        Toolbox toolbox = canvas.toolbox();
        for (Tools tool : Tools.values()) {
            actions.add("tool." + tool.id(), () -> toolbox.take(tool));
        }
        actions.add("workHere", () -> work(canvas.bench().stitch()));
        actions.add("takeOut", () -> work(Stitch.BACK_LOOP));
        for (Mirror mirror : Mirror.values()) {
            actions.add("mirror." + mirror.id(), () -> toolbox.turn(mirror), () -> toolbox.isPossible(mirror));
        }
    }

    /** Works a stitch at the cursor and at its mirror images. */
    private void work(Stitch stitch) {
        Place cursor = canvas.bench().cursor();
        canvas.bench().work(canvas.toolbox().underMirrors(cursor), stitch);
    }

    /** The names of what keys do with tools on the chart, in the order in which it is looked for. */
    static Stream<String> keys() {
        return Stream.of(
                        Stream.of("toolDown", "lift"),
                        Stream.of(Tools.values()).map(tool -> TOOL + tool.id()),
                        Stream.of(Mirror.values()).map(mirror -> MIRROR + mirror.id()))
                .flatMap(names -> names);
    }

    /** Does what a key does with tools; false if it is no such key. */
    static boolean press(ChartCanvas canvas, String key) {
        for (Tools tool : Tools.values()) {
            if (key.equals(TOOL + tool.id())) {
                canvas.toolbox().take(tool);
                return true;
            }
        }
        for (Mirror mirror : Mirror.values()) {
            if (key.equals(MIRROR + mirror.id())) {
                if (canvas.toolbox().isPossible(mirror)) {
                    canvas.toolbox().turn(mirror);
                }
                return true;
            }
        }
        switch (key) {
            case "toolDown" -> canvas.tools().toggleAtCursor();
            case "lift" -> canvas.tools().liftAtCursor();
            default -> {
                return false;
            }
        }
        return true;
    }
}
