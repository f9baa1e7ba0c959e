package edgewright.desk.canvas;

import edgewright.desk.command.Command;
import edgewright.desk.command.Commands;
import edgewright.desk.command.Hindrance;
import edgewright.desk.tool.Mirror;
import edgewright.desk.tool.Toolbox;
import edgewright.desk.tool.Tools;

/** The tools and the mirrors as commands: {@code tool.<id>} takes a tool up, {@code mirror.<id>} puts a mirror up or away. */
final class ToolCommands {
    private final ChartCanvas canvas;

    ToolCommands(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    void addTo(Commands commands) {
        Toolbox toolbox = canvas.toolbox();
        for (Tools tool : Tools.values()) {
            commands.add(Command.of("tool." + tool.id(), () -> toolbox.take(tool))
                    .onChart()
                    .chosenWhen(() -> toolbox.tool() == tool));
        }
        commands.add(Command.of("toolDown", canvas.tools()::toggleAtCursor).onChart());
        for (Mirror mirror : Mirror.values()) {
            commands.add(Command.of("mirror." + mirror.id(), () -> toolbox.turn(mirror))
                    .onChart()
                    .when(() -> toolbox.isPossible(mirror), Hindrance.NO_SUCH_MIRROR)
                    .onWhen(() -> toolbox.isUp(mirror)));
        }
    }
}
