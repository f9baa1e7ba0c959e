package edgewright.assist.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.assist.picture.PictureAnswer.Stitched;
import edgewright.chart.Rules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ten invented pictures as a designer may draw them, with what the fabric shows and how many squares that misses: beside each
 * other in one file, wanted at the left, shown in the middle with every miss marked at the right. People have looked at them.
 */
class TenPicturesTest {
    private static final Path PICTURES = Path.of("src/test/resources/edgewright/assist/pictures");

    @ParameterizedTest
    @CsvSource({
        "bird, false, find",
        "shell, true, find",
        "wave, false, AB",
        "boat, true, find",
        "lamp, false, AB",
        "letters, false, AB",
        "reed, false, BA",
        "crab, false, find",
        "lantern-three, true, find",
        "moon, true, AAB"
    })
    void theFabricOfAPictureIsWhatPeopleHaveSeen(String name, boolean stacking, String order) throws IOException {
        String text = Files.readString(PICTURES.resolve(name + ".txt"));
        List<String> ids = List.copyOf(PictureText.yarns(text));
        WantedPicture picture = ((PictureReading.Read) PictureText.read(text, ids)).picture();
        Rules rules = Rules.DEFAULT.withStackLongStitches(stacking);
        List<String> yarns = order.equals("find")
                ? YarnOrder.best(picture, ids, rules, () -> false).orElseThrow()
                : YarnOrder.inTurn(List.of(order.split("")), picture.rounds());
        Stitched answer = (Stitched) PictureStitcher.nearest(new PictureTask(picture, yarns, rules));
        assertThat(page(picture, answer)).isEqualTo(Files.readString(PICTURES.resolve(name + ".got.txt")));
    }

    private static String page(WantedPicture picture, Stitched answer) {
        StringBuilder page = new StringBuilder();
        String[] wanted = picture.toString().split("\n");
        for (int r = picture.rounds(); r >= 1; r--) {
            StringBuilder shown = new StringBuilder();
            StringBuilder missed = new StringBuilder();
            String above = r < picture.rounds() ? answer.rounds().get(r).letters() : "";
            for (int i = 0; i < picture.width(); i++) {
                boolean covered = !above.isEmpty() && above.charAt(i) == 'l';
                String shows = answer.yarns().get(covered ? r : r - 1);
                char wish = wanted[picture.rounds() - r].charAt(i);
                shown.append(shows);
                missed.append(wish == '.' || shows.equals(String.valueOf(wish)) ? '.' : shows.charAt(0));
            }
            page.append(String.format(
                    "%s  %s  %s  round %d in %s: %s\n",
                    wanted[picture.rounds() - r],
                    shown,
                    missed,
                    r,
                    answer.yarns().get(r - 1),
                    answer.rounds().get(r - 1).letters()));
        }
        return page.append(answer.misses().size()).append(" missed\n").toString();
    }
}
