package edgewright.draw.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.chart.Chart;
import edgewright.chart.CleanText;
import edgewright.chart.PerSide;
import edgewright.check.Checker;
import edgewright.draw.EnglishStyle;
import edgewright.draw.SeenShapes;
import edgewright.draw.SvgReader;
import edgewright.draw.SvgReader.Seen;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.FontStack;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Shape;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.FabricFill;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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

    static Stream<Drawing> drawings() {
        Stream<Drawing> corners = IntStream.range(0, 12).mapToObj(seed -> {
            Chart chart = seed == 0 ? CHART : new RandomCharts(seed).small();
            return ChartPicture.corner(
                    chart, EnglishStyle.PRINT, Emphasis.of(Checker.check(chart).findings()));
        });
        return Stream.concat(
                corners,
                Stream.of(
                        ChartPicture.corner(CHART, EnglishStyle.BLACK_AND_WHITE.withCellMm(4.567), Emphasis.NONE),
                        ChartPicture.wholeBorder(CHART, PerSide.all(2), EnglishStyle.PRINT.withCellMm(3.3333)),
                        ChartPicture.wholeBorder(
                                CHART, PerSide.all(1), EnglishStyle.FABRIC.withLook(FabricFill.WORKED))));
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void every_shape_of_the_drawing_is_seen_once_and_no_other(Drawing drawing) throws Exception {
        List<Seen> seen = SvgReader.read(parse(SvgPicture.of(drawing)));
        List<Seen> expected = drawing.marks().stream()
                .flatMap(mark -> SeenShapes.of(mark).stream())
                .toList();
        // Squares side by side may be one rectangle: compared is where their colour lies.
        assertThat(SeenShapes.areas(seen)).isEqualTo(SeenShapes.areas(expected));
        List<Seen> squares = SeenShapes.squares(seen);
        List<Seen> expectedSquares = SeenShapes.squares(expected);
        for (Seen square : expectedSquares) {
            assertThat(SeenShapes.layersOver(square, squares))
                    .isEqualTo(SeenShapes.layersOver(square, expectedSquares));
        }
        List<Seen> left = new ArrayList<>(SeenShapes.withoutSquares(seen));
        for (Seen shape : SeenShapes.withoutSquares(expected)) {
            assertThat(SeenShapes.take(shape, left)).as(shape.toString()).isTrue();
        }
        assertThat(left).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void of_marks_that_overlap_the_upper_comes_later(Drawing drawing) throws Exception {
        List<Seen> seen = SvgReader.read(parse(SvgPicture.of(drawing)));
        List<Mark> marks = drawing.marks().stream()
                .filter(mark -> !SeenShapes.of(mark).isEmpty())
                .toList();
        List<Integer> at = marks.stream()
                .map(mark -> SeenShapes.indexOf(SeenShapes.of(mark).get(0), seen))
                .toList();
        int overlapping = 0;
        for (int lower = 0; lower < marks.size(); lower++) {
            for (int upper = lower + 1; upper < marks.size(); upper++) {
                Area shrunk = marks.get(upper).bounds().grown(-0.01);
                if (shrunk.touches(marks.get(lower).bounds())) {
                    assertThat(at.get(lower)).isLessThan(at.get(upper));
                    overlapping++;
                }
            }
        }
        assertThat(overlapping).isPositive();
    }

    @Test
    void a_long_stitch_is_drawn_once_for_each_way_in_which_a_side_is_worked() throws Exception {
        Drawing drawing = ChartPicture.wholeBorder(CHART, PerSide.all(9), EnglishStyle.PRINT);
        List<String> used = elements(parse(SvgPicture.of(drawing)), "use").stream()
                .filter(use ->
                        ((Element) use.getParentNode()).getAttribute("class").equals("long"))
                .map(use -> use.getAttribute("xlink:href"))
                .toList();
        assertThat(used.stream().distinct()).hasSize(4);
        assertThat(used).hasSize((int) drawing.marks().stream()
                .filter(mark -> mark.kind() == MarkKind.LONG)
                .count());
    }

    @Test
    void in_a_page_a_text_of_some_letters_keeps_its_length_whatever_the_face_of_the_page() throws Exception {
        Drawing drawing = ChartPicture.corner(CHART, EnglishStyle.PRINT, Emphasis.NONE);
        String page = SvgPicture.inPage(drawing, "one-").replace("<svg", "<svg xmlns='" + SVG + "'");
        List<Element> texts = elements(parse(page), "text").stream()
                .filter(text -> text.getTextContent().length() > 4)
                .toList();
        assertThat(texts).isNotEmpty().allSatisfy(text -> {
            Element styled = text.hasAttribute("font-size") ? text : (Element) text.getParentNode();
            double sizeMm = Double.parseDouble(styled.getAttribute("font-size"));
            Shape.Weight weight =
                    styled.getAttribute("font-weight").equals("700") ? Shape.Weight.BOLD : Shape.Weight.REGULAR;
            assertThat(Double.parseDouble(text.getAttribute("textLength")))
                    .isCloseTo(Lettering.widthMm(text.getTextContent(), weight, sizeMm), within(0.01));
        });
    }

    @Test
    void two_pictures_in_one_page_share_no_id() throws Exception {
        Drawing drawing = ChartPicture.corner(CHART, EnglishStyle.PRINT, Emphasis.NONE);
        Document page = parse("<body xmlns='http://www.w3.org/1999/xhtml'><div xmlns='" + SVG + "'>"
                + SvgPicture.inPage(drawing, "one-") + SvgPicture.inPage(drawing, "two-") + "</div></body>");
        NodeList all = page.getElementsByTagName("*");
        List<String> ids = IntStream.range(0, all.getLength())
                .mapToObj(i -> ((Element) all.item(i)).getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
        assertThat(ids).doesNotHaveDuplicates().allMatch(id -> id.matches("(one|two)-.*"));
        assertThat(ids).contains("one-title", "two-title", "one-sign1", "two-sign1", "one-marks", "two-marks");
    }

    @Test
    void the_picture_is_as_large_as_the_sheet_and_one_unit_is_a_millimetre() throws Exception {
        Drawing drawing = ChartPicture.wholeBorder(CHART, PerSide.all(2), EnglishStyle.FABRIC);
        Element root = parse(SvgPicture.of(drawing)).getDocumentElement();
        assertThat(root.getAttribute("width")).isEqualTo("80mm");
        assertThat(root.getAttribute("height")).isEqualTo("80mm");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 80 80");
    }

    @Test
    void who_does_not_see_it_is_told_what_it_shows() throws Exception {
        // Common practice for accessible SVG: https://www.w3.org/TR/SVG-access/ asks for title and desc.
        Chart chart = CHART.withTitle("Tide Steps");
        Document document = parse(SvgPicture.of(ChartPicture.corner(chart, EnglishStyle.PRINT, Emphasis.NONE)));
        assertThat(document.getDocumentElement().getAttribute("role")).isEqualTo("img");
        assertThat(elements(document, "title").get(0).getTextContent()).isEqualTo("Tide Steps: chart of one corner");
        assertThat(elements(document, "desc").get(0).getTextContent())
                .isEqualTo(
                        "One corner of the border Tide Steps, 3 rounds. The side worked to the corner shows 6 repeats and the stitches"
                                + " to the corner, the side worked from the corner the stitches from it and 6 repeats. The repeat has 2 stitches.");
    }

    @Test
    void a_title_of_any_characters_makes_valid_xml() throws Exception {
        String title = "Sam & <Phire> \"'\u0000\u001b\ufffe ]]> \ud83e\uddf6 {0}";
        Drawing titled = ChartPicture.corner(CHART.withTitle(title), EnglishStyle.PRINT, Emphasis.NONE);
        Drawing drawing = new Drawing(titled.widthMm(), titled.heightMm(), title, title, titled.marks());
        Document document =
                parse(SvgPicture.of(new Drawing(drawing.widthMm(), drawing.heightMm(), title, "", drawing.marks())));
        String readable =
                title.replace('\u0000', '\ufffd').replace('\u001b', '\ufffd').replace('\ufffe', '\ufffd');
        assertThat(elements(document, "title").get(0).getTextContent()).isEqualTo(readable);
        assertThat(elements(document, "text"))
                .anySatisfy(text ->
                        assertThat(text.getTextContent()).isEqualTo(FontStack.printable(CleanText.oneLine(title))));
    }

    @Test
    void it_brings_its_own_face_and_asks_nothing_of_the_net() {
        String svg = SvgPicture.of(ChartPicture.corner(CHART, EnglishStyle.PRINT, Emphasis.NONE));
        assertThat(svg)
                .contains("@font-face", "src: url(data:font/ttf;base64,")
                .doesNotContain("<script", "<image")
                .doesNotContainPattern("href=\"[^#]");
        assertThat(svg.replace(SVG, "").replace("http://www.w3.org/1999/xlink", ""))
                .doesNotContain("http");
    }

    @Test
    void the_same_chart_gives_the_same_bytes() {
        Drawing drawing = ChartPicture.corner(CHART, EnglishStyle.PRINT, Emphasis.NONE);
        assertThat(SvgPicture.of(drawing))
                .isEqualTo(SvgPicture.of(ChartPicture.corner(CHART, EnglishStyle.PRINT, Emphasis.NONE)));
    }
}
