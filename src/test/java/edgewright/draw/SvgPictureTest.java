package edgewright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.check.Checker;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SvgPictureTest {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Chart CHART = Sketches.chart("""
            3 A bbbb|lb|bbbb
            2 B  bbb|pc|bbb
            1 A   bb|bb|bb
            """);

    private static Document parse(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Element> elements(Document document, String name) {
        NodeList nodes = document.getElementsByTagNameNS(SVG, name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    @Test
    void every_shape_of_the_drawing_is_one_element_and_every_mark_one_group_in_its_layer() throws Exception {
        for (int seed = 0; seed < 12; seed++) {
            Chart chart = seed == 0 ? CHART : new RandomCharts(seed).small();
            Drawing drawing = ChartPicture.corner(
                    chart, PictureStyle.PRINT, Emphasis.of(Checker.check(chart).findings()));
            Document document = parse(SvgPicture.of(drawing));
            long texts = drawing.marks().stream()
                    .flatMap(mark -> mark.shapes().stream())
                    .filter(Shape.Text.class::isInstance)
                    .count();
            long shapes = drawing.marks().stream()
                    .mapToLong(mark -> mark.shapes().size())
                    .sum();
            assertThat(elements(document, "text")).hasSize((int) texts);
            assertThat(elements(document, "path")).hasSize((int) (shapes - texts));
            List<String> kinds = elements(document, "g").stream()
                    .filter(group -> group.hasAttribute("class"))
                    .map(group ->
                            ((Element) group.getParentNode()).getAttribute("id") + " " + group.getAttribute("class"))
                    .toList();
            assertThat(kinds)
                    .isEqualTo(drawing.marks().stream()
                            .map(mark -> (mark.kind().layer() + " " + mark.kind())
                                    .toLowerCase(java.util.Locale.ROOT)
                                    .replace('_', '-'))
                            .toList());
        }
    }

    @Test
    void the_picture_is_as_large_as_the_sheet_and_one_unit_is_a_millimetre() throws Exception {
        Drawing drawing = ChartPicture.wholeBorder(CHART, PerSide.all(2), PictureStyle.FABRIC);
        Element root = parse(SvgPicture.of(drawing)).getDocumentElement();
        assertThat(root.getAttribute("width")).isEqualTo("80mm");
        assertThat(root.getAttribute("height")).isEqualTo("80mm");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 80 80");
    }

    @Test
    void who_does_not_see_it_is_told_what_it_shows() throws Exception {
        // Common practice for accessible SVG: https://www.w3.org/TR/SVG-access/ asks for title and desc.
        Chart chart = CHART.withTitle("Tide Steps");
        Document document = parse(SvgPicture.of(ChartPicture.corner(chart, PictureStyle.PRINT, Emphasis.NONE)));
        assertThat(document.getDocumentElement().getAttribute("role")).isEqualTo("img");
        assertThat(elements(document, "title").get(0).getTextContent()).isEqualTo("Tide Steps: chart of one corner");
        assertThat(elements(document, "desc").get(0).getTextContent())
                .isEqualTo(
                        "One corner of the border Tide Steps, 3 rounds. The limb worked to the corner shows 6 repeats and the "
                                + "stitches to the corner, the limb worked from the corner the stitches from it and 6 repeats. The "
                                + "repeat has 2 stitches.");
    }

    @Test
    void a_title_of_any_characters_makes_valid_xml() throws Exception {
        String title = "Sam & <Phire> \"'\u0000\u001b\ufffe ]]> \ud83e\uddf6 {0}";
        Drawing drawing = ChartPicture.corner(CHART.withTitle(title), PictureStyle.PRINT, Emphasis.NONE);
        Document document = parse(SvgPicture.of(drawing));
        String readable =
                title.replace('\u0000', '\ufffd').replace('\u001b', '\ufffd').replace('\ufffe', '\ufffd');
        assertThat(elements(document, "title").get(0).getTextContent()).isEqualTo(readable + ": chart of one corner");
        assertThat(elements(document, "text"))
                .anySatisfy(text -> assertThat(text.getTextContent()).isEqualTo(readable));
    }

    @Test
    void it_brings_its_own_face_and_asks_nothing_of_the_net() {
        String svg = SvgPicture.of(ChartPicture.corner(CHART, PictureStyle.PRINT, Emphasis.NONE));
        assertThat(svg)
                .contains("@font-face", "src: url(data:font/ttf;base64,")
                .doesNotContain("href", "<script", "<image");
        assertThat(svg.replace(SVG, "")).doesNotContain("http");
    }

    @Test
    void the_same_chart_gives_the_same_bytes() {
        Drawing drawing = ChartPicture.corner(CHART, PictureStyle.PRINT, Emphasis.NONE);
        assertThat(SvgPicture.of(drawing))
                .isEqualTo(SvgPicture.of(ChartPicture.corner(CHART, PictureStyle.PRINT, Emphasis.NONE)));
    }
}
