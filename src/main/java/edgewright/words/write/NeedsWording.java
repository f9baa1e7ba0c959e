package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.choice;
import static edgewright.texts.Arg.commas;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.decimal;
import static edgewright.texts.Arg.plain;
import static edgewright.texts.Arg.shortest;

import edgewright.chart.Ball;
import edgewright.chart.Chart;
import edgewright.chart.HookSize;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import edgewright.chart.Swatch;
import edgewright.fit.FinishedSize;
import edgewright.fit.Inches;
import edgewright.fit.PatternSize;
import edgewright.texts.Arg;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.TextBlock;
import edgewright.words.terms.TradeTerms;
import edgewright.yarn.Amounts;
import edgewright.yarn.HookNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is needed to work a chart, beside the names of its yarns: enough to buy from. Lengths are of each size, the first outside
 * the brackets; in a pattern for any size they are of its examples. In American terms inches and yards come first.
 */
final class NeedsWording {
    private static final double MM_IN_CM = 10;
    /** Exact: https://www.nist.gov/pml/owm/si-units-length */
    private static final double METRES_IN_A_YARD = 0.9144;
    /** More digits than a swatch is ever measured with. */
    private static final int MOST_DIGITS = 9;
    /** What is lost in computing is no yarn. */
    private static final double NOTHING = 1e-6;

    private final Language language;
    private final Messages says;
    private final Messages phrases;
    private final TradeTerms trade;
    /** Which measures come first. */
    private final Arg terms;

    private final Chart chart;
    private final PatternSize size;
    /** How often the repeat is worked on each side, in each size or example. */
    private final List<PerSide<Integer>> sizes;

    /** How many markers show where rounds start. */
    private final int markers;

    private final List<TextBlock> said = new ArrayList<>();

    NeedsWording(Chart chart, WordingOptions options) {
        language = options.language();
        says = language.messages("words/write");
        phrases = language.messages("words/phrases");
        trade = TradeTerms.of(language, options.terms());
        terms = choice("terms", options.terms());
        this.chart = chart;
        markers = StartComposer.of(chart, options)
                .markers()
                .map(each -> each.isOne() ? 1 : 2)
                .orElse(0);
        size = options.size();
        sizes = size.sizes().isEmpty()
                ? PatternWriter.exampleRepeats().stream().map(PerSide::all).toList()
                : size.sizes();
    }

    /** All that is needed, a word and what is said of it each, and what else there is to say. */
    List<TextBlock> blocks() {
        chart.making()
                .yarnWeight()
                .ifPresent(weight -> entry(says.text("needs-weight"), says.text("needs-weight-" + weight)));
        amounts();
        hooks();
        chart.making().swatch().ifPresent(this::measures);
        String skill = chart.making().skill().strip();
        if (!skill.isEmpty()) {
            entry(says.text("needs-skill"), Composer.onOneLine(skill));
        }
        notions();
        if (chart.yarnsUsed().size() > 1) {
            prose(says.text("needs-contrast"));
        }
        return List.copyOf(said);
    }

    private void amounts() {
        List<Amounts> amounts =
                sizes.stream().map(each -> Amounts.of(chart, each)).toList();
        for (int i = 0; i < chart.yarns().size(); i++) {
            if (chart.yarnsUsed().contains(chart.yarns().get(i))) {
                int at = i;
                amount(amounts.stream().map(each -> each.yarns().get(at)).toList());
            }
        }
        List<String> sentences = new ArrayList<>();
        if (size.sizes().isEmpty()) {
            sentences.add(says.text("needs-examples"));
        }
        sentences.add(says.text(
                "needs-counted",
                terms,
                shortest("tailCm", Amounts.TAIL_CM, 2),
                arg("tailInches", inches(Amounts.TAIL_CM * MM_IN_CM)),
                shortest("margin", 100 * Amounts.MARGIN, 2)));
        if (chart.making().back().isPresent()) {
            sentences.add(says.text("needs-backYarn"));
        }
        if (!amounts.get(0).estimated().isEmpty()) {
            sentences.add(says.text("needs-estimated"));
        }
        prose(phrases.list("sentences-next", sentences));
    }

    /** @param amounts of one yarn, in each size */
    private void amount(List<Amounts.OfYarn> amounts) {
        String lengths =
                SizeWording.ofSizes(phrases, amounts.stream().map(this::length).toList());
        Optional<Ball> ball = amounts.get(0).yarn().ball();
        String text = ball.isEmpty()
                ? lengths
                : says.text(
                        "needs-lengthInBalls",
                        terms,
                        arg("lengths", lengths),
                        arg("balls", balls(amounts)),
                        shortest("ballMetres", ball.get().metres(), 2),
                        count("ballYards", Math.round(ball.get().metres() / METRES_IN_A_YARD)),
                        shortest("ballGrams", ball.get().grams(), 2));
        entry(says.text("needs-amount", arg("id", amounts.get(0).yarn().id())), text);
    }

    private String balls(List<Amounts.OfYarn> amounts) {
        List<Integer> balls =
                amounts.stream().map(yarn -> yarn.balls().orElseThrow()).toList();
        return balls.size() == 1
                ? says.text("needs-balls", count("balls", balls.get(0)))
                : says.text(
                        "needs-ballsEach",
                        arg(
                                "balls",
                                SizeWording.ofSizes(
                                        phrases,
                                        balls.stream().map(language::count).toList())));
    }

    /** The metres and yards of one size, rounded up, which no line parts. */
    private String length(Amounts.OfYarn yarn) {
        return says.text(
                "needs-length",
                terms,
                count("metres", roundedUp(yarn.metres())),
                count("yards", roundedUp(yarn.metres() / METRES_IN_A_YARD)));
    }

    private static long roundedUp(double measure) {
        return (long) Math.ceil(measure - NOTHING);
    }

    private void hooks() {
        chart.making().hook().ifPresent(hook -> entry(says.text("needs-hook"), hook(hook)));
        chart.making().backHook().ifPresent(hook -> entry(says.text("needs-backHook"), hook(hook)));
    }

    /** A hook in millimetres, and what else it is called. */
    private String hook(HookSize hook) {
        List<String> names = new ArrayList<>();
        HookNames.us(hook).ifPresent(name -> names.add(says.text("needs-hookUs", arg("name", name))));
        HookNames.uk(hook).ifPresent(name -> names.add(says.text("needs-hookUk", arg("name", name))));
        return names.isEmpty()
                ? says.text("needs-mm", shortest("mm", hook.mm(), 2))
                : says.text("needs-hookNames", shortest("mm", hook.mm(), 2), commas("names", names));
    }

    private void measures(Swatch swatch) {
        entry(
                language.capital(trade.tension()),
                says.text(
                        "needs-swatch",
                        terms,
                        shortest("swatchStitches", swatch.stitchesIn10Cm(), MOST_DIGITS),
                        shortest("swatchRounds", swatch.roundsIn10Cm(), MOST_DIGITS)));
        double width = chart.rounds().size() * swatch.roundMm();
        entry(
                says.text("needs-width"),
                says.text(
                        "needs-cmAndInches", terms, shortest("cm", width / MM_IN_CM, 1), arg("inches", inches(width))));
        for (int i = 0; i < sizes.size(); i++) {
            finished(i, swatch);
        }
    }

    /** How large a piece of this size is, without its border and with it. */
    private void finished(int i, Swatch swatch) {
        SideShape shape = chart.shape();
        PerSide<Integer> base = sizes.get(i).map(m -> Math.max(1, shape.stitches(0, m)));
        FinishedSize finished = FinishedSize.onStitches(base, chart.rounds().size(), swatch);
        String word = size.names().size() > i
                ? says.text("needs-finishedOf", arg("size", size.names().get(i)))
                : size.sizes().isEmpty()
                        ? says.text("needs-finishedExample", plain("stitches", base.top()))
                        : says.text("needs-finished");
        entry(
                word,
                says.text(
                        "needs-size",
                        terms,
                        decimal("across", finished.outerAcrossMm() / MM_IN_CM, 0),
                        decimal("down", finished.outerDownMm() / MM_IN_CM, 0),
                        arg("acrossInches", inches(finished.outerAcrossMm())),
                        arg("downInches", inches(finished.outerDownMm())),
                        decimal("pieceAcross", finished.acrossMm() / MM_IN_CM, 0),
                        decimal("pieceDown", finished.downMm() / MM_IN_CM, 0),
                        arg("pieceAcrossInches", inches(finished.acrossMm())),
                        arg("pieceDownInches", inches(finished.downMm()))));
    }

    private String inches(double mm) {
        return new Inches(language).ofMm(mm);
    }

    private void notions() {
        var tension = arg("tension", trade.tension());
        boolean named =
                chart.making().hook().isPresent() || chart.making().swatch().isPresent();
        String needle = says.text("needs-needle-" + chart.making().technique().close(), count("markers", markers));
        prose(phrases.list(
                "sentences-next", List.of(says.text(named ? "needs-otherHook" : "needs-anyHook", tension), needle)));
    }

    private void entry(String word, String text) {
        said.add(Wording.entry(phrases, word, text));
    }

    private void prose(String text) {
        said.add(new TextBlock.Prose(text));
    }
}
