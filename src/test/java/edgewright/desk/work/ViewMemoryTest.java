package edgewright.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.draw.grid.Rotation;
import edgewright.texts.English;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A chart is looked at on the next day as it was on the last. */
class ViewMemoryTest {
    @TempDir
    private Path folder;

    private static List<Object> looks(ChartView view) {
        return List.of(view.layers(), view.turn(), view.isFitted() ? "fitted" : view.cellPx());
    }

    private Settings settings() {
        return new Settings(folder.resolve("desk.properties"));
    }

    @Test
    void layersTurnAndSizeAreThereTheNextDay() {
        ChartView view = ViewMemory.recall(settings(), English.LANGUAGE);
        assertThat(looks(view)).containsExactly(ChartView.Layers.BOTH, Rotation.NONE, "fitted");
        view.show(ChartView.Layers.FABRIC);
        view.turnOn();
        view.zoomTo(32);
        ViewMemory.keep(settings(), view);
        assertThat(looks(ViewMemory.recall(settings(), English.LANGUAGE)))
                .containsExactly(ChartView.Layers.FABRIC, Rotation.NONE.clockwise(), 32);

        view.fit();
        ViewMemory.keep(settings(), view);
        assertThat(looks(ViewMemory.recall(settings(), English.LANGUAGE)))
                .containsExactly(ChartView.Layers.FABRIC, Rotation.NONE.clockwise(), "fitted");
    }

    @Test
    void whatMakesNoSenseIsLookedAtAsItComes() {
        for (String kept : List.of("", "BOTH", "VELVET SIDEWAYS huge", "0 0 0", "BOTH NONE -18")) {
            Settings settings = settings();
            settings.keep("view", kept);
            assertThat(looks(ViewMemory.recall(settings, English.LANGUAGE)))
                    .as(kept)
                    .containsExactly(ChartView.Layers.BOTH, Rotation.NONE, "fitted");
        }
    }
}
