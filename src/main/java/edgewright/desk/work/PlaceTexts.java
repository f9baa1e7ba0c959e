package edgewright.desk.work;

import edgewright.chart.Chart;
import edgewright.chart.CornerEnd;
import edgewright.chart.Footing;
import edgewright.chart.Landing;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.check.Finding;
import edgewright.check.FindingPlace;
import java.util.Optional;

/** Says in words where a stitch is, what it stands on and where it lands. */
public final class PlaceTexts {
    private PlaceTexts() {}

    /** The place that a finding is about, or the nearest thing to it that the chart has. */
    public static Optional<Place> of(Finding finding, Chart chart) {
        return finding.place()
                .accept(new FindingPlace.Visitor<Optional<Place>>() {
                    @Override
                    public Optional<Place> stitch(Place stitch) {
                        return Optional.of(stitch);
                    }

                    @Override
                    public Optional<Place> section(int round, Section section) {
                        return Optional.of(new Place(round, section, 1));
                    }

                    @Override
                    public Optional<Place> round(int round) {
                        return section(round, Section.REPEAT);
                    }

                    @Override
                    public Optional<Place> side(Side side) {
                        return Optional.empty();
                    }
                })
                .filter(place -> place.round() <= chart.rounds().size());
    }

    static String inWords(Place place) {
        return DeskTexts.of("where.stitch", place.round(), ChartCommands.sectionName(place.section()), place.place());
    }

    /** The stitch at a place in one sentence: what it is, what it stands on and, if it is long, where it lands. */
    public static String sentence(Chart chart, Place place) {
        Stitch stitch = chart.stitch(place);
        String what = DeskTexts.of("status.stitch." + stitch.letter());
        if (!fits(chart, place)) {
            return DeskTexts.of("status.ragged", inWords(place), what);
        }
        SideShape shape = chart.shape();
        String stands = standsOn(chart, shape.footing(place));
        return stitch.coversStitchBelow()
                ? DeskTexts.of("status.long", inWords(place), what, stands, landsIn(chart, shape.landing(place)))
                : DeskTexts.of("status.short", inWords(place), what, stands);
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
            return DeskTexts.of("status.lands", stitchAt(chart, in.place()));
        }
        if (landing instanceof Landing.InCornerChain chain) {
            return DeskTexts.of("status.lands", cornerChain(chain.round(), chain.corner()));
        }
        return landing instanceof Landing.NoRoundBelow
                ? DeskTexts.of("status.landsNowhere.round")
                : DeskTexts.of("status.landsNowhere.corner");
    }

    private static String stitchAt(Chart chart, Place place) {
        return place.round() == 0
                ? DeskTexts.of("status.baseRound")
                : DeskTexts.of(
                        "status.at",
                        DeskTexts.of("status.stitch." + chart.stitch(place).letter()),
                        place.round());
    }

    private static String cornerChain(int round, CornerEnd corner) {
        return DeskTexts.of(corner == CornerEnd.START ? "status.chainStart" : "status.chainNext", round);
    }
}
