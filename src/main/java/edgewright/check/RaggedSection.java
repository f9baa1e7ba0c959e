package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.CornerEnd;
import edgewright.chart.Edits;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A section whose length does not go with its round: not A + r, w or B + r. Round 1 is never ragged, since A, w and B follow
 * from it. Columns do not line up in such a chart, so while there is one, no other rule is run.
 */
final class RaggedSection implements Rule<Violation.RaggedSection> {
    @Override
    public String id() {
        return "ragged-section";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    /** Whether a round has a section of the wrong length. */
    boolean breaks(Round round, int number, SideShape shape) {
        return round.fromCorner().length() != shape.a() + number
                || round.repeat().length() != shape.w()
                || round.toCorner().length() != shape.b() + number;
    }

    /** One breach for each ragged section, in working order. */
    List<RuleBreach<?>> breaches(Chart chart) {
        List<RuleBreach<?>> breaches = new ArrayList<>();
        for (Chart.RaggedSection ragged : chart.raggedSections()) {
            breaches.add(new RuleBreach<>(
                    this,
                    new Violation.RaggedSection(ragged.round(), ragged.section(), ragged.length(), ragged.expected())));
        }
        return breaches;
    }

    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.RaggedSection ragged) {
        int all = verdict.chart().raggedSections().size();
        return List.of(
                Stream.of(new RemedyEdit.EvenOut(ragged.round(), ragged.section(), ragged.expected())),
                all > 1 ? Stream.of(new RemedyEdit.EvenOutAll(all)) : Stream.of());
    }

    /** One section at the length of its round, with an end that can stand at the corner. */
    static Chart evenOut(Chart chart, int round, Section section) {
        return atCorner(Edits.evenOut(chart, round, section), round, section);
    }

    /** All ragged sections likewise. */
    static Chart evenOutAll(Chart chart) {
        Chart even = Edits.evenOut(chart);
        for (Chart.RaggedSection ragged : chart.raggedSections()) {
            even = atCorner(even, ragged.round(), ragged.section());
        }
        return even;
    }

    /** Where a section was cut off at the corner, its new end may be a stitch that cannot stand there. */
    private static Chart atCorner(Chart chart, int number, Section section) {
        Round round = chart.round(number);
        Stitches row = round.section(section);
        if (section.isRepeat()) {
            return chart;
        }
        int end = section.corner().equals(Optional.of(CornerEnd.START)) ? 1 : row.length();
        return row.at(end).standsInStitchBelow()
                ? chart
                : chart.withRound(number, round.with(section, row.with(end, Stitch.BACK_LOOP)));
    }
}
