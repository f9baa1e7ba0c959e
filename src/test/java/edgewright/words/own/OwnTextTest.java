package edgewright.words.own;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.words.own.OwnText.Items;
import edgewright.words.own.OwnText.Paragraph;
import edgewright.words.own.OwnText.Span;
import edgewright.words.own.OwnText.Stress;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is typed and what it means, as https://spec.commonmark.org/0.31.2/ has it. */
class OwnTextTest {
    @Test
    void emphasisAndLinksAreUnderstood() {
        assertThat(OwnText.of(
                        "Wash it *cold*, **never** hot; ask [the studio](https://saltmarsh.example/care)\nfirst."))
                .isEqualTo(text(new Paragraph(List.of(
                        Span.plain("Wash it "),
                        new Span("cold", Stress.EMPHASIS, Optional.empty()),
                        Span.plain(", "),
                        new Span("never", Stress.STRONG, Optional.empty()),
                        Span.plain(" hot; ask "),
                        new Span("the studio", Stress.NONE, Optional.of("https://saltmarsh.example/care")),
                        Span.plain(" first.")))));
    }

    @Test
    void listsAreUnderstoodAndSoAreListsInThem() {
        assertThat(OwnText.of("- salt\n- sand\n\n  and mud\n  3. eel\n  4. crab\n\nAfter."))
                .isEqualTo(text(
                        new Items(
                                Optional.empty(),
                                List.of(
                                        text(paragraph("salt")),
                                        text(paragraph("sand"), paragraph("and mud 3. eel 4. crab")))),
                        paragraph("After.")));
        assertThat(OwnText.of("- salt\n  1. eel\n  2. crab"))
                .isEqualTo(text(new Items(
                        Optional.empty(),
                        List.of(text(
                                paragraph("salt"),
                                new Items(
                                        Optional.of(1), List.of(text(paragraph("eel")), text(paragraph("crab")))))))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "# Care",
                "> as the tide says",
                "`code`",
                "```",
                "<b onclick=\"x()\">wet</b>",
                "<script>",
                "![Reeds](reed.jpg)",
                "[here](javascript:alert(1))",
                "[here](file:///etc/passwd)",
                "[here](reed.html)",
                "5 * 4 = 20",
            })
    void everythingElseStandsThereAsItWasTyped(String typed) {
        assertThat(OwnText.of(typed)).isEqualTo(text(paragraph(typed)));
    }

    @Test
    void aBrokenLineBeginsAParagraph() {
        assertThat(OwnText.of("Saltmarsh Studio  \nThe Sea Wall\\\nReedham"))
                .isEqualTo(text(paragraph("Saltmarsh Studio"), paragraph("The Sea Wall"), paragraph("Reedham")));
    }

    @Test
    void theAddressOfALinkStandsBesideItUnlessItSaysItItself() {
        assertThat(List.of(
                        new Span("the studio", Stress.NONE, Optional.of("https://saltmarsh.example/")).addressBeside(),
                        new Span("https://saltmarsh.example", Stress.NONE, Optional.of("https://saltmarsh.example/"))
                                .addressBeside(),
                        new Span("post@saltmarsh.example", Stress.NONE, Optional.of("mailto:post@saltmarsh.example"))
                                .addressBeside(),
                        Span.plain("none").addressBeside()))
                .containsExactly(
                        Optional.of("https://saltmarsh.example"), Optional.empty(), Optional.empty(), Optional.empty());
        assertThat(OwnText.of("<post@saltmarsh.example>").blocks())
                .containsExactly(new Paragraph(List.of(new Span(
                        "post@saltmarsh.example", Stress.NONE, Optional.of("mailto:post@saltmarsh.example")))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"- ", "*a ", "**a", "[", "![", "> ", "1. ", "<a ", "`", "[a](", "_a_ "})
    void marksThatAreNestedThousandsDeepAreReadToTheirEnd(String mark) {
        String typed = mark.repeat(20_000 / mark.length()) + "end";
        assertThat(OwnText.of(typed).toString()).contains("end");
    }

    private static OwnText text(OwnText.Block... blocks) {
        return new OwnText(List.of(blocks));
    }

    private static Paragraph paragraph(String text) {
        return new Paragraph(List.of(Span.plain(text)));
    }
}
