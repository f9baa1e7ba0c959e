package edgewright.desk;

import edgewright.check.FindingSentences;
import edgewright.desk.command.Command;
import edgewright.desk.command.Commands;
import edgewright.desk.command.Hindrance;
import edgewright.desk.dialogs.NewChartDialog;
import edgewright.desk.jobs.DeskState;
import edgewright.desk.jobs.Lanes.Lane;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Theme;
import edgewright.desk.work.TypeSize;
import edgewright.texts.Messages;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** What can be done whatever document is in front: documents are begun, opened, closed and gone through; theme and help. */
final class DeskCommands {
    private final DeskFrame frame;
    private final DeskState desk;
    private final DeskActions actions;
    private final Messages says;
    private Optional<HelpWindow> help = Optional.empty();

    DeskCommands(DeskFrame frame, DeskState desk, DeskActions actions) {
        this.frame = frame;
        this.desk = desk;
        this.actions = actions;
        says = desk.language().messages("desk");
    }

    void addTo(Commands commands) {
        BooleanSupplier isFree = () -> !desk.lanes().in(Lane.FILE).isBusy();
        BooleanSupplier hasSeveral = () -> frame.tabs().all().size() > 1;
        commands.add("new", this::begin, isFree, Hindrance.FILE_BUSY);
        commands.add("open", () -> desk.questions().fileToOpen().ifPresent(frame::open), isFree, Hindrance.FILE_BUSY);
        commands.add(Command.of("startPage", () -> frame.deck().begin())
                .when(() -> !frame.deck().isStart(), Hindrance.START_PAGE_SHOWN));
        commands.add(Command.of("closeChart", () -> frame.close(frame.front()))
                .when(isFree, Hindrance.FILE_BUSY)
                .when(() -> !frame.deck().isStart(), Hindrance.NO_CHART_SHOWN));
        commands.add("openMade", desk.made()::open, desk.made()::isThere, Hindrance.NOTHING_MADE);
        commands.add("showMade", desk.made()::showFolder, desk.made()::isThere, Hindrance.NOTHING_MADE);
        commands.add("quit", frame::quit);
        commands.add("nextChart", () -> frame.tabs().step(1), hasSeveral, Hindrance.ONE_CHART);
        commands.add("previousChart", () -> frame.tabs().step(-1), hasSeveral, Hindrance.ONE_CHART);
        for (Theme theme : Theme.values()) {
            commands.add(Command.of("theme." + theme.name(), () -> colour(theme))
                    .chosenWhen(() -> desk.settings().theme() == theme));
        }
        for (TypeSize size : TypeSize.values()) {
            commands.add(Command.of("typeSize." + size.name(), () -> write(size))
                    .chosenWhen(() -> desk.settings().looks().size() == size));
        }
        commands.add("findCommand", this::findCommand);
        commands.add("help", () -> help().open(0));
        commands.add("laws", () -> help().open(1));
        commands.add("keys", () -> help().open(2));
        commands.add("about", () -> HelpWindow.about(frame, says));
    }

    private void begin() {
        NewChartDialog dialog =
                new NewChartDialog(frame, frame.document().view().counting(), desk.language());
        if (dialog.ask()) {
            frame.lay(dialog.chart());
        }
    }

    private void colour(Theme theme) {
        desk.settings().setTheme(theme);
        lookAgain();
    }

    private void write(TypeSize size) {
        desk.settings().choose(size);
        lookAgain();
    }

    private void lookAgain() {
        Look.setUp(desk.settings().looks());
        frame.tabs().all().forEach(DocumentPane::makeRoom);
        actions.refresh();
    }

    private void findCommand() {
        new CommandSearch(frame, actions, desk.language()).setVisible(true);
    }

    private HelpWindow help() {
        if (help.isEmpty()) {
            help = Optional.of(new HelpWindow(frame, actions, new FindingSentences(desk.language()), desk.language()));
        }
        return help.get();
    }
}
