package edgewright.desk;

import edgewright.chart.HookHand;
import edgewright.desk.command.Command;
import edgewright.desk.command.Commands;
import edgewright.desk.jobs.DeskState;
import edgewright.desk.parts.Look;
import edgewright.desk.scene.SceneWindow;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Seeing;
import edgewright.desk.work.ViewChange;
import edgewright.draw.paint.ColourVision;

/** What a document is seen as: the part of the border, the hand, the colours; the border as a whole; and the panes around it. */
final class SeeingCommands {
    private final DocumentPane pane;
    private final DeskState desk;
    private final ChartView view;

    SeeingCommands(DocumentPane pane, DeskState desk) {
        this.pane = pane;
        this.desk = desk;
        view = pane.document().view();
    }

    /** Adds the commands; the view is as it was last, and the panes lie as they lay last. */
    void addTo(Commands commands) {
        view.see(Seeing.of(desk.settings()));
        Look.see(view.seeing().vision());
        view.listen(change -> {
            if (change == ViewChange.SEEING) {
                view.seeing().keepIn(desk.settings());
                Look.see(view.seeing().vision());
            }
        });
        for (Seeing.Drawn drawn : Seeing.Drawn.values()) {
            commands.add(Command.of(
                            "drawn." + drawn.name(),
                            () -> view.see(view.seeing().withDrawn(drawn)))
                    .chosenWhen(() -> view.seeing().drawn() == drawn));
        }
        commands.add(Command.of("leftHand", this::changeHands).onWhen(this::isLeftHanded));
        for (ColourVision vision : ColourVision.values()) {
            commands.add(Command.of(
                            "vision." + vision.name(),
                            () -> view.see(view.seeing().withVision(vision)))
                    .chosenWhen(() -> view.seeing().vision() == vision));
        }
        commands.add("scene", SceneWindow.opener(desk.window(), pane.document().bench(), view));
        PaneFolds folds = new PaneFolds(pane, pane.document().bench(), desk.settings(), desk.language());
        folds.addTo(commands);
        folds.begin(desk.window().getWidth());
    }

    private void changeHands() {
        view.see(view.seeing().withHand(isLeftHanded() ? HookHand.RIGHT : HookHand.LEFT));
    }

    private boolean isLeftHanded() {
        return view.seeing().hand() == HookHand.LEFT;
    }
}
