package edgewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Colour;
import edgewright.chart.Extras;
import edgewright.chart.Imprint;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.English;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ImprintFilesTest {
    private static final Imprint WHOLE = new Imprint(
            "Saltmarsh Studio",
            "post@saltmarsh.example",
            "https://saltmarsh.example/patterns",
            "\u00a9 2026 Saltmarsh Studio",
            "Sell what you make.\n\nDo *not* share the pattern.",
            "heron.png",
            Optional.of(Colour.parse("#1f5560")),
            new Extras(Map.of("motto", "[ \"low\", \"water\" ]")));

    private static final String BARE =
            "{ \"format\": \"edgewright-imprint\", \"version\": 1, \"name\": \"Saltmarsh Studio\"";

    @TempDir
    private Path folder;

    @Test
    void anImprintIsReadAsItWasWrittenWithMembersThatNobodyKnows() throws IOException {
        Path file = folder.resolve("saltmarsh.imprint.json");
        ImprintFiles.write(file, WHOLE);
        assertThat(ImprintFiles.read(file)).isEqualTo(new ImprintFiles.Read(WHOLE));
    }

    @Test
    void anImprintNeedsNoMoreThanAName() throws IOException {
        assertThat(read(BARE + " }")).isEqualTo(new ImprintFiles.Read(Imprint.of("Saltmarsh Studio")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '^',
            value = {
                "'' | : this is no imprint; expected an object in braces with the member 'format' and the text"
                        + " 'edgewright-imprint' in it",
                "[ 1 ] | : this is no imprint; expected an object in braces with the member 'format' and the text"
                        + " 'edgewright-imprint' in it",
                "{ \"format\": \"edgewright-chart\" } | : this is no imprint; expected an object in braces with the"
                        + " member 'format' and the text 'edgewright-imprint' in it",
                "{ \"format\": \"edgewright-imprint\", \"version\": 2, \"name\": 7 } | , line 1, version: the file was"
                        + " written by a newer program (version 2 of its format); expected version 1 at most",
                "{ \"format\": \"edgewright-imprint\", \"version\": 1 } | , line 1, name: the member is missing;"
                        + " expected text in double quotes",
                BARE + ", \"web\": \"saltmarsh.example\" } | , line 1, web: found 'saltmarsh.example', expected a web"
                        + " address that begins with https:// or http://, or no text",
                BARE + ", \"web\": \"javascript:alert(1)\" } | , line 1, web: found 'javascript:alert(1)', expected a"
                        + " web address that begins with https:// or http://, or no text",
                BARE + ", \"accent\": \"teal\" } | , line 1, accent: found 'teal', expected a colour as #rrggbb",
                BARE + ", \"contact\": null } | , line 1, contact: found null, expected text in double quotes",
                BARE + " | , line 1: the file ends too early; expected ',' or '}'",
            })
    void whatIsWrongWithAnImprintIsSaidInOneSentence(String text, String sentence) throws IOException {
        ImprintFiles.Problems problems = (ImprintFiles.Problems) read(text);
        assertThat(new ProblemSentences(English.LANGUAGE)
                        .of(
                                Path.of("saltmarsh.imprint.json"),
                                problems.problems().get(0)))
                .isEqualTo("saltmarsh.imprint.json" + sentence);
    }

    @Test
    void bytesThatAreNoTextAreNoImprint() throws IOException {
        Path file = Files.write(folder.resolve("heron.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G', (byte) 0xff});
        ImprintFiles.Problems problems = (ImprintFiles.Problems) ImprintFiles.read(file);
        assertThat(new ProblemSentences(English.LANGUAGE)
                        .of(Path.of("heron.png"), problems.problems().get(0)))
                .isEqualTo(
                        "heron.png: this is no imprint; expected an object in braces with the member 'format' and the"
                                + " text 'edgewright-imprint' in it");
    }

    private ImprintFiles.Result read(String text) throws IOException {
        return ImprintFiles.read(
                Files.write(folder.resolve("saltmarsh.imprint.json"), text.getBytes(StandardCharsets.UTF_8)));
    }
}
