package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.check.Checker;
import edgewright.cli.CommandLineHelper.Ended;
import edgewright.file.ChartFiles;
import edgewright.file.FileProblemException;
import edgewright.file.ReadResult;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LetterCommandTest {
    @TempDir
    Path folder;

    @Test
    void aTextBecomesABand() {
        Path to = folder.resolve("tide.border.json");
        assertThat(run("letter", "Tide in", "--to", to))
                .isEqualTo(new Ended(0, "wrote " + to + ": 21 rounds, a repeat of 35 stitches\n", ""));
        assertThat(chart(to).title()).isEqualTo("Tide in");
        assertThat(Checker.check(chart(to)).findings()).isEmpty();
    }

    @Test
    void theBandIsLikeAnotherChart() {
        Path to = folder.resolve("tide.border.json");
        Path like = Path.of("sample-charts/reed-bank.border.json");
        assertThat(run("letter", "Tide in", "--to", to, "--like", like).status())
                .isZero();
        assertThat(chart(to).yarns()).isEqualTo(chart(like).yarns());
        assertThat(chart(to).corner()).isEqualTo(chart(like).corner());
        assertThat(chart(to).shape().w() % chart(like).shape().w()).isZero();
        assertThat(Checker.check(chart(to)).errors()).isEmpty();
    }

    @Test
    void whatCannotBeLetteredIsSaidInOneSentence() throws FileProblemException {
        Path to = folder.resolve("x.border.json");
        assertThat(run("letter", "a中bж", "--to", to))
                .isEqualTo(new Ended(
                        2,
                        "",
                        "TEXT: the alphabet has no '中' or 'ж'; expected letters, digits and signs that it has\n"));
        assertThat(run("letter", " ", "--to", to).err())
                .isEqualTo("TEXT: found a text in which nothing is to be seen; expected a letter at least\n");
        assertThat(run("letter", "m".repeat(400), "--to", to).err())
                .isEqualTo("TEXT: found a text of 2404 stitches; expected 2000 at most for a repeat\n");
        Path like = folder.resolve("one.border.json");
        Chart blank = chart(Path.of("sample-charts/reed-bank.border.json"));
        ChartFiles.write(
                like, Chart.blank("One", blank.shape(), 2, blank.yarns().subList(0, 1)));
        assertThat(run("letter", "a", "--to", to, "--like", like).err())
                .isEqualTo(like + ": found a chart with one yarn; expected two, for the ground and the letters\n");
        assertThat(run("letter", "a", "--to", like, "--like", like).status()).isEqualTo(2);
        assertThat(to).doesNotExist();
    }

    private static Chart chart(Path file) {
        return ((ReadResult.Read) ChartFiles.read(file)).chart();
    }
}
