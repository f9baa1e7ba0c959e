package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import edgewright.cli.CommandLineHelper.Ended;
import edgewright.file.BrokenCharts;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class DrawCommandTest {
    @TempDir
    private Path folder;

    @Test
    void anSvgIsAnXmlDocumentAsLargeAsItIsSaidToBe() throws Exception {
        Path to = folder.resolve("posts – chart.svg");
        Ended ended = run("draw", Charts.sound(folder), "--to", to);
        Element svg = xml(to).getDocumentElement();
        assertThat(ended)
                .isEqualTo(new Ended(
                        0, "wrote %s: %.0f by %.0f mm\n".formatted(to, mm(svg, "width"), mm(svg, "height")), ""));
    }

    @Test
    void charactersOfItsTextsThatNoFaceHasAreNamed() throws Exception {
        Path chart = folder.resolve("script.border.json");
        Files.writeString(chart, BrokenCharts.sound().replace("Lantern Posts", "Lantern \u7269"));
        Path to = folder.resolve("posts.svg");
        assertThat(run("draw", chart, "--to", to).err())
                .isEqualTo("in the title no typeface of this program has \u7269 (U+7269); its number stands for it\n");
        assertThat(Files.readString(to)).contains(">Lantern \u2045U+7269\u2046</text>");
        assertThat(run("draw", chart, "--to", to, "--view", "border").err()).isEmpty();
    }

    @Test
    void aPngHasThePixelsThatWereAskedFor() throws Exception {
        Path chart = Charts.sound(folder);
        Path svg = folder.resolve("posts.svg");
        Path png = folder.resolve("posts.PNG");
        run("draw", chart, "--to", svg);
        assertThat(run("draw", chart, "--to", png, "--dpi", "254").status()).isZero();
        BufferedImage picture = ImageIO.read(png.toFile());
        // 254 pixels an inch are 10 a millimetre.
        assertThat(picture.getWidth()).isEqualTo((int) Math.ceil(10 * mm(xml(svg).getDocumentElement(), "width")));
    }

    @ParameterizedTest
    @CsvSource({"fabric, true, false", "marks, false, true", "both, true, true"})
    void theLayersCanBeShownApartOrTogether(String layer, boolean fabric, boolean marks) throws Exception {
        Path to = folder.resolve("posts.svg");
        run("draw", Charts.sound(folder), "--to", to, "--layer", layer);
        assertThat(classes(xml(to)).contains("fabric-stitch")).isEqualTo(fabric);
        assertThat(classes(xml(to)).contains("long")).isEqualTo(marks);
    }

    @Test
    void theWholeBorderIsDrawnForItsSize() throws Exception {
        Path chart = Charts.sound(folder);
        Path to = folder.resolve("posts.svg");
        run("draw", chart, "--to", to, "--view", "border", "--layer", "fabric", "--repeats", "1,2");
        // Round 2 has 2 + 3 + 4 stitches and the repeats of five: 14 above, 19 at the left; two corners and two empty
        // edges.
        Element svg = xml(to).getDocumentElement();
        assertThat(List.of(mm(svg, "width"), mm(svg, "height"))).containsExactly(5.0 * (14 + 4), 5.0 * (19 + 4));
        String byRepeats = Files.readString(to);
        run("draw", chart, "--to", to, "--view", "border", "--layer", "fabric", "--sides", "10,15");
        assertThat(Files.readString(to)).isEqualTo(byRepeats);
    }

    @Test
    void aWholeBorderHasRightAngles() throws IOException {
        Path to = folder.resolve("posts.svg");
        refused(
                run("draw", Charts.sound(folder), "--to", to, "--view", "border", "--repeats", "1,2,3,2"),
                "right angles");
        assertThat(to).doesNotExist();
    }

    @Test
    void theCornerCanBeTurnedAndItsCellsMadeLarger() throws Exception {
        Path chart = Charts.sound(folder);
        Path to = folder.resolve("posts.svg");
        run("draw", chart, "--to", to, "--cell-mm", "10");
        double width = mm(xml(to).getDocumentElement(), "width");
        run("draw", chart, "--to", to, "--cell-mm", "5");
        assertThat(mm(xml(to).getDocumentElement(), "width")).isBetween(width * 0.45, width * 0.6);
        String unturned = Files.readString(to);
        for (String turn : List.of("90", "180", "270")) {
            run("draw", chart, "--to", to, "--turn", turn);
            assertThat(Files.readString(to)).isNotEqualTo(unturned);
        }
    }

    @Test
    void aChartThatCannotBeWorkedIsNotDrawn() throws IOException {
        Path chart = Charts.unworkable(folder);
        Path to = folder.resolve("posts.svg");
        assertThat(run("draw", chart, "--to", to))
                .isEqualTo(new Ended(1, "", run("check", chart).out()));
        assertThat(to).doesNotExist();
    }

    @Test
    void aDraftIsDrawnWithItsFindings() throws Exception {
        Path to = folder.resolve("posts.svg");
        assertThat(run("draw", Charts.unworkable(folder), "--to", to, "--draft").status())
                .isZero();
        assertThat(classes(xml(to))).contains("flag");
        assertThat(xml(to).getDocumentElement().getTextContent())
                .contains("DRAFT: not yet to be worked.")
                .contains("1  Round 1, repeat, stitch 3: No round to land on")
                .contains("2  Round 2, from the corner, stitch 1: Past the corner");
    }

    @Test
    void aDraftOfARaggedChartIsDrawn() throws Exception {
        Path chart = Charts.ragged(folder);
        for (String view : List.of("corner", "border")) {
            Path to = folder.resolve(view + ".svg");
            assertThat(run("draw", chart, "--to", to, "--draft", "--view", view).status())
                    .isZero();
            assertThat(xml(to).getDocumentElement().getTextContent()).contains("DRAFT");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"picture.pdf", "picture", "svg", "picture.border.json", "picture.svg.bak"})
    void aPictureIsSvgOrPng(String name) throws IOException {
        Path to = folder.resolve(name);
        refused(run("draw", Charts.sound(folder), "--to", to), "expected a file whose name ends in .svg, .png");
        assertThat(to).doesNotExist();
    }

    @Test
    void theChartIsNotDrawnOverItself() throws IOException {
        Path chart = Charts.sound(folder);
        Path named = Files.createSymbolicLink(folder.resolve("posts.svg"), chart);
        refused(run("draw", chart, "--to", named), "this is the chart itself");
        assertThat(chart).hasContent(BrokenCharts.sound());
    }

    @Test
    void aPlaceThatCannotBeWrittenIsOneLine() throws IOException {
        Path chart = Charts.sound(folder);
        refused(
                run("draw", chart, "--to", folder.resolve("no/such/place.svg")),
                "there is no folder '" + folder.resolve("no/such") + "'");
        Path inTheWay = Files.createDirectory(folder.resolve("folder.svg"));
        refused(run("draw", chart, "--to", inTheWay), inTheWay + ": this is a folder; expected a file");
    }

    @Test
    void aPictureTooLargeForAnybodyIsRefused() throws IOException {
        Path chart = Charts.sound(folder);
        Path to = folder.resolve("large.png");
        refused(run("draw", chart, "--to", to, "--dpi", "2400", "--cell-mm", "50"), "million pixels");
        refused(run("draw", chart, "--to", to, "--view", "border", "--repeats", "999999,9"), "stitches");
        assertThat(to).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "--dpi, 0",
        "--dpi, NaN",
        "--dpi, 1e2",
        "--cell-mm, -5",
        "--cell-mm, 51",
        "--turn, 45",
        "--layer, yarn",
        "--view, back",
        "--marks, dots"
    })
    void whatMakesNoSenseIsRefused(String option, String value) throws IOException {
        Path to = folder.resolve("posts.svg");
        refused(run("draw", Charts.sound(folder), "--to", to, option, value), "'" + value + "', expected ");
        assertThat(to).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({"cover, 2400, 3000", "square, 2000, 2000", "portrait, 2000, 3000", "wide, 3200, 1800"})
    void aPictureForAShopHasItsPixels(String size, int width, int height) throws Exception {
        Path to = folder.resolve("shop.png");
        Path chart = Charts.sound(folder);
        assertThat(run("draw", chart, "--to", to, "--view", "border", "--layer", "fabric", "--size", size))
                .extracting(Ended::status, Ended::err)
                .containsExactly(0, "");
        BufferedImage picture = ImageIO.read(to.toFile());
        assertThat(List.of(picture.getWidth(), picture.getHeight())).containsExactly(width, height);
    }

    @Test
    void aPictureForAShopHasATitleUnlessItIsToHaveNone() throws Exception {
        Path chart = Charts.sound(folder);
        Path to = folder.resolve("shop.svg");
        List<String> texts = new ArrayList<>();
        for (String title : List.of("--title", "--no-title")) {
            run("draw", chart, "--to", to, "--view", "border", "--layer", "fabric", "--size", "square", title);
            texts.add(String.valueOf(Files.readString(to).matches("(?s).*>Lantern( Posts)?</text>.*")));
        }
        assertThat(texts).containsExactly("true", "false");
    }

    @ParameterizedTest
    @CsvSource({
        "--size square, --view border --layer fabric",
        "--size square --view border, --view border --layer fabric",
        "--size square --layer fabric, --view border --layer fabric",
        "--size square --view border --layer fabric --dpi 96, --dpi: found beside --size",
        "--size square --view border --layer fabric --cell-mm 4, --cell-mm: found beside --size",
        "--size square --view border --layer fabric --draft, --draft: found beside --size",
        "--view border --no-title, --no-title: found for a picture that is not for a shop page",
        "--title, --title: found for a picture that is not for a shop page",
        "--size huge, 'huge'"
    })
    void whatDoesNotGoWithAPictureForAShopIsRefused(String options, String why) throws IOException {
        Path to = folder.resolve("posts.png");
        List<Object> arguments = new ArrayList<>(List.of("draw", Charts.sound(folder), "--to", to));
        arguments.addAll(List.of(options.split(" ")));
        refused(run(arguments.toArray()), why);
        assertThat(to).doesNotExist();
    }

    private static void refused(Ended ended, String why) {
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err().lines()).singleElement().asString().contains(why);
    }

    /** Read by the parser of the JDK, which knows nothing of our drawings. */
    private static Document xml(Path file) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(file.toFile());
    }

    private static double mm(Element svg, String attribute) {
        return Double.parseDouble(svg.getAttribute(attribute).replace("mm", ""));
    }

    private static List<String> classes(Document svg) {
        NodeList groups = svg.getElementsByTagNameNS("http://www.w3.org/2000/svg", "*");
        return IntStream.range(0, groups.getLength())
                .mapToObj(i -> ((Element) groups.item(i)).getAttribute("class"))
                .toList();
    }
}
