package edgewright.desk.canvas;

import edgewright.chart.Stitch;
import edgewright.desk.command.Command;
import edgewright.desk.command.Commands;
import edgewright.desk.command.Hindrance;
import edgewright.draw.grid.Direction;

/** What is done with the cursor on the chart: going, marking, working stitches one after the other. */
final class CanvasCommands {
    private final ChartCanvas canvas;
    private final CanvasWalk walk;

    CanvasCommands(ChartCanvas canvas) {
        this.canvas = canvas;
        this.walk = new CanvasWalk(canvas);
    }

    void addTo(Commands commands) {
        step(commands, "left", Direction.LEFT);
        step(commands, "right", Direction.RIGHT);
        step(commands, "up", Direction.UP);
        step(commands, "down", Direction.DOWN);
        add(commands, "go.first", () -> go(() -> walk.goToEnd(-1)));
        add(commands, "go.last", () -> go(() -> walk.goToEnd(1)));
        for (Stitch stitch : Stitch.values()) {
            add(commands, "work." + stitch.letter(), () -> work(stitch, 1));
        }
        add(commands, "workHere", () -> work(canvas.bench().stitch(), 1));
        add(commands, "takeOut", () -> work(Stitch.BACK_LOOP, 0));
        add(commands, "takeOutBack", () -> work(Stitch.BACK_LOOP, -1));
        add(
                commands,
                "pick",
                () -> canvas.bench()
                        .choose(canvas.bench().chart().stitch(canvas.bench().cursor())));
        new ToolCommands(canvas).addTo(commands);
        commands.add(Command.of("unmark", canvas::cancel)
                .onChart()
                .when(() -> !canvas.marking().isEmpty() || canvas.isDrawing(), Hindrance.NOTHING_MARKED));
    }

    private void step(Commands commands, String way, Direction heading) {
        add(commands, "go." + way, () -> arrow(heading));
        add(commands, "mark." + way, () -> walk.mark(heading));
    }

    private static void add(Commands commands, String id, Runnable deed) {
        commands.add(Command.of(id, deed).onChart());
    }

    /** Goes on with the tool that is down, else with the cursor. */
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
