package edgewright.desk.start;

import edgewright.chart.Chart;
import edgewright.chart.OwnMatter;
import edgewright.file.ChartFiles;
import edgewright.file.ChartText;
import edgewright.file.ReadResult;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The sample charts that come with the program. They lie in the program itself, so whoever changes one changes a copy. */
final class Samples {
    /** The names of their files without the ending, those to begin with first. */
    static final List<String> NAMES = List.of(
            "reed-bank",
            "mud-ripple",
            "tide-steps",
            "heron-walk",
            "lantern-posts",
            "mooring-rope",
            "samphire",
            "saltings",
            "sluice-gate",
            "first-try-unfinished");

    private static final String FOLDER = "/edgewright/samples/";

    private Samples() {}

    /**
     * The sample of this name as a chart without a file. The photographs and the imprint that lie beside its file are not named in
     * it, since nothing lies beside a copy; the texts of its own stay.
     */
    static Chart chart(String name) {
        String text;
        try (InputStream in = Samples.class.getResourceAsStream(FOLDER + name + ChartFiles.ENDING)) {
            if (in == null) {
                throw new IllegalArgumentException("there is no sample '" + name + "'");
            }
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Chart chart = ((ReadResult.Read) ChartText.fromJson(text)).chart();
        OwnMatter own = chart.own();
        return chart.withOwn(own.withPhotos(List.of()).withImprint(Optional.empty()));
    }
}
