package edgewright.desk;

import edgewright.chart.HookHand;
import edgewright.desk.command.Hindrance;
import edgewright.desk.jobs.DeskState;
import edgewright.desk.output.PieceOrder;
import edgewright.desk.output.PublishCommands;
import edgewright.desk.piece.PieceOutput;
import edgewright.fit.PatternSize;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Has patterns for one piece made by what makes all patterns, or says why that has to wait. */
record PieceOrders(PublishCommands publishing, BooleanSupplier canExport, DeskState desk) implements PieceOutput {
    @Override
    public void saveWords(PatternSize piece, HookHand hand) {
        order(publishing::words, new PieceOrder(piece, hand));
    }

    @Override
    public void publish(PatternSize piece, HookHand hand) {
        order(publishing::publish, new PieceOrder(piece, hand));
    }

    private void order(Consumer<PieceOrder> maker, PieceOrder order) {
        if (canExport.getAsBoolean()) {
            maker.accept(order);
        } else {
            desk.questions()
                    .tellSentence(
                            "news.exportBusy",
                            desk.language().messages("desk/parts").text("hindrance-" + Hindrance.EXPORT_BUSY.name()));
        }
    }
}
