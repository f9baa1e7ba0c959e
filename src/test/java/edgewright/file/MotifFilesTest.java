package edgewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Extras;
import edgewright.chart.Motif;
import edgewright.chart.NamedMotif;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.English;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Motif files: read as written, and bad ones refused in a sentence. */
class MotifFilesTest {
    private static final NamedMotif GULL = new NamedMotif(
            "Gull", new Motif(List.of("l.+.l", "bl+lb")), new Extras(Map.of("from", "[ \"a\", \"friend\" ]")));

    private static final String HEAD = "{ \"format\": \"edgewright-motif\", \"version\": 1, \"name\": \"Gull\"";

    @TempDir
    private Path folder;

    @Test
    void aMotifIsReadAsItWasWrittenWithMembersThatNobodyKnows() throws IOException {
        Path file = folder.resolve("shelf").resolve("gull.motif.json");
        MotifFiles.write(file, GULL);

        assertThat(MotifFiles.read(file)).isEqualTo(new MotifFiles.Result(Optional.of(GULL), List.of()));
        assertThat(Files.readString(file)).isEqualTo("""
                {
                  "format": "edgewright-motif",
                  "version": 1,
                  "name": "Gull",
                  "rounds": [
                    "l.+.l",
                    "bl+lb"
                  ],
                  "from": [ "a", "friend" ]
                }
                """);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '^',
            value = {
                "{ \"format\": \"edgewright-chart\" } | this is no motif; expected an object in braces with the member"
                        + " 'format' and the text 'edgewright-motif' in it",
                "HEAD } | rounds: the member is missing; expected a list in square brackets",
                "HEAD, \"rounds\": [] } | rounds:",
                "HEAD, \"rounds\": [ \"blx\" ] } | 'x'",
                "HEAD, \"rounds\": [ \"bl\", \"b\" ] } | round 2 of the motif is not like its first round; expected as many"
                        + " letters, and the corner at the same letter",
            })
    void whatIsNoMotifIsRefusedInASentence(String text, String sentence) throws IOException {
        Path file = Files.writeString(folder.resolve("odd.motif.json"), text.replace("HEAD", HEAD));
        MotifFiles.Result read = MotifFiles.read(file);

        assertThat(read.motif()).isEmpty();
        assertThat(new ProblemSentences(English.LANGUAGE)
                        .of(file, read.problems().get(0)))
                .contains(sentence);
    }
}
