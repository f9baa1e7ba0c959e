package edgewright.words.technique;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.choice;
import static edgewright.texts.Arg.count;

import edgewright.chart.HookHand;
import edgewright.chart.Stitch;
import edgewright.chart.Technique;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.terms.TradeTerms;
import edgewright.words.terms.TradeWord;
import edgewright.words.tree.Instructions;
import java.util.List;

/** Tells how the techniques of a pattern are worked, in the terms of the pattern. */
public final class TechniqueWording {
    private final Messages says;
    private final TradeTerms trade;
    private final HookHand hand;

    private TechniqueWording(Language language, TradeTerms trade, HookHand hand) {
        this.says = language.messages("words/technique");
        this.trade = trade;
        this.hand = hand;
    }

    /**
     * The techniques that a pattern uses, in the order in which a maker meets them.
     *
     * @param technique how the designer has rounds begun and closed
     */
    public static List<ToldTechnique> of(Instructions pattern, Technique technique, Language language) {
        TechniqueWording wording =
                new TechniqueWording(language, TradeTerms.of(language, pattern.terms()), pattern.hand());
        return UsedTechniques.of(pattern, technique).stream().map(wording::told).toList();
    }

    private ToldTechnique told(ShownTechnique shown) {
        String steps = says.text(
                "steps-" + shown.kind(),
                choice("join", shown.join()),
                choice("ends", shown.ends()),
                choice("into", shown.stitch()),
                count("chains", shown.chains()),
                arg("stitch", trade.abbreviation(shown.stitch())),
                arg("base", trade.baseStitch()),
                arg("chain", trade.abbreviation(Stitch.CHAIN)),
                arg("tall", trade.abbreviation(TradeWord.TALL)),
                arg("slip", trade.abbreviation(TradeWord.SLIP)));
        return new ToldTechnique(shown, title(shown), figure(shown), List.of(steps.split("\\s*\\n\\s*")));
    }

    private String title(ShownTechnique shown) {
        return says.text(
                "title-" + shown.kind(),
                count("chains", shown.chains()),
                arg("stitch", trade.abbreviation(shown.stitch())),
                arg("chain", trade.abbreviation(Stitch.CHAIN)),
                arg("together", trade.together(worked(shown.stitch()))));
    }

    private String figure(ShownTechnique shown) {
        return says.text(
                "figure-" + shown.kind(),
                choice("hand", hand),
                choice("join", shown.join()),
                choice("ends", shown.ends()),
                count("chains", shown.chains()));
    }

    /** Only what stands in the stitch below can be worked together. */
    private static Stitch worked(Stitch stitch) {
        return stitch.standsInStitchBelow() ? stitch : Stitch.BACK_LOOP;
    }
}
