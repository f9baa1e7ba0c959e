package edgewright.words.read;

import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.words.terms.TradeTerms;
import edgewright.words.terms.TradeWord;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** All words that can stand in the rounds of a pattern in these terms of a language. */
final class Vocabulary {
    private final Grammar grammar;
    private final TradeTerms trade;
    private final Map<TradeWord, Spellings> words = new EnumMap<>(TradeWord.class);
    private final Map<Stitch, Spellings> together = new EnumMap<>(Stitch.class);
    private final Expectation anyStitch;

    Vocabulary(Grammar grammar, Language language, Terms terms) {
        this.grammar = grammar;
        trade = TradeTerms.of(language, terms);
        for (TradeWord word : TradeWord.values()) {
            words.put(word, Spellings.of(trade.spellings(word).stream()));
        }
        for (Stitch stitch : Stitch.inStitchBelow()) {
            together.put(stitch, Spellings.of(trade.togetherSpellings(stitch).stream()));
        }
        List<String> stitches =
                Stream.of(Stitch.values()).map(trade::abbreviation).toList();
        anyStitch = new Expectation("stitch", trade.name(), grammar.commas(stitches));
    }

    Grammar grammar() {
        return grammar;
    }

    Spellings of(TradeWord word) {
        return words.get(word);
    }

    Spellings stitch(Stitch stitch) {
        return words.get(TradeWord.of(stitch));
    }

    /** Two of these stitches worked together; only two that are worked into the stitch below can be. */
    Spellings together(Stitch stitch) {
        return together.getOrDefault(stitch, Spellings.of(Stream.of()));
    }

    /** What this is called. */
    String name(TradeWord word) {
        return trade.abbreviation(word);
    }

    /** A stitch in these terms, where another word stands. */
    Expectation anyStitch() {
        return anyStitch;
    }
}
