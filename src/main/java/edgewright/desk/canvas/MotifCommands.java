package edgewright.desk.canvas;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Motif;
import edgewright.chart.MotifSpot;
import edgewright.chart.MotifText;
import edgewright.chart.Place;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.desk.command.Command;
import edgewright.desk.command.Commands;
import edgewright.desk.command.Hindrance;
import edgewright.desk.parts.TextClipboard;
import edgewright.desk.work.ChartCommands;
import edgewright.desk.work.Selection;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.Workbench.Deed;
import edgewright.desk.work.WorkbenchChange;
import edgewright.draw.picture.Arm;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * Marked stitches as motifs: over the clipboard to another place, another chart or a letter, where they are lines of letters, a
 * line a round; and turned, carried to the other arm and repeated on the chart itself. What is worked is worked under the
 * mirrors.
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

    /** A chart as a motif has left it, and the places that were marked by it. */
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
        canvas.tools().whenDropped(placed -> tellWhatDidNotFit(placed, says.text("motif-dropped")));
    }

    /** Adds what they do to the commands of a document. */
    public void addTo(Commands commands) {
        commands.add("cut", this::cut, this::isMarked, Hindrance.NOTHING_MARKED);
        commands.add("copy", this::copy, this::isMarked, Hindrance.NOTHING_MARKED);
        commands.add("paste", () -> paste(motif -> motif, false));
        commands.add("pasteReversed", () -> paste(Motif::reversed, false));
        commands.add("pasteGrowing", () -> paste(motif -> motif, true));
        commands.add("motifFlipAlong", () -> flip(Motif::reversed), this::isMarked, Hindrance.NOTHING_MARKED);
        addOnOneArm(commands, "motifFlipOutwards", () -> flip(Motif::upsideDown));
        addOnOneArm(commands, "motifOtherArmRotated", () -> carry(motif -> motif));
        addOnOneArm(commands, "motifOtherArmMirrored", () -> carry(Motif::reversed));
        addOnOneArm(commands, "motifRepeatAlong", this::repeat);
        commands.add(Command.of("motifLift", this::lift).onChart().when(this::isMarked, Hindrance.NOTHING_MARKED));
    }

    private void addOnOneArm(Commands commands, String id, Runnable deed) {
        commands.add(Command.of(id, deed)
                .when(this::isMarked, Hindrance.NOTHING_MARKED)
                .when(this::isOnOneArm, Hindrance.ROUND_THE_CORNER));
    }

    private boolean isMarked() {
        return !marking.isEmpty();
    }

    private boolean isOnOneArm() {
        return marking.selection().filter(of -> !of.roundCorner()).isPresent();
    }

    private void copy() {
        marking.motif().ifPresent(this::isCopied);
    }

    /** Takes out only what the clipboard has. */
    private void cut() {
        if (marking.motif().filter(this::isCopied).isPresent()) {
            bench.work(canvas.toolbox().symmetry().images(bench.chart(), marking.places()), Stitch.BACK_LOOP);
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
    private void paste(UnaryOperator<Motif> turned, boolean growing) {
        try {
            Optional<String> text = clipboard.text();
            MotifText read = text.map(MotifText::of).orElseGet(MotifText.Empty::new);
            read.found()
                    .ifPresentOrElse(motif -> work(turned.apply(motif), growing), () -> news.accept(whatIsWrong(read)));
        } catch (TextClipboard.BusyException e) {
            news.accept(common.text("clipboard-busy"));
        }
    }

    private String whatIsWrong(MotifText read) {
        if (read instanceof MotifText.UnknownLetter unknown) {
            return says.text("motif-unknownLetter", number("line", unknown.line()), arg("letter", unknown.letter()));
        }
        if (read instanceof MotifText.OtherLength other) {
            return says.text(
                    "motif-otherLength",
                    number("line", other.line()),
                    count("letters", other.letters()),
                    count("expected", other.expected()));
        }
        return read instanceof MotifText.OtherCorner other
                ? says.text("motif-otherCorner", number("line", other.line()))
                : says.text("motif-none");
    }

    /**
     * Works a motif from the cursor on: outwards, and in working order. One that goes round a corner is worked round the drawn
     * one, from the cursor's round on.
     *
     * @param growing whether the chart gets the rounds that it lacks
     */
    public void work(Motif motif, boolean growing) {
        Optional<SideStitch> at = marking.stitchIn(canvas.standing());
        if (at.isEmpty()) {
            news.accept(says.text("motif-noCursor"));
            return;
        }
        Side side = motif.corner().isPresent() ? Arm.INCOMING.side() : at.get().side();
        MotifSpot spot = MotifSpot.at(side, at.get().place());
        int rounds = bench.chart().rounds().size();
        int lacking = Math.min(Chart.MOST_ROUNDS, spot.round() + motif.rounds().size() - 1) - rounds;
        UnaryOperator<Chart> grown = chart -> growing && lacking > 0 ? ChartCommands.grown(chart, lacking) : chart;
        Motif.Placed placed = motif.placed(grown.apply(bench.chart()), spot, repeats());
        int pastedRounds = motif.rounds().size() - placed.roundsBeyond();
        bench.edit(
                says.text("edit-paste", count("rounds", pastedRounds), count("columns", motif.columns())),
                chart -> worked(grown.apply(chart), placed.stitches()));
        canvas.requestFocusInWindow();
        // With less of its rounds a motif round a corner begins farther from it; it is marked from there.
        show(bench.chart(), motif, spot, pastedRounds);
        tellWhatDidNotFit(placed, says.text("motif-pasted", count("rounds", pastedRounds)));
    }

    private void show(Chart chart, Motif motif, MotifSpot spot, int rounds) {
        Selection covered = Selection.of(chart, motif, spot, repeats());
        Motif.RoundRun run = new Motif.RoundRun(spot.round(), spot.round() + Math.max(1, rounds) - 1);
        marking.show(
                new Selection(covered.side(), run, covered.firstColumn(), covered.lastColumn(), covered.roundCorner()));
        pasted = Optional.of(new Pasted(bench.chart(), marking.places()));
    }

    /** Works what is marked turned where it lies. */
    private void flip(UnaryOperator<Motif> turned) {
        Selection marked = marking.selection().orElseThrow();
        Motif motif = turned.apply(marking.motif().orElseThrow());
        MotifSpot spot = marked.spot();
        Motif.Placed placed = motif.placed(bench.chart(), spot, repeats());
        bench.edit(says.text("edit-motif-flip"), chart -> worked(chart, placed.stitches()));
        marking.show(Selection.of(bench.chart(), motif, spot, repeats()));
        tellWhatDidNotFit(placed, says.text("motif-flipped"));
    }

    /** Works what is marked also on the other arm, as far from the corner. */
    private void carry(UnaryOperator<Motif> turned) {
        Selection marked = marking.selection().orElseThrow();
        Motif motif = turned.apply(marking.motif().orElseThrow());
        Selection there = marked.carried(bench.chart(), repeats(), marked.side() == Arm.INCOMING.side())
                .orElseThrow();
        Motif.Placed placed = motif.placed(bench.chart(), there.spot(), repeats());
        bench.edit(says.text("edit-motif-otherArm"), chart -> worked(chart, placed.stitches()));
        marking.show(there);
        tellWhatDidNotFit(placed, says.text("motif-carried"));
    }

    /** Works what is marked over and over along the whole side. */
    private void repeat() {
        Selection marked = marking.selection().orElseThrow();
        Motif motif = marking.motif().orElseThrow();
        Motif.Placed placed = motif.repeated(bench.chart(), marked.spot(), repeats());
        bench.edit(says.text("edit-motif-repeat"), chart -> worked(chart, placed.stitches()));
        int w = bench.chart().shape(marked.side()).w();
        if (w % motif.columns() == 0) {
            news.accept(says.text("motif-repeated"));
        } else {
            news.accept(says.text("motif-repeatedUneven", count("columns", motif.columns()), count("width", w)));
        }
    }

    private void lift() {
        canvas.requestFocusInWindow();
        canvas.tools().liftAtCursor();
    }

    private Chart worked(Chart chart, Map<Place, Stitch> stitches) {
        return Edits.setStitches(chart, canvas.toolbox().symmetry().images(chart, stitches));
    }

    private int repeats() {
        return canvas.repeats();
    }

    /**
     * Says what of a motif did not come onto the chart; nothing where all of it did, which the edit says itself.
     *
     * @param done what was done with the rest
     */
    private void tellWhatDidNotFit(Motif.Placed placed, String done) {
        List<String> sentences = new ArrayList<>();
        sentences.add(done);
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
