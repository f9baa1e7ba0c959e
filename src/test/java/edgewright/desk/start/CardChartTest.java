package edgewright.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.texts.English;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardChartTest {
    @TempDir
    private Path folder;

    @Test
    void aChartWhoseFileIsNotThereAnyMoreIsGone() {
        assertThat(new CardChart.Recent(folder.resolve("washed-away.border.json")).look(1, English.LANGUAGE))
                .isEqualTo(new CardContent.Gone());
    }

    @Test
    void aFileThatIsNoChartCannotBeRead() throws Exception {
        Path file = Files.writeString(folder.resolve("driftwood.border.json"), "no chart");
        assertThat(new CardChart.Recent(file).look(1, English.LANGUAGE)).isEqualTo(new CardContent.Unreadable());
    }

    @Test
    void theCardOfASampleHasItsChartAndAPictureOfThePixelsOfTheScreen() {
        CardContent.Drawn drawn = (CardContent.Drawn) new CardChart.Sample("reed-bank").look(2, English.LANGUAGE);
        assertThat(drawn.chart()).isEqualTo(Samples.chart("reed-bank"));
        assertThat(List.of(drawn.picture().getWidth(), drawn.picture().getHeight()))
                .containsExactly(2 * CardPicture.WIDTH_PX, 2 * CardPicture.HEIGHT_PX);
    }

    /** One yarn, so each pixel of the outer rounds is a tone of it; the piece within is left clear. */
    @Test
    void thePictureShowsTheFabricFromItsOuterCornerAndThePieceClear() {
        Yarn yarn = new Yarn("A", "Samphire", Colour.parse("#208040"));
        Chart chart = Chart.blank("Bank", new SideShape(2, 6, 3), 10, List.of(yarn));
        BufferedImage picture = CardPicture.of(chart, 1, English.LANGUAGE);
        int outer = picture.getRGB(20, 20);
        assertThat(outer >>> 24).isEqualTo(255);
        assertThat(outer >> 8 & 255).isGreaterThan(outer >> 16 & 255).isGreaterThan(outer & 255);
        assertThat(picture.getRGB(CardPicture.WIDTH_PX - 3, CardPicture.HEIGHT_PX - 3) >>> 24)
                .isZero();
    }
}
