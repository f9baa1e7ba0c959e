package edgewright.booklet.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.sheets.Tiling.Edge;
import edgewright.booklet.sheets.Tiling.Tile;
import edgewright.booklet.sheets.Tiling.Work;
import edgewright.draw.grid.CellRange;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How a large chart is cut into sheets. */
class TilingTest {
    private static final double WIDTH_MM = 170;
    private static final double HEIGHT_MM = 220;

    private static Tiling fewest(int columns, int rows) {
        return Tiling.fewestSheets(new Work(columns, rows, Math.max(columns, rows), 5, 4), WIDTH_MM, HEIGHT_MM, 4, 6.5);
    }

    @Test
    void everyCellIsOnASheetAndNeighboursShareTwoColumnsOrRows() {
        for (int columns = 1; columns <= 160; columns += 3) {
            Tiling tiling = fewest(columns, 90);
            List<CellRange> top = tiling.tiles().stream()
                    .filter(tile -> tile.row() == 0)
                    .map(Tile::cells)
                    .toList();
            assertThat(top.get(0).firstColumn()).isZero();
            assertThat(top.get(top.size() - 1).endColumn()).isEqualTo(columns);
            for (int i = 1; i < top.size(); i++) {
                assertThat(top.get(i - 1).endColumn() - top.get(i).firstColumn())
                        .isEqualTo(Tiling.OVERLAP);
            }
        }
    }

    @Test
    void aSheetWithItsNumbersFitsOnThePage() {
        for (int cells = 1; cells <= 400; cells += 7) {
            Tiling tiling = fewest(cells, cells);
            assertThat(tiling.cellMm()).isBetween(4.0, 6.5);
            for (Tile tile : tiling.tiles()) {
                assertThat((tile.cells().columns() + 5) * tiling.cellMm()).isLessThanOrEqualTo(WIDTH_MM + 1e-6);
                assertThat((tile.cells().rows() + 4) * tiling.cellMm()).isLessThanOrEqualTo(HEIGHT_MM + 1e-6);
            }
        }
    }

    @Test
    void cellsAreAsLargeAsTheNumberOfSheetsAllows() {
        // 60 columns and 5 for numbers: 2 sheets of 31 cells with 4 mm, and still 2 with cells of 4.5 mm.
        Tiling tiling = fewest(60, 40);
        assertThat(tiling.tiles()).hasSize(2);
        assertThat(tiling.cellMm()).isEqualTo(4.5);
    }

    @Test
    void sheetsThatShowNothingOfTheBorderAreLeftOut() {
        Tiling tiling = Tiling.of(new Work(100, 100, 20, 5, 4), WIDTH_MM, HEIGHT_MM, 5);
        List<String> sheets = new ArrayList<>();
        tiling.tiles().forEach(tile -> sheets.add(tile.column() + "," + tile.row()));
        assertThat(tiling.across()).isEqualTo(4);
        assertThat(tiling.down()).isEqualTo(3);
        assertThat(sheets).containsExactly("0,0", "1,0", "2,0", "3,0", "0,1", "0,2");
        assertThat(tiling.beside(tiling.tiles().get(0), Edge.BOTTOM)).hasValue(4);
        assertThat(tiling.beside(tiling.tiles().get(1), Edge.BOTTOM)).isEmpty();
        assertThat(tiling.beside(tiling.tiles().get(1), Edge.LEFT)).hasValue(0);
    }

    @Test
    void theCutFollowsTheInnerEdgeOfALimbWhereThatSavesASheet() {
        // Halves of 51 cells are 26 and 27 wide, so four sheets would be needed for arms of 28 cells.
        Tiling tiling = Tiling.of(new Work(51, 51, 28, 5, 4), WIDTH_MM, HEIGHT_MM, 5);
        assertThat(tiling.tiles())
                .containsExactly(
                        new Tile(0, 0, new CellRange(0, 0, 28, 28)),
                        new Tile(1, 0, new CellRange(26, 0, 25, 28)),
                        new Tile(0, 1, new CellRange(0, 26, 28, 25)));
    }

    @Test
    void sheetsForALeftHandedMakerAreNumberedFromTheLeftAgain() {
        Tiling tiling =
                Tiling.of(new Work(51, 51, 28, 5, 4), WIDTH_MM, HEIGHT_MM, 5).mirrored(51);
        assertThat(tiling.tiles())
                .containsExactly(
                        new Tile(0, 0, new CellRange(0, 0, 25, 28)),
                        new Tile(1, 0, new CellRange(23, 0, 28, 28)),
                        new Tile(1, 1, new CellRange(23, 26, 28, 25)));
    }

    @Test
    void aSheetOfOneArmEndsBelowTheBracketsOfItsRepeats() {
        Tiling tiling = Tiling.of(new Work(50, 40, 10, 5, 4), WIDTH_MM, HEIGHT_MM, 5);
        assertThat(tiling.tiles())
                .containsExactly(
                        new Tile(0, 0, new CellRange(0, 0, 26, 40)), new Tile(1, 0, new CellRange(24, 0, 26, 13)));
    }

    @Test
    void everyCellOfBothArmsIsOnASheet() {
        for (int arm = 1; arm <= 60; arm += 7) {
            for (int beyond = 1; beyond <= 60; beyond += 8) {
                Work work = new Work(arm + beyond, arm + beyond + 3, arm, 5, 4);
                Tiling tiling = Tiling.fewestSheets(work, WIDTH_MM, HEIGHT_MM, 4, 6.5);
                for (int row = 0; row < work.rows(); row++) {
                    for (int column = 0; column < work.columns(); column++) {
                        int x = column;
                        int y = row;
                        if (Math.min(x, y) < arm) {
                            assertThat(tiling.tiles())
                                    .anyMatch(tile -> tile.cells().holds(x, y));
                        }
                    }
                }
            }
        }
    }
}
