package edgewright.words;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Corner;
import edgewright.chart.Counting;
import edgewright.chart.Edits;
import edgewright.chart.Footing;
import edgewright.chart.Heading;
import edgewright.chart.HookHand;
import edgewright.chart.HookSize;
import edgewright.chart.Landing;
import edgewright.chart.NamedSize;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Start;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.fit.PatternSize;
import edgewright.texts.English;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Charts from a seed, of every kind of stitch and shape. Many have repeats of a shorter period, and corner sections that
 * continue it, because there the writer has the most to decide.
 */
public final class SeededCharts {
    private static final List<Yarn> YARNS = List.of(
            new Yarn("A", "Peat", Colour.parse("#2b2a33")),
            new Yarn("B", "Chalk", Colour.parse("#f2ead8")),
            new Yarn("C", "Peat", Colour.parse("#6a7f4b")),
            new Yarn("d4", "Chalk, 4 ply. Side: 2", Colour.parse("#aa7f4b")));

    private final Random random;

    public SeededCharts(long seed) {
        random = new Random(seed);
    }

    /** Any stitch anywhere: what the writer must be able to say, whether or not hands can work it. */
    public Chart any() {
        SideShape shape = new SideShape(random.nextInt(5), 1 + random.nextInt(9), random.nextInt(5));
        String kinds = List.of("b", "bl", "bbl", "bbbl", "blp", "blpc").get(random.nextInt(6));
        List<Round> rounds = new ArrayList<>();
        int last = 1 + random.nextInt(7);
        for (int r = 1; r <= last; r++) {
            rounds.add(round(shape, r, kinds));
        }
        Chart chart = chart(rounds);
        return chart.withMaking(
                chart.making().withStart(start(shape)).withBack(back()).withHook(hook()));
    }

    private Optional<Back> back() {
        return random.nextInt(3) == 0 ? Optional.of(new Back(hook())) : Optional.empty();
    }

    private Optional<HookSize> hook() {
        return random.nextBoolean() ? Optional.of(new HookSize(100 + random.nextInt(900))) : Optional.empty();
    }

    /** No start, one that is to be found, or one in any column; any two sides. */
    private Optional<Start> start(SideShape shape) {
        int column = random.nextInt(shape.a() + shape.w() + 1);
        Start start = new Start(
                column == 0 ? OptionalInt.empty() : OptionalInt.of(column),
                Side.values()[random.nextInt(4)],
                Side.values()[random.nextInt(4)]);
        return random.nextBoolean() ? Optional.of(start) : Optional.empty();
    }

    /**
     * A chart that hands can work. Long stitches only over back-loop stitches on back-loop stitches; outermost and next to
     * outermost stitches are back-loop or plain, but for long ones next to outermost.
     */
    public Chart workable() {
        Chart chart = any();
        for (int r = 1; r <= chart.rounds().size(); r++) {
            for (var section : Section.values()) {
                for (int i = 1; i <= chart.round(r).section(section).length(); i++) {
                    var place = new Place(r, section, i);
                    if (!fits(chart, place)) {
                        chart = Edits.setStitches(chart, List.of(place), Stitch.BACK_LOOP);
                    }
                }
            }
        }
        return chart;
    }

    /**
     * The chart with some of its rounds worked as the round before or as the one four rounds before, where the words of that one
     * come out, else back-loop throughout as are the rounds next to it.
     */
    public static Chart withAlikeRounds(Chart chart, long seed) {
        Random random = new Random(seed);
        Chart alike = chart;
        for (int r = 2; r <= chart.rounds().size(); r++) {
            int back = random.nextInt(3) == 0 ? Math.min(4, r - 1) : 1;
            Round as = alike.round(r - back);
            alike = switch (random.nextInt(4)) {
                case 0 -> alike;
                case 1 -> alike.withRound(r, longer(as, back));
                default -> blank(blank(alike, r - 1), r);
            };
        }
        return alike;
    }

    private static Chart blank(Chart chart, int r) {
        Round round = chart.round(r);
        return chart.withRound(
                r,
                Round.of(
                        round.yarn(),
                        "b".repeat(round.fromCorner().length()),
                        "b".repeat(round.repeat().length()),
                        "b".repeat(round.toCorner().length())));
    }

    /** The same stitches from the corner and to it, with more of the repeat between them. */
    private static Round longer(Round round, int rounds) {
        String repeat = round.repeat().letters();
        String more = repeat.repeat(rounds);
        return Round.of(
                round.yarn(),
                round.fromCorner().letters() + more.substring(0, rounds),
                (repeat + repeat).substring(rounds % repeat.length(), rounds % repeat.length() + repeat.length()),
                (repeat + more).substring(rounds % repeat.length()).substring(0, rounds)
                        + round.toCorner().letters());
    }

    /** Options for this chart: any terms, any counting, any size or none. */
    public WordingOptions options() {
        Terms terms = Terms.values()[random.nextInt(2)];
        Counting counting = Counting.values()[random.nextInt(2)];
        PatternSize size = switch (random.nextInt(6)) {
            case 0 -> PatternSize.any();
            case 1 -> new PatternSize.OfRepeats(PerSide.all(random.nextInt(4)));
            case 2 -> {
                int level = random.nextInt(4);
                int upright = random.nextInt(4);
                yield new PatternSize.OfRepeats(PerSide.pairs(level, upright));
            }
            case 3, 4 ->
                new PatternSize.OfSizes(IntStream.rangeClosed(1, 1 + random.nextInt(NamedSize.MOST))
                        .mapToObj(i -> new PatternSize.OfSizes.Size(
                                "Size " + i, PerSide.pairs(random.nextInt(9), random.nextInt(9))))
                        .toList());
            default ->
                new PatternSize.OfRepeats(
                        PerSide.of(random.nextInt(4), random.nextInt(4), random.nextInt(4), random.nextInt(4)));
        };
        return new WordingOptions(
                English.LANGUAGE, terms, counting, size, random.nextInt(8) == 0, HookHand.values()[random.nextInt(2)]);
    }

    private static boolean fits(Chart chart, Place place) {
        Stitch stitch = chart.stitch(place);
        if (stitch.coversStitchBelow()) {
            return fitsLong(chart, place);
        }
        return stitch.standsInStitchBelow()
                || !(chart.shape(Side.FIRST).footing(place) instanceof Footing.OnCornerChain);
    }

    private static boolean fitsLong(Chart chart, Place place) {
        if (place.round() == 1 || !(chart.shape(Side.FIRST).footing(place) instanceof Footing.OnStitch below)) {
            return false;
        }
        if (place.round() > 2
                && chart.shape(Side.FIRST).landing(place, chart.stitch(place)) instanceof Landing.InStitch landing) {
            if (chart.stitch(landing.place()) != Stitch.BACK_LOOP) {
                return false;
            }
        }
        return chart.stitch(below.place()) == Stitch.BACK_LOOP;
    }

    private Round round(SideShape shape, int r, String kinds) {
        int period = 1 + random.nextInt(shape.w());
        String repeat = letters(shape.w(), kinds);
        if (shape.w() % period == 0) {
            repeat = repeat.substring(0, period).repeat(shape.w() / period);
        }
        String from = letters(shape.a() + r, kinds);
        String to = letters(shape.b() + r, kinds);
        int inward = random.nextInt(from.length() + 1);
        int onward = random.nextInt(to.length() + 1);
        String all = repeat.repeat(40);
        from = from.substring(0, from.length() - inward) + all.substring(all.length() - inward);
        to = all.substring(0, onward) + to.substring(onward);
        return Round.of(YARNS.get(random.nextInt(YARNS.size())).id(), from, repeat, to);
    }

    private String letters(int length, String kinds) {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < length; i++) {
            letters.append(kinds.charAt(random.nextInt(kinds.length())));
        }
        return letters.toString();
    }

    private Chart chart(List<Round> rounds) {
        return new Chart(
                        new Heading(
                                List.of("Reed Bank", "Rounds", "", "Round 1, Peat")
                                        .get(random.nextInt(4)),
                                List.of("", "Saltmarsh Studio").get(random.nextInt(2)),
                                List.of("", "Work it loosely.\n\nRounds\nRound 1: ad lib.")
                                        .get(random.nextInt(2)),
                                Terms.UK),
                        YARNS,
                        rounds)
                .withCorner(Corner.DEFAULT.withChains(1 + random.nextInt(3)));
    }
}
