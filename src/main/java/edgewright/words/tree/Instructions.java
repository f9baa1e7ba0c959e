package edgewright.words.tree;

import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.Terms;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A pattern as a tree: all that its words say, with no sentence in it. What the writer writes down and the reader reads
 * back.
 *
 * <p>All counts in the tree are of stitches, corner chains not counted, whichever way the pattern counts.
 *
 * @param title on one line; may be empty
 * @param designer on one line; may be empty
 * @param notes what the designer says to the maker, a paragraph each
 * @param draft whether the pattern calls itself a draft
 * @param terms the terms that its words are in
 * @param counting the way of counting that comes first wherever a count is shown
 * @param hand the hand that its makers hold the hook in
 * @param yarns in the order of the list that the pattern gives; unique ids
 * @param markers above which rounds start that begin along a side
 * @param rounds in working order, numbered from 1 with none left out
 * @param back the back layer of a double border
 */
public record Instructions(
        String title,
        String designer,
        List<String> notes,
        boolean draft,
        Terms terms,
        Counting counting,
        HookHand hand,
        List<PatternYarn> yarns,
        BaseRound base,
        Optional<StartMarkers> markers,
        List<WrittenRound> rounds,
        Optional<WrittenBack> back) {
    public Instructions {
        Objects.requireNonNull(title);
        Objects.requireNonNull(designer);
        Objects.requireNonNull(terms);
        Objects.requireNonNull(counting);
        Objects.requireNonNull(hand);
        Objects.requireNonNull(base);
        Objects.requireNonNull(markers);
        Objects.requireNonNull(back);
        notes = List.copyOf(notes);
        yarns = List.copyOf(yarns);
        rounds = List.copyOf(rounds);
        List<String> ids = yarns.stream().map(PatternYarn::id).toList();
        if (ids.stream().distinct().count() != ids.size()) {
            throw new IllegalArgumentException("two yarns have the same id: " + ids);
        }
        List<Integer> numbers = new ArrayList<>();
        for (WrittenRound round : rounds) {
            numbers.add(round.number());
            if (round.number() != numbers.size()) {
                throw new IllegalArgumentException("rounds are numbered from 1 with none left out, not " + numbers);
            }
            if (!ids.contains(round.yarn())) {
                throw new IllegalArgumentException("round " + round.number() + " is in no yarn of the pattern");
            }
            if (round instanceof WrittenRound.AsRound again
                    && !rounds.get(again.as().number() - 1).equals(again.as())) {
                throw new IllegalArgumentException("round " + round.number() + " is as no round of the pattern");
            }
            round.start().ifPresent(start -> requireMarker(markers, round.number(), start));
        }
    }

    private static void requireMarker(Optional<StartMarkers> markers, int round, WrittenStart start) {
        boolean marked = markers.filter(each -> each.round() < round
                        && each.of(round).side() == start.side()
                        && each.joins(round) <= start.stitch())
                .isPresent();
        if (!marked) {
            throw new IllegalArgumentException("round " + round + " starts above no marker");
        }
    }

    /** A pattern of one layer for the right hand. */
    public Instructions(
            String title,
            String designer,
            List<String> notes,
            boolean draft,
            Terms terms,
            Counting counting,
            List<PatternYarn> yarns,
            BaseRound base,
            List<WrittenRound> rounds) {
        this(
                title,
                designer,
                notes,
                draft,
                terms,
                counting,
                HookHand.RIGHT,
                yarns,
                base,
                Optional.empty(),
                rounds,
                Optional.empty());
    }

    /** This pattern with something else said of the base round. */
    public Instructions withBase(BaseRound other) {
        return new Instructions(
                title, designer, notes, draft, terms, counting, hand, yarns, other, markers, rounds, back);
    }

    /** This pattern, whose rounds begin at corners, with other markers. */
    public Instructions withMarkers(Optional<StartMarkers> others) {
        return new Instructions(
                title, designer, notes, draft, terms, counting, hand, yarns, base, others, rounds, back);
    }

    /** This pattern with other rounds. */
    public Instructions withRounds(List<WrittenRound> others) {
        return new Instructions(
                title, designer, notes, draft, terms, counting, hand, yarns, base, markers, others, back);
    }

    /** This pattern with every round told by itself, none as one before it. */
    public Instructions withEachRoundInFull() {
        return withRounds(rounds.stream()
                .map(round -> round instanceof WrittenRound.AsRound again ? again.inFull() : round)
                .toList());
    }

    /** This pattern with another back layer. */
    public Instructions withBack(Optional<WrittenBack> other) {
        return new Instructions(
                title, designer, notes, draft, terms, counting, hand, yarns, base, markers, rounds, other);
    }

    /** The yarn of a round of this pattern. */
    public PatternYarn yarnOf(WrittenRound round) {
        return yarns.stream()
                .filter(yarn -> yarn.id().equals(round.yarn()))
                .findFirst()
                .orElseThrow();
    }
}
