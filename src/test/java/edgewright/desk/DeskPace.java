package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.desk.work.Transaction;
import edgewright.texts.English;
import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.SwingUtilities;

/**
 * Measures how long the event thread is held at work on a large chart, run by hand on a display: for each step the longest
 * event by the clock and by the work of the thread itself, which tells more on a machine that does other things as well. The
 * middle one of the steps is printed, and of the work that which nine in ten do not pass. In the end an hour at the desk is gone
 * through without its pauses, and it is printed how long its events took, and what memory it left behind. Of a hundred events 99
 * should hold the thread for no more than 16 ms, and none over 50 ms, or the window is felt to lag.
 */
final class DeskPace {
    private static final int STEPS = 40;
    private static final int UNDOS = 200;
    private static final int WARM = 25;

    private final List<Place> drawn = new ArrayList<>();
    private final Clock clock = new Clock();
    private final PrintStream out;
    private final DeskFrame desk;

    /** Times each event. */
    private static final class Clock extends EventQueue {
        private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        private volatile long longestNanos;
        private volatile long mostWorkNanos;
        /** Whether the event at hand is one of this harness, that only waits for others. */
        private boolean isOwn;
        /** The work of every event, in nanoseconds; only the event thread adds to it. */
        private final List<Long> all = new ArrayList<>();

        @Override
        protected void dispatchEvent(AWTEvent event) {
            long begin = System.nanoTime();
            long work = threads.getCurrentThreadCpuTime();
            super.dispatchEvent(event);
            work = threads.getCurrentThreadCpuTime() - work;
            if (!isOwn) {
                all.add(work);
            }
            isOwn = false;
            mostWorkNanos = Math.max(mostWorkNanos, work);
            longestNanos = Math.max(longestNanos, System.nanoTime() - begin);
        }
    }

    /** What is done at each step, on the event thread. */
    private interface Step {
        void at(int number);
    }

    private DeskPace(DeskFrame desk, PrintStream out) {
        this.desk = desk;
        this.out = out;
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(clock);
    }

    /** Prints the figures; with {@code hour} those of an hour alone. */
    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("desk-pace");
        DeskFrame[] made = new DeskFrame[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.setUp(Theme.LIGHT);
            made[0] = new DeskFrame(
                    Desk.blank(English.LANGUAGE), new Settings(folder.resolve("desk.properties")), English.LANGUAGE);
            made[0].setVisible(true);
        });
        DeskPace pace = new DeskPace(made[0], new PrintStream(System.out, true, StandardCharsets.UTF_8));
        pace.out.printf("%-72s %9s %9s %9s%n", "longest event of a step, ms", "clock", "work", "work, 9/10");
        if (!List.of(args).contains("hour")) {
            pace.run();
        }
        pace.hour(large());
        System.exit(0);
    }

    private static Chart large() {
        return Chart.blank(
                "Long Shore",
                new SideShape(10, 24, 10),
                200,
                Desk.blank(English.LANGUAGE).yarns());
    }

    private void run() throws Exception {
        Chart large = large();
        lay(large, 3);
        measure("all of a chart of 200 rounds is shown another way, squares of 3", step -> {
            pressMenu(step % 2 == 0 ? "layers.MARKS" : "layers.FABRIC");
        });
        pressMenu("layers.BOTH");
        measure("marking, squares of 3", step -> mark(step, 30 + step, 60));
        clear();
        lay(large, 12);
        measure("marking, squares of 12", step -> mark(step, 170 + step % 20, 200 - step % 30));
        clear();
        measure("zooming in and out", step -> pressMenu(step % 2 == 0 ? "zoomIn" : "zoomOut"));
        measure("a step of the cursor", step -> stand(new Place(150 + step % 40, Section.REPEAT, 3)));
        Chart narrow = Chart.blank(
                "Slack Water",
                new SideShape(10, 1, 10),
                200,
                Desk.blank(English.LANGUAGE).yarns());
        lay(narrow, 12);
        measure("a step of the cursor, repeat of 1", step -> stand(new Place(150 + step % 40, Section.REPEAT, 1)));
        lay(large, 12);
        Transaction[] stroke = new Transaction[1];
        measure("a step of a stroke", step -> draw(stroke, step));
        end(stroke);
        for (String id : List.of("guide", "fitPiece")) {
            SwingUtilities.invokeAndWait(() -> pressMenu(id));
            settle();
        }
        SwingUtilities.invokeAndWait(() -> Arrays.stream(desk.getOwnedWindows()).forEach(Window::dispose));
        lay(large, 12);
        measure("a step of a stroke, round guide and piece window put away", step -> draw(stroke, step));
        end(stroke);
        findings();
    }

    /** What somebody does in an hour, each step a few times over, and the events of it all. */
    private void hour(Chart large) throws Exception {
        lay(large, 12);
        clock.mostWorkNanos = 0;
        hourOnce(Stitch.LONG);
        double before = usedMegabytes();
        SwingUtilities.invokeAndWait(clock.all::clear);
        hourOnce(Stitch.PLAIN);
        List<Long> events = new ArrayList<>();
        SwingUtilities.invokeAndWait(() -> events.addAll(clock.all));
        events.sort(null);
        out.printf(
                "%n%d events of an hour, ms of work: p50 %.2f, p99 %.1f, most %.1f; ten longest %s%n",
                events.size(),
                ms(events, 0.5),
                ms(events, 0.99),
                ms(events, 1),
                events.subList(events.size() - 10, events.size()).stream()
                        .map(nanos -> "%.0f".formatted(nanos / 1e6))
                        .toList());
        out.printf("memory after a collection, MB: %.1f before, %.1f after%n", before, usedMegabytes());
    }

    private void hourOnce(Stitch drawnAs) throws Exception {
        for (int stroke = 0; stroke < 5; stroke++) {
            int round = 150 + stroke * 2;
            steps(20, step -> strokeTo(new Place(round, Section.FROM_CORNER, 20 + step), drawnAs));
            SwingUtilities.invokeAndWait(this::endStroke);
        }
        told("strokes");
        for (String mirror : List.of("mirror.corner", "mirror.repeat")) {
            SwingUtilities.invokeAndWait(() -> pressMenu(mirror));
        }
        steps(20, step -> pressMenu(step % 2 == 0 ? "tool.line" : "tool.rectangle"));
        for (String mirror : List.of("mirror.corner", "mirror.repeat")) {
            SwingUtilities.invokeAndWait(() -> pressMenu(mirror));
        }
        told("mirrors and tools");
        steps(10, step -> {
            desk.canvas().marking().clear();
            mark(step, 170 + step, 180);
            pressMenu("motifOtherArmMirrored");
        });
        clear();
        told("motifs round the corner");
        steps(20, step -> pressMenu(step % 2 == 0 ? "zoomIn" : "zoomOut"));
        told("zoom");
        steps(UNDOS, step -> work(new Place(199, Section.REPEAT, 1 + step % 24), (step / 24 + 1) % 2));
        told("edits");
        steps(UNDOS, step -> pressMenu("undo"));
        told("undos");
        for (String view : List.of("layers.MARKS", "layers.FABRIC", "layers.BOTH", "drawn.SIDE", "drawn.CORNER")) {
            steps(1, step -> pressMenu(view));
        }
        told("views");
    }

    /** Says which part of an hour had the longest event. */
    private void told(String what) {
        out.printf("  %-70s %9.1f%n", what + ": longest, ms of work", clock.mostWorkNanos / 1e6);
        clock.mostWorkNanos = 0;
    }

    private final Transaction[] stroke = new Transaction[1];

    private void strokeTo(Place place, Stitch stitch) {
        if (stroke[0] == null) {
            stroke[0] = desk.bench().beginDrawing(Stitch.LONG);
            drawn.clear();
        }
        drawn.add(place);
        stroke[0].preview(chart -> Edits.setStitches(chart, drawn, stitch));
    }

    private void endStroke() {
        stroke[0].commit();
        stroke[0] = null;
    }

    private void steps(int times, Step step) throws Exception {
        for (int i = 0; i < times; i++) {
            int number = i;
            SwingUtilities.invokeAndWait(() -> step.at(number));
            settle();
        }
    }

    private static double ms(List<Long> sorted, double share) {
        return sorted.get((int) Math.ceil(share * sorted.size()) - 1) / 1e6;
    }

    private static double usedMegabytes() {
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1e6;
    }

    private void findings() throws Exception {
        Chart wrong = Chart.blank(
                "Wrack Line",
                new SideShape(0, 24, 10),
                200,
                Desk.blank(English.LANGUAGE).yarns());
        List<Place> places = new ArrayList<>();
        for (int r = 2; r <= 198; r += 2) {
            for (int place = 1; place <= r; place++) {
                places.add(new Place(r, Section.FROM_CORNER, place));
            }
        }
        lay(Edits.setStitches(wrong, places, Stitch.LONG), 12);
        int found = desk.bench().verdict().findings().size();
        measure(
                "an edit in round 199 with " + found + " findings",
                step -> work(new Place(199, Section.REPEAT, 1 + step / 2 % 20), 1 - step % 2));
        measure(
                "an edit in round 4 with " + found + " findings, which are all renumbered",
                step -> work(new Place(4, Section.FROM_CORNER, 2 + step / 2 % 2), step % 2));
    }

    private void work(Place place, int way) {
        desk.bench().work(List.of(place), way == 0 ? Stitch.BACK_LOOP : Stitch.LONG);
    }

    private void draw(Transaction[] stroke, int step) {
        if (stroke[0] == null) {
            stroke[0] = desk.bench().beginDrawing(Stitch.PLAIN);
            drawn.clear();
        }
        drawn.add(new Place(199, Section.FROM_CORNER, 20 + step));
        stroke[0].preview(chart -> Edits.setStitches(chart, drawn, Stitch.PLAIN));
    }

    private void end(Transaction[] stroke) throws Exception {
        SwingUtilities.invokeAndWait(stroke[0]::commit);
        stroke[0] = null;
        settle();
    }

    private void clear() throws Exception {
        SwingUtilities.invokeAndWait(() -> desk.canvas().marking().clear());
        settle();
    }

    private void mark(int step, int round, int inner) {
        GridCell from = cell(new Place(inner, Section.TO_CORNER, 5));
        desk.canvas().marking().extend(from, cell(new Place(round, Section.TO_CORNER, 5 + step % 10)));
    }

    private GridCell cell(Place place) {
        return desk.canvas().cells().cellsOf(place).get(0);
    }

    private void stand(Place place) {
        desk.canvas().standAndShow(cell(place));
    }

    private void lay(Chart chart, int cellPx) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            desk.bench().open(chart, Optional.empty());
            while (desk.actions().get("zoomOut").isEnabled()) {
                pressMenu("zoomOut");
            }
            while (size() < cellPx) {
                pressMenu("zoomIn");
            }
            stand(new Place(199, Section.FROM_CORNER, 20));
        });
        settle();
    }

    private int size() {
        return desk.canvas().boundsOf(cell(new Place(1, Section.REPEAT, 1))).width;
    }

    /** Does a command; one that is greyed is a mistake in these steps. */
    private void pressMenu(String id) {
        Action action = desk.actions().get(id);
        if (!action.isEnabled()) {
            throw new IllegalStateException(id + " is greyed");
        }
        action.actionPerformed(new ActionEvent(desk, ActionEvent.ACTION_PERFORMED, id));
    }

    private void measure(String what, Step step) throws Exception {
        double[] ms = new double[STEPS];
        double[] work = new double[STEPS];
        for (int i = -WARM; i < STEPS; i++) {
            int number = i + WARM;
            clock.longestNanos = 0;
            clock.mostWorkNanos = 0;
            SwingUtilities.invokeAndWait(() -> step.at(number));
            settle();
            if (i >= 0) {
                ms[i] = clock.longestNanos / 1e6;
                work[i] = clock.mostWorkNanos / 1e6;
            }
        }
        Arrays.sort(ms);
        Arrays.sort(work);
        out.printf("%-72s %9.1f %9.1f %9.1f%n", what, ms[STEPS / 2], work[STEPS / 2], work[STEPS * 9 / 10]);
    }

    /** Waits until what was asked for is painted: each round of the queue may ask for one more. */
    private void settle() throws Exception {
        for (int i = 0; i < 40; i++) {
            SwingUtilities.invokeAndWait(() -> clock.isOwn = true);
        }
    }
}
