package edgewright.booklet.page;

import static edgewright.booklet.page.ColumnSlice.Break.FREE;
import static edgewright.booklet.page.ColumnSlice.Break.NEVER;
import static edgewright.booklet.page.ColumnSlice.Break.UNWELCOME;
import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.page.ColumnSlice.Break;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where pages end. A page of these tests is 100 points high. */
class PaginatorTest {
    private final List<ColumnSlice> strips = new ArrayList<>();

    private ColumnSlice strip(double heightPt, Break below) {
        ColumnSlice strip = ColumnSlice.of(heightPt, List.of()).breaking(below);
        strips.add(strip);
        return strip;
    }

    /** How many strips each page holds. */
    private List<Integer> pages() {
        List<List<Paginator.Placed>> pages = new Paginator(100).pages(strips);
        assertThat(pages.stream().flatMap(List::stream).map(Paginator.Placed::strip))
                .containsExactlyElementsOf(strips);
        return pages.stream().map(List::size).toList();
    }

    @Test
    void aPageIsFilledToItsFoot() {
        for (int i = 0; i < 5; i++) {
            strip(40, FREE);
        }
        assertThat(pages()).containsExactly(2, 2, 1);
    }

    @Test
    void aHeadingGoesWithWhatFollowsIt() {
        strip(60, FREE);
        strip(20, NEVER);
        strip(30, FREE);
        assertThat(pages()).containsExactly(1, 2);
    }

    @Test
    void aRoundIsKeptTogetherWhereItFitsOnAPage() {
        strip(50, FREE);
        strip(20, NEVER);
        strip(20, UNWELCOME);
        strip(20, NEVER);
        strip(20, FREE);
        assertThat(pages()).containsExactly(1, 4);
    }

    @Test
    void aRoundThatIsHigherThanAPageIsBrokenWhereNoLineStandsAlone() {
        strip(40, NEVER);
        strip(40, UNWELCOME);
        strip(40, UNWELCOME);
        strip(40, NEVER);
        strip(40, FREE);
        assertThat(pages()).containsExactly(2, 1, 2);
    }

    @Test
    void whatMayNeverBeBrokenIsBrokenOnlyIfItIsHigherThanAPage() {
        strip(60, NEVER);
        strip(60, NEVER);
        strip(60, FREE);
        assertThat(pages()).containsExactly(1, 1, 1);
    }

    @Test
    void aStripThatIsHigherThanAPageStillStandsOnOne() {
        strip(20, FREE);
        strip(130, FREE);
        strip(20, FREE);
        assertThat(pages()).containsExactly(1, 1, 1);
    }

    @Test
    void whiteOverAStripIsDroppedAtTheHeadOfAPage() {
        strip(90, FREE);
        strips.add(ColumnSlice.of(20, List.of()).spaced(15));
        strips.add(ColumnSlice.of(20, List.of()).spaced(15));
        List<List<Paginator.Placed>> pages = new Paginator(100).pages(strips);
        assertThat(pages.get(1)).extracting(Paginator.Placed::topPt).containsExactly(0.0, 35.0);
    }

    @Test
    void theHeadOfATableComesAgainAsAnOrnament() {
        ColumnSlice head = ColumnSlice.of(
                10, List.of(ColumnSlice.Piece.of(Tag.document(), PageItem.Box.filled(0, 0, 1, 1, PageColour.INK))));
        strips.add(head.breaking(NEVER));
        for (int i = 0; i < 3; i++) {
            strips.add(ColumnSlice.of(40, List.of()).repeating(List.of(head)));
        }
        List<List<Paginator.Placed>> pages = new Paginator(100).pages(strips);
        assertThat(pages.get(1)).extracting(Paginator.Placed::topPt).containsExactly(0.0, 10.0);
        assertThat(pages.get(1).get(0).strip()).isEqualTo(head.asOrnament());
        assertThat(pages.get(1).get(0).strip().pieces())
                .allMatch(piece -> piece.tag().isEmpty());
    }
}
