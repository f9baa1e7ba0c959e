package edgewright.assist.corner;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.assist.symmetry.Tile;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Heading;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Yarn;
import java.util.List;
import org.junit.jupiter.api.Test;

class CornerSightTest {
    private static final List<Yarn> YARNS =
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));

    private static Chart chart(Round... rounds) {
        return new Chart(Heading.of("Posts"), YARNS, List.of(rounds));
    }

    @Test
    void plainRoundsMeetWithoutABrokenLine() {
        Tile tile = new Tile(chart(Round.of("A", "b", "bb", "b"), Round.of("B", "bb", "bb", "bb")));
        Arms arms = Arms.of(tile, new Cut(CornerKind.TURNING, 1, 0, 1), true);
        assertThat(CornerSight.of(arms, new Motifs(tile))).isEqualTo(new CornerSight(1, 1, 0, 0, 0, 2));
        assertThat(CornerSight.of(arms, new Motifs(tile)).score()).isEqualTo(100);
    }

    @Test
    void anArmInAMirrorShowsTheSameAsTheOther() {
        Tile tile = new Tile(chart(
                Round.of("A", "b", "bbbbb", "b"),
                Round.of("B", "bb", "bllbb", "bb"),
                Round.of("A", "bbb", "bbbbl", "bbb"),
                Round.of("B", "bbbb", "lbbbb", "bbbb")));
        for (CornerKind kind : List.of(CornerKind.MIRROR_FROM, CornerKind.MIRROR_TO)) {
            for (int shift = 0; shift < 5; shift++) {
                Arms arms = Arms.of(tile, new Cut(kind, 6, 6, shift), true);
                assertThat(CornerSight.of(arms, new Motifs(tile)).mirrored()).isEqualTo(1);
            }
        }
    }

    @Test
    void aCellShowsTheRoundAboveOnTheArmWhereItIsCovered() {
        Tile tile = new Tile(chart(
                Round.of("A", "b", "bbb", "b"), Round.of("B", "bb", "lbb", "bb"), Round.of("A", "bbb", "bbb", "bbb")));
        Arms whole = Arms.of(tile, new Cut(CornerKind.TURNING, 0, 0, 0), true);
        // The first round begins with column 2 of the tile and ends with column 0, which has the long stitch above it.
        assertThat(whole.shown(Arms.FROM, 1, 1)).isEqualTo(tile.yarn(1));
        assertThat(whole.shown(Arms.TO, 1, 1)).isEqualTo(tile.yarn(2));
    }

    @Test
    void aMotifThatTheDiagonalCutsIsSeenAndCanBeClearedAway() {
        // Three squares of Chalk on Peat; the arm from the corner begins with the second of them.
        Tile tile = new Tile(chart(
                Round.of("A", "b", "bbbbbbb", "b"),
                Round.of("B", "bb", "bbbbbbb", "bb"),
                Round.of("A", "bbb", "lbbblll", "bbb")));
        Motifs motifs = new Motifs(tile);
        Arms arms = Arms.of(tile, new Cut(CornerKind.TURNING, 0, 0, 3), true);
        assertThat(List.of(arms.shown(Arms.FROM, 2, 1), arms.shown(Arms.FROM, 2, 2), arms.shown(Arms.FROM, 2, 3)))
                .isEqualTo(List.of(tile.yarn(2), tile.yarn(2), tile.yarn(1)));
        assertThat(CornerSight.of(arms, motifs).cut()).isEqualTo(2);
        Arms cleared = new WedgeMend(Rules.DEFAULT, motifs).cleared(arms);
        assertThat(cleared.shown(Arms.FROM, 2, 1)).isEqualTo(tile.yarn(1));
        assertThat(cleared.shown(Arms.FROM, 2, 2)).isEqualTo(tile.yarn(1));
        assertThat(CornerSight.of(cleared, motifs).cut()).isZero();
    }
}
