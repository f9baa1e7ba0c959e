package edgewright.desk.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Motif;
import edgewright.chart.NamedMotif;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Motifs that are kept in the folder of the settings. */
class MotifShelfTest {
    private static final NamedMotif GULL = new NamedMotif("Gull, small", new Motif(List.of("lb", "bl")));
    private static final NamedMotif OTHER = new NamedMotif("Gull, small", new Motif(List.of("pp")));

    @TempDir
    private Path settings;

    @Test
    void whatIsPutOnTheShelfLiesThereTheNextTimeAndNothingGivesWayToIt() throws IOException {
        MotifShelf shelf = new MotifShelf(settings);
        assertThat(shelf.all()).isEmpty();
        shelf.keep(GULL);
        shelf.keep(OTHER);
        Files.writeString(settings.resolve("motifs").resolve("wrack.motif.json"), "driftwood");

        List<MotifShelf.Kept> all = new MotifShelf(settings).all();
        assertThat(all)
                .extracting(kept -> kept.file().getFileName().toString())
                .containsExactly("gull-small-2.motif.json", "gull-small.motif.json", "wrack.motif.json");
        assertThat(all.stream().flatMap(kept -> kept.read().motif().stream())).containsExactly(OTHER, GULL);
        assertThat(all.get(2).read().problems()).hasSize(1);
    }
}
