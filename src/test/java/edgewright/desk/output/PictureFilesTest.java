package edgewright.desk.output;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.draw.EnglishStyle;
import edgewright.draw.marks.Drawing;
import edgewright.draw.picture.ChartPicture;
import edgewright.testing.Sketches;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Pictures are written whole, or not at all when somebody says stop. */
class PictureFilesTest {
    private static final Chart CHART = Sketches.chart("""
            3 A bbbb|lb|bbbb
            2 B  bbb|pc|bbb
            1 A   bb|bb|bb
            """);

    private static Drawing border() {
        return ChartPicture.wholeBorder(CHART, PerSide.all(2), EnglishStyle.PRINT);
    }

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(PictureDialog.Kind.class)
    void a_stop_is_heard_before_each_mark_and_leaves_nothing_behind(PictureDialog.Kind kind) throws IOException {
        Path file = folder.resolve("border" + kind.ending());
        AtomicInteger all = new AtomicInteger();
        assertThat(PictureFiles.write(PictureFilesTest::border, kind, 96, folder.resolve("whole"), () -> {
                    all.incrementAndGet();
                    return false;
                }))
                .isTrue();
        Files.delete(folder.resolve("whole"));
        assertThat(all.get()).isGreaterThan(border().marks().size());
        for (int answers = 0; answers < all.get(); answers += 1 + all.get() / 50) {
            int last = answers;
            AtomicInteger asked = new AtomicInteger();
            assertThat(PictureFiles.write(
                            PictureFilesTest::border, kind, 96, file, () -> asked.getAndIncrement() >= last))
                    .isFalse();
            assertThat(folder).isEmptyDirectory();
        }
    }

    @Test
    void a_file_that_was_there_stays_as_it_was_when_it_is_stopped_at_the_last_moment() throws IOException {
        Path file = folder.resolve("border.png");
        Files.writeString(file, "an older picture");
        AtomicInteger all = new AtomicInteger();
        PictureFiles.write(PictureFilesTest::border, PictureDialog.Kind.PNG, 96, folder.resolve("whole.png"), () -> {
            all.incrementAndGet();
            return false;
        });
        AtomicInteger asked = new AtomicInteger();
        assertThat(PictureFiles.write(
                        PictureFilesTest::border,
                        PictureDialog.Kind.PNG,
                        96,
                        file,
                        () -> asked.incrementAndGet() == all.get()))
                .isFalse();
        assertThat(file).hasContent("an older picture");
    }

    @Test
    void a_whole_border_has_the_pixels_that_were_asked_for() throws IOException {
        Path file = folder.resolve("border.png");
        // 25.4 dots an inch are one a millimetre; 80 mm as in the drawing of this border.
        assertThat(PictureFiles.write(PictureFilesTest::border, PictureDialog.Kind.PNG, 25.4, file, () -> false))
                .isTrue();
        assertThat(ImageIO.read(file.toFile()).getWidth()).isEqualTo(80);
    }
}
