package edgewright.booklet.page;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.press.EmbeddedFonts;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Where lines of a pattern end. */
class LineBreakerTest {
    private static final double SIZE_PT = 10;

    private PDDocument document;
    private FaceMetrics face;

    @BeforeEach
    void embedTheFace() {
        document = new PDDocument();
        face = new EmbeddedFonts(document).typefaces().text();
    }

    @AfterEach
    void close() throws IOException {
        document.close();
    }

    private List<String> prose(String text, String widest) {
        return stripped(LineBreaker.forProse(face, SIZE_PT).lines(text, face.widthPt(widest, SIZE_PT)));
    }

    private List<String> stitches(String text, String widest) {
        return stripped(LineBreaker.forStitches(face, SIZE_PT).lines(text, face.widthPt(widest, SIZE_PT)));
    }

    private static List<String> stripped(List<String> lines) {
        return lines.stream().map(String::stripTrailing).toList();
    }

    @Test
    void aLineThatIsBrokenAtABlankEndsWithItAndOneThatIsBrokenInAWordDoesNot() {
        double width = face.widthPt("back-loop", SIZE_PT);
        assertThat(LineBreaker.forProse(face, SIZE_PT).lines("in back-loops-of-peat and reed", width))
                .containsExactly("in back-", "loops-of-", "peat and ", "reed");
    }

    @Test
    void aLineTakesAsManyWordsAsFitByTheirPrintedWidths() {
        assertThat(prose("the tide comes in and goes out", "the tide comes in"))
                .containsExactly("the tide comes in", "and goes out");
    }

    @Test
    void aNumberStaysWithTheWordThatItCounts() {
        assertThat(stitches("work the last 12 stitches", "work the last 12"))
                .containsExactly("work the last", "12 stitches");
    }

    @Test
    void inASentenceANumberStaysWithTheWordBeforeItToo() {
        assertThat(prose("the stitch below, in round 5, is long", "the stitch below, in round"))
                .containsExactly("the stitch below, in", "round 5, is long");
        assertThat(prose("and under round 1 there is the base", "and under round 1"))
                .containsExactly("and under", "round 1 there is", "the base");
    }

    @Test
    void aNoBreakSpaceHoldsWordsTogetherAndIsPrintedAsABlank() {
        assertThat(prose("the last drop\u00a0tr", "the last drop")).containsExactly("the last", "drop tr");
    }

    @Test
    void theCountsOfAllSizesStandOnOneLine() {
        assertThat(stitches(
                        "dc blo in every st; left and right 165 (195, 207, 291) sts",
                        "dc blo in every st; left and right 165 (195,"))
                .containsExactly("dc blo in every st;", "left and right 165 (195, 207, 291) sts");
        assertThat(prose(
                        "the sides: left and right 165\u00a0(195, 207, 291) sts",
                        "the sides: left and right 165 (195,"))
                .containsExactly("the sides: left and", "right 165 (195, 207, 291) sts");
        assertThat(prose("we work here 165 (195, 291) sts", "we work here 165 (195,"))
                .containsExactly("we work", "here 165 (195, 291) sts");
    }

    @Test
    void theNumberThatOpensAGroupStaysWithItsStitchToo() {
        assertThat(prose("2 dc blo; *13 drop tr", "2 dc blo; *13")).containsExactly("2 dc blo;", "*13 drop tr");
    }

    @Test
    void aRowOfStitchesEndsItsLineWhereItPauses() {
        assertThat(stitches("1 dc blo, 1 drop tr, 2 dc blo, 3 drop tr", "1 dc blo, 1 drop tr, 2 dc"))
                .containsExactly("1 dc blo, 1 drop tr,", "2 dc blo, 3 drop tr");
    }

    @Test
    void whatIsWiderThanALineBetweenTwoPausesIsBrokenBetweenWords() {
        assertThat(stitches("2 ch, repeat from the asterisk to the corner", "repeat from the asterisk"))
                .containsExactly("2 ch, repeat from the", "asterisk to the corner");
    }

    @Test
    void theChainsOfACornerStandOnOneLineWithTheWordCorner() {
        assertThat(stitches("12 dc blo; corner: 2 ch.", "12 dc blo; corner:"))
                .containsExactly("12 dc blo;", "corner: 2 ch.");
    }

    @Test
    void aWordThatIsWiderThanTheLineIsBrokenAndNothingOfItIsLost() {
        String word = "Saltmarshsamphireandseapurslane";
        List<String> lines = prose(word, "Saltmarsh");
        assertThat(lines).hasSizeGreaterThan(2);
        assertThat(String.join("", lines)).isEqualTo(word);
    }

    @Test
    void everyWordOfAnyTextComesOnceAndInItsOrder() {
        String text =
                "From the corner: 1 dc blo, 1 drop tr, 12 dc blo; *2 drop tr, 6 dc blo; repeat from * to the last 5 sts";
        for (double width = 8; width < 400; width += 7) {
            List<String> lines = LineBreaker.forStitches(face, SIZE_PT).lines(text, width);
            assertThat(String.join("", lines)).isEqualTo(text);
        }
    }

    @Test
    void aRunOfNumbersWiderThanALineFillsItsLines() {
        String numbers = "12 13 14 15 16 17 18 19 20 21 22";
        assertThat(prose(numbers, "12 13 14 15")).containsExactly("12 13 14 15", "16 17 18 19", "20 21 22");
        assertThat(stitches(numbers + " sts", "12 13 14 15"))
                .containsExactly("12 13 14 15", "16 17 18 19", "20 21 22", "sts");
    }

    @Test
    void aRunOfNumbersThatMustBeBrokenBeginsOnTheLineBeforeIt() {
        assertThat(prose("Rounds of sea: 12 13 14 15 16 17 18", "Rounds of sea: 12"))
                .containsExactly("Rounds of sea: 12", "13 14 15 16 17 18");
    }
}
