package edgewright.words.others;

import edgewright.chart.Counting;
import edgewright.chart.Stitch;
import edgewright.words.grammar.Item;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.StatedCount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a text says once for all its rounds, gathered while it is read. */
final class Facts {
    /** 'A multiple of 8 plus 3', as the text counts. */
    record SaidMultiple(Lexeme at, int of, int plus, List<Lexeme> examples) {}

    /** The counts of the base round. */
    final List<StatedCount> base = new ArrayList<>();
    /** Chains that the corners of the base round are said to have. */
    final List<Lexeme> baseChains = new ArrayList<>();

    /** Words for the stitches between the corners: those that go into the corners are left out of every count. */
    boolean betweenCorners;
    /** Sizes that are told as a number of repeats of the multiple. */
    final List<Lexeme> repeats = new ArrayList<>();

    Optional<SaidMultiple> multiple = Optional.empty();
    /** The way of counting, if it is said. */
    Optional<Counting> counting = Optional.empty();
    /** The corner that is told once. */
    Optional<Item.Turn> corner = Optional.empty();
    /** Which stitch a short one is where nothing is said of its loops. */
    Stitch usual = Stitch.PLAIN;
    /** The yarns of the rounds in turn, where they are told once. */
    List<Lexeme> yarnsInTurn = List.of();
}
