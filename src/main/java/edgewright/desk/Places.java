package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.chart.CornerEnd;
import edgewright.chart.Footing;
import edgewright.chart.Landing;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.check.Finding;
import edgewright.check.Where;
import java.util.Optional;

/** Says in words where a stitch is, what it stands on and where it lands. */
final class Places {
    private Places() {}

    /** The place that a finding is about, or the nearest thing to it that the chart has. */
    static Optional<Place> of(Finding finding, Chart chart) {
        Where where = finding.where();
        if (where.round().isEmpty()) {
            return Optional.empty();
        }
        int round = where.round().getAsInt();
        if (round < 1 || round > chart.rounds().size()) {
            return Optional.empty();
        }
        return Optional.of(new Place(
                round, where.section().orElse(Section.REPEAT), where.place().orElse(1)));
    }

    static String inWords(Place place) {
        return Texts.of("where.stitch", place.round(), ChartDeeds.sectionName(place.section()), place.place());
    }

    /** The stitch at a place in one sentence: what it is, what it stands on and, if it is long, where it lands. */
    static String sentence(Chart chart, Place place) {
        Stitch stitch = chart.stitch(place);
        String what = Texts.of("status.stitch." + stitch.letter());
        if (!fits(chart, place)) {
            return Texts.of("status.ragged", inWords(place), what);
        }
        SideShape shape = chart.shape();
        String stands = standsOn(chart, shape.footing(place));
        return stitch == Stitch.LONG
                ? Texts.of("status.long", inWords(place), what, stands, landsIn(chart, shape.landing(place)))
                : Texts.of("status.short", inWords(place), what, stands);
    }

    /** Whether the geometry has an answer for this stitch: its section is as long as its round asks for, and the one below. */
    private static boolean fits(Chart chart, Place place) {
        return chart.raggedSections().stream().noneMatch(ragged -> ragged.round() <= place.round())
                && place.place() <= chart.shape().length(place.section(), place.round());
    }

    private static String standsOn(Chart chart, Footing footing) {
        if (footing instanceof Footing.OnCornerChain chain) {
            return cornerChain(chain.round(), chain.corner());
        }
        return stitchAt(chart, ((Footing.OnStitch) footing).place());
    }

    private static String landsIn(Chart chart, Landing landing) {
        if (landing instanceof Landing.InStitch in) {
            return Texts.of("status.lands", stitchAt(chart, in.place()));
        }
        if (landing instanceof Landing.InCornerChain chain) {
            return Texts.of("status.lands", cornerChain(chain.round(), chain.corner()));
        }
        return landing instanceof Landing.NoRoundBelow
                ? Texts.of("status.landsNowhere.round")
                : Texts.of("status.landsNowhere.corner");
    }

    private static String stitchAt(Chart chart, Place place) {
        return place.round() == 0
                ? Texts.of("status.baseRound")
                : Texts.of(
                        "status.at",
                        Texts.of("status.stitch." + chart.stitch(place).letter()),
                        place.round());
    }

    private static String cornerChain(int round, CornerEnd corner) {
        return Texts.of(corner == CornerEnd.START ? "status.chainStart" : "status.chainNext", round);
    }
}
