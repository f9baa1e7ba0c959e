package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.Tiling.Edge;
import edgewright.booklet.Tiling.Tile;
import edgewright.booklet.Tiling.Work;
import edgewright.draw.CellRange;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How a large chart is cut into sheets. */
class TilingTest {
    private static final double WIDTH_MM = 170;
    private static final double HEIGHT_MM = 220;

    private static Tiling fewest(int columns, int rows) {
        return Tiling.fewestSheets(new Work(columns, rows, 5, 4), WIDTH_MM, HEIGHT_MM, 4, 6.5, cells -> true);
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
        Tiling tiling = Tiling.of(
                new Work(100, 100, 5, 4),
                WIDTH_MM,
                HEIGHT_MM,
                5,
                cells -> cells.firstColumn() <= 20 || cells.firstRow() <= 20);
        List<String> sheets = new ArrayList<>();
        tiling.tiles().forEach(tile -> sheets.add(tile.column() + "," + tile.row()));
        assertThat(tiling.across()).isEqualTo(4);
        assertThat(tiling.down()).isEqualTo(3);
        assertThat(sheets).containsExactly("0,0", "1,0", "2,0", "3,0", "0,1", "0,2");
        assertThat(tiling.beside(tiling.tiles().get(0), Edge.BOTTOM)).hasValue(4);
        assertThat(tiling.beside(tiling.tiles().get(1), Edge.BOTTOM)).isEmpty();
        assertThat(tiling.beside(tiling.tiles().get(1), Edge.LEFT)).hasValue(0);
    }
}
