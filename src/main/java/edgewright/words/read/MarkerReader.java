package edgewright.words.read;

import edgewright.chart.Side;
import edgewright.words.tree.StartMarker;
import edgewright.words.tree.StartMarkers;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads where the markers are put above which rounds start, sentence by sentence. */
final class MarkerReader {
    /** Rounds for which a marker can be, with the longest of their names first. */
    private enum Rounds {
        ODD("marker-odd"),
        EVEN("marker-even"),
        ALL("marker-all");

        private final String title;

        Rounds(String title) {
            this.title = title;
        }
    }

    /** Any markers. */
    static final StartMarkers SOME =
            new StartMarkers(0, new StartMarker(Side.FIRST, 1), new StartMarker(Side.FIRST, 1));

    /** A marker, and the round in which it is put. */
    private record Put(StartMarker marker, int round) {}

    private final Map<Rounds, Put> put = new EnumMap<>(Rounds.class);
    private Side side = Side.FIRST;
    private int stitch;
    private int round;
    private Rounds rounds = Rounds.ALL;

    /** Whether a sentence on a marker begins with these words. */
    static boolean begins(Grammar grammar, List<Token> tokens) {
        return grammar.spelled("marker-word").matches(tokens, 0) > 0;
    }

    /** Takes the next sentence. */
    void read(TokenCursor cursor) {
        Token start = cursor.peek();
        if (!cursor.take("marker", gap -> take(gap, cursor))) {
            throw cursor.stopped();
        }
        cursor.skipPartings();
        if (!cursor.atEnd()) {
            cursor.miss("markerEnd");
            throw cursor.stopped();
        }
        boolean isSecond =
                put.containsKey(rounds) || (!put.isEmpty() && (rounds == Rounds.ALL || put.containsKey(Rounds.ALL)));
        if (isSecond) {
            throw cursor.stopAt(start, Expectation.of("otherMarker"));
        }
        put.put(rounds, new Put(new StartMarker(side, stitch), round));
    }

    private boolean take(String gap, TokenCursor cursor) {
        switch (gap) {
            case "title" -> {
                for (Rounds each : Rounds.values()) {
                    rounds = each;
                    if (cursor.take(each.title)) {
                        return true;
                    }
                }
                return false;
            }
            case "edge" -> {
                Optional<Side> edge = new WorkReader(cursor).takeEdge();
                side = edge.orElse(side);
                return edge.isPresent();
            }
            case "number" -> {
                boolean taken = cursor.takeNumber(1, "number");
                stitch = cursor.number();
                return taken;
            }
            case "round" -> {
                return takeRound(cursor);
            }
            default -> throw Phrase.unknown(gap);
        }
    }

    private boolean takeRound(TokenCursor cursor) {
        round = 0;
        return cursor.take("of-base")
                || cursor.take("of-round", gap -> {
                    if (!gap.equals("round")) {
                        throw Phrase.unknown(gap);
                    }
                    boolean taken = cursor.takeNumber(1, "number");
                    round = taken ? cursor.number() : 0;
                    return taken;
                });
    }

    /** Whether there is a marker for some of the rounds and none for the others, or they are put in different rounds. */
    boolean isOneSided() {
        boolean inTurn = put.containsKey(Rounds.ODD) || put.containsKey(Rounds.EVEN);
        return inTurn
                && (put.size() < 2
                        || put.get(Rounds.ODD).round() != put.get(Rounds.EVEN).round());
    }

    /** The markers that were read; none if they are not for all rounds. */
    Optional<StartMarkers> markers() {
        if (put.isEmpty() || isOneSided()) {
            return Optional.empty();
        }
        Put odd = put.getOrDefault(Rounds.ODD, put.get(Rounds.ALL));
        Put even = put.getOrDefault(Rounds.EVEN, odd);
        return Optional.of(new StartMarkers(odd.round(), odd.marker(), even.marker()));
    }
}
