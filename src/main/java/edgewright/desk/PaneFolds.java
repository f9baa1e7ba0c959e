package edgewright.desk;

import static edgewright.texts.Arg.count;

import edgewright.desk.command.Commands;
import edgewright.desk.parts.KeptSplit;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Workbench;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Component;
import java.awt.Container;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The panes around the chart that fold to one line, by key and by click. How they lie is remembered; until somebody has said
 * anything, a window that has no room for all of them begins with the words and the findings folded.
 */
final class PaneFolds {
    /** Below this width the chart would be narrower than what stands around it. */
    private static final int ROOM_FOR_ALL_PX = 1200;

    private static final String KEPT = "fold.";

    /** The panes by the splits that keep them, in the order of their keys. */
    private static final Map<String, String> PANES = panes();

    private final Map<String, KeptSplit> splits = new LinkedHashMap<>();
    private final Settings settings;
    private final Workbench bench;
    private final Messages says;

    /** Takes the splits that are found in the panes of a document. */
    PaneFolds(Container content, Workbench bench, Settings settings, Language language) {
        this.settings = settings;
        this.bench = bench;
        says = language.messages("desk");
        find(content);
        splits.forEach((pane, split) -> split.whenFolded(() -> settings.keep(KEPT + pane, split.isFolded() + "")));
        bench.listen(change -> {
            if (change.ofChart()) {
                name();
            }
        });
        name();
    }

    private static Map<String, String> panes() {
        Map<String, String> panes = new LinkedHashMap<>();
        panes.put("deskSplit", "findings");
        panes.put("wordsSplit", "words");
        panes.put("sideSplit", "side");
        panes.put("roundsSplit", "yarns");
        return panes;
    }

    private void find(Container from) {
        for (Component part : from.getComponents()) {
            if (part instanceof KeptSplit split && PANES.containsKey(split.getName())) {
                splits.put(PANES.get(split.getName()), split);
            }
            if (part instanceof Container inner) {
                find(inner);
            }
        }
    }

    /** Lays the panes as they lay last. */
    void begin(int widthPx) {
        splits.forEach((pane, split) -> {
            String kept = settings.kept(KEPT + pane);
            boolean small = widthPx < ROOM_FOR_ALL_PX && (pane.equals("words") || pane.equals("findings"));
            if (kept.isEmpty() ? small : Boolean.parseBoolean(kept)) {
                split.whenFolded(() -> {});
                split.fold(true);
                split.whenFolded(() -> settings.keep(KEPT + pane, split.isFolded() + ""));
            }
        });
    }

    private void name() {
        splits.forEach((pane, split) -> split.name(
                says.text(
                        "fold-" + pane,
                        count("findings", bench.verdict().findings().size())),
                says.text("fold-tip")));
    }

    void addTo(Commands commands) {
        splits.forEach((pane, split) -> commands.add("fold." + pane, () -> split.fold(!split.isFolded())));
        commands.add("fold.all", () -> {
            boolean fold = splits.values().stream().anyMatch(split -> !split.isFolded());
            splits.values().forEach(split -> split.fold(fold));
        });
    }
}
