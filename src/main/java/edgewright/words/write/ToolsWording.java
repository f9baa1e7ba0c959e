package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.shortest;

import edgewright.chart.Chart;
import edgewright.chart.Swatch;
import edgewright.chart.Terms;
import edgewright.fit.Inches;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.TextBlock;
import edgewright.words.terms.TradeTerms;
import java.util.ArrayList;
import java.util.List;

/** The hook, the tension and how wide the border comes out, where the designer has said what they follow from. */
final class ToolsWording {
    private static final int MM_IN_CM = 10;
    /** More digits than a swatch is ever measured with. */
    private static final int MOST_DIGITS = 9;

    private final Language language;
    private final Messages says;
    private final TradeTerms trade;

    ToolsWording(Language language, Terms terms) {
        this.language = language;
        this.says = language.messages("words/write");
        this.trade = TradeTerms.of(language, terms);
    }

    List<TextBlock> entries(Chart chart) {
        List<TextBlock> entries = new ArrayList<>();
        chart.making()
                .hook()
                .ifPresent(hook -> entries.add(
                        entry(says.text("needs-hook"), says.text("needs-mm", shortest("mm", hook.mm(), 2)))));
        chart.making().swatch().ifPresent(swatch -> {
            entries.add(entry(
                    language.capital(trade.tension()),
                    says.text(
                            "needs-swatch",
                            shortest("swatchStitches", swatch.stitchesIn10Cm(), MOST_DIGITS),
                            shortest("swatchRounds", swatch.roundsIn10Cm(), MOST_DIGITS))));
            entries.add(entry(says.text("needs-width"), width(chart.rounds().size(), swatch)));
        });
        return entries;
    }

    private TextBlock entry(String word, String text) {
        return Wording.entry(language.messages("words/phrases"), word, text);
    }

    private String width(int rounds, Swatch swatch) {
        double mm = rounds * swatch.roundMm();
        return says.text(
                "needs-cmAndInches", shortest("cm", mm / MM_IN_CM, 1), arg("inches", new Inches(language).ofMm(mm)));
    }
}
