package edgewright.assist.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.assist.picture.PictureReading.Read;
import edgewright.assist.picture.PictureReading.Refused;
import edgewright.chart.Place;
import edgewright.chart.Section;
import java.util.List;
import org.junit.jupiter.api.Test;

class PictureTextTest {
    private static final List<String> YARNS = List.of("A", "B", "Rust");

    @Test
    void theFirstLineIsTheOutermostRoundAndTheFirstLetterTheFirstStitch() {
        WantedPicture picture = read("AB.\nBBA\n");
        assertThat(picture.rounds()).isEqualTo(2);
        assertThat(picture.width()).isEqualTo(3);
        assertThat(picture.at(new Place(2, Section.REPEAT, 1))).isEqualTo(Wanted.of("A"));
        assertThat(picture.at(new Place(2, Section.REPEAT, 3))).isEqualTo(Wanted.NEVER_MIND);
        assertThat(picture.at(new Place(1, Section.REPEAT, 3))).isEqualTo(Wanted.of("A"));
        assertThat(picture).hasToString("AB.\nBBA\n");
        assertThat(picture.reversed()).hasToString(".BA\nABB\n");
    }

    @Test
    void blanksEmptyLinesAndLineEndsOfAnySystemAreOfNoAccount() {
        assertThat(read("\ufeff\r\n  AB \r\n\nBA")).isEqualTo(read("AB\nBA"));
    }

    @Test
    void whatIsNoPictureIsRefusedWithItsPlace() {
        assertThat(fault("")).isEqualTo(new PictureFault.NoCells());
        assertThat(fault(" \n\n")).isEqualTo(new PictureFault.NoCells());
        assertThat(fault("AB\n\nABA\n")).isEqualTo(new PictureFault.Uneven(3, 3, 2));
        assertThat(fault("AB\nA\ud83d\ude00"))
                .isEqualTo(new PictureFault.NoSuchYarn(2, 2, "\ud83d\ude00", List.of("A", "B")));
        assertThat(fault("AR")).isEqualTo(new PictureFault.NoSuchYarn(1, 2, "R", List.of("A", "B")));
        assertThat(fault("A\n".repeat(2_001))).isEqualTo(new PictureFault.TooManyRounds(2_001));
        assertThat(fault("A".repeat(2_001))).isEqualTo(new PictureFault.TooWide(2_001));
    }

    @Test
    void aPictureAsLargeAsAChartMayBeIsRead() {
        assertThat(read("A\n".repeat(2_000)).rounds()).isEqualTo(2_000);
        assertThat(read("A".repeat(2_000)).width()).isEqualTo(2_000);
    }

    private static WantedPicture read(String text) {
        return ((Read) PictureText.read(text, YARNS)).picture();
    }

    private static PictureFault fault(String text) {
        return ((Refused) PictureText.read(text, YARNS)).fault();
    }
}
