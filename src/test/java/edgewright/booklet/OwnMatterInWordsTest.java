package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.own.OwnFiles;
import edgewright.booklet.own.PrintedMatter;
import edgewright.chart.Chart;
import edgewright.chart.OwnMatter;
import edgewright.chart.OwnSection;
import edgewright.chart.Photo;
import edgewright.chart.Terms;
import edgewright.testing.Pictures;
import edgewright.texts.English;
import edgewright.words.write.WordingOptions;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import nu.validator.client.EmbeddedValidator;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The designer's photographs, texts and imprint in the words of a pattern. */
class OwnMatterInWordsTest {
    private static final OwnMatter OWN = new OwnMatter(
            List.of(
                    new Photo("shore.jpg", "A shore \"at low water\" & reeds", "The <sea> wall", Photo.At.COVER),
                    new Photo("shore.jpg", "Reeds", "", Photo.At.JOINING),
                    new Photo("shore.jpg", "The shore again", "Twice", Photo.At.GALLERY)),
            List.of(
                    new OwnSection(
                            "Introduction",
                            "Of *winter* walks; see [the studio](https://saltmarsh.example/?a=1&b=2).\n\n"
                                    + "- salt\n- sand\n  3. eel\n\n  1. cod\n\n<b>As typed</b> & more"),
                    new OwnSection("Finishing", "1986 was **dry**.")),
            Optional.of("saltmarsh.imprint.json"));

    @TempDir
    private Path folder;

    private static Chart chart() {
        return Published.sample("reed-bank").withOwn(OWN);
    }

    private PrintedMatter matter() throws IOException {
        Files.write(folder.resolve("shore.jpg"), Pictures.jpeg(Pictures.shore(1800, 1200)));
        Files.writeString(folder.resolve("saltmarsh.imprint.json"), """
                { "format": "edgewright-imprint", "version": 1, "name": "Saltmarsh Studio",
                  "contact": "post@saltmarsh.example", "web": "https://saltmarsh.example",
                  "copyright": "\u00a9 2026 Saltmarsh Studio", "use": "Sell *what you make*." }
                """);
        return ((OwnFiles.Read) OwnFiles.read(OWN, folder.resolve("reed-bank.border.json"), Optional.empty())).matter();
    }

    private String written(WordsFormat format, List<Terms> terms) throws IOException {
        Chart chart = chart();
        return format.write(chart, WordingOptions.of(chart, English.LANGUAGE), terms, matter(), English.LANGUAGE);
    }

    /** Pieces of a text, one after the other. AssertJ has a check of its own for it, which takes twenty seconds over a page. */
    private static void assertInOrder(String text, String... pieces) {
        int from = 0;
        for (String piece : pieces) {
            int at = text.indexOf(piece, from);
            assertThat(at).as("'%s' after '%s'", piece, text.substring(0, from)).isNotNegative();
            from = at + piece.length();
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aPageWithPhotographsIsOneFileOfValidHtml(boolean both) throws Exception {
        String page = written(WordsFormat.HTML, both ? List.of(Terms.UK, Terms.US) : List.of(Terms.UK));
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        assertThat(validator.validate(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8))))
                .isEmpty();
        String withoutPictures = page.replaceAll("base64,[A-Za-z0-9+/=]+", "base64,");
        String picture =
                "<img src=\"data:image/jpeg;base64,\" alt=\"%s\" width=\"1200\" height=\"800\" loading=\"lazy\">";
        assertInOrder(
                withoutPictures,
                picture.formatted("A shore &quot;at low water&quot; &amp; reeds"),
                "<figcaption>The &lt;sea&gt; wall</figcaption>",
                "</header>",
                "<a href=\"#own-0\">Introduction</a>",
                "<a href=\"#own-1\">Finishing</a>",
                "<h2 id=\"own-0\">Introduction</h2>",
                "Of <em>winter</em> walks; see <a href=\"https://saltmarsh.example/?a=1&amp;b=2\">the studio</a>.",
                "<ul>",
                "<li>\n<p>salt</p>",
                "<p>&lt;b&gt;As typed&lt;/b&gt; &amp; more</p>",
                picture.formatted("Reeds"),
                "<h2 id=\"own-1\">Finishing</h2>",
                "<p>1986 was <strong>dry</strong>.</p>",
                "<h2 id=\"own-2\">Photographs</h2>",
                picture.formatted("The shore again"),
                "<footer class=\"own\">",
                "<a href=\"mailto:post@saltmarsh.example\">post@saltmarsh.example</a>",
                "\u00a9 2026 Saltmarsh Studio",
                "<p>Sell <em>what you make</em>.</p>",
                "</html>");
        assertThat(withoutPictures.split("<img ", -1)).hasSize(4);
    }

    @Test
    void plainTextTellsTheTextsIndentedAndWhatThePicturesShow() throws IOException {
        String text = written(WordsFormat.TEXT, List.of(Terms.UK));
        String heading = "From the designer\n-----------------\n";
        assertThat(text).contains("Designed by Saltmarsh Studio\n\n" + heading + """
                  Introduction

                  Of winter walks; see the studio (https://saltmarsh.example/?a=1&b=2).

                    - salt
                    - sand 3. eel
                """.indent(0));
        assertThat(text).endsWith(heading + """
                  Finishing

                  1986 was dry.

                  Photographs

                    - The <sea> wall (A shore "at low water" & reeds)
                    - Reeds
                    - Twice (The shore again)

                    - Published by: Saltmarsh Studio
                    - Contact: post@saltmarsh.example
                    - Web: https://saltmarsh.example
                    - Copyright: \u00a9 2026 Saltmarsh Studio
                    - You may: Sell what you make.
                """);
    }

    /** What was typed in CommonMark means the same after it has been written in CommonMark again. */
    @Test
    void markdownMeansWhatWasTyped() throws IOException {
        String html = HtmlRenderer.builder()
                .build()
                .render(Parser.builder().build().parse(written(WordsFormat.MARKDOWN, List.of(Terms.UK))));
        assertThat(html)
                .containsSubsequence(
                        "<p><strong>Introduction</strong></p>",
                        "<p>Of <em>winter</em> walks; see <a href=\"https://saltmarsh.example/?a=1&amp;b=2\">the studio</a>.</p>",
                        "<li>salt</li>",
                        "<p>&lt;b&gt;As typed&lt;/b&gt; &amp; more</p>",
                        "<p><strong>Finishing</strong></p>\n<p>1986 was <strong>dry</strong>.</p>",
                        "<li>The &lt;sea&gt; wall (A shore &quot;at low water&quot; &amp; reeds)</li>",
                        "<strong>You may</strong>: Sell <em>what you make</em>.");
    }
}
