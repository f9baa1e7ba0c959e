package edgewright.words.read;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.words.tree.SideSize;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Reads what the rounds of one title say of the stitches on a side: for each round, or for the first one and by how much every
 * side grows from then on. It is said once, before the words or after them.
 */
final class RoundsSizeReader {
    private final TokenCursor cursor;
    private final int first;
    private final int rounds;
    private final String growing;
    private Optional<Said> said;

    /** @param counted what has been said elsewhere of a round that stands alone */
    RoundsSizeReader(TokenCursor cursor, TitleReader.Title title, Optional<SizeReader.Said> counted) {
        this(cursor, title.first(), title.rounds(), "counts-growing", counted);
    }

    /** Of rounds of a back layer: this many, from the first on. */
    RoundsSizeReader(TokenCursor cursor, int first, int rounds) {
        this(cursor, first, rounds, "back-counts-growing", Optional.empty());
    }

    private RoundsSizeReader(
            TokenCursor cursor, int first, int rounds, String growing, Optional<SizeReader.Said> counted) {
        this.cursor = cursor;
        this.first = first;
        this.rounds = rounds;
        this.growing = growing;
        this.said = counted.map(RoundsSizeReader::one);
    }

    /** What was read: of each round, and the way of counting. */
    private record Said(List<SideSize> sizes, Counting counting) {}

    /** What is said of each round. */
    List<SideSize> sizes() {
        return said.map(Said::sizes).orElseGet(() -> Collections.nCopies(rounds, SideSize.unstated()));
    }

    /** The way of counting, if something is said. */
    Optional<Counting> counting() {
        return said.map(Said::counting);
    }

    /** Reads what is said here, if anything is. */
    void read() {
        Token start = cursor.peek();
        Optional<Said> here = rounds == 1 ? one() : growing().or(this::each);
        if (here.isPresent() && said.isPresent()) {
            throw cursor.stopAt(start, Expectation.of("once"));
        }
        said = said.or(() -> here);
        cursor.skipPartings();
    }

    private Optional<Said> one() {
        return new SizeReader(cursor, false).read().map(RoundsSizeReader::one);
    }

    private static Said one(SizeReader.Said size) {
        return new Said(List.of(size.size()), size.counting());
    }

    private Optional<Said> growing() {
        List<SizeReader.Said> counted = new ArrayList<>();
        boolean taken = cursor.take(growing, gap -> switch (gap) {
            case "counts" -> takeCounts(counted);
            case "first" -> {
                Token number = cursor.peek();
                boolean isNumber = cursor.takeNumber(0, "number");
                if (isNumber && cursor.number() != first) {
                    throw cursor.stopAt(number, Expectation.of("firstOfThese", first));
                }
                yield isNumber;
            }
            case "more" -> cursor.takeNumber(1, "number");
            default -> throw Phrase.unknown(gap);
        });
        return taken ? Optional.of(grown(counted.get(0), cursor.number())) : Optional.empty();
    }

    private Said grown(SizeReader.Said first, int more) {
        List<SideSize> sizes = IntStream.range(0, rounds)
                .mapToObj(i -> SideSize.of(first.size().counts().stream()
                        .map(each -> more(each, (long) more * i))
                        .toList()))
                .toList();
        return new Said(sizes, first.counting());
    }

    private static PerSide<Integer> more(PerSide<Integer> counts, long more) {
        return counts.map(count -> (int) Math.min(Integer.MAX_VALUE, count + more));
    }

    private Optional<Said> each() {
        List<SizeReader.Said> all = new ArrayList<>();
        boolean taken = cursor.take("counts-of-rounds", gap -> {
            if (!gap.equals("counts")) {
                throw Phrase.unknown(gap);
            }
            return takeEach(all);
        });
        return taken
                ? Optional.of(new Said(
                        all.stream().map(SizeReader.Said::size).toList(),
                        all.get(0).counting()))
                : Optional.empty();
    }

    private boolean takeEach(List<SizeReader.Said> all) {
        all.clear();
        while (all.size() < rounds) {
            int mark = cursor.mark();
            boolean goesOn = all.isEmpty() || cursor.between("counts-of-rounds-next");
            int next = cursor.mark();
            if (!goesOn || !takeCounts(all)) {
                if (all.isEmpty()) {
                    return false;
                }
                cursor.reset(mark);
                throw cursor.hasMissedAfter(next)
                        ? cursor.stopped()
                        : cursor.stopAt(cursor.peek(), Expectation.of("countOfEach", rounds));
            }
        }
        return true;
    }

    private boolean takeCounts(List<SizeReader.Said> all) {
        return all.addAll(new SizeReader(cursor, false).readCounts().stream().toList());
    }
}
