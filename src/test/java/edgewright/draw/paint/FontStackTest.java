package edgewright.draw.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.FontStack.Run;
import edgewright.draw.paint.Shape.Weight;
import edgewright.draw.svg.SvgPicture;
import edgewright.testing.SampleTexts;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which face prints which character. */
class FontStackTest {
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789",
                "ÄÖÜäöüßẞÆØÅæøåÉèêçñ¿¡ŁłŻżŐőŰűŠšŽžĀāĢģĶķŅņĞğİıŞş",
                "ŋŊƁɓƉɖƊɗƎǝƏəƐɛƔɣƖɩƘƙƝɲƟɵƠơƯưƱʊƲʋƳƴ",
                "ẠạẢảẤấẦầẨẩẪẫẬậẮắẰằẲẳẴẵẶặẸẹẺẻẼẽẾếỀềỂểỄễỆệỈỉỊịỌọ",
                "ΑΒΓΔΕΖΗΘΙΚΛΜΝΞΟΠΡΣΤΥΦΧΨΩαβγδεζηθικλμνξοπρσςτυφχψωΆΈΉΊΌΎΏάέήίόύώϊϋΐΰ",
                "ἀἁἂἃἄἅἆἇᾀᾁὰάᾳᾴᾶῆῇῶῷῥ",
                "АБВГДЕЁЖЗИЙКЛМНОПРСТУФХЦЧШЩЪЫЬЭЮЯабвгдеёжзийклмнопрстуфхцчшщъыьэюя",
                "ЂЃЄЅІЇЈЉЊЋЌЎЏђѓєѕіїјљњћќўџҐґҒғҖҗҚқҢңҮүҰұҲҳӘәӨө"
            })
    void the_alphabets_of_europe_and_many_others_are_printed(String letters) {
        assertThat(FontStack.lacking(letters)).isEmpty();
        assertThat(FontStack.printable(letters)).isEqualTo(letters);
    }

    @Test
    void a_text_is_set_in_runs_of_one_face_each() {
        assertThat(FontStack.runs("Ж, Ш and Ωμέγα 12"))
                .containsExactly(
                        new Run(Typeface.NOTO, "Ж"),
                        new Run(Typeface.HYPERLEGIBLE, ", "),
                        new Run(Typeface.NOTO, "Ш"),
                        new Run(Typeface.HYPERLEGIBLE, " and "),
                        new Run(Typeface.NOTO, "Ωμέγα"),
                        new Run(Typeface.HYPERLEGIBLE, " 12"));
        assertThat(FontStack.runs("")).isEmpty();
    }

    @Test
    void what_no_face_has_is_printed_as_its_number_in_brackets() {
        assertThat(FontStack.printable("Sand 中")).isEqualTo("Sand ⁅U+4E2D⁆");
        assertThat(FontStack.printable("\ud83d\udc0c")).isEqualTo("⁅U+1F40C⁆");
        assertThat(FontStack.printable("\ud83d")).isEqualTo("⁅U+D83D⁆");
        assertThat(FontStack.lacking("中a中\ud83d\udc0cЖ")).containsExactly(0x4e2d, 0x1f40c);
    }

    @Test
    void the_brackets_themselves_are_told_by_their_numbers() {
        assertThat(FontStack.printable("⁅U+4E2D⁆")).isEqualTo("⁅U+2045⁆U+4E2D⁅U+2046⁆");
        assertThat(FontStack.lacking("⁅⁆")).containsExactly(0x2045, 0x2046);
    }

    @Test
    void blanks_of_any_kind_are_plain_and_what_is_never_seen_is_left_out() {
        assertThat(FontStack.printable("Reed\u00a0Bank\u2003Ḃ\u0000\u200d\n x")).isEqualTo("Reed Bank Ḃ  x");
        assertThat(FontStack.lacking("\u00a0\u2003\u0000\u200d\n")).isEmpty();
    }

    /** Letters and their accents may be written as one character or as two: https://www.unicode.org/reports/tr15/ */
    @Test
    void an_accent_written_apart_is_set_as_one_letter_where_there_is_one() {
        assertThat(FontStack.printable("e\u0301 и\u0306")).isEqualTo("é й");
        assertThat(FontStack.printable("а\u0301")).isEqualTo("а\u0301");
    }

    @Test
    void texts_that_differ_are_printed_differently() {
        Random random = new Random(5);
        Map<String, String> printed = new HashMap<>();
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = 1 + random.nextInt(3); n > 0; n--) {
                text.appendCodePoint(seen(random));
            }
            String plain = java.text.Normalizer.normalize(text, java.text.Normalizer.Form.NFC);
            String before = printed.putIfAbsent(FontStack.printable(text.toString()), plain);
            assertThat(before == null || before.equals(plain))
                    .as("%s and %s", before, plain)
                    .isTrue();
        }
    }

    private static int seen(Random random) {
        while (true) {
            int c = random.nextInt(4) == 0 ? "⁅⁆U+204561".codePointAt(random.nextInt(10)) : random.nextInt(0x3000);
            if (Character.isDefined(c)
                    && !Character.isWhitespace(c)
                    && !Character.isSpaceChar(c)
                    && !Character.isISOControl(c)
                    && Character.getType(c) != Character.FORMAT) {
                return c;
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_text_is_as_wide_as_the_jdk_measures_it_in_the_same_font_files(Weight weight) throws Exception {
        Map<Typeface, Font> fonts = new HashMap<>();
        for (Typeface face : Typeface.values()) {
            try (InputStream file = face.open(weight)) {
                fonts.put(face, Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(1000f));
            }
        }
        List<String> texts = SampleTexts.all();
        for (String text : texts) {
            double jdk = FontStack.runs(text).stream()
                    .mapToDouble(run -> fonts.get(run.typeface())
                            .createGlyphVector(EXACT, run.text())
                            .getLogicalBounds()
                            .getWidth())
                    .sum();
            assertThat(1000 * FontStack.width(text, weight)).as(text).isCloseTo(jdk, within(0.5));
        }
    }

    @Test
    void both_weights_of_a_face_have_the_same_characters() {
        for (Typeface face : Typeface.values()) {
            Set<Integer> regular =
                    FontFile.read(face.open(Weight.REGULAR)).advances().keySet();
            assertThat(new HashSet<>(
                            FontFile.read(face.open(Weight.BOLD)).advances().keySet()))
                    .isEqualTo(new HashSet<>(regular));
        }
    }

    @Test
    void a_drawing_in_svg_carries_the_faces_of_its_texts_and_no_others() {
        assertThat(svg("Peat", Weight.REGULAR))
                .doesNotContain("Noto")
                .contains("'Atkinson Hyperlegible Next', sans-serif");
        assertThat(svg("Ж", Weight.BOLD))
                .contains(
                        "'Atkinson Hyperlegible Next', 'Noto Sans', sans-serif",
                        "@font-face { font-family: 'Noto Sans'; font-weight: 700; src:",
                        ">Ж</text>")
                .doesNotContain("@font-face { font-family: 'Noto Sans'; font-weight: 400;");
        assertThat(svg("中", Weight.REGULAR)).contains(">⁅U+4E2D⁆</text>");
    }

    private static String svg(String text, Weight weight) {
        Shape shape = new Shape.Text(text, 0, 5, 3, weight, Shape.Anchor.START, 0, Palette.BLACK.ink());
        return SvgPicture.of(new Drawing(50, 9, "", "", List.of(Mark.beside(MarkKind.CAPTION, List.of(shape)))));
    }
}
