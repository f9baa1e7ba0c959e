package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Edits;
import edgewright.chart.Round;
import edgewright.chart.Yarn;
import edgewright.yarn.Contrast;
import edgewright.yarn.Lab;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Two yarns that meet in neighbouring rounds and are hard to tell apart; {@link Contrast} says when they are. One flag for
 * each pair of yarns, at the outer of the first two rounds in which they meet. The base round has no yarn in the chart.
 */
final class LowContrast implements Rule {
    @Override
    public String id() {
        return "low-contrast";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    /** The flags of a chart, by round. */
    List<Violation> flags(Chart chart) {
        List<Violation> flags = new ArrayList<>();
        Set<Set<String>> met = new HashSet<>();
        List<Round> rounds = chart.rounds();
        String inner = rounds.get(0).yarn();
        String innermost = inner;
        for (int i = 1; i < rounds.size(); i++) {
            String outer = rounds.get(i).yarn();
            boolean metJustNow = i > 1 && outer.equals(innermost);
            if (!metJustNow && !outer.equals(inner) && met.add(Set.of(inner, outer))) {
                addIfLow(chart, i + 1, flags);
            }
            innermost = inner;
            inner = outer;
        }
        return flags;
    }

    private void addIfLow(Chart chart, int round, List<Violation> flags) {
        Yarn inner = chart.yarnOf(round - 1);
        Yarn outer = chart.yarnOf(round);
        if (Contrast.between(inner.colour(), outer.colour()).isLow()) {
            flags.add(new Violation(this, FindingPlace.inRound(round), List.of(inner, outer)));
        }
    }

    /** The lighter yarn made lighter, or the darker one darker, by as little as is enough. */
    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        Yarn one = (Yarn) flag.values().get(0);
        Yarn two = (Yarn) flag.values().get(1);
        boolean oneIsLighter = Contrast.luminance(one.colour()) > Contrast.luminance(two.colour());
        Yarn lighter = oneIsLighter ? one : two;
        Yarn darker = oneIsLighter ? two : one;
        return List.of(
                shades(lighter, 1)
                        .filter(colour ->
                                !Contrast.between(colour, darker.colour()).isLow())
                        .map(colour -> recolour("lighten-yarn", lighter, colour)),
                shades(darker, -1)
                        .filter(colour ->
                                !Contrast.between(colour, lighter.colour()).isLow())
                        .map(colour -> recolour("darken-yarn", darker, colour)));
    }

    /** The colour of a yarn in steps of one hundredth of the way from black to white, nearest first. */
    private static Stream<Colour> shades(Yarn yarn, int direction) {
        Lab lab = Lab.of(yarn.colour());
        return IntStream.rangeClosed(1, 100)
                .mapToDouble(step -> lab.lightness() + direction * step)
                .takeWhile(lightness -> lightness >= 0 && lightness <= 100)
                .mapToObj(lightness -> lab.withLightness(lightness).toColour());
    }

    private static Remedy recolour(String id, Yarn yarn, Colour colour) {
        Yarn changed = yarn.withColour(colour);
        return new Remedy(id, List.of(yarn, colour), chart -> Edits.replaceYarn(chart, yarn.id(), changed));
    }
}
