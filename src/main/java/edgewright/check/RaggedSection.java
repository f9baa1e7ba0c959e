package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import java.util.List;
import java.util.stream.Stream;

/**
 * A section whose length does not go with its round: not A + r, w or B + r. Round 1 is never ragged, since A, w and B follow
 * from it. Columns do not line up in such a chart, so while there is one, no other rule is run.
 */
final class RaggedSection implements Rule {
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

    /** One flag for each ragged section, in working order. */
    List<Violation> flags(Chart chart) {
        return chart.raggedSections().stream()
                .map(ragged -> new Violation(
                        this,
                        FindingPlace.inSection(ragged.round(), ragged.section()),
                        List.of(ragged.length(), ragged.expected())))
                .toList();
    }

    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        int round = flag.where().round().orElseThrow();
        Section section = flag.where().section().orElseThrow();
        Remedy thisOne = new Remedy(
                "even-out",
                List.of(flag.values().get(1)),
                chart -> atCorner(Edits.evenOut(chart, round, section), round, section));
        int all = verdict.chart().raggedSections().size();
        Remedy allOfThem = new Remedy("even-out-all", List.of(all), RaggedSection::evenOutAll);
        return List.of(Stream.of(thisOne), all > 1 ? Stream.of(allOfThem) : Stream.of());
    }

    private static Chart evenOutAll(Chart chart) {
        Chart even = Edits.evenOut(chart);
        for (Chart.RaggedSection ragged : chart.raggedSections()) {
            even = atCorner(even, ragged.round(), ragged.section());
        }
        return even;
    }

    /** Where a section was cut off at the corner, its new end may be a stitch that cannot stand there. */
    private static Chart atCorner(Chart chart, int number, Section section) {
        if (section == Section.REPEAT) {
            return chart;
        }
        Round round = chart.round(number);
        Stitches row = round.section(section);
        int end = section == Section.FROM_CORNER ? 1 : row.length();
        boolean stands = row.at(end) == Stitch.BACK_LOOP || row.at(end) == Stitch.PLAIN;
        return stands ? chart : chart.withRound(number, round.with(section, row.with(end, Stitch.BACK_LOOP)));
    }
}
