package edgewright.desk.work;

import edgewright.draw.grid.Rotation;
import edgewright.texts.Language;
import java.util.Locale;

/**
 * How a chart was looked at last, from one day to the next: layers, turn and size. What cannot be understood is as good as
 * nothing.
 */
public final class ViewMemory {
    private static final String NAME = "view";
    private static final String FITTED = "FITTED";

    private ViewMemory() {}

    /** A view as the settings remember it. */
    public static ChartView recall(Settings settings, Language language) {
        ChartView view = new ChartView(settings.counting(), language);
        String[] kept = settings.kept(NAME).split(" ");
        if (kept.length != 3) {
            return view;
        }
        for (ChartView.Layers layers : ChartView.Layers.values()) {
            if (layers.name().equals(kept[0])) {
                view.show(layers);
            }
        }
        for (Rotation turn : Rotation.values()) {
            if (turn.name().equals(kept[1])) {
                view.turnTo(turn);
            }
        }
        if (kept[2].matches("[1-9]\\d{0,2}")) {
            view.zoomTo(Integer.parseInt(kept[2]));
        }
        return view;
    }

    /** Has the settings remember a view. */
    public static void keep(Settings settings, ChartView view) {
        String size = view.isFitted() ? FITTED : String.format(Locale.ROOT, "%d", view.cellPx());
        settings.keep(NAME, view.layers() + " " + view.turn() + " " + size);
    }
}
