package edgewright.booklet.maker;

import static edgewright.texts.Arg.number;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.texts.Messages;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.List;

/** The round guide, in both terms if both are printed: a block for each round, never cut, with what to work, count and see, and boxes to tick. */
public final class GuidePages {
    private final TextSetter setter;
    private final Messages says;
    private final Chart chart;
    private final BookletOptions options;

    public GuidePages(TextSetter setter, Chart chart, BookletOptions options) {
        this.setter = setter;
        this.says = setter.says();
        this.chart = chart;
        this.options = options;
    }

    public List<ColumnSlice> set(Tag parent, Anchor anchor) {
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        strips.addAll(setter.paragraph(
                parent,
                options.size()
                        .changes()
                        .map(plan -> says.text("guide-how-piece", number("round", plan.changing())))
                        .orElseGet(() -> says.text("guide-how"))));
        String counts = says.text("counts-caption-" + options.counting());
        if (options.size().sizes().isEmpty()) {
            counts += " " + says.text("guide-examples");
        }
        List<ColumnSlice> counted = new ArrayList<>(setter.paragraph(parent, counts));
        counted.set(0, counted.get(0).spaced(setter.sheet().halfLinePt()));
        strips.addAll(counted);
        strips.replaceAll(strip -> strip.breaking(Break.NEVER));
        if (setter.sheet().oneColumn()) {
            // With the first block this is higher than a page.
            strips.set(strips.size() - 1, strips.get(strips.size() - 1).breaking(Break.FREE));
        }
        GuideFacts facts = new GuideFacts(chart, options);
        GuideBlock block = new GuideBlock(setter, options.hand());
        for (int round = 1; round <= chart.rounds().size(); round++) {
            strips.addAll(block.set(parent, facts.of(round), told(round)));
        }
        return strips;
    }

    /** The words of a round in each of the terms. */
    private List<GuideBlock.Told> told(int round) {
        List<GuideBlock.Told> told = new ArrayList<>();
        for (Terms terms : options.telling().terms().inTurn()) {
            WordingOptions written = options.withTerms(terms).words(false);
            told.add(
                    new GuideBlock.Told(terms, options.languageTag(terms), PatternWriter.parts(chart, round, written)));
        }
        return told;
    }
}
