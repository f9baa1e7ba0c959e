package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.Stitch;
import edgewright.desk.command.Command;
import edgewright.desk.command.Commands;
import edgewright.desk.command.Hindrance;
import edgewright.desk.guide.GuideCommands;
import edgewright.desk.jobs.DeskState;
import edgewright.desk.jobs.Lanes.Lane;
import edgewright.desk.output.PrintCommands;
import edgewright.desk.output.ProofCommands;
import edgewright.desk.output.PublishCommands;
import edgewright.desk.own.OwnCommands;
import edgewright.desk.panes.FindingsPane;
import edgewright.desk.piece.PieceOutput;
import edgewright.desk.piece.PieceWindow;
import edgewright.desk.reading.ReadingCommands;
import edgewright.desk.work.ChartCommands;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.RoundRange;
import edgewright.desk.work.Workbench;
import edgewright.desk.yarn.YarnWindow;
import java.util.Collection;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** What can be done with one document: its file, its edits, its rounds and yarns, and how it is looked at. */
final class DocumentCommands {
    private final DocumentPane pane;
    private final DeskState desk;
    private final Workbench bench;
    private final ChartView view;
    private final FormCommands forms;
    private final Commands commands = new Commands();
    private Optional<PieceWindow> piece = Optional.empty();
    private PieceOutput orders;

    /** @param lay lays a chart that was made in the document on the desk */
    DocumentCommands(DocumentPane pane, DeskState desk, Consumer<Chart> lay) {
        this.pane = pane;
        this.desk = desk;
        bench = pane.document().bench();
        view = pane.document().view();
        forms = new FormCommands(desk.window(), bench, view);
        addFileCommands(lay);
        addOutputCommands();
        addEditCommands();
        addSideCommands();
        addRoundCommands();
        addYarnCommands();
        addViewCommands();
        new SeeingCommands(pane, desk).addTo(commands);
        commands.addAll(pane.canvas().commands());
    }

    Collection<Command> all() {
        return commands.all();
    }

    private void addFileCommands(Consumer<Chart> lay) {
        BooleanSupplier canFile = () -> !desk.lanes().in(Lane.FILE).isBusy();
        commands.add("save", () -> pane.files().save(() -> {}), canFile, Hindrance.FILE_BUSY);
        commands.add("saveAs", () -> pane.files().saveAs(() -> {}), canFile, Hindrance.FILE_BUSY);
        commands.add(
                "readText",
                new ReadingCommands(desk.window(), bench, view, desk.lanes().in(Lane.PREVIEW), desk.questions(), lay)
                        ::read);
        commands.add("properties", forms::properties);
        commands.add("ownPages", new OwnCommands(desk.window(), bench, desk.questions(), desk.language())::ownPages);
        new GuideCommands(desk.window(), bench, view).addTo(commands);
    }

    /** What is made for others to read, all in one lane. */
    private void addOutputCommands() {
        BooleanSupplier canExport = () -> !desk.lanes().in(Lane.EXPORT).isBusy();
        PublishCommands publishing = new PublishCommands(
                desk.window(),
                bench,
                desk.questions(),
                desk.lanes().in(Lane.EXPORT),
                view,
                desk.settings(),
                desk.made()::made);
        ProofCommands proving =
                new ProofCommands(desk.window(), bench, view, desk.lanes().in(Lane.EXPORT));
        commands.add(Command.of("prove", proving::prove)
                .when(canExport, Hindrance.EXPORT_BUSY)
                .when(() -> !bench.verdict().hasErrors(), Hindrance.ERRORS));
        commands.add("publish", publishing::publish, canExport, Hindrance.EXPORT_BUSY);
        commands.add(
                "print",
                new PrintCommands(
                        desk.window(),
                        bench,
                        desk.questions(),
                        desk.lanes().in(Lane.EXPORT),
                        view,
                        desk.settings(),
                        desk.printers())::print,
                canExport,
                Hindrance.EXPORT_BUSY);
        commands.add("picture", publishing::picture, canExport, Hindrance.EXPORT_BUSY);
        commands.add("saveWords", publishing::words, canExport, Hindrance.EXPORT_BUSY);
        orders = new PieceOrders(publishing, canExport, desk);
    }

    private void addEditCommands() {
        commands.add("undo", bench::undo, () -> bench.undoName().isPresent(), Hindrance.NOTHING_TO_UNDO);
        commands.add("redo", bench::redo, () -> bench.redoName().isPresent(), Hindrance.NOTHING_TO_REDO);
        pane.motifs().addTo(commands);
        BooleanSupplier hasFindings = () -> !bench.verdict().findings().isEmpty();
        commands.add("nextFinding", () -> pane.findings().step(1), hasFindings, Hindrance.NO_FINDINGS);
        commands.add("previousFinding", () -> pane.findings().step(-1), hasFindings, Hindrance.NO_FINDINGS);
        for (int number = 1; number <= FindingsPane.REMEDIES_WITH_KEYS; number++) {
            int remedy = number;
            commands.add(Command.of("remedy." + remedy, () -> pane.findings().mend(remedy))
                    .onChart()
                    .when(() -> pane.findings().canMend(remedy), Hindrance.NO_REMEDY));
        }
        commands.add(Command.of("remedyForAll", pane.findings()::mendAll)
                .onChart()
                .when(pane.findings()::canMendAll, Hindrance.SINGLE_FINDING));
        commands.add(
                "evenOut",
                () -> ChartCommands.evenOut(bench),
                () -> !ChartCommands.isEven(bench),
                Hindrance.ALREADY_EVEN);
        for (Stitch stitch : Stitch.values()) {
            commands.add(Command.of("choose." + stitch.letter(), () -> bench.choose(stitch))
                    .chosenWhen(() -> bench.stitch() == stitch));
        }
    }

    private void addSideCommands() {
        BooleanSupplier isEven = () -> ChartCommands.isEven(bench);
        BooleanSupplier canShift = () -> ChartCommands.canShift(bench);
        commands.add("insertColumn", () -> ChartCommands.insertColumn(bench), isEven, Hindrance.RAGGED);
        commands.add(Command.of("deleteColumn", () -> ChartCommands.deleteColumn(bench))
                .when(isEven, Hindrance.RAGGED)
                .when(() -> ChartCommands.canDeleteColumn(bench), Hindrance.LAST_COLUMN));
        commands.add("side", forms::reshape, isEven, Hindrance.RAGGED);
        commands.add("shiftOn", () -> ChartCommands.shiftRepeat(bench, 1), canShift, Hindrance.SHORT_REPEAT);
        commands.add("shiftBack", () -> ChartCommands.shiftRepeat(bench, -1), canShift, Hindrance.SHORT_REPEAT);
        commands.add("shift", forms::shift, canShift, Hindrance.SHORT_REPEAT);
        commands.add("reverse", () -> ChartCommands.reverse(bench));
    }

    private void addRoundCommands() {
        BooleanSupplier hasRoom = () -> ChartCommands.hasRoomFor(bench, 1);
        commands.add(
                "insertOutside", () -> ChartCommands.insertOutside(bench, chosen()), hasRoom, Hindrance.MOST_ROUNDS);
        commands.add("insertInside", () -> ChartCommands.insertInside(bench, chosen()), hasRoom, Hindrance.MOST_ROUNDS);
        commands.add(
                "duplicateRounds",
                () -> ChartCommands.duplicate(bench, chosen()),
                () -> ChartCommands.hasRoomFor(bench, chosen().count()),
                Hindrance.MOST_ROUNDS);
        commands.add(
                "moveOut",
                () -> moveRounds(1),
                () -> ChartCommands.canMove(bench, chosen(), 1),
                Hindrance.NO_ROUND_BEYOND);
        commands.add(
                "moveIn",
                () -> moveRounds(-1),
                () -> ChartCommands.canMove(bench, chosen(), -1),
                Hindrance.NO_ROUND_BEYOND);
        commands.add(
                "deleteRounds",
                () -> ChartCommands.delete(bench, chosen()),
                () -> ChartCommands.canDelete(bench, chosen()),
                Hindrance.LAST_ROUND);
        commands.add("letters", forms::letters);
    }

    private void addYarnCommands() {
        BooleanSupplier isChosen = () -> pane.yarns().chosen().isPresent();
        commands.add("amounts", YarnWindow.opener(desk.window(), bench, view));
        commands.add(
                "addYarn", forms::addYarn, () -> bench.chart().yarns().size() < Chart.MOST_YARNS, Hindrance.MOST_YARNS);
        commands.add(
                "changeYarn",
                () -> pane.yarns().chosen().ifPresent(forms::changeYarn),
                isChosen,
                Hindrance.NO_YARN_CHOSEN);
        commands.add(Command.of(
                        "removeYarn",
                        () -> pane.yarns().chosen().ifPresent(yarn -> ChartCommands.removeYarn(bench, yarn)))
                .when(isChosen, Hindrance.NO_YARN_CHOSEN)
                .when(
                        () -> pane.yarns()
                                .chosen()
                                .filter(yarn -> ChartCommands.canRemove(bench.chart(), yarn))
                                .isPresent(),
                        Hindrance.YARN_NEEDED));
    }

    private void addViewCommands() {
        for (ChartView.Layers layers : ChartView.Layers.values()) {
            commands.add(Command.of("layers." + layers.name(), () -> view.show(layers))
                    .chosenWhen(() -> view.layers() == layers));
        }
        commands.add("fitPiece", () -> piece().setVisible(true));
        for (Counting way : Counting.values()) {
            commands.add(Command.of("counting." + way.name(), () -> view.count(way))
                    .chosenWhen(() -> view.counting() == way));
        }
        commands.add("turn", view::turnOn);
        commands.add("zoomIn", () -> view.zoom(1), () -> view.canZoom(1), Hindrance.LARGEST);
        commands.add("zoomOut", () -> view.zoom(-1), () -> view.canZoom(-1), Hindrance.SMALLEST);
        commands.add("fit", pane.canvas()::fit);
        commands.add("nextPane", () -> pane.walk().step(1));
        commands.add("previousPane", () -> pane.walk().step(-1));
    }

    private PieceWindow piece() {
        if (piece.isEmpty()) {
            piece = Optional.of(new PieceWindow(desk.window(), bench, view, desk.settings(), orders));
        }
        return piece.get();
    }

    private RoundRange chosen() {
        return pane.rounds().chosen();
    }

    private void moveRounds(int by) {
        RoundRange chosen = chosen();
        ChartCommands.move(bench, chosen, by);
        pane.rounds().choose(new RoundRange(chosen.first() + by, chosen.last() + by));
    }
}
