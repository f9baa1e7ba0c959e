package edgewright.words.setup;

import edgewright.chart.Counting;
import edgewright.chart.Stitch;
import edgewright.words.grammar.Item;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.StatedCount;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a text says once for all its rounds, gathered while it is read. */
public final class Facts {
    /** 'A multiple of 8 plus 3', as the text counts. */
    public record SaidMultiple(Lexeme at, int of, int plus, List<Lexeme> examples) {}

    /** The counts of the base round. */
    public final List<StatedCount> base = new ArrayList<>();
    /** Chains that the corners of the base round are said to have. */
    public final List<Lexeme> baseChains = new ArrayList<>();

    /** Words for the stitches between the corners: those that go into the corners are left out of every count. */
    public boolean betweenCorners;
    /** Whether the base round is spoken of as what lies between corners, whatever is counted so. */
    public boolean baseBetween;
    /** Whether of '5 (4)' the first number is for top and bottom, the other for left and right. */
    public boolean bracketsForSides;
    /** Sizes that are told as a number of repeats of the multiple. */
    public final List<Lexeme> repeats = new ArrayList<>();

    public Optional<SaidMultiple> multiple = Optional.empty();
    /** The way of counting, if it is said. */
    public Optional<Counting> counting = Optional.empty();
    /** The corner that is told once. */
    public Optional<Item.Turn> corner = Optional.empty();
    /** Which stitch a short one is where nothing is said of its loops. */
    public Stitch usual = Stitch.PLAIN;
    /** The yarns of the rounds in turn, where they are told once. */
    public List<Lexeme> yarnsInTurn = List.of();
    /** The yarns of single rounds by their numbers, where they are told once; these go before the yarns in turn. */
    public final Map<Integer, Lexeme> yarnsOfRounds = new HashMap<>();
    /** Whether what is said of loops is not for the last round, whose own words must then say them. */
    public boolean loopsOfLast;
    /** Whether the stitches that go into a corner are among those that the words of a side tell; empty if it is not said. */
    public Optional<Boolean> armsInSides = Optional.empty();
    /** Where back loops are spoken of outside the rounds and the list of abbreviations. */
    public final List<Lexeme> backLoopsSaid = new ArrayList<>();
    /** How many rounds there are said to be in all. */
    public final List<Lexeme> depths = new ArrayList<>();
    /** Rounds that are talked about; each must have its words elsewhere. */
    public final List<Lexeme> mentioned = new ArrayList<>();
}
