package edgewright.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.desk.Desk;
import edgewright.desk.command.Commands;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.TextClipboard;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Theme;
import edgewright.desk.work.Workbench;
import edgewright.texts.English;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.ClipboardOwner;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** Marked stitches on their way over the clipboard. */
class MotifCommandsTest {
    private static final String BUSY =
            "Another program is using the clipboard. Nothing was copied or pasted; try again.";

    /** As the system's clipboard is while another program has opened it. */
    private static final class HeldClipboard extends Clipboard {
        HeldClipboard() {
            super("held");
        }

        @Override
        public synchronized void setContents(Transferable contents, ClipboardOwner owner) {
            throw new IllegalStateException("cannot open system clipboard");
        }

        @Override
        public Object getData(DataFlavor flavour) {
            throw new IllegalStateException("cannot open system clipboard");
        }
    }

    @Test
    void whatDoesNotFitCanBePastedWithTheRoundsThatItNeeds() throws Exception {
        List<String> news = new ArrayList<>();
        Clipboard held = new Clipboard("ours");
        held.setContents(new StringSelection("pp\nll\npp\n"), null);
        Workbench bench = new Workbench(Desk.blank(English.LANGUAGE), Optional.empty(), English.LANGUAGE);
        int rounds = bench.chart().rounds().size();
        onCanvas(bench, news, held, new Place(rounds, Section.REPEAT, 1), "pasteGrowing");

        assertThat(bench.chart().rounds()).hasSize(rounds + 2);
        assertThat(List.of(
                        bench.chart().round(rounds).repeat().letters().substring(0, 3),
                        bench.chart().round(rounds + 1).repeat().letters().substring(0, 3),
                        bench.chart().round(rounds + 2).repeat().letters().substring(0, 3)))
                .containsExactly("ppb", "llb", "ppb");
        assertThat(bench.chart().round(rounds + 2).yarn())
                .as("two yarns go on taking turns")
                .isEqualTo(bench.chart().round(rounds).yarn());
        assertThat(news).isEmpty();
        bench.undo();
        assertThat(bench.chart().rounds()).hasSize(rounds);
    }

    @Test
    void ofLettersThatAreNoMotifItIsSaidWhichLineIsWrong() throws Exception {
        List<String> news = new ArrayList<>();
        Workbench bench = new Workbench(Desk.blank(English.LANGUAGE), Optional.empty(), English.LANGUAGE);
        for (String text : List.of("bb\nbx", "bb\nb", "b+\n+b", "")) {
            Clipboard held = new Clipboard("ours");
            held.setContents(new StringSelection(text), null);
            onCanvas(bench, news, held, new Place(2, Section.REPEAT, 1), "paste");
        }

        assertThat(news)
                .containsExactly(
                        "The clipboard holds no stitches: in line 2 stands ‘x’. Stitches are the letters b, p, l and c; a dot"
                                + " is no stitch, a plus the corner.",
                        "The clipboard holds no motif: line 2 has 1 letter and the first line 2. All lines must be of one"
                                + " length; a dot is no stitch.",
                        "The clipboard holds no motif: in line 2 the plus of the corner does not stand where it stands in the"
                                + " first line.",
                        "The clipboard holds no stitches. Stitches are lines of the letters b, p, l and c.");
        assertThat(bench.undoName()).isEmpty();
    }

    private static void onCanvas(Workbench bench, List<String> news, Clipboard held, Place cursor, String action)
            throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            Look.setUp(Theme.LIGHT);
            ChartCanvas canvas = new ChartCanvas(bench, new ChartView(English.LANGUAGE));
            Commands commands = new Commands();
            new MotifCommands(canvas, news::add, new TextClipboard(() -> held)).addTo(commands);
            canvas.standAndShow(canvas.cells().cellsOf(cursor).get(0));
            commands.find(action).orElseThrow().perform();
        });
    }

    @Test
    void nothingIsCutCopiedOrPastedWhileAnotherProgramHoldsTheClipboardAndItIsSaid() throws Exception {
        List<String> news = new ArrayList<>();
        Workbench bench = new Workbench(Desk.blank(English.LANGUAGE), Optional.empty(), English.LANGUAGE);
        Chart before = bench.chart();
        SwingUtilities.invokeAndWait(() -> {
            Look.setUp(Theme.LIGHT);
            ChartCanvas canvas = new ChartCanvas(bench, new ChartView(English.LANGUAGE));
            Commands commands = new Commands();
            new MotifCommands(canvas, news::add, new TextClipboard(HeldClipboard::new)).addTo(commands);
            canvas.standAndShow(
                    canvas.cells().cellsOf(new Place(2, Section.REPEAT, 1)).get(0));
            canvas.marking().extend(canvas.standing(), canvas.standing());
            for (String id : List.of("copy", "cut", "paste")) {
                commands.find(id).orElseThrow().perform();
            }
        });

        assertThat(news).containsExactly(BUSY, BUSY, BUSY);
        assertThat(bench.chart()).isSameAs(before);
    }
}
