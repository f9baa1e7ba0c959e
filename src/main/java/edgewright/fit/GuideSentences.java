package edgewright.fit;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.choice;
import static edgewright.texts.Arg.commas;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.decimal;
import static edgewright.texts.Arg.number;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What is said to a maker about sizes, picking up and landmarks, in sentences from the messages. */
public final class GuideSentences {
    /** A last round that is off by less than this is not spoken of. The number is our own. */
    private static final double LEAST_TO_SPARE_MM = 10;

    private static final double MM_IN_CM = 10;

    private final Messages says;
    private final FitPhrases words;
    private final Inches inches;

    /** The sentences in that language. */
    public GuideSentences(Language language) {
        this.says = language.messages("fit");
        this.words = new FitPhrases(language);
        this.inches = new Inches(language);
    }

    /** What a maker should see in a round of any size, a sentence for each landmark. */
    public List<String> landmarks(List<Landmark> landmarks) {
        return landmarks.stream().map(this::of).toList();
    }

    /** What a maker should see in a round of a piece with so many repeats, a sentence for each landmark. */
    public List<String> landmarks(List<Landmark> landmarks, PerSide<Integer> repeats) {
        return landmarks.stream()
                .map(landmark ->
                        landmark instanceof Landmark.LongsOnSide longs ? onSides(longs, repeats) : of(landmark))
                .toList();
    }

    /** The counts with which a side closes, without a full stop. */
    public String of(SideMultiple multiple) {
        String counting = words.way(multiple.counting());
        if (multiple.of() == 1) {
            return says.text("multiple-any", count("fewest", multiple.fewest()), arg("counting", counting));
        }
        return multiple.plus() == 0
                ? says.text(
                        "multiple-even",
                        count("multiple", multiple.of()),
                        count("fewest", multiple.fewest()),
                        arg("counting", counting))
                : says.text(
                        "multiple-plus",
                        count("multiple", multiple.of()),
                        count("plus", multiple.plus()),
                        count("fewest", multiple.fewest()),
                        arg("counting", counting));
    }

    /** How many stitches are picked up along an edge, how they are spread, and the marks to go by. */
    public List<String> of(PickUp pickUp) {
        List<String> marks = pickUp.quarters().stream()
                .limit(3)
                .map(mark -> mark(mark, pickUp.edge()))
                .toList();
        return List.of(
                says.text(
                        "pickUp",
                        arg("side", words.name(pickUp.side())),
                        count("stitches", pickUp.stitches()),
                        arg("spread", spread(pickUp))),
                says.text("pickUp-quarters", commas("marks", marks)));
    }

    /** How large the piece is with its border on, and what its edge will do, which is for the designer to know. */
    public List<String> of(FinishedSize size) {
        List<String> said = new ArrayList<>();
        said.add(outer(size, Terms.UK));
        if (Math.abs(size.edgeToSpareMm()) >= LEAST_TO_SPARE_MM) {
            said.add(says.text(
                    size.edgeToSpareMm() > 0 ? "size-ruffles" : "size-cups",
                    decimal("cm", cm(Math.abs(size.edgeToSpareMm())), 1)));
        }
        return List.copyOf(said);
    }

    /**
     * How large the piece is with its border on.
     *
     * @param terms of the words around: inches lead in US terms, centimetres in UK terms
     */
    public String outer(FinishedSize size, Terms terms) {
        return says.text(
                "size-outer",
                choice("terms", terms),
                decimal("border", cm(size.borderMm()), 1),
                decimal("across", cm(size.outerAcrossMm()), 1),
                decimal("down", cm(size.outerDownMm()), 1),
                arg("borderInches", inches.ofMm(size.borderMm())),
                arg("acrossInches", inches.ofMm(size.outerAcrossMm())),
                arg("downInches", inches.ofMm(size.outerDownMm())));
    }

    private String of(Landmark landmark) {
        if (landmark instanceof Landmark.EachLong each) {
            return says.text("landmark-each-" + each.relation());
        }
        if (landmark instanceof Landmark.FirstLong first) {
            return first.number() == 2
                    ? says.text("landmark-firstInCorner")
                    : says.text("landmark-first", number("stitch", first.number()));
        }
        if (landmark instanceof Landmark.InGroups groups) {
            return says.text("landmark-groups", count("longs", groups.size()));
        }
        Landmark.LongsOnSide longs = (Landmark.LongsOnSide) landmark;
        if (longs.inRepeat() == 0) {
            return says.text("landmark-onSide", arg("longs", longs(longs.inCorners())));
        }
        return longs.inCorners() == 0
                ? says.text("landmark-onRepeat", arg("longs", longs(longs.inRepeat())))
                : says.text(
                        "landmark-onBoth", arg("corners", longs(longs.inCorners())), count("repeat", longs.inRepeat()));
    }

    private String longs(int longs) {
        return says.text("landmark-longs", count("longs", longs));
    }

    private String onSides(Landmark.LongsOnSide longs, PerSide<Integer> repeats) {
        return says.text(
                "landmark-onSides",
                commas(
                        "counts",
                        Stream.of(Side.values())
                                .map(side -> words.sideCount(side, longs.on(repeats.get(side))))
                                .toList()));
    }

    private String spread(PickUp pickUp) {
        if (pickUp.edge() instanceof Edge.OfStitches edge) {
            int more = pickUp.stitches() - edge.stitches();
            return more == 0
                    ? says.text("pickUp-eachStitch")
                    : says.text(
                            more > 0 ? "pickUp-stitchesMore" : "pickUp-stitchesFewer",
                            count("stitches", Math.abs(more)));
        }
        if (pickUp.edge() instanceof Edge.OfRows edge && pickUp.stitches() > 0) {
            RowSpread spread = new RowSpread(edge.rows(), pickUp.stitches());
            Ratio ratio = spread.exactly().orElseGet(() -> Ratio.nearest((double) spread.stitches() / spread.rows()));
            boolean exact = spread.exactly().isPresent();
            if (ratio.rows() == 1) {
                return says.text(exact ? "pickUp-eachRow" : "pickUp-aboutEachRow", count("stitches", ratio.stitches()));
            }
            return says.text(
                    exact ? "pickUp-exactly" : "pickUp-about",
                    count("stitches", ratio.stitches()),
                    count("rows", ratio.rows()));
        }
        return "";
    }

    private String mark(PickUp.Mark mark, Edge edge) {
        if (edge instanceof Edge.OfLength) {
            return says.text(
                    "pickUp-mark-length", count("stitches", mark.stitches()), decimal("cm", cm(mark.along()), 1));
        }
        return edge instanceof Edge.OfRows
                ? says.text("pickUp-mark-rows", count("stitches", mark.stitches()), number("row", mark.along()))
                : says.text("pickUp-mark-stitches", count("stitches", mark.stitches()), number("stitch", mark.along()));
    }

    private static double cm(double mm) {
        return mm / MM_IN_CM;
    }
}
