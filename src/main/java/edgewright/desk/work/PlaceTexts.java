package edgewright.desk.work;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.chart.BorderShape;
import edgewright.chart.Chart;
import edgewright.chart.CornerEnd;
import edgewright.chart.Footing;
import edgewright.chart.Landing;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.check.Finding;
import edgewright.check.FindingPlace;
import edgewright.check.FindingSentences;
import edgewright.check.Verdict;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Says in words where a stitch is, what it stands on and where it lands. */
public final class PlaceTexts {
    private final Messages says;
    private final FindingSentences sentences;

    public PlaceTexts(Language language) {
        says = language.messages("desk/work");
        sentences = new FindingSentences(language);
    }

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

    private String inWords(Place place) {
        return says.text(
                "where-stitch",
                number("round", place.round()),
                arg("section", says.text("section-" + place.section().member())),
                number("place", place.place()));
    }

    /** The stitch at a place in one sentence: what it is, what it stands on and, if it is long, where it lands. */
    public String sentence(Chart chart, Place place) {
        Stitch stitch = chart.stitch(place);
        String what = says.text("status-stitch-" + stitch.letter());
        if (!fits(chart, place)) {
            return says.text("status-ragged", arg("place", inWords(place)), arg("stitch", what));
        }
        BorderShape border = chart.border();
        String stands = standsOn(chart, border.footing(place));
        return stitch.coversStitchBelow()
                ? says.text(
                        "status-long",
                        arg("place", inWords(place)),
                        arg("stitch", what),
                        arg("below", stands),
                        arg("landing", landsIn(chart, border.landing(place, stitch))))
                : says.text("status-short", arg("place", inWords(place)), arg("stitch", what), arg("below", stands));
    }

    /** A stitch as a cell of a table is read out: where it is, what it is, in which yarn, and what was found there. */
    public String cell(Verdict verdict, Place place) {
        Chart chart = verdict.chart();
        Yarn yarn = chart.yarnOf(place.round());
        String cell = says.text(
                "cell-stitch",
                arg("place", inWords(place)),
                arg("stitch", says.text("status-stitch-" + chart.stitch(place).letter())),
                arg("id", yarn.id()),
                arg("yarn", yarn.name()));
        return withFindings(cell, verdict.at(place));
    }

    private String withFindings(String said, List<Finding> findings) {
        String all = said;
        for (Finding finding : findings) {
            all = says.text("cell-finding", arg("stitch", all), arg("finding", sentences.of(finding)));
        }
        return all;
    }

    /** A place at which the chart has no stitch, though its round is to have one. */
    public String missing(Place place) {
        return says.text("cell-missing", arg("place", inWords(place)));
    }

    /** The corner chains of a round. */
    public String cornerChains(int round) {
        return says.text("cell-chains", number("round", round));
    }

    /** What lies beyond the corner of a round, where nothing is worked. */
    public String beyondCorner(int round) {
        return says.text("cell-beyond", number("round", round));
    }

    /** A round as the head of a row, and what was found of all of it or of a section of it. */
    public String round(Verdict verdict, int round) {
        Yarn yarn = verdict.chart().yarnOf(round);
        return withFindings(
                says.text("cell-round", number("round", round), arg("id", yarn.id()), arg("yarn", yarn.name())),
                verdict.findings().stream()
                        .filter(finding -> isOfRound(finding.place(), round))
                        .toList());
    }

    private static boolean isOfRound(FindingPlace place, int round) {
        return place.equals(new FindingPlace.OfRound(round))
                || Stream.of(Section.values())
                        .anyMatch(section -> place.equals(new FindingPlace.OfSection(round, section)));
    }

    /** Whether the geometry has an answer for this stitch: its section is as long as its round asks for, and the one below. */
    private static boolean fits(Chart chart, Place place) {
        return chart.raggedSections().stream().noneMatch(ragged -> ragged.round() <= place.round())
                && place.place() <= chart.border().length(place.section(), place.round());
    }

    private String standsOn(Chart chart, Footing footing) {
        if (footing instanceof Footing.OnCornerChain chain) {
            return cornerChain(chain.round(), chain.corner());
        }
        return stitchAt(chart, ((Footing.OnStitch) footing).place());
    }

    private String landsIn(Chart chart, Landing landing) {
        if (landing instanceof Landing.InStitch in) {
            return says.text("status-lands", arg("place", stitchAt(chart, in.place())));
        }
        if (landing instanceof Landing.InCornerChain chain) {
            return says.text("status-lands", arg("place", cornerChain(chain.round(), chain.corner())));
        }
        return landing instanceof Landing.NoRoundBelow
                ? says.text("status-landsNowhere-round")
                : says.text("status-landsNowhere-corner");
    }

    private String stitchAt(Chart chart, Place place) {
        return place.round() == 0
                ? says.text("status-baseRound")
                : says.text(
                        "status-at",
                        arg(
                                "stitch",
                                says.text("status-stitch-" + chart.stitch(place).letter())),
                        number("round", place.round()));
    }

    private String cornerChain(int round, CornerEnd corner) {
        return says.text(corner == CornerEnd.START ? "status-chainStart" : "status-chainNext", number("round", round));
    }
}
