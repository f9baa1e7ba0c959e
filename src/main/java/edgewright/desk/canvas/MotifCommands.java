package edgewright.desk.canvas;

import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Motif;
import edgewright.chart.Place;
import edgewright.chart.Stitch;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.TextClipboard;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.Workbench.Deed;
import edgewright.desk.work.WorkbenchChange;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
    private final Messages says;
    private final Messages common;
    private final Consumer<String> news;
    private final TextClipboard clipboard;
    private Optional<Pasted> pasted = Optional.empty();

    /** A chart as a paste has left it, and the places that were marked by it. */
    private record Pasted(Chart chart, Set<Place> marked) {}

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
        says = canvas.says();
        common = canvas.common();
        this.news = news;
        bench.listen(this::changed);
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
            news.accept(says.text(
                    "motif-copied", count("rounds", motif.rounds().size()), count("columns", motif.columns())));
            return true;
        } catch (TextClipboard.BusyException e) {
            news.accept(common.text("clipboard-busy"));
            return false;
        }
    }

    /** Works what is on the clipboard from the cursor on: outwards, and in working order. */
    private void paste(UnaryOperator<Motif> turned) {
        Optional<Motif> found;
        try {
            found = clipboard.text().flatMap(Motif::parse);
        } catch (TextClipboard.BusyException e) {
            news.accept(common.text("clipboard-busy"));
            return;
        }
        Optional<SideStitch> at = marking.stitchIn(canvas.standing());
        if (found.isEmpty() || at.isEmpty()) {
            news.accept(says.text("motif-none"));
            return;
        }
        Motif motif = turned.apply(found.get());
        SideStitch first = at.get();
        Motif.Placed placed =
                motif.placed(bench.chart(), first.side(), canvas.cells().repeats(), first.place());
        int rounds = motif.rounds().size() - placed.roundsBeyond();
        bench.edit(
                says.text("edit-paste", count("rounds", rounds), count("columns", motif.columns())),
                chart -> Edits.setStitches(chart, placed.stitches()));
        marking.show(first.side(), first.place(), new Motif(motif.rounds().subList(0, rounds)));
        pasted = Optional.of(new Pasted(bench.chart(), marking.places()));
        tellWhatDidNotFit(placed, rounds);
    }

    /** Says what of a motif did not come onto the chart; nothing where all of it did, which the edit says itself. */
    private void tellWhatDidNotFit(Motif.Placed placed, int rounds) {
        List<String> sentences = new ArrayList<>();
        sentences.add(says.text("motif-pasted", count("rounds", rounds)));
        if (placed.roundsBeyond() > 0) {
            sentences.add(says.text("motif-roundsBeyond", count("rounds", placed.roundsBeyond())));
        }
        if (placed.stitchesBeyond() > 0) {
            sentences.add(says.text("motif-stitchesBeyond", count("stitches", placed.stitchesBeyond())));
        }
        if (placed.stitchesOver() > 0) {
            sentences.add(says.text("motif-stitchesOver", count("stitches", placed.stitchesOver())));
        }
        if (sentences.size() > 1) {
            news.accept(String.join(" ", sentences));
        }
    }

    /** When what was pasted is undone, what shows where it lies goes with it, unless something else is marked by now. */
    private void changed(WorkbenchChange change) {
        boolean undone = change.kind() == WorkbenchChange.Kind.EDITED
                && bench.lastDeed()
                        .filter(deed -> deed.way() == Deed.Way.UNDONE)
                        .isPresent()
                && pasted.filter(of -> of.chart().equals(change.before())).isPresent();
        if (undone && marking.places().equals(pasted.orElseThrow().marked())) {
            marking.clear();
        }
    }
}
