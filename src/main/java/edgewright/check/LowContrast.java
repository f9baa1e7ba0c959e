package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Yarn;
import edgewright.yarn.Contrast;
import edgewright.yarn.Lab;
import edgewright.yarn.YarnPair;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Two yarns that meet in neighbouring rounds and are hard to tell apart; {@link Contrast} says when they are. One breach for
 * each pair of yarns, at the outer of the first two rounds in which they meet. The base round has no yarn in the chart.
 */
final class LowContrast implements Rule<Violation.LowContrast> {
    @Override
    public String id() {
        return "low-contrast";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    /** The breaches of a chart, by round. */
    List<RuleBreach<?>> breaches(Chart chart) {
        List<RuleBreach<?>> breaches = new ArrayList<>();
        for (YarnPair meeting : YarnPair.of(chart)) {
            if (meeting.contrast().isLow()) {
                breaches.add(new RuleBreach<>(
                        this, new Violation.LowContrast(meeting.round(), meeting.inner(), meeting.outer())));
            }
        }
        return breaches;
    }

    /** The lighter yarn made lighter, or the darker one darker, by as little as is enough. */
    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.LowContrast low) {
        boolean innerIsLighter =
                low.inner().colour().luminance() > low.outer().colour().luminance();
        Yarn lighter = innerIsLighter ? low.inner() : low.outer();
        Yarn darker = innerIsLighter ? low.outer() : low.inner();
        return List.of(
                shades(lighter, 1)
                        .filter(colour ->
                                !Contrast.between(colour, darker.colour()).isLow())
                        .map(colour -> new RemedyEdit.LightenYarn(lighter, colour)),
                shades(darker, -1)
                        .filter(colour ->
                                !Contrast.between(colour, lighter.colour()).isLow())
                        .map(colour -> new RemedyEdit.DarkenYarn(darker, colour)));
    }

    /** The colour of a yarn in steps of one hundredth of the way from black to white, nearest first. */
    private static Stream<Colour> shades(Yarn yarn, int direction) {
        Lab lab = Lab.of(yarn.colour());
        return IntStream.rangeClosed(1, 100)
                .mapToDouble(step -> lab.lightness() + direction * step)
                .takeWhile(lightness -> lightness >= 0 && lightness <= 100)
                .mapToObj(lightness -> lab.withLightness(lightness).toColour());
    }
}
