package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.HookHand;
import edgewright.chart.OwnMatter;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.testing.SampleFiles;
import edgewright.texts.English;
import edgewright.texts.Language;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.page.PlainText;
import edgewright.words.page.TextBlock;
import edgewright.words.page.TextBlockPrinter;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import nu.validator.client.EmbeddedValidator;
import nu.validator.htmlparser.common.XmlViolationPolicy;
import nu.validator.htmlparser.dom.HtmlDocumentBuilder;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The words of every sample, and of a chart with awkward names, in files of their own. */
class WordsFormatTest {
    static final Yarn TOO_MANY = new Yarn("TooMany", "Marsh Light", Colour.parse("#12fe34"));

    private static final List<Terms> BOTH = List.of(Terms.UK, Terms.US);

    static Stream<Chart> charts() throws IOException {
        List<Chart> charts = new ArrayList<>();
        for (Path file : SampleFiles.all()) {
            // What designers add has a test of its own.
            charts.add(((ReadResult.Read) ChartFiles.read(file)).chart().withOwn(OwnMatter.NONE));
        }
        charts.add(awkward());
        return charts.stream();
    }

    /** https://validator.github.io/validator/ finds nothing to say, neither as an error nor as a warning. */
    @ParameterizedTest
    @MethodSource("charts")
    void a_page_is_valid_html(Chart chart) throws Exception {
        for (WordingOptions options : List.of(
                WordingOptions.of(chart, English.LANGUAGE),
                new WordingOptions(
                        English.LANGUAGE,
                        Terms.US,
                        WordingOptions.of(chart, English.LANGUAGE).counting(),
                        Optional.of(PerSide.of(4, 3, 5, 2)),
                        true,
                        HookHand.LEFT))) {
            EmbeddedValidator validator = new EmbeddedValidator();
            validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
            String page = WordsFormat.HTML.write(chart, options, English.LANGUAGE);
            assertThat(validator.validate(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8))))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("charts")
    void a_page_in_both_terms_is_valid_html_and_says_all_of_each_and_nothing_without_terms_twice(Chart chart)
            throws Exception {
        String html = WordsFormat.HTML.write(chart, WordingOptions.of(chart, English.LANGUAGE), BOTH, English.LANGUAGE);
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        assertThat(validator.validate(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8))))
                .isEmpty();
        Document page = parsed(html);
        List<String> said = texts(page, "p", "dd");
        assertThat(said).containsAll(inTermsAlone(chart, Terms.UK)).containsAll(inTermsAlone(chart, Terms.US));
        List<String> alike = new ArrayList<>(inTermsAlone(chart, Terms.UK));
        alike.retainAll(inTermsAlone(chart, Terms.US));
        assertThat(alike).isNotEmpty();
        assertThat(said.stream().filter(alike::contains)).doesNotHaveDuplicates();
        assertThat(page.getElementsByTagName("svg").getLength())
                .isEqualTo(3 + page.getElementsByTagName("ol").getLength() - listsOfContents(page));
        assertThat(withoutFabric(html).length()).isLessThan(500_000);
    }

    @Test
    void the_key_of_the_chart_calls_the_stitches_as_the_words_do() {
        Chart chart = Published.sample("reed-bank");
        assertThat(keyOf(chart, List.of(Terms.UK)))
                .contains("dc blo")
                .anyMatch(line -> line.startsWith("drop tr: into the free front loop"))
                .doesNotContain("sc blo", "back-loop");
        assertThat(keyOf(chart, List.of(Terms.US)))
                .contains("sc blo")
                .anyMatch(line -> line.startsWith("drop dc: into the free front loop"))
                .noneMatch(line -> line.contains("drop tr") || line.contains("back-loop"));
        assertThat(keyOf(chart, BOTH))
                .contains("dc blo / sc blo")
                .anyMatch(line -> line.startsWith("drop tr / drop dc: into the free front loop"));
    }

    private static List<String> keyOf(Chart chart, List<Terms> terms) {
        String html =
                WordsFormat.HTML.write(chart, WordingOptions.of(chart, English.LANGUAGE), terms, English.LANGUAGE);
        int inKey = html.indexOf("\"key-");
        String key = html.substring(html.lastIndexOf("<svg", inKey), html.indexOf("</svg>", inKey));
        return Pattern.compile("<text[^>]*>([^<]*)</text>")
                .matcher(key)
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @Test
    void each_version_of_a_page_is_in_its_language_with_its_yarns_and_the_way_there_stands_at_the_top()
            throws Exception {
        Chart chart = awkward();
        String html = WordsFormat.HTML.write(chart, WordingOptions.of(chart, English.LANGUAGE), BOTH, English.LANGUAGE);
        Document page = parsed(html);
        Element main = (Element) page.getElementsByTagName("main").item(0);
        assertThat(children(main).map(each -> each.getAttribute("class") + each.getAttribute("lang")))
                .containsSubsequence("", "versionen-GB", "versionen-US", "");
        Element contents = (Element) page.getElementsByTagName("nav").item(0);
        NodeList links = contents.getElementsByTagName("a");
        List<String> ways = IntStream.range(0, links.getLength())
                .mapToObj(i -> ((Element) links.item(i)).getAttribute("href").substring(1))
                .toList();
        assertThat(ways).doesNotHaveDuplicates().contains("chart", "uk", "us", "uk-part-8", "us-part-8");
        assertThat(ways.stream().map(page::getElementById)).doesNotContainNull();
        assertThat(html.split("class=\"chip\"", -1))
                .hasSize(1 + chart.yarnsUsed().size());
    }

    /** The paragraphs of the parts whose words depend on terms, but for rounds. */
    private static List<String> inTermsAlone(Chart chart, Terms terms) {
        return PatternWriter.write(
                        chart,
                        WordingOptions.of(chart, English.LANGUAGE)
                                .withTerms(terms)
                                .withTechniques(true))
                .parts()
                .stream()
                .filter(part -> part.kind() == PatternPart.Kind.NOTES
                        || part.kind() == PatternPart.Kind.SET_UP
                        || part.kind() == PatternPart.Kind.JOINING
                        || part.kind() == PatternPart.Kind.ABBREVIATIONS)
                .flatMap(part -> part.blocks().stream())
                .filter(TextBlock.Prose.class::isInstance)
                .map(block -> ((TextBlock.Prose) block).text())
                .map(text -> text.replace(Language.NO_BREAK, ' '))
                .toList();
    }

    @Test
    void a_text_in_both_terms_says_once_what_has_no_terms_and_each_round_in_both() {
        Chart chart = awkward();
        String text = WordsFormat.TEXT.write(chart, WordingOptions.of(chart, English.LANGUAGE), BOTH, English.LANGUAGE);
        assertThat(text.lines().filter(line -> Pattern.matches("=+", line))).hasSize(4);
        assertThat(text)
                .containsOnlyOnce("\nWhat you need\n")
                .containsOnlyOnce("\nUK terms\n====")
                .containsOnlyOnce("\nUS terms\n====")
                .containsOnlyOnce("\nFinishing\n")
                .containsOnlyOnce("Weave in ");
        assertThat(text.split("\nRounds\n", -1)).hasSize(3);
        assertThat(text.indexOf("\nWhat you need\n")).isLessThan(text.indexOf("\nUK terms\n"));
        assertThat(text.indexOf("\nUK terms and US terms\n"))
                .isBetween(text.lastIndexOf("\nRounds\n"), text.indexOf("\nFinishing\n"));
    }

    private static int listsOfContents(Document page) {
        return ((Element) page.getElementsByTagName("nav").item(0))
                .getElementsByTagName("ol")
                .getLength();
    }

    @Test
    void a_page_shows_each_technique_with_a_figure_that_says_what_it_shows() throws Exception {
        Chart chart = awkward();
        WordingOptions options = WordingOptions.of(chart, English.LANGUAGE);
        Document page = parsed(WordsFormat.HTML.write(chart, options, English.LANGUAGE));
        List<TextBlock.Technique> told = PatternWriter.write(chart, options.withTechniques(true)).parts().stream()
                .filter(part -> part.kind() == PatternPart.Kind.TECHNIQUES)
                .flatMap(part -> part.blocks().stream())
                .map(TextBlock.Technique.class::cast)
                .toList();
        NodeList pictures = page.getElementsByTagName("svg");
        assertThat(pictures.getLength()).isEqualTo(3 + told.size());
        for (int i = 0; i < told.size(); i++) {
            Element svg = (Element) pictures.item(3 + i);
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            assertThat(Stream.of(svg.getAttribute("aria-labelledby").split(" "))
                            .map(id -> bare(page.getElementById(id).getTextContent())))
                    .containsExactly(
                            bare(told.get(i).told().title()),
                            bare(told.get(i).told().alternative()));
        }
    }

    private static Stream<Element> children(Element parent) {
        NodeList all = parent.getChildNodes();
        return IntStream.range(0, all.getLength())
                .mapToObj(all::item)
                .filter(Element.class::isInstance)
                .map(Element.class::cast);
    }

    @Test
    void chips_have_the_colours_of_the_yarns_that_are_worked_with_and_of_no_other() {
        Chart chart = withAYarnTooMany(awkward());
        String page = WordsFormat.HTML.write(chart, WordingOptions.of(chart, English.LANGUAGE), English.LANGUAGE);
        assertThat(page).doesNotContain("border-color: " + TOO_MANY.colour());
        chart.yarnsUsed().forEach(yarn -> assertThat(page).contains("border-color: " + yarn.colour()));
    }

    /** The chart with a yarn at the head of its list that no round is worked in. */
    static Chart withAYarnTooMany(Chart chart) {
        return chart.withYarns(
                Stream.concat(Stream.of(TOO_MANY), chart.yarns().stream()).toList());
    }

    @Test
    void the_judge_of_html_has_something_to_say_of_a_bad_page() throws Exception {
        EmbeddedValidator validator = new EmbeddedValidator();
        String page = WordsFormat.HTML
                .write(awkward(), WordingOptions.of(awkward(), English.LANGUAGE), English.LANGUAGE)
                .replace("</h1>", "");
        assertThat(validator.validate(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8))))
                .isNotEmpty();
    }

    /** Read by https://about.validator.nu/htmlparser/. */
    @ParameterizedTest
    @MethodSource("charts")
    void a_page_says_the_words_of_the_pattern_and_no_others(Chart chart) throws Exception {
        for (WordingOptions options : List.of(
                WordingOptions.of(chart, English.LANGUAGE),
                WordingOptions.of(chart, English.LANGUAGE).withRepeats(PerSide.all(3)))) {
            Document page = parsed(WordsFormat.HTML.write(chart, options, English.LANGUAGE));
            assertThat(texts(page, "h1", "h2", "h3", "p", "dt", "dd", "caption", "th", "td").stream()
                            .filter(text -> !text.isEmpty())
                            .filter(text -> !List.of("Contents", "Chart").contains(text)))
                    .isEqualTo(words(PatternWriter.write(chart, options.withTechniques(true))));
        }
    }

    /** Rendered by https://github.com/commonmark/commonmark-java, which is held to the tests of the specification. */
    @ParameterizedTest
    @MethodSource("charts")
    void markdown_says_the_words_of_the_pattern_and_no_others(Chart chart) throws Exception {
        Parser parser =
                Parser.builder().extensions(List.of(TablesExtension.create())).build();
        HtmlRenderer renderer = HtmlRenderer.builder()
                .extensions(List.of(TablesExtension.create()))
                .escapeHtml(true)
                .build();
        for (WordingOptions options : List.of(
                WordingOptions.of(chart, English.LANGUAGE),
                WordingOptions.of(chart, English.LANGUAGE).withRepeats(PerSide.all(3)))) {
            String markdown = WordsFormat.MARKDOWN.write(chart, options, English.LANGUAGE);
            Document rendered = parsed("<!DOCTYPE html><title>x</title>" + renderer.render(parser.parse(markdown)));
            List<String> expected = new ArrayList<>();
            words(PatternWriter.write(chart, options), true).forEach(expected::add);
            assertThat(texts(rendered, "h1", "h2", "h3", "p", "li", "th", "td").stream()
                            .filter(text -> !text.isEmpty()))
                    .isEqualTo(expected);
        }
        Document both = parsed("<!DOCTYPE html><title>x</title>"
                + renderer.render(parser.parse(WordsFormat.MARKDOWN.write(
                        chart, WordingOptions.of(chart, English.LANGUAGE), BOTH, English.LANGUAGE))));
        List<String> said = texts(both, "h1", "h2", "h3", "h4", "p", "li", "th", "td");
        for (Terms terms : BOTH) {
            PatternText words = PatternWriter.write(
                    chart, WordingOptions.of(chart, English.LANGUAGE).withTerms(terms));
            assertThat(said)
                    .containsAll(words(
                            new PatternText(words.parts().stream()
                                    .filter(part -> part.kind() == PatternPart.Kind.ROUNDS)
                                    .toList()),
                            true));
        }
        assertThat(said).containsOnlyOnce("What you need", "Finishing", "UK terms", "US terms");
    }

    @Test
    void a_page_is_in_the_language_of_its_terms_and_its_table_names_rows_and_columns() throws Exception {
        Chart chart = awkward();
        Document page = parsed(WordsFormat.HTML.write(
                chart, WordingOptions.of(chart, English.LANGUAGE).withTerms(Terms.US), English.LANGUAGE));
        assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en-US");
        assertThat(parsed(WordsFormat.HTML.write(chart, WordingOptions.of(chart, English.LANGUAGE), English.LANGUAGE))
                        .getDocumentElement()
                        .getAttribute("lang"))
                .isEqualTo("en-GB");
        NodeList heads = page.getElementsByTagName("th");
        assertThat(IntStream.range(0, heads.getLength())
                        .mapToObj(i -> ((Element) heads.item(i)).getAttribute("scope"))
                        .distinct())
                .containsExactly("col", "row");
        assertThat(page.getElementsByTagName("caption").getLength()).isEqualTo(1);
    }

    @Test
    void a_page_shows_fabric_chart_and_key_each_with_a_title_and_a_description() throws Exception {
        Chart chart = awkward();
        Document page =
                parsed(WordsFormat.HTML.write(chart, WordingOptions.of(chart, English.LANGUAGE), English.LANGUAGE));
        int pictures = page.getElementsByTagName("svg").getLength();
        int figures = page.getElementsByTagName("ol").getLength() - listsOfContents(page);
        assertThat(figures).isPositive();
        assertThat(pictures).isEqualTo(3 + figures);
        Set<String> said = new HashSet<>();
        for (int i = 0; i < pictures; i++) {
            Element svg = (Element) page.getElementsByTagName("svg").item(i);
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            for (String id : svg.getAttribute("aria-labelledby").split(" ")) {
                assertThat(page.getElementById(id).getTextContent()).isNotBlank();
                said.add(page.getElementById(id).getTextContent());
            }
        }
        assertThat(said).hasSize(2 * pictures);
    }

    @Test
    void a_page_says_which_size_its_fabric_is_of() throws Exception {
        Chart chart = Published.sample("reed-bank");
        Document page =
                parsed(WordsFormat.HTML.write(chart, WordingOptions.of(chart, English.LANGUAGE), English.LANGUAGE));
        // Twice as many stitches as the 21 rounds are high, and one and a half times: 5 and 42 - 5 = 6 * 6 across.
        assertThat(texts(page, "figcaption").get(0))
                .isEqualTo("The border as it looks when it is worked, here around a small piece: 6 repeats at top and"
                        + " bottom, 4 at each side.");
    }

    @ParameterizedTest
    @MethodSource("charts")
    void a_page_of_a_sample_is_light_for_all_its_marks(Chart chart) throws IOException {
        String page = WordsFormat.HTML.write(chart, WordingOptions.of(chart, English.LANGUAGE), English.LANGUAGE);
        // Three hundred kilobytes, half of them the figures of techniques, take two seconds at 1.2 Mbit/s. The bound is
        // ours; the fabric, of which much is said again and again, keeps to it as servers pack it.
        assertThat(withoutFabric(page).getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(320_000);
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (OutputStream out = new GZIPOutputStream(packed)) {
            out.write(page.getBytes(StandardCharsets.UTF_8));
        }
        assertThat(packed.toByteArray()).hasSizeLessThan(300_000);
    }

    private static String withoutFabric(String page) {
        String without = page.replaceFirst("(?s)<figure>.*?</figure>", "");
        assertThat(without).hasSizeLessThan(page.length());
        return without;
    }

    @Test
    void a_page_asks_for_nothing_from_elsewhere() {
        String page =
                WordsFormat.HTML.write(awkward(), WordingOptions.of(awkward(), English.LANGUAGE), English.LANGUAGE);
        assertThat(page).doesNotContainPattern("(?i)(src=|url\\(|@import|<link|<script|href=\"[^#])");
    }

    @Test
    void a_very_large_chart_is_left_out_of_its_page() {
        Chart large = Chart.blank("Large", new SideShape(0, 12, 0), 120, List.of(new Yarn("A", "Peat", new Colour(0))));
        assertThat(WordsFormat.HTML.write(large, WordingOptions.of(large, English.LANGUAGE), English.LANGUAGE))
                .doesNotContain("id=\"chart-");
    }

    @Test
    void a_text_is_that_of_the_writer() {
        Chart chart = awkward();
        assertThat(WordsFormat.TEXT.write(chart, WordingOptions.of(chart, English.LANGUAGE), English.LANGUAGE))
                .isEqualTo(PlainText.of(PatternWriter.write(chart, WordingOptions.of(chart, English.LANGUAGE))));
    }

    @Test
    void a_file_has_the_format_of_its_ending() {
        assertThat(Stream.of("a.txt", "a.MD", "b.html", "c.htm", "txt").map(WordsFormat::ofName))
                .containsExactly(
                        Optional.of(WordsFormat.TEXT),
                        Optional.of(WordsFormat.MARKDOWN),
                        Optional.of(WordsFormat.HTML),
                        Optional.empty(),
                        Optional.empty());
    }

    /** Names and notes that are full of signs that mean something in one format or the other. */
    private static Chart awkward() {
        return Chart.blank(
                        "*Reeds* & <b>Rust</b> \\ `1`",
                        new SideShape(2, 5, 1),
                        5,
                        List.of(
                                new Yarn("A", "Peat | _Chalk_ [x](y) &amp;", new Colour(0x2b2a33)),
                                new Yarn("B4", "", new Colour(0xf2ead8)),
                                new Yarn("C", "# Fog ~~one~~ \u8272 \u2713", new Colour(0xa9502f))))
                .withDesigner("- Marsh <script>alert(1)</script>")
                .withNotes("1. Begin!\n\n+ more\n=====\n> quoted\n    code\n2) <!-- gone --> ![p](q)\n- \u00e9t\u00e9");
    }

    /** Everything that a pattern says, in its order, blanks of every kind as one. */
    private static List<String> words(PatternText pattern) {
        return words(pattern, false);
    }

    /** @param together whether a word and what is said of it stand in one item, with a colon between them, and all that is said of
     *     a round in one paragraph */
    private static List<String> words(PatternText pattern, boolean together) {
        List<String> words = new ArrayList<>();
        TextBlockPrinter printer = new TextBlockPrinter() {
            @Override
            public void prose(TextBlock.Prose prose) {
                words.add(prose.text());
            }

            @Override
            public void entry(TextBlock.Entry entry) {
                if (together) {
                    words.add(entry.word() + (entry.text().isEmpty() ? "" : ": " + entry.text()));
                } else {
                    words.addAll(List.of(entry.word(), entry.text()));
                }
            }

            @Override
            public void round(TextBlock.RoundWords round) {
                words.add(round.name());
                if (together && !round.steps().isEmpty()) {
                    words.add(String.join(" ", round.steps()));
                } else {
                    words.addAll(round.steps());
                }
            }

            @Override
            public void rounds(TextBlock.RoundsTable table) {
                words.addAll(table.columns());
                table.rows().forEach(row -> words.addAll(row.cells()));
            }

            @Override
            public void counts(TextBlock.CountsTable table) {
                words.add(table.caption());
                words.addAll(table.columns());
                table.rows().forEach(words::addAll);
            }

            @Override
            public void technique(TextBlock.Technique technique) {
                words.add(technique.told().title());
                words.addAll(technique.told().steps());
            }
        };
        pattern.parts().forEach(part -> {
            words.add(part.heading());
            part.blocks().forEach(block -> block.printOn(printer));
        });
        return words.stream()
                .map(WordsFormatTest::bare)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static Document parsed(String html) throws IOException, SAXException {
        return new HtmlDocumentBuilder(XmlViolationPolicy.ALTER_INFOSET).parse(new InputSource(new StringReader(html)));
    }

    /** The text of these elements in the order of the page, but for those within a picture or the list of contents. */
    private static List<String> texts(Node node, String... names) {
        List<String> texts = new ArrayList<>();
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            String name = String.valueOf(child.getLocalName());
            if (List.of(names).contains(name)) {
                texts.add(bare(child.getTextContent()));
            } else if (!name.equals("svg")) {
                texts.addAll(texts(child, names));
            }
        }
        return texts;
    }

    private static String bare(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ").strip();
    }
}
