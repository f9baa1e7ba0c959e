package edgewright.desk.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.KeptPiece;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Swatch;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.desk.fitting.PieceOutcome.Mark;
import edgewright.desk.fitting.PieceOutcome.Mood;
import edgewright.fit.FitPlan;
import edgewright.fit.PatternSize;
import edgewright.fit.Ties;
import edgewright.proof.ProofResult;
import edgewright.proof.Prover;
import edgewright.texts.English;
import edgewright.words.page.PlainText;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What comes of the numbers that somebody types at the sides of a piece. A side closes in round r with 3 + 2r + 5m stitches. */
class PieceTest {
    private static final Chart CHART = Chart.blank(
                    "Tide Steps",
                    new SideShape(2, 5, 1),
                    8,
                    List.of(
                            new Yarn("A", "Peat", Colour.parse("#2b2a33")),
                            new Yarn("B", "Chalk", Colour.parse("#f2ead8"))))
            .withRound(5, Round.of("A", "bbbbbbb", "lbbbb", "bbbbbb"));

    private final Piece piece = new Piece(CHART, Counting.STITCHES, English.LANGUAGE);

    @Test
    void the_best_round_to_count_in_is_chosen_and_the_counts_are_asked_for() {
        assertThat(piece.countedIn()).isEqualTo(new Piece.CountedIn(false, 2));
        assertThat(piece.outcome().mood()).isEqualTo(Mood.ASKING);
        assertThat(piece.outcome().headline()).isEqualTo("How long are the sides?");
        piece.type(Side.BOTTOM, "57");
        assertThat(piece.outcome().headline()).isEqualTo("And left and right?");
        assertThat(piece.outcome().sides()).isEmpty();
    }

    @Test
    void four_counts_give_targets_changes_places_and_words() {
        type("57", "39", "58", "41");
        PieceOutcome outcome = piece.outcome();
        assertThat(outcome.headline()).isEqualTo("5 changes make it fit");
        assertThat(outcome.sides()).extracting(PieceOutcome.OfSide::wanted).containsExactly(57, 42, 57, 42);
        assertThat(outcome.sides()).extracting(PieceOutcome.OfSide::change).containsExactly(0, 3, -1, 1);
        assertThat(outcome.sides()).extracting(PieceOutcome.OfSide::repeats).containsExactly(10, 7, 10, 7);
        assertThat(of(Side.LEFT).marks())
                .containsExactly(
                        new Mark(Mark.Kind.INCREASE, 9.5 / 39, "10"),
                        new Mark(Mark.Kind.INCREASE, 19.5 / 39, "20"),
                        new Mark(Mark.Kind.INCREASE, 29.5 / 39, "30"));
        assertThat(of(Side.BOTTOM).marks()).containsExactly(new Mark(Mark.Kind.DECREASE, 0.5, "29"));
        assertThat(of(Side.RIGHT).words())
                .containsExactly(
                        "Right: 41 should be 42, with the repeat 7 times. Add 1: work two into stitch 21.",
                        "Right, in round 3: 1 stitch in the corner chain, work 20, two in the next, work 20; then 1 stitch"
                                + " in the next corner chain. The side then has 44.");
        assertThat(outcome.rounds())
                .containsExactly(
                        "Best for this chart: count in round 2, change in round 3, count again in round 4. These"
                                + " are the last plain rounds before the first long stitch, in round 5.");
        assertThat(outcome.warnings()).isEmpty();
    }

    @Test
    void a_side_left_empty_is_like_the_one_opposite() {
        piece.type(Side.TOP, "57");
        piece.type(Side.RIGHT, " 42 ");
        assertThat(piece.outcome().mood()).isEqualTo(Mood.FITS);
        assertThat(piece.outcome().headline()).isEqualTo("It fits as it is");
    }

    @Test
    void what_cannot_be_read_is_told_of_at_its_side() {
        type("57", "3x", "10001", "42");
        assertThat(piece.outcome().mood()).isEqualTo(Mood.MISTAKE);
        assertThat(piece.outcome().wrong()).containsExactly(Side.LEFT, Side.BOTTOM);
        assertThat(piece.outcome().notes())
                .containsExactly(
                        "Left: \u201c3x\u201d is not a whole number up to 10,000.",
                        "Bottom: \u201c10001\u201d is not a whole number up to 10,000.");
        piece.count(Counting.WITH_CHAINS);
        type("59", "1", "59", "44");
        assertThat(piece.outcome().notes())
                .containsExactly("Left: with its corner chains counted, a side has at least 2; 1 is too few.");
    }

    @Test
    void counted_in_the_other_way_it_stays_the_same_piece() {
        type("57", "39", "58", "41");
        PieceOutcome before = piece.outcome();
        piece.count(Counting.WITH_CHAINS);
        assertThat(piece.typed(Side.LEFT)).isEqualTo("41");
        assertThat(piece.outcome().sides())
                .extracting(PieceOutcome.OfSide::wanted)
                .containsExactly(59, 44, 59, 44);
        assertThat(of(Side.LEFT).marks()).extracting(Mark::label).containsExactly("11", "21", "31");
        piece.count(Counting.STITCHES);
        assertThat(piece.outcome()).isEqualTo(before);
    }

    @Test
    void the_next_sizes_are_taken_by_tied_sides_together_and_given_up_again() {
        type("57", "39", "58", "41");
        assertThat(of(Side.TOP).smaller()).hasValue(52);
        assertThat(of(Side.TOP).larger()).isEqualTo(62);
        piece.step(Side.TOP, 1);
        assertThat(piece.outcome().sides())
                .extracting(PieceOutcome.OfSide::wanted)
                .containsExactly(62, 42, 62, 42);
        piece.step(Side.BOTTOM, -2);
        assertThat(piece.outcome().sides())
                .extracting(PieceOutcome.OfSide::wanted)
                .containsExactly(52, 42, 52, 42);
        piece.tie(Ties.NONE);
        piece.step(Side.TOP, 1);
        assertThat(piece.outcome().sides())
                .extracting(PieceOutcome.OfSide::wanted)
                .containsExactly(62, 37, 57, 42);
        piece.nearest();
        assertThat(piece.outcome().sides())
                .extracting(PieceOutcome.OfSide::wanted)
                .containsExactly(57, 37, 57, 42);
        piece.step(Side.TOP, 1);
        piece.type(Side.TOP, "58");
        assertThat(piece.isNearest()).isTrue();
    }

    @Test
    void a_piece_that_is_too_small_is_told_what_it_lacks() {
        type("57", "5", "57", "5");
        assertThat(piece.outcome().mood()).isEqualTo(Mood.NO);
        assertThat(piece.outcome().headline()).isEqualTo("Too small for this border");
        assertThat(piece.outcome().notes())
                .startsWith(
                        "The piece is too small for this border. In round 2 a side must have at least 7, stitches only.")
                .contains("Left: 5, which is 2 too few.");
        assertThat(piece.outcome().wrong()).containsExactly(Side.LEFT, Side.RIGHT);
    }

    @Test
    void too_many_changes_are_refused_but_the_other_sizes_stay_in_reach() {
        type("12", "42", "12", "42");
        piece.step(Side.TOP, 3);
        assertThat(piece.outcome().headline()).isEqualTo("Too many changes for one round");
        assertThat(piece.outcome().notes())
                .startsWith("Top: 15 to add to 12 stitches, but away from the corners there is room for only 8.");
        assertThat(of(Side.TOP).smaller()).hasValue(22);
        piece.step(Side.TOP, -3);
        assertThat(piece.outcome().mood()).isEqualTo(Mood.FITS);
    }

    @Test
    void in_the_last_round_nothing_can_be_changed_any_more() {
        piece.countIn(new Piece.CountedIn(false, 8));
        type("65", "64", "64", "64");
        assertThat(piece.outcome().headline()).isEqualTo("This does not come out even");
        assertThat(piece.outcome().notes())
                .startsWith("The border does not come out even, and round 8 is its"
                        + " last: there is no round left to change the counts in.");
    }

    @Test
    void counted_too_late_it_is_warned_of() {
        piece.countIn(new Piece.CountedIn(false, 5));
        type("54", "53", "53", "53");
        assertThat(piece.outcome().warnings())
                .singleElement()
                .asString()
                .startsWith("Changes in round 6 come too late");
        assertThat(piece.outcome().rounds())
                .last()
                .isEqualTo("As you counted in round 5, make the changes in round 6.");
    }

    @Test
    void a_round_of_the_back_layer_has_the_counts_of_a_round_of_the_front() {
        piece.lay(CHART.withMaking(CHART.making().withBack(Optional.of(Back.DEFAULT))));
        piece.countIn(new Piece.CountedIn(true, 2));
        type("62", "61", "61", "61");
        assertThat(piece.outcome().mood()).isEqualTo(PieceOutcome.Mood.ASKING);
        assertThat(piece.outcome().headline()).isEqualTo("What counts has the front?");
        piece.front(0, "53, 4");
        assertThat(piece.outcome().mood()).isEqualTo(PieceOutcome.Mood.NO);
        piece.front(0, "53");
        assertThat(piece.outcome().mood()).isEqualTo(PieceOutcome.Mood.MISTAKE);
        // One repeat less than the nearest size: what the front has is owed, not what is near.
        piece.front(0, "48, 53");
        assertThat(piece.outcome().sides())
                .extracting(PieceOutcome.OfSide::wanted)
                .containsExactly(56, 61, 56, 61);
        piece.front(8, "69, 69");
        assertThat(piece.outcome().sides())
                .extracting(PieceOutcome.OfSide::wanted)
                .containsExactly(61, 61, 61, 61);
        assertThat(of(Side.TOP).words())
                .containsExactly(
                        "Top: 62 should be 61, with the repeat 10 times. Lose 1: work stitches 31 + 32 together.",
                        "Top, in back round 3: 2 stitches in the corner chain, work 30, the next two together, work 30; then"
                                + " 2 stitches in the next corner chain. The side then has 65.");
        assertThat(piece.outcome().rounds())
                .containsExactly(
                        "Back round 2 has the counts of round 4 of the front.", "Make the changes in back round 3.");
        assertThat(PieceCounts.rounds(piece).rows())
                .startsWith(List.of("8", "69", "69", "69", "69", "back 4"), List.of("7", "67", "67", "67", "67", ""));
    }

    @Test
    void a_ragged_chart_has_no_counts() {
        piece.lay(CHART.withRound(4, Round.of("A", "bb", "bbbbb", "bbbbb")));
        type("57", "42", "57", "42");
        assertThat(piece.outcome().headline()).isEqualTo("Not while a section has the wrong length");
        assertThat(PieceCounts.sizes(piece)).isEqualTo(PieceCounts.Table.NONE);
    }

    @Test
    void a_bare_piece_in_centimetres_is_picked_up_by_the_swatch() {
        piece.take(Piece.Way.MEASURED);
        piece.type(Side.TOP, "40");
        piece.type(Side.LEFT, "30,0");
        // 16 stitches in 10 cm: 64 and 48 lie flat; 48 closes, and 63 is the nearest to 64 that does.
        assertThat(piece.outcome().headline()).isEqualTo("Pick up 222 stitches");
        assertThat(of(Side.TOP).words())
                .containsExactly(
                        "Top: pick up 63.", "Marks at the quarters: 16 by 10.0 cm, 32 by 20.0 cm, 47 by 30.0 cm.");
        assertThat(of(Side.TOP).marks())
                .containsExactly(
                        new Mark(Mark.Kind.QUARTER, 0.25, "16"),
                        new Mark(Mark.Kind.QUARTER, 0.5, "32"),
                        new Mark(Mark.Kind.QUARTER, 0.75, "47"));
        // Nine rounds of 1 / 1.8 cm, the base round among them.
        assertThat(piece.outcome().size())
                .startsWith(
                        "The border is 5.0 cm (2 in) wide. With it the piece measures 50.0 by 40.0 cm (19¾ by 15¾ in).");
        piece.swatch("", "18");
        assertThat(piece.outcome().mood()).isEqualTo(Mood.MISTAKE);
        piece.swatch("16", "18");
        piece.type(Side.LEFT, "-3");
        assertThat(piece.outcome().notes()).containsExactly("Left: \u201c-3\u201d is not a length in centimetres.");
    }

    @Test
    void a_bare_piece_in_rows_is_picked_up_in_a_ratio() {
        piece.take(Piece.Way.ROWS);
        piece.type(Side.TOP, "63");
        piece.type(Side.LEFT, "64");
        assertThat(of(Side.TOP).words()).startsWith("Top: pick up 63, one in every stitch.");
        assertThat(of(Side.LEFT).words()).startsWith("Left: pick up 48, 3 in every 4 rows.");
        piece.ratio("1", "1");
        assertThat(of(Side.LEFT).words()).startsWith("Left: pick up 63, about 1 in every row.");
        piece.ratio("0", "4");
        assertThat(piece.outcome().mood()).isEqualTo(Mood.MISTAKE);
        piece.ratio("3", "4");
        piece.type(Side.LEFT, "0");
        assertThat(piece.outcome().notes()).containsExactly("Left: an edge has at least one.");
    }

    @Test
    void the_counts_stand_as_counted_up_to_the_changes_and_as_wanted_after_them() {
        type("57", "39", "58", "41");
        PieceCounts.Table rounds = PieceCounts.rounds(piece);
        assertThat(rounds.columns()).containsExactly("Round", "Top", "Left", "Bottom", "Right");
        assertThat(rounds.caption())
                .isEqualTo("The sides in every round, stitches only: up to round 2 as"
                        + " you counted them, from round 3 on with the changes made.");
        assertThat(rounds.rows().subList(5, 9))
                .containsExactly(
                        List.of("3", "59", "44", "59", "44"),
                        List.of("2", "57", "39", "58", "41"),
                        List.of("1", "55", "37", "56", "39"),
                        List.of("base", "53", "35", "54", "37"));
        assertThat(rounds.marked()).containsExactly(5, 6);
    }

    @Test
    void the_sizes_around_those_of_the_piece_are_listed_with_their_length() {
        type("57", "42", "57", "42");
        piece.count(Counting.WITH_CHAINS);
        PieceCounts.Table sizes = PieceCounts.sizes(piece);
        assertThat(sizes.columns()).containsExactly("Repeats", "Base", "Round 2", "Round 8", "cm", "Side");
        // With 10 repeats: 53 stitches of 1 / 1.6 cm, and eight rounds of 1 / 1.8 cm at each end.
        assertThat(sizes.rows()).contains(List.of("10", "55", "59", "71", "42.0", "Top, Bottom"));
        assertThat(sizes.rows()).hasSize(16);
        assertThat(sizes.marked()).containsExactly(6, 9);
    }

    @Test
    void the_swatch_of_the_chart_is_taken_where_it_has_one() {
        assertThat(piece.swatchStitches()).isEqualTo("16");
        piece.lay(CHART.withMaking(CHART.making().withSwatch(Optional.of(new Swatch(20, 22.5)))));
        assertThat(List.of(piece.swatchStitches(), piece.swatchRounds())).containsExactly("20", "22.5");
    }

    @Test
    void counts_of_the_front_are_counted_in_the_other_way_too() {
        piece.lay(CHART.withMaking(CHART.making().withBack(Optional.of(Back.DEFAULT))));
        piece.countIn(new Piece.CountedIn(true, 2));
        type("62", "61", "61", "61");
        piece.front(0, "48, 53");
        PieceOutcome before = piece.outcome();
        piece.count(Counting.WITH_CHAINS);
        assertThat(piece.frontCounts()).isEqualTo("50, 55");
        piece.count(Counting.STITCHES);
        assertThat(piece.outcome()).isEqualTo(before);
    }

    @Test
    void the_left_hand_comes_to_the_sides_the_other_way_round() {
        type("57", "39", "58", "41");
        piece.hold(HookHand.LEFT);
        assertThat(piece.outcome().sides())
                .extracting(PieceOutcome.OfSide::side)
                .containsExactly(Side.TOP, Side.RIGHT, Side.BOTTOM, Side.LEFT);
        assertThat(of(Side.RIGHT).words())
                .startsWith("Right: 41 should be 42, with the repeat 7 times. Add 1: work two into stitch 21.");
    }

    @Test
    void a_piece_that_is_kept_with_its_chart_is_there_again_round_by_round() {
        Chart layered = CHART.withMaking(CHART.making().withBack(Optional.of(Back.DEFAULT)));
        piece.lay(layered);
        type("57", "39", "58", "");
        KeptPiece second = piece.toKeep().orElseThrow();
        assertThat(second).isEqualTo(KeptPiece.NONE.with(false, 2, PerSide.of(57, 39, 58, 39)));
        piece.lay(kept(layered, second));
        piece.countIn(new Piece.CountedIn(true, 2));
        type("62", "61", "61", "61");
        piece.front(0, "48, 53");
        KeptPiece all = piece.toKeep().orElseThrow();
        assertThat(all)
                .isEqualTo(second.with(false, 0, PerSide.pairs(48, 53)).with(true, 2, PerSide.of(62, 61, 61, 61)));

        Piece again = new Piece(kept(layered, all), Counting.WITH_CHAINS, English.LANGUAGE);
        assertThat(again.countedIn()).isEqualTo(new Piece.CountedIn(false, 2));
        assertThat(typed(again)).containsExactly("59", "41", "60", "41");
        again.countIn(new Piece.CountedIn(true, 2));
        assertThat(typed(again)).containsExactly("64", "63", "63", "63");
        again.front(0, "");
        assertThat(again.frontCounts()).isEqualTo("50, 55");
        again.countIn(new Piece.CountedIn(false, 5));
        assertThat(typed(again)).as("nothing is kept of it").containsExactly("64", "63", "63", "63");
        assertThat(again.toKeep().orElseThrow().in(false, 5)).hasValue(PerSide.of(62, 61, 61, 61));
    }

    @Test
    void what_is_no_whole_count_of_a_round_is_not_kept() {
        assertThat(piece.toKeep()).isEmpty();
        type("57", "39x", "58", "41");
        assertThat(piece.toKeep()).isEmpty();
        piece.take(Piece.Way.MEASURED);
        type("57", "39", "58", "41");
        assertThat(piece.toKeep()).isEmpty();
    }

    @Test
    void hands_work_the_words_for_this_piece_from_the_counts_that_it_has() {
        type("57", "39", "58", "41");
        PatternSize size = piece.words().size().orElseThrow();
        FitPlan plan = size.changes().orElseThrow();
        for (HookHand hand : HookHand.values()) {
            WordingOptions options =
                    new WordingOptions(English.LANGUAGE, Terms.UK, Counting.STITCHES, size, false, hand);
            String words = PlainText.of(PatternWriter.write(CHART, options));
            ProofResult proof = new Prover(CHART, English.LANGUAGE).prove(words, plan);
            assertThat(proof).isInstanceOf(ProofResult.Agrees.class);
            assertThat(((ProofResult.Agrees) proof).pattern().hand()).isEqualTo(hand);
        }
        // Two rounds below the counted one.
        assertThat(plan.stitches(0)).isEqualTo(PerSide.of(53, 35, 54, 37));
    }

    @Test
    void a_piece_that_is_still_bare_or_whose_back_was_counted_has_the_words_of_a_size() {
        assertThat(piece.words().size()).isEmpty();
        piece.take(Piece.Way.MEASURED);
        type("40", "30", "40", "30");
        assertThat(piece.words().size()).hasValue(new PatternSize.OfRepeats(PerSide.pairs(12, 9)));
        piece.take(Piece.Way.COUNTED);
        piece.lay(CHART.withMaking(CHART.making().withBack(Optional.of(Back.DEFAULT))));
        piece.countIn(new Piece.CountedIn(true, 2));
        type("62", "61", "61", "61");
        piece.front(0, "48, 53");
        assertThat(piece.words().size()).hasValue(new PatternSize.OfRepeats(PerSide.pairs(9, 10)));
    }

    @Test
    void counts_put_right_too_late_have_no_words_and_it_is_said_why() {
        piece.countIn(new Piece.CountedIn(false, 5));
        type("54", "53", "53", "53");
        assertThat(piece.words().size()).isEmpty();
        assertThat(piece.words().why()).isNotEmpty();
        type("63", "63", "63", "63");
        assertThat(piece.outcome().mood()).isEqualTo(Mood.FITS);
        assertThat(piece.words().why()).isEmpty();
        assertThat(piece.words().size()).isPresent();
    }

    private static Chart kept(Chart chart, KeptPiece counts) {
        return chart.withMaking(chart.making().withPiece(Optional.of(counts)));
    }

    private static List<String> typed(Piece of) {
        return Stream.of(Side.values()).map(of::typed).toList();
    }

    private PieceOutcome.OfSide of(Side side) {
        return piece.outcome().of(side).orElseThrow();
    }

    private void type(String top, String left, String bottom, String right) {
        piece.type(Side.TOP, top);
        piece.type(Side.LEFT, left);
        piece.type(Side.BOTTOM, bottom);
        piece.type(Side.RIGHT, right);
    }
}
