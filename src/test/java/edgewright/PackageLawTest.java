package edgewright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** The law must be able to say no; a table that nobody can break holds nothing. */
class PackageLawTest {

    private static final String PAGE = """
            ## Packages

            | package | is | may use |
            |---|---|---|
            | `chart` | the design | nothing |
            | `words` | instructions | `chart` |
            | `hands` | a maker | `words`, `chart.Stitch` |
            | `desk.work` | a bench | `chart` |
            | `desk.canvas` | a feature | `desk.work` |
            | `desk.panes` | a feature | `desk.work`, `desk.canvas.Cell` |
            | `desk` | the window | `desk.work`, `desk.canvas` |
            | `draw` | marks | `chart` |
            | `edgewright` | main | `chart`, `words` |

            ## Outside code

            | outside | only used by | because |
            |---|---|---|
            | `java.awt` | `draw.Raster*` | one driver paints |
            | `java.awt.color` | `draw.Raster*`, `words`, `Main` | for the test |
            | `org.apache.pdfbox`, `picocli` | `words` | for the test |
            """;

    private final PackageLaw law = PackageLaw.read(PAGE);

    @Test
    void aPackageUsesItselfAndWhatItsRowOpens() {
        assertThat(law.objectionTo("edgewright.words.Writer", "edgewright.words.Reader"))
                .isEmpty();
        assertThat(law.objectionTo("edgewright.words.Writer", "edgewright.chart.Chart"))
                .isEmpty();
        assertThat(law.objectionTo("edgewright.Main", "edgewright.chart.Chart")).isEmpty();
        assertThat(law.objectionTo("edgewright.chart.Chart", "java.util.List")).isEmpty();
    }

    @Test
    void aPackageUsesNothingElseOfOurs() {
        assertThat(law.objectionTo("edgewright.chart.Chart", "edgewright.words.Writer"))
                .contains("edgewright.chart.Chart uses edgewright.words.Writer, but chart may use nothing of ours");
        assertThat(law.objectionTo("edgewright.words.Writer", "edgewright.Main"))
                .contains("edgewright.words.Writer uses edgewright.Main, but words may use only chart");
    }

    @Test
    void anEntryWithAClassOpensThatClassAloneWithWhatIsNestedInIt() {
        assertThat(law.objectionTo("edgewright.hands.Maker", "edgewright.chart.Stitch"))
                .isEmpty();
        assertThat(law.objectionTo("edgewright.hands.Maker", "edgewright.chart.Stitch$Height"))
                .isEmpty();
        assertThat(law.objectionTo("edgewright.hands.Maker", "edgewright.chart.Stitches"))
                .contains("edgewright.hands.Maker uses edgewright.chart.Stitches,"
                        + " but hands may use only words, chart.Stitch");
    }

    @Test
    void aRoomIsOpenOnlyToWhomItsNameIsGiven() {
        assertThat(law.objectionTo("edgewright.desk.canvas.Canvas", "edgewright.desk.work.Bench"))
                .isEmpty();
        assertThat(law.objectionTo("edgewright.desk.panes.Pane", "edgewright.desk.canvas.Cell"))
                .isEmpty();
        assertThat(law.objectionTo("edgewright.desk.Frame", "edgewright.desk.canvas.Canvas"))
                .isEmpty();
        assertThat(law.objectionTo("edgewright.desk.panes.Pane", "edgewright.desk.canvas.Canvas"))
                .contains("edgewright.desk.panes.Pane uses edgewright.desk.canvas.Canvas,"
                        + " but desk.panes may use only desk.work, desk.canvas.Cell");
        assertThat(law.objectionTo("edgewright.desk.canvas.Canvas", "edgewright.desk.panes.Pane"))
                .contains("edgewright.desk.canvas.Canvas uses edgewright.desk.panes.Pane,"
                        + " but desk.canvas may use only desk.work");
        assertThat(law.objectionTo("edgewright.desk.work.Bench", "edgewright.desk.Frame"))
                .contains("edgewright.desk.work.Bench uses edgewright.desk.Frame, but desk.work may use only chart");
        assertThat(law.objectionTo("edgewright.desk.Frame", "edgewright.desk.panes.Pane"))
                .contains("edgewright.desk.Frame uses edgewright.desk.panes.Pane,"
                        + " but desk may use only desk.work, desk.canvas");
    }

    @Test
    void aPackageOutsideTheTableIsRefused() {
        assertThat(law.objectionTo("edgewright.extras.Toy", "java.util.List"))
                .contains("edgewright.extras.Toy lies in package extras, which is not in the table of DEVELOPERS.md");
        assertThat(law.objectionTo("edgewright.chart.inner.Toy", "java.util.List"))
                .contains("edgewright.chart.inner.Toy lies in package chart.inner,"
                        + " which is not in the table of DEVELOPERS.md");
    }

    @Test
    void outsideCodeIsOpenToTheClassesOfItsMostExactRow() {
        assertThat(law.objectionTo("edgewright.draw.RasterDriver", "java.awt.Color"))
                .isEmpty();
        assertThat(law.objectionTo("edgewright.draw.RasterDriver$Pen", "java.awt.Color"))
                .isEmpty();
        assertThat(law.objectionTo("edgewright.draw.Marks", "java.awt.Color"))
                .contains("edgewright.draw.Marks uses java.awt.Color, but only draw.Raster* may: one driver paints");
        assertThat(law.objectionTo("edgewright.words.Writer", "java.awt.color.ColorSpace"))
                .isEmpty();
        assertThat(law.objectionTo("edgewright.words.Writer", "java.awt.Color")).isPresent();
        assertThat(law.objectionTo("edgewright.Main", "java.awt.color.ColorSpace"))
                .isEmpty();
        assertThat(law.objectionTo("edgewright.words.Writer", "picocli.CommandLine"))
                .isEmpty();
    }

    @Test
    void aLibraryWithoutARowIsOpenToNobody() {
        assertThat(law.objectionTo("edgewright.words.Writer", "org.library.Thing"))
                .contains("edgewright.words.Writer uses org.library.Thing,"
                        + " and no row of 'Outside code' in DEVELOPERS.md opens that library");
    }

    @Test
    void aTableThatPointsDownwardsIsRefused() {
        assertThatThrownBy(() -> PackageLaw.read(PAGE.replace("| nothing |", "| `words` |")))
                .hasMessage("package chart wants words, which does not stand above it");
    }

    @Test
    void aPackageNamedTwiceIsRefused() {
        assertThatThrownBy(() -> PackageLaw.read(PAGE.replace("| `hands` |", "| `words` |")))
                .hasMessage("package words stands twice in the table");
    }

    @Test
    void aPageWithoutATableIsRefused() {
        assertThatThrownBy(() -> PackageLaw.read("## Packages\n\nNone.\n"))
                .hasMessage("there is no table under '## Packages'");
        assertThatThrownBy(() -> PackageLaw.read(PAGE.replace("## Outside code", "## Elsewhere")))
                .hasMessage("there is no table under '## Outside code'");
    }

    @Test
    void aRowWithAColumnTooFewIsRefused() {
        assertThatThrownBy(() -> PackageLaw.read(PAGE.replace("| `draw` | marks | `chart` |", "| `draw` | `chart` |")))
                .hasMessage("under '## Packages' a row needs 3 columns: | `draw` | `chart` |");
    }
}
