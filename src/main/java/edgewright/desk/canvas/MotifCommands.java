package edgewright.desk.canvas;

import edgewright.chart.Edits;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Motif;
import edgewright.chart.Stitch;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.work.DeskTexts;
import edgewright.desk.work.Workbench;
import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * Marked stitches on their way over the clipboard to another place, another chart or a letter. There they are lines of
 * letters, a line a round.
 */
public final class MotifCommands {
    private final ChartCanvas canvas;
    private final CanvasMarking marking;
    private final Workbench bench;
    private final Consumer<String> news;

    /**
     * @param news is told what has happened
     */
    public MotifCommands(ChartCanvas canvas, Consumer<String> news) {
        this.canvas = canvas;
        this.marking = canvas.marking();
        this.bench = canvas.bench();
        this.news = news;
    }

    public void addTo(DeskActions actions) {
        actions.add("cut", this::cut, this::isMarked);
        actions.add("copy", this::copy, this::isMarked);
        actions.add("paste", () -> paste(motif -> motif));
        actions.add("pasteReversed", () -> paste(Motif::reversed));
        actions.add("unmark", marking::clear, this::isMarked);
        marking.listen(actions::refresh);
    }

    private boolean isMarked() {
        return !marking.isEmpty();
    }

    private void copy() {
        marking.motif().ifPresent(motif -> {
            clipboard().setContents(new StringSelection(motif.text()), null);
            news.accept(DeskTexts.of("motif.copied", motif.rounds().size(), motif.columns()));
        });
    }

    private void cut() {
        copy();
        bench.work(marking.places(), Stitch.BACK_LOOP);
    }

    /** Works what is on the clipboard from the cursor on: outwards, and in working order. */
    private void paste(UnaryOperator<Motif> turned) {
        Optional<Motif> found = onClipboard().flatMap(Motif::parse);
        Optional<SideStitch> at = marking.stitchIn(canvas.standing());
        if (found.isEmpty() || at.isEmpty()) {
            news.accept(DeskTexts.of("motif.none"));
            return;
        }
        Motif motif = turned.apply(found.get());
        SideStitch first = at.get();
        bench.edit(
                DeskTexts.of("edit.paste", motif.rounds().size(), motif.columns()),
                chart -> Edits.setStitches(
                        chart, motif.placed(chart, canvas.cells().repeats(), first.place())));
        marking.show(first.side(), first.place(), motif);
    }

    private static Clipboard clipboard() {
        return Toolkit.getDefaultToolkit().getSystemClipboard();
    }

    private static Optional<String> onClipboard() {
        try {
            return Optional.of((String) clipboard().getData(DataFlavor.stringFlavor));
        } catch (UnsupportedFlavorException | IOException | IllegalStateException e) {
            // It holds no text, or another program holds the clipboard just now.
            return Optional.empty();
        }
    }
}
