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
import java.awt.datatransfer.Transferable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** Marked stitches while another program holds the clipboard. */
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
