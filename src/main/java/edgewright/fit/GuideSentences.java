package edgewright.fit;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.texts.Bundle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What is said to a maker about sizes, picking up, starts and landmarks, in sentences from the resource bundle. */
public final class GuideSentences {
    /** A last round that is off by less than this is not spoken of. The number is our own. */
    private static final double LEAST_TO_SPARE_MM = 10;

    private final Bundle texts = FitTexts.BUNDLE;

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

    /** Where a round is started. */
    public String of(RoundStart start) {
        String where = texts.text(
                "start", texts.text("round.number", start.round()), texts.text("side." + start.side()), start.number());
        if (!start.free()) {
            return where + " " + texts.text("start.notFree");
        }
        return start.movedOn() == 0 ? where : where + " " + texts.text("start.moved", start.movedOn());
    }

    /** The counts with which a side closes, without a full stop. */
    public String of(SideMultiple multiple) {
        String key = multiple.of() == 1 ? "multiple.any" : multiple.plus() == 0 ? "multiple.even" : "multiple.plus";
        return texts.text(
                key, multiple.plus(), multiple.fewest(), texts.text("counting." + multiple.counting()), multiple.of());
    }

    /** How many stitches are picked up along an edge, how they are spread, and the marks to go by. */
    public List<String> of(PickUp pickUp) {
        List<String> marks = pickUp.quarters().stream()
                .limit(3)
                .map(mark -> mark(mark, pickUp.edge()))
                .toList();
        String side = Bundle.capital(texts.text("side." + pickUp.side()));
        return List.of(
                texts.text("pickUp", side, pickUp.stitches(), spread(pickUp)),
                texts.text("pickUp.quarters", Bundle.commas(marks)));
    }

    /** How large the piece is with its border on, and what its edge will do. */
    public List<String> of(FinishedSize size) {
        List<String> said = new ArrayList<>();
        said.add(texts.text(
                "size.outer",
                cm(size.borderMm()),
                cm(size.outerAcrossMm()),
                cm(size.outerDownMm()),
                Inches.ofMm(size.borderMm()),
                Inches.ofMm(size.outerAcrossMm()),
                Inches.ofMm(size.outerDownMm())));
        if (Math.abs(size.edgeToSpareMm()) >= LEAST_TO_SPARE_MM) {
            said.add(texts.text(
                    size.edgeToSpareMm() > 0 ? "size.ruffles" : "size.cups", cm(Math.abs(size.edgeToSpareMm()))));
        }
        return List.copyOf(said);
    }

    private String of(Landmark landmark) {
        if (landmark instanceof Landmark.NoLongStitch) {
            return texts.text("landmark.none");
        }
        if (landmark instanceof Landmark.EachLong each) {
            return texts.text("landmark.each." + each.relation());
        }
        if (landmark instanceof Landmark.FirstLong first) {
            return first.number() == 2
                    ? texts.text("landmark.firstInCorner")
                    : texts.text("landmark.first", first.number());
        }
        if (landmark instanceof Landmark.InGroups groups) {
            return texts.text("landmark.groups", groups.size());
        }
        Landmark.LongsOnSide longs = (Landmark.LongsOnSide) landmark;
        if (longs.inRepeat() == 0) {
            return texts.text("landmark.onSide", longs(longs.inCorners()));
        }
        return longs.inCorners() == 0
                ? texts.text("landmark.onRepeat", longs(longs.inRepeat()))
                : texts.text("landmark.onBoth", longs(longs.inCorners()), longs.inRepeat());
    }

    private String longs(int number) {
        return texts.counted("landmark.longs", number);
    }

    private String onSides(Landmark.LongsOnSide longs, PerSide<Integer> repeats) {
        return texts.text(
                "landmark.onSides",
                Bundle.commas(Stream.of(Side.values())
                        .map(side -> texts.text("plan.count", texts.text("side." + side), longs.on(repeats.get(side))))
                        .toList()));
    }

    private String spread(PickUp pickUp) {
        if (pickUp.edge() instanceof Edge.OfStitches edge) {
            int more = pickUp.stitches() - edge.stitches();
            return more == 0
                    ? texts.text("pickUp.eachStitch")
                    : texts.text(more > 0 ? "pickUp.stitchesMore" : "pickUp.stitchesFewer", Math.abs(more));
        }
        if (pickUp.edge() instanceof Edge.OfRows edge && pickUp.stitches() > 0) {
            RowSpread spread = new RowSpread(edge.rows(), pickUp.stitches());
            Ratio ratio = spread.exactly().orElseGet(() -> Ratio.nearest((double) spread.stitches() / spread.rows()));
            boolean exact = spread.exactly().isPresent();
            if (ratio.rows() == 1) {
                return texts.text(exact ? "pickUp.eachRow" : "pickUp.aboutEachRow", ratio.stitches());
            }
            return texts.text(exact ? "pickUp.exactly" : "pickUp.about", ratio.stitches(), ratio.rows());
        }
        return "";
    }

    private String mark(PickUp.Mark mark, Edge edge) {
        if (edge instanceof Edge.OfLength) {
            return texts.text("pickUp.mark.length", mark.stitches(), cm(mark.along()));
        }
        String key = edge instanceof Edge.OfRows ? "pickUp.mark.rows" : "pickUp.mark.stitches";
        return texts.text(key, mark.stitches(), mark.along());
    }

    private static String cm(double mm) {
        return String.format(Locale.ROOT, "%.1f", mm / 10);
    }
}
