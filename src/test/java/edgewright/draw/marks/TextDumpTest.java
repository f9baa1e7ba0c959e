package edgewright.draw.marks;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.check.Checker;
import edgewright.draw.EnglishStyle;
import edgewright.draw.grid.Rotation;
import edgewright.draw.picture.ChartPicture;
import edgewright.testing.Sketches;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/**
 * Whole drawings against files that were read and looked at by a person. If a drawing is meant to change, look at the new
 * picture, read the new text, then put it in the file's place.
 */
class TextDumpTest {
    private static final Chart POST = Sketches.chart("""
            3 A bbb|lb|bbb
            2 B  bb|pc|bb
            1 A   b|bb|b
            """);

    private static String golden(String name) throws IOException {
        try (InputStream file = TextDumpTest.class.getResourceAsStream("/edgewright/draw/" + name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void one_corner_with_its_labels_and_legend_is_drawn_as_before() throws IOException {
        Emphasis emphasis = Emphasis.of(Checker.check(POST).findings());
        Drawing drawing =
                ChartPicture.corner(POST.withTitle("Lantern Post"), EnglishStyle.PRINT.withRepeats(2), emphasis);
        assertThat(TextDump.of(drawing)).isEqualTo(golden("lantern-post.txt"));
    }

    @Test
    void the_marks_of_a_turned_corner_are_the_same_in_the_same_cells() throws IOException {
        Drawing drawing = ChartPicture.corner(
                POST, EnglishStyle.SCREEN.withRepeats(2).withRotation(Rotation.HALF), Emphasis.NONE);
        assertThat(TextDump.outline(drawing)).isEqualTo(golden("lantern-post-turned-outline.txt"));
    }

    @Test
    void a_ragged_chart_is_drawn_as_before() throws IOException {
        Chart ragged = Sketches.chart("""
                2 B b|pcb|bb
                1 A b|bb|b
                """);
        Drawing drawing = ChartPicture.corner(ragged, EnglishStyle.SCREEN.withRepeats(1), Emphasis.NONE);
        assertThat(TextDump.outline(drawing)).isEqualTo(golden("ragged-outline.txt"));
    }
}
