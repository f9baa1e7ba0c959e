package edgewright.desk.work;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.draw.grid.Rotation;
import edgewright.texts.Language;
import java.util.function.Consumer;

/** How the chart is looked at: how large, how turned, which layers, how its sides are counted, for which size, and in which language. Nothing of it belongs to the chart. */
public final class ChartView {
    /** What is shown of the two layers. */
    public enum Layers {
        BOTH,
        FABRIC,
        MARKS;

        public boolean fabric() {
            return this != MARKS;
        }

        public boolean marks() {
            return this != FABRIC;
        }
    }

    /** The edges of a cell that zooming goes through, in pixels of the screen before its scaling. Whole ones stay crisp. */
    private static final int[] STEPS_PX = {3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 24, 28, 32, 40, 48, 56, 64};

    private static final int USUAL_REPEATS = 6;

    private final Listeners<ViewChange> listeners = new Listeners<>();
    private int cellPx = 18;
    private boolean fitted = true;
    private Rotation turn = Rotation.NONE;
    private Layers layers = Layers.BOTH;
    private Seeing seeing = Seeing.USUAL;
    private Counting counting;
    private final Language language;
    private final Lit lit = new Lit();
    private PerSide<Integer> repeats = PerSide.all(USUAL_REPEATS);

    public ChartView(Counting counting, Language language) {
        this.counting = counting;
        this.language = language;
    }

    /** Everything as it comes: sides counted in stitches only. */
    public ChartView(Language language) {
        this(Counting.STITCHES, language);
    }

    /** In which the desk, and what is made of the chart, speaks. */
    public Language language() {
        return language;
    }

    /** Where the words and the chart point at each other. */
    public Lit lit() {
        return lit;
    }

    /** The edge of a cell, in pixels before the scaling of the screen. */
    public int cellPx() {
        return cellPx;
    }

    public Rotation turn() {
        return turn;
    }

    public Layers layers() {
        return layers;
    }

    /** Which part of the border is drawn, for which hand, in whose colours. */
    public Seeing seeing() {
        return seeing;
    }

    public void see(Seeing how) {
        if (!seeing.equals(how)) {
            seeing = how;
            listeners.tell(ViewChange.SEEING);
        }
    }

    /** The way in which the stitches of a side are counted wherever a count stands. */
    public Counting counting() {
        return counting;
    }

    public void count(Counting way) {
        if (counting != way) {
            counting = way;
            listeners.tell(ViewChange.COUNTING);
        }
    }

    /** How often the repeat is worked on each side wherever the desk speaks of one size; opposite sides alike. */
    public PerSide<Integer> repeats() {
        return repeats;
    }

    public void resize(PerSide<Integer> size) {
        if (!repeats.equals(size)) {
            repeats = size;
            listeners.tell(ViewChange.REPEATS);
        }
    }

    /** Tells the listener what is looked at otherwise, from now on. */
    public Listening listen(Consumer<ViewChange> listener) {
        return listeners.add(listener);
    }

    /** Lets every listener go. */
    void endListening() {
        listeners.endAll();
    }

    /** Makes the cells that large, within the steps there are. A chart that was fitted is so no more if that is another size. */
    public void zoomTo(int px) {
        if (within(px) != cellPx) {
            size(within(px), false);
        }
    }

    /** Whether the chart is as large as its window lets it be, and is to stay so. */
    public boolean isFitted() {
        return fitted;
    }

    /** Notes that the chart is to be as large as its window lets it be; whoever shows it says how large that is. */
    public void fit() {
        size(cellPx, true);
    }

    /** Makes the cells of a fitted chart that large, within the steps there are; one that is not fitted stays as it is. */
    public void fitTo(int px) {
        if (fitted) {
            size(within(px), true);
        }
    }

    private void size(int px, boolean fits) {
        if (px != cellPx || fits != fitted) {
            cellPx = px;
            fitted = fits;
            listeners.tell(ViewChange.SIZE);
        }
    }

    private static int within(int px) {
        return Math.max(STEPS_PX[0], Math.min(px, STEPS_PX[STEPS_PX.length - 1]));
    }

    public boolean canZoom(int by) {
        return by > 0 ? cellPx < STEPS_PX[STEPS_PX.length - 1] : cellPx > STEPS_PX[0];
    }

    /** Goes to the next larger step, or the next smaller one if negative. */
    public void zoom(int by) {
        zoomTo(zoomed(by));
    }

    /** Shows the chart turned clockwise by a quarter more. */
    public void turnOn() {
        turnTo(turn.clockwise());
    }

    /** Shows the chart turned so. */
    void turnTo(Rotation wanted) {
        if (turn != wanted) {
            turn = wanted;
            listeners.tell(ViewChange.TURN);
        }
    }

    public void show(Layers shown) {
        if (layers != shown) {
            layers = shown;
            listeners.tell(ViewChange.LAYERS);
        }
    }

    private int zoomed(int by) {
        if (by > 0) {
            for (int step : STEPS_PX) {
                if (step > cellPx) {
                    return step;
                }
            }
        } else {
            for (int i = STEPS_PX.length - 1; i >= 0; i--) {
                if (STEPS_PX[i] < cellPx) {
                    return STEPS_PX[i];
                }
            }
        }
        return cellPx;
    }
}
