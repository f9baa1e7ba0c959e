package edgewright.words.read;

import edgewright.chart.Chart;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Reads the title of a round, or of some that are worked alike, with their yarns. */
final class TitleReader {
    private final TokenCursor cursor;
    private final YarnReader yarns;
    private int last;
    private List<String> ids = List.of();

    TitleReader(TokenCursor cursor, YarnReader yarns) {
        this.cursor = cursor;
        this.yarns = yarns;
    }

    /**
     * What was read.
     *
     * @param first the number of the first round
     * @param yarns the id of the yarn of each round, at least one
     */
    record Title(int first, List<String> yarns) {
        Title {
            yarns = List.copyOf(yarns);
        }

        int rounds() {
            return yarns.size();
        }

        int last() {
            return first + yarns.size() - 1;
        }
    }

    /** @param number the number that the first round must have */
    Title read(int number) {
        last = number;
        boolean named = cursor.take("round-title", gap -> switch (gap) {
                    case "round" -> isThisRound(number);
                    case "yarn" -> {
                        ids = List.of(yarns.take(cursor));
                        yield true;
                    }
                    default -> throw Phrase.unknown(gap);
                })
                || cursor.take("rounds-two", gap -> takeOfSome(gap, number, number + 1))
                || cursor.take("rounds-more", gap -> takeOfSome(gap, number, Chart.MOST_ROUNDS));
        if (!named) {
            if (!cursor.opens("rounds-two")) {
                cursor.miss(Expectation.of("round", number));
            }
            throw cursor.stopped();
        }
        cursor.skipPartings();
        cursor.skip(cursor.grammar().listed("yarn-after"));
        cursor.skipPartings();
        return new Title(number, ids);
    }

    private boolean takeOfSome(String gap, int number, int most) {
        return switch (gap) {
            case "first" -> isThisRound(number);
            case "last" -> {
                Token said = cursor.peek();
                boolean taken = cursor.takeNumber(0, "number");
                if (taken && (cursor.number() <= number || cursor.number() > most)) {
                    throw cursor.stopAt(said, Expectation.of("lastRound", number + 1));
                }
                last = cursor.number();
                yield taken;
            }
            case "yarns" -> {
                takeYarns(last - number + 1);
                yield true;
            }
            default -> throw Phrase.unknown(gap);
        };
    }

    private boolean isThisRound(int number) {
        if (!cursor.isNumber()) {
            return cursor.miss(Expectation.of("round", number));
        }
        if (cursor.grammar().number(cursor.peek()) != number) {
            throw cursor.stopAt(cursor.peek(), Expectation.of("round", number));
        }
        cursor.next();
        return true;
    }

    /** One yarn for all rounds, one for each, or some that come in turn, each twice at least. */
    private void takeYarns(int rounds) {
        Token start = cursor.peek();
        List<String> listed = new ArrayList<>();
        Phrase.Gaps gaps = gap -> {
            if (!gap.equals("yarns")) {
                throw Phrase.unknown(gap);
            }
            listed.clear();
            listed.addAll(yarns.takeList(cursor));
            return true;
        };
        boolean inTurn = cursor.takeOptional("in-turn", gaps);
        if (!inTurn) {
            listed.clear();
            listed.addAll(yarns.takeList(cursor));
        }
        boolean fits = inTurn
                ? listed.size() > 1 && 2 * listed.size() <= rounds
                : listed.size() == 1 || listed.size() == rounds;
        if (!fits) {
            throw cursor.stopAt(start, Expectation.of("yarnOfEach", rounds));
        }
        ids = IntStream.range(0, rounds)
                .mapToObj(i -> listed.get(i % listed.size()))
                .toList();
    }
}
