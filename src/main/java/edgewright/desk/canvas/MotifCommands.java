package edgewright.desk.canvas;

import edgewright.chart.Edits;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Motif;
import edgewright.chart.Stitch;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.TextClipboard;
import edgewright.desk.work.DeskTexts;
import edgewright.desk.work.Workbench;
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
    private final TextClipboard clipboard;

    /**
     * @param news is told what has happened
     */
    public MotifCommands(ChartCanvas canvas, Consumer<String> news) {
        this(canvas, news, TextClipboard.ofMachine());
    }

    MotifCommands(ChartCanvas canvas, Consumer<String> news, TextClipboard clipboard) {
        this.clipboard = clipboard;
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
        marking.motif().ifPresent(this::isCopied);
    }

    /** Takes out only what the clipboard has. */
    private void cut() {
        if (marking.motif().filter(this::isCopied).isPresent()) {
            bench.work(marking.places(), Stitch.BACK_LOOP);
        }
    }

    /** Copies and says so; false, and says why, if another program holds the clipboard. */
    private boolean isCopied(Motif motif) {
        try {
            clipboard.copy(motif.text());
            news.accept(DeskTexts.of("motif.copied", motif.rounds().size(), motif.columns()));
            return true;
        } catch (TextClipboard.BusyException e) {
            news.accept(DeskTexts.of("clipboard.busy"));
            return false;
        }
    }

    /** Works what is on the clipboard from the cursor on: outwards, and in working order. */
    private void paste(UnaryOperator<Motif> turned) {
        Optional<Motif> found;
        try {
            found = clipboard.text().flatMap(Motif::parse);
        } catch (TextClipboard.BusyException e) {
            news.accept(DeskTexts.of("clipboard.busy"));
            return;
        }
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
}
