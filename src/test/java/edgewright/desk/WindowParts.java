package edgewright.desk;

import static org.assertj.swing.edt.GuiActionRunner.execute;
import static org.assertj.swing.timing.Pause.pause;

import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.HookHand;
import edgewright.chart.Place;
import edgewright.desk.parts.Look;
import edgewright.desk.piece.PieceOutput;
import edgewright.desk.piece.PieceWindow;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.fit.PatternSize;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.assertj.swing.timing.Condition;

/** Finds the parts of a window by their names, and waits for what is to come of a deed. */
public final class WindowParts {
    /** How large a desk is shown. Packed, its row of tools would be wider than the display. */
    static final Dimension SIZE = new Dimension(1400, 900);

    private static final long LONGEST_MS = 30_000;

    private WindowParts() {}

    /** A desk with a chart on it, not shown yet, that keeps its settings in a folder. */
    public static DeskFrame desk(Chart chart, Path folder) {
        return execute(() -> {
            Look.setUp(Theme.LIGHT);
            return new DeskFrame(chart, new Settings(folder.resolve("desk.properties")), English.LANGUAGE);
        });
    }

    /** A desk with a new chart on it, shown, that keeps its settings in a folder. */
    static DeskFrame shownDesk(Path folder) {
        DeskFrame desk = desk(Desk.blank(English.LANGUAGE), folder);
        execute(() -> desk.setVisible(true));
        return desk;
    }

    /** The piece window of a desk, not shown yet, of which no pattern can be made. */
    public static PieceWindow pieceWindow(DeskFrame desk, ChartView view, Path folder) {
        PieceOutput none = new PieceOutput() {
            @Override
            public void saveWords(PatternSize piece, HookHand hand) {
                throw new AssertionError("words");
            }

            @Override
            public void publish(PatternSize piece, HookHand hand) {
                throw new AssertionError("pages");
            }
        };
        return execute(
                () -> new PieceWindow(desk, desk.bench(), view, new Settings(folder.resolve("desk.properties")), none));
    }

    /** The first part of this name, however deep it lies. */
    public static Component named(Container in, String name) {
        return execute(() -> parts(in).stream()
                .filter(part -> name.equals(part.getName()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name)));
    }

    /** The button of the first remedy, once it is found. */
    static Component remedy(DeskFrame desk) {
        until(
                "remedies are found",
                () -> execute(() -> parts(desk).stream().anyMatch(part -> "remedy1".equals(part.getName()))));
        return named(desk, "remedy1");
    }

    /** The middle of a drawn cell of the chart, on the screen. */
    static Point onScreen(DeskFrame desk, GridCell cell) {
        return execute(() -> {
            Rectangle at = desk.canvas().boundsOf(cell);
            Point point = desk.canvas().getLocationOnScreen();
            point.translate((int) at.getCenterX(), (int) at.getCenterY());
            return point;
        });
    }

    /** The first drawn cell of a place, on the arm that is worked to the left. */
    static GridCell cell(DeskFrame desk, Place place) {
        return execute(() -> desk.canvas().cells().cellsOf(place).get(0));
    }

    /** Every part within, each before its own parts. To be asked on the event thread. */
    public static List<Component> parts(Container of) {
        List<Component> parts = new ArrayList<>();
        for (Component part : of.getComponents()) {
            parts.add(part);
            if (part instanceof Container container) {
                parts.addAll(parts(container));
            }
        }
        return parts;
    }

    /** Waits for something to come true: as long as it takes, within reason. */
    public static void until(String what, Callable<Boolean> isSo) {
        pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        try {
                            return isSo.call();
                        } catch (Exception | AssertionError e) {
                            // AssertJ throws exceptions on, but passes over errors as if it had come true.
                            throw new IllegalStateException(e);
                        }
                    }
                },
                LONGEST_MS);
    }
}
